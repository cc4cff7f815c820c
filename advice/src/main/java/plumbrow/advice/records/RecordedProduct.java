package plumbrow.advice.records;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Ask;

/**
 * One product of an application, with what its label said on that day; a label read later does not change what was recorded.
 *
 * @param registration number on the label; null where it was not written down
 * @param rate on each acre treated
 * @param total used in all, in the unit of its container where that is on file
 * @param restricted whether it is a restricted-use product, federally or in the state
 * @param reentryHours restricted-entry interval of the label for the crop [h]; null where it was not read
 * @param preHarvestDays pre-harvest interval of the label for the crop [d]; null where it was not read
 * @param labelDate date of the label; null where not on file
 * @param meant the planned pass it was; null where nobody said
 */
public record RecordedProduct(
        String product,
        @Nullable String registration,
        Amount rate,
        Amount total,
        Ask restricted,
        @Nullable Integer reentryHours,
        @Nullable Integer preHarvestDays,
        @Nullable LocalDate labelDate,
        @Nullable MeantPass meant) {
    /** How far the total may be off rate times acres before it is asked back: what measuring rounds away [%]. */
    public static final double ROUNDING_PCT = 2;

    /**
     * Rate times acres.
     *
     * @param unit in which it is told, of the kind of the rate
     */
    public static Amount total(Amount rate, double acres, Amount unit) {
        return new Amount(rate.value() * acres, rate.unit()).in(unit.unit());
    }

    /** How far the total lies off rate times acres [%]; unlike kinds of unit are as far off as can be. */
    public double offPct(double acres) {
        if (!rate.comparableWith(total)) {
            return Double.POSITIVE_INFINITY;
        }
        double reckoned = rate.inBase() * acres;
        return reckoned == 0
                ? (total.value() == 0 ? 0 : Double.POSITIVE_INFINITY)
                : 100 * (total.inBase() / reckoned - 1);
    }

    public RecordedProduct meaning(@Nullable MeantPass pass) {
        return new RecordedProduct(
                product, registration, rate, total, restricted, reentryHours, preHarvestDays, labelDate, pass);
    }
}
