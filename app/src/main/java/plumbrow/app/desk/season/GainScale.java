package plumbrow.app.desk.season;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbrow.advice.weighing.Band;
import plumbrow.app.desk.FieldAnswer;

/**
 * One scale of dollars per acre for the small pictures of all fields. Zero, the baseline, is always on it.
 *
 * @param low left end [$/ac], at most 0
 * @param high right end [$/ac], at least 0
 */
public record GainScale(double low, double high) {
    /** Width of each small picture; its height is 28. */
    public static final int WIDTH = 200;

    private static final int MARGIN = 6;

    /** The scale that holds the gain of every advised program. */
    public static GainScale of(List<FieldAnswer> answers) {
        List<Band> gains = answers.stream()
                .flatMap(answer -> Optional.ofNullable(answer.advised()).stream())
                .map(FieldAnswer.Advised::gain)
                .toList();
        double low = gains.stream().mapToDouble(Band::low).min().orElse(0);
        double high = gains.stream().mapToDouble(Band::high).max().orElse(0);
        return new GainScale(Math.min(low, 0), Math.max(high, Math.min(low, 0) + 1));
    }

    /** Where a gain stands in the picture. */
    public String x(double usdPerAcre) {
        double share = (usdPerAcre - low) / (high - low);
        return String.format(Locale.ROOT, "%.1f", MARGIN + share * (WIDTH - 2 * MARGIN));
    }

    /** How long a band is in the picture. */
    public String width(Band band) {
        double share = (band.high() - band.low()) / (high - low);
        return String.format(Locale.ROOT, "%.1f", Math.max(1, share * (WIDTH - 2 * MARGIN)));
    }
}
