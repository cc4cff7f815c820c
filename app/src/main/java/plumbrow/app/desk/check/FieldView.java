package plumbrow.app.desk.check;

import java.util.List;
import plumbrow.advice.check.CourseCheck;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.app.book.LogLine;
import plumbrow.app.desk.map.MapSheet;

/**
 * What the check of one field shows: its courses in short, and one of them in full.
 *
 * @param map what lies around it, with the setbacks of the course that is shown in full
 * @param log lines of this field, latest first
 */
public record FieldView(
        SeasonCheck check, Field field, CourseCheck course, Sieve sieve, MapSheet map, List<LogLine> log) {

    /** Every county whose law the field is judged by. */
    public List<String> counties() {
        return Gates.of(check.season()).counties(field);
    }

    /** The groups of which something comes through the sieve. */
    public List<CourseCheck.Group> groups() {
        return course.groups().stream()
                .map(group -> new CourseCheck.Group(group.protects(), sieve.through(group.findings())))
                .filter(group -> !group.findings().isEmpty())
                .toList();
    }

    public List<Finding> clear() {
        return course.findings().stream()
                .filter(finding -> finding.standing() == Standing.CLEAR)
                .toList();
    }

    public List<LookUp> lookUps() {
        return check.lookUps();
    }
}
