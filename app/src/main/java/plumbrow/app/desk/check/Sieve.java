package plumbrow.app.desk.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;

/**
 * Which findings are shown.
 *
 * @param standing only those that stand so; null for all that are not clear
 * @param protects only those that protect this one; null for everybody
 */
public record Sieve(@Nullable Standing standing, @Nullable Protects protects) {

    /** Words that mean nothing let everything through. */
    static Sieve read(String standing, String protects) {
        return new Sieve(
                Arrays.stream(Standing.values())
                        .filter(one -> one.word().equals(standing))
                        .findFirst()
                        .orElse(null),
                Arrays.stream(Protects.values())
                        .filter(one -> word(one).equals(protects))
                        .findFirst()
                        .orElse(null));
    }

    /** How one of those protected stands in an address: "next-crop". */
    public static String word(Protects protects) {
        return protects.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public boolean open() {
        return standing == null && protects == null;
    }

    /** What stands in an address for it, with a sign after it for what else is asked. */
    String query() {
        return (standing == null ? "" : "standing=" + standing.word() + "&")
                + (protects == null ? "" : "protects=" + word(protects) + "&");
    }

    /** The findings that come through, worst first. */
    public List<Finding> through(List<Finding> findings) {
        return findings.stream()
                .filter(finding ->
                        standing == null ? finding.standing() != Standing.CLEAR : finding.standing() == standing)
                .filter(finding -> protects == null || finding.protects() == protects)
                .toList();
    }

    boolean shows(ProgramCheck program) {
        return open() || !through(program.findings()).isEmpty();
    }
}
