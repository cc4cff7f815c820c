package plumbrow.advice.check;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;

/** Courses of a season held against every gate: a whole farm in one go. */
public record SeasonCheck(Season season, List<CourseCheck> courses) {
    public SeasonCheck {
        courses = List.copyOf(courses);
    }

    /** Every course of a season. */
    public static SeasonCheck of(Season season) {
        return of(season, season.fields());
    }

    /** The courses of some of its fields, in the order of the season. */
    public static SeasonCheck of(Season season, List<Field> fields) {
        Gates gates = Gates.of(season);
        FieldSeasons own = FieldSeasons.of(season);
        List<CourseCheck> checked = new ArrayList<>();
        for (Field field : fields) {
            own.courses(field)
                    .forEach(course -> checked.add(new CourseCheck(field, course, gates.check(field, course))));
        }
        return new SeasonCheck(season, checked);
    }

    /** Only the courses of one name. */
    public SeasonCheck named(String course) {
        return new SeasonCheck(
                season,
                courses.stream()
                        .filter(check -> check.course().name().equals(course))
                        .toList());
    }

    /** Only the courses of one field. */
    public SeasonCheck of(Field field) {
        return new SeasonCheck(season, courses(field));
    }

    /** The fields that have a course here, in the order of the season. */
    public List<Field> fields() {
        return courses.stream().map(CourseCheck::field).distinct().toList();
    }

    public List<CourseCheck> courses(Field field) {
        return courses.stream()
                .filter(check -> check.field().name().equals(field.name()))
                .toList();
    }

    /** How many courses stand so. */
    public int count(Standing standing) {
        return (int)
                courses.stream().filter(check -> check.standing() == standing).count();
    }

    /** What to look up, and where: that which settles most findings first. */
    public List<LookUp> lookUps() {
        return LookUp.of(courses);
    }

    /** The products that are lawful in one place here and barred in another. */
    public List<AcrossLine> acrossLines() {
        return AcrossLine.of(this);
    }

    /** The answer in one sentence. */
    public String sentence() {
        int all = courses.size();
        if (all == 0) {
            return "No course has been entered, so there is nothing to check.";
        }
        return "Of " + all + (all == 1 ? " course " : " courses ") + "on " + fields().size()
                + (fields().size() == 1 ? " field, " : " fields, ") + count(Standing.BARRED) + " barred, "
                + count(Standing.UNKNOWN) + " unknown, " + count(Standing.CONDITIONAL) + " conditional, "
                + count(Standing.CLEAR) + " clear.";
    }
}
