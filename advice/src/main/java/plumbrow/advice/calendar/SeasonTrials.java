package plumbrow.advice.calendar;

import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.OwnInputs;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.advice.weighing.CourseTrial;
import plumbrow.advice.weighing.CourseTrials;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;

/**
 * Tries changes to the courses of one season, on the draws and by the arithmetic of its weighing. What stays the same from try to
 * try is kept. Safe for several threads.
 */
public final class SeasonTrials {
    private static final int MOST_KEPT = 200;

    private final Season season;
    private final CourseTrials trials;
    private final ConcurrentMap<List<String>, CourseTrial> known = new ConcurrentHashMap<>();
    private final ConcurrentMap<List<Object>, List<Window>> lawful = new ConcurrentHashMap<>();

    public SeasonTrials(Season season, WeighingOptions options) {
        this.season = season;
        this.trials = new CourseTrials(options);
    }

    public Season season() {
        return season;
    }

    /** Whether the weeds of a field can be followed day by day. */
    public boolean followed(Field field) {
        return WeedSeasons.of(season, field, new OwnInputs()) instanceof FieldSeason;
    }

    /**
     * A course with changes, with all it takes for the picture but the lawful days.
     *
     * @throws CourseChangeException where a change can't be made
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public SeasonTrial tried(Field field, String course, List<PassChange> changes) {
        CourseChanges changer = new CourseChanges(season, field);
        Course kept = changer.course(course);
        ChangedCourse changed = changer.of(kept, changes, kept.name());
        boolean same = changed.course().equals(kept);
        Season after = same ? season : SeasonParts.replaced(season, kept, changed);
        CourseTrial before = kept(field, course);
        CourseTrial now = same ? before : trials.of(after, field, course);
        List<Finding> findings =
                Gates.of(SeasonParts.alone(after, field, List.of(changed))).check(field, changed.course());
        return new SeasonTrial(
                field.name(),
                course,
                !same,
                trials.options().draws(),
                trials.options().seed(),
                now.numbers(),
                before.numbers(),
                now.against(before),
                now.against(kept(field, baseline(field))),
                Gates.standing(findings),
                findings,
                changed.renumbered(),
                new CalendarDays(after, field, now, changed.keptNumbers()).calendar());
    }

    /** The same with the days on which the gates let each pass be made. */
    public SeasonTrial whole(Field field, String course, List<PassChange> changes) {
        SeasonTrial tried = tried(field, course, changes);
        SeasonCalendar calendar = tried.calendar();
        if (lawful.size() > MOST_KEPT) {
            lawful.clear();
        }
        return tried.with(lawful.computeIfAbsent(List.of(field.name(), course, List.copyOf(changes)), key -> {
            CourseChanges changer = new CourseChanges(season, field);
            Course asKept = changer.course(course);
            ChangedCourse changed = changer.of(asKept, changes, course);
            Season after = SeasonParts.replaced(season, asKept, changed);
            return new LawfulDays(after, field)
                    .of(changed.course(), calendar.first(), calendar.last()).stream()
                            .map(window -> window.of(changed.keptNumbers().getOrDefault(window.pass(), window.pass())))
                            .toList();
        }));
    }

    /**
     * The same with the lawful days of the course as kept: those of a pass being moved do not change while it is.
     *
     * @param other trials of this season that may know them already
     */
    public SeasonTrial moving(Field field, String course, List<PassChange> changes, SeasonTrials other) {
        return tried(field, course, changes)
                .with(other.lawful.getOrDefault(List.of(field.name(), course, List.of()), List.of()));
    }

    /** The season with a course changed in its place. */
    public Season keptChanged(Field field, String course, List<PassChange> changes) {
        return new CourseChanges(season, field).changed(course, changes);
    }

    /** The season with the changed course as one more. */
    public Season keptAdded(Field field, String course, List<PassChange> changes, String name) {
        return new CourseChanges(season, field).added(course, changes, name);
    }

    /** The season without a course that is no baseline. */
    public Season without(Field field, String course) {
        return new CourseChanges(season, field).without(course);
    }

    private CourseTrial kept(Field field, String course) {
        return known.computeIfAbsent(List.of(field.name(), course), key -> trials.of(season, field, course));
    }

    private String baseline(Field field) {
        return season.courses(field.name()).stream()
                .filter(Course::baseline)
                .map(Course::name)
                .findFirst()
                .orElseThrow(() -> new SeasonGapException(
                        field.name() + " can't be weighed: exactly one of its courses must be the baseline."));
    }
}
