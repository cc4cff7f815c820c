package plumbrow.advice.season;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.means.Means;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.stand.StandCount;

/** How passes are to be sprayed and by whom, what was done and counted already, and what there is to work with. */
public record Work(List<SprayPlan> sprayPlans, Crew crew, List<Done> log, Means means, List<StandCount> stands) {
    /** Nothing planned, nobody named, nothing done. */
    public static final Work NONE = new Work(List.of(), Crew.UNKNOWN, List.of());

    public Work {
        sprayPlans = List.copyOf(sprayPlans);
        log = List.copyOf(log);
        stands = List.copyOf(stands);
    }

    /** With no stand counted. */
    public Work(List<SprayPlan> sprayPlans, Crew crew, List<Done> log, Means means) {
        this(sprayPlans, crew, log, means, List.of());
    }

    /** Of farms whose machines, hours and money nobody has entered. */
    public Work(List<SprayPlan> sprayPlans, Crew crew, List<Done> log) {
        this(sprayPlans, crew, log, Means.NONE);
    }

    /** The same with other spray plans. */
    public Work withSprayPlans(List<SprayPlan> plans) {
        return new Work(plans, crew, log, means, stands);
    }

    /** The same with the lines of the log told otherwise, such as which pass one was. */
    public Work withLog(List<Done> lines) {
        return new Work(sprayPlans, crew, lines, means, stands);
    }

    /** How a pass of a program is to be sprayed. */
    public Optional<SprayPlan> sprayPlan(Program program, Pass pass) {
        return sprayPlans.stream()
                .filter(plan -> plan.field().equals(program.field())
                        && plan.program().equals(program.name())
                        && plan.pass() == pass.number())
                .findFirst();
    }

    /** The same with other stands counted. */
    public Work withStands(List<StandCount> counts) {
        return new Work(sprayPlans, crew, log, means, counts);
    }

    /** The stand that was counted on a field. */
    public Optional<StandCount> stand(String field) {
        return stands.stream().filter(count -> count.field().equals(field)).findFirst();
    }

    /** What was put on a field, in the order of the log. */
    public List<Done> log(String field) {
        return log.stream()
                .filter(line -> line.field().equals(field) && line.made())
                .toList();
    }

    /** Lines of a field that say of a pass that scouting found too few for it, in the order of the log. */
    public List<Done> tooFew(String field) {
        return log.stream()
                .filter(line -> line.field().equals(field) && !line.made())
                .toList();
    }
}
