package plumbrow.advice.weighing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbrow.science.figure.Numbers;

/** Over which values the advice holds, in a sentence; ends with no more digits than the draws support. */
final class RangeWords {
    /** Less than this is not told apart from nothing [$/ac]. */
    private static final double WORTH_SAYING = 0.05;

    private RangeWords() {}

    /**
     * @param read whether any program that may be advised hangs on the input
     * @param worth what knowing it by itself is worth [$/ac]
     */
    static String of(AdviceRange range, boolean read, double worth) {
        String looked = text(range, range.plausibleLow()) + " to " + text(range, range.plausibleHigh());
        if (!read) {
            return "No program that may be advised hangs on " + range.label() + ".";
        }
        int own = range.own();
        if (own < 0) {
            return "Held at any single value from " + looked + ", " + range.label()
                    + " makes another program the best: "
                    + others(range, 0, range.bands().size()) + ". " + range.advised()
                    + " is best only over all the values it may take.";
        }
        if (!range.turns()) {
            String alone = range.advised() + " stays best from " + looked + " of " + range.label() + ".";
            return worth < WORTH_SAYING
                    ? alone
                    : alone + " It counts together with what hangs on it: knowing it is worth up to "
                            + Numbers.dollars(worth, 2) + "/ac.";
        }
        boolean below = range.holdsFrom() != null;
        boolean above = range.holdsTo() != null;
        StringBuilder words = new StringBuilder(range.advised() + " stays best while " + range.label() + " is ");
        if (below && above) {
            words.append("between ").append(end(range, own)).append(" and ").append(end(range, own + 1));
        } else if (below) {
            words.append("above ").append(end(range, own));
        } else {
            words.append("below ").append(end(range, own + 1));
        }
        BestBand band = range.bands().get(own);
        boolean inside = band.from() <= range.likely() && range.likely() <= band.to();
        words.append(inside ? "; it is taken as about " : "; held at its mean it would not be, ")
                .append(text(range, range.likely()))
                .append(".");
        if (below) {
            words.append(" Below, ").append(others(range, 0, own)).append(" takes over.");
        }
        if (above) {
            words.append(" Above, ")
                    .append(others(range, own + 1, range.bands().size()))
                    .append(" takes over.");
        }
        return words.toString();
    }

    /** The programs of some bands, nearest the advised one first where they lie above it. */
    private static String others(AdviceRange range, int from, int to) {
        Set<String> names = new LinkedHashSet<>();
        for (int b = from; b < to; b++) {
            String name = range.bands().get(b).program();
            if (!name.equals(range.advised())) {
                names.add(name);
            }
        }
        return String.join(", then ", List.copyOf(names));
    }

    /** Where a band begins, rounded to what its error leaves. */
    static String end(AdviceRange range, int band) {
        BestBand found = range.bands().get(band);
        return text(range, rounded(found.from(), found.fromError()));
    }

    /** To the power of ten that is at least half the error. */
    static double rounded(double value, double error) {
        if (!(error > 0) || !Double.isFinite(error)) {
            return value;
        }
        double step = Math.pow(10, Math.ceil(Math.log10(error / 2)));
        double rounded = Math.rint(value / step) * step;
        return rounded == 0 ? value : rounded;
    }

    private static String text(AdviceRange range, double value) {
        return Quantities.text(value, range.unit());
    }
}
