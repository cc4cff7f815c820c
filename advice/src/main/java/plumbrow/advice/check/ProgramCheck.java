package plumbrow.advice.check;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;

/**
 * What the gates find of one program on its field.
 *
 * @param findings worst first
 */
public record ProgramCheck(Field field, Program program, List<Finding> findings) {
    public ProgramCheck {
        findings = List.copyOf(findings);
    }

    /** The findings on one of those whom gates protect, worst first. */
    public record Group(Protects protects, List<Finding> findings) {
        public Standing standing() {
            return Gates.standing(findings);
        }

        public int count(Standing standing) {
            return ProgramCheck.count(findings, standing);
        }
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

    /** The findings by who is protected: the one worst off first, else the law, people, water and so on. */
    public List<Group> groups() {
        Map<Protects, List<Finding>> found = new EnumMap<>(Protects.class);
        Arrays.stream(Protects.values())
                .forEach(one -> found.put(
                        one,
                        findings.stream()
                                .filter(finding -> finding.protects() == one)
                                .toList()));
        return found.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> new Group(group.getKey(), group.getValue()))
                .sorted(Comparator.comparing(Group::standing))
                .toList();
    }

    private static int count(List<Finding> findings, Standing standing) {
        return (int) findings.stream()
                .filter(finding -> finding.standing() == standing)
                .count();
    }
}
