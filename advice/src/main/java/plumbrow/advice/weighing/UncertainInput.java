package plumbrow.advice.weighing;

import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.science.figure.Range;

/**
 * One uncertain input of a field's weighing.
 *
 * @param id the name under which it can be changed, such as "price" or "pressure: corn rootworm"
 * @param label what a person reads
 * @param doubt whether it belongs to the field, or the year brings it
 * @param distribution how it is spread in this weighing
 * @param mean its mean over the draws
 * @param band its 10, 50 and 90 % points over the draws
 * @param source who says so
 */
public record UncertainInput(
        String id,
        String label,
        String unit,
        DoubtKind doubt,
        Distribution distribution,
        double mean,
        Band band,
        String source) {
    private static final double NODES_ON_THE_SCALE = 3;
    private static final Range BEST_STAND = Range.closed(12_000, 250_000);
    private static final Range TIMES_A_TABLE = Range.closed(0, 10);

    /** The values it can take at all, in its unit: what a person may change it to. */
    public Range range() {
        if (unit.equals("share") || unit.equals("chance")) {
            return Range.SHARE;
        }
        if (unit.equals("nodes")) {
            return Range.closed(0, NODES_ON_THE_SCALE);
        }
        if (id.equals("best stand")) {
            return BEST_STAND;
        }
        if (id.equals("stand sharpness") || id.equals("late planting")) {
            return TIMES_A_TABLE;
        }
        if (id.equals("emergence") || id.startsWith("emergence: ") || id.equals("gaps")) {
            return Range.PERCENT;
        }
        if (id.equals("price")) {
            return Range.POSITIVE;
        }
        if (id.startsWith("gain: ") || id.startsWith("shift: ")) {
            return Range.ANY;
        }
        return id.startsWith("loss: ") || id.startsWith("injury: ") ? Range.PERCENT : Range.NOT_NEGATIVE;
    }
}
