package plumbrow.advice.check;

import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;

/**
 * What the checks find of one program on its field.
 *
 * @param findings worst first
 */
public record ProgramCheck(Field field, Program program, List<Finding> findings) {
    public ProgramCheck {
        findings = List.copyOf(findings);
    }

    public Standing standing() {
        return Gates.standing(findings);
    }

    /** What stands in its way or is to be kept, one line for each matter. */
    public List<Matter> matters() {
        return Matter.of(List.of(this));
    }

    /** How many findings stand so. */
    public int count(Standing standing) {
        return count(findings, standing);
    }

    private static int count(List<Finding> findings, Standing standing) {
        return (int) findings.stream()
                .filter(finding -> finding.standing() == standing)
                .count();
    }
}
