package plumbrow.app.desk.check;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.check.CourseCheck;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.app.book.LogLine;

/**
 * What the check of one field shows: its courses in short, and one of them in full.
 *
 * @param log lines of this field, latest first
 */
public record FieldView(SeasonCheck check, Field field, CourseCheck course, Sieve sieve, List<LogLine> log) {

    /** Every county the field lies in. */
    public List<String> counties() {
        return Stream.concat(
                        Stream.of(field.county() + " County, " + field.state()),
                        check.season().ground().alsoIn().stream()
                                .filter(also -> also.field().equals(field.name()))
                                .map(also -> also.county() + " County, " + also.state()))
                .toList();
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

    /** What lies around the field. */
    public List<Feature> features() {
        return check.season().ground().features(field.name());
    }

    public List<LookUp> lookUps() {
        return check.lookUps();
    }
}
