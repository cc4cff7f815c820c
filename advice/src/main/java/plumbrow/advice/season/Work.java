package plumbrow.advice.season;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Done;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.SprayPlan;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.means.Means;

/** How passes are to be sprayed and by whom, what was done already, and what there is to work with. */
public record Work(List<SprayPlan> sprayPlans, Crew crew, List<Done> log, Means means) {
    /** Nothing planned, nobody named, nothing done. */
    public static final Work NONE = new Work(List.of(), Crew.UNKNOWN, List.of());

    public Work {
        sprayPlans = List.copyOf(sprayPlans);
        log = List.copyOf(log);
    }

    /** Of farms whose machines, hours and money nobody has entered. */
    public Work(List<SprayPlan> sprayPlans, Crew crew, List<Done> log) {
        this(sprayPlans, crew, log, Means.NONE);
    }

    /** The same with other spray plans. */
    public Work withSprayPlans(List<SprayPlan> plans) {
        return new Work(plans, crew, log, means);
    }

    /** How a pass of a course is to be sprayed. */
    public Optional<SprayPlan> sprayPlan(Course course, Pass pass) {
        return sprayPlans.stream()
                .filter(plan -> plan.field().equals(course.field())
                        && plan.course().equals(course.name())
                        && plan.pass() == pass.number())
                .findFirst();
    }

    /** What was put on a field, in the order of the log. */
    public List<Done> log(String field) {
        return log.stream().filter(line -> line.field().equals(field)).toList();
    }
}
