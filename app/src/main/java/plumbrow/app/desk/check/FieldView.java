package plumbrow.app.desk.check;

import java.util.List;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.app.book.LogLine;
import plumbrow.app.desk.map.MapSheet;

/**
 * What the check of one field shows: its programs in short, and one of them in full.
 *
 * @param map what lies around it, with the setbacks of the program that is shown in full
 * @param log lines of this field, latest first
 */
public record FieldView(
        SeasonCheck check, Field field, ProgramCheck program, Sieve sieve, MapSheet map, List<LogLine> log) {

    /** Every county whose law the field is judged by. */
    public List<String> counties() {
        return Gates.of(check.season()).counties(field);
    }

    /** What comes through the sieve, one line for each matter, in the order of telling. */
    public List<Matter> matters() {
        return Matter.of(List.of(new ProgramCheck(field, program.program(), sieve.through(program.findings()))));
    }

    public List<Finding> clear() {
        return program.findings().stream()
                .filter(finding -> finding.standing() == Standing.CLEAR)
                .toList();
    }

    public List<LookUp> lookUps() {
        return check.lookUps();
    }
}
