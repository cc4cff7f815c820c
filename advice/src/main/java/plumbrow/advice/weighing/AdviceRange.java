package plumbrow.advice.weighing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Over which values of one uncertain input the advised program stays the best of all that may be advised, and which takes its
 * place below and above.
 *
 * @param input id of the {@link UncertainInput}
 * @param advised the program advised
 * @param likely its mean now
 * @param plausibleLow lowest value looked at: its 1 % point
 * @param plausibleHigh highest value looked at: its 99 % point
 * @param holdsFrom below this value another program is best; null where the advised one is, down to the lowest value looked at
 * @param holdsTo above this value another program is best; null where the advised one is, up to the highest value looked at
 * @param bands the best program by value of the input, low to high, from {@code plausibleLow} to {@code plausibleHigh}; only what
 *     the draws can tell: a program that takes the lead by less than two standard errors has no band
 * @param says one sentence
 */
public record AdviceRange(
        String input,
        String label,
        String unit,
        String advised,
        double likely,
        double plausibleLow,
        double plausibleHigh,
        @Nullable Double holdsFrom,
        @Nullable Double holdsTo,
        List<BestBand> bands,
        String says) {
    public AdviceRange {
        bands = List.copyOf(bands);
    }

    /** The range of the advised program in its bands. */
    static AdviceRange of(
            Variable input, String advised, double likely, double low, double high, List<BestBand> bands) {
        int own = own(advised, likely, bands);
        return new AdviceRange(
                input.id(),
                input.label(),
                input.unit(),
                advised,
                likely,
                low,
                high,
                own > 0 ? bands.get(own).from() : null,
                own >= 0 && own < bands.size() - 1 ? bands.get(own).to() : null,
                bands,
                "");
    }

    AdviceRange saying(String words) {
        return new AdviceRange(
                input, label, unit, advised, likely, plausibleLow, plausibleHigh, holdsFrom, holdsTo, bands, words);
    }

    /** Whether another program is best somewhere in the range looked at. */
    public boolean turns() {
        return bands.size() > 1 || !bands.get(0).program().equals(advised);
    }

    /** Where a band begins, with its unit and no more digits than the draws support. */
    public String end(int band) {
        return RangeWords.end(this, band);
    }

    /** The band of the advised program that holds, or lies nearest to, what is taken now; −1 where it has none. */
    int own() {
        return own(advised, likely, bands);
    }

    private static int own(String advised, double likely, List<BestBand> bands) {
        int own = -1;
        double nearest = Double.POSITIVE_INFINITY;
        for (int b = 0; b < bands.size(); b++) {
            BestBand band = bands.get(b);
            double distance = Math.max(0, Math.max(band.from() - likely, likely - band.to()));
            if (band.program().equals(advised) && distance < nearest) {
                nearest = distance;
                own = b;
            }
        }
        return own;
    }

    /** How far what is taken now is from the nearest end of the range that holds, in widths of what was looked at. */
    double distance() {
        double below = holdsFrom == null ? Double.POSITIVE_INFINITY : Math.abs(likely - holdsFrom);
        double above = holdsTo == null ? Double.POSITIVE_INFINITY : Math.abs(holdsTo - likely);
        return Math.min(below, above) / (plausibleHigh - plausibleLow);
    }
}
