package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One line of a decision table: a gate, what is changed in the plain scene, and what it then says. */
final class Decides {
    private Decides() {}

    /** The findings of one gate, after checking that they stand as the table says. */
    static List<Finding> line(String gate, @Nullable String edits, String expected) {
        Scene scene = Edits.apply(WholeLabel.scene(), edits);
        List<Finding> findings = Gates.all().stream()
                .filter(one -> one.id().equals(gate))
                .findFirst()
                .map(scene::findings)
                .orElseThrow();
        String found = findings.isEmpty() ? "SILENT" : Gates.standing(findings).name();
        assertThat(found).as("%s after %s: %s", gate, edits, findings).isEqualTo(expected);
        assertThat(findings).allSatisfy(Decides::readable);
        return findings;
    }

    private static void readable(Finding finding) {
        assertThat(finding.subject()).isNotBlank();
        assertThat(finding.says()).matches("(?s)[A-Z0-9a-z].*[.]").doesNotContain("null");
        assertThat(finding.clears().isEmpty()).isEqualTo(finding.standing() == Standing.CLEAR);
        if (!finding.clears().isEmpty()) {
            assertThat(finding.clears()).matches("(?s)[A-Z].*[.]").doesNotContain("null");
        }
        assertThat(finding.measured() == null).isEqualTo(finding.limit() == null);
        assertThat(finding.unit().isEmpty()).isEqualTo(finding.limit() == null);
        if (finding.standing() != Standing.UNKNOWN) {
            assertThat(finding.source()).isNotBlank();
        }
    }
}
