package plumbrow.advice.years;

import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.science.figure.Numbers;

/**
 * How to look ahead.
 *
 * @param seasons number of seasons, this one the first, 1 to 20
 * @param draws number of draws, 100 to 100,000
 * @param seed from which all draws come: same season, seed and draws give the same answer to the bit
 * @param discountPct by which a dollar loses worth in a year [%], 0 to 50
 * @param pressureAfterBreakPct pressure of an insect whose eggs lie in the field, in the first year after another crop [% of
 *     that in continuous crop], 0 to 100
 */
public record YearsOptions(int seasons, int draws, long seed, double discountPct, double pressureAfterBreakPct) {
    /** Seasons, where nobody says otherwise. */
    public static final int SEASONS = 10;

    /** Discount rate where none is typed [%]. */
    public static final double DISCOUNT_PCT = 5;

    /** Where the discount rate and the pressure after a break come from, if nobody types them. */
    public static final String NO_SOURCE = "common practice, no source";

    public static final YearsOptions DEFAULT =
            new YearsOptions(SEASONS, 1_000, WeighingOptions.DEFAULT.seed(), DISCOUNT_PCT, 10);

    public YearsOptions {
        within("number of seasons", seasons, 1, 20);
        within("number of draws", draws, 100, 100_000);
        within("discount rate", discountPct, 0, 50);
        within("pressure after another crop", pressureAfterBreakPct, 0, 100);
    }

    public YearsOptions withSeasons(int number) {
        return new YearsOptions(number, draws, seed, discountPct, pressureAfterBreakPct);
    }

    public YearsOptions withDraws(int number) {
        return new YearsOptions(seasons, number, seed, discountPct, pressureAfterBreakPct);
    }

    public YearsOptions withDiscountPct(double pct) {
        return new YearsOptions(seasons, draws, seed, pct, pressureAfterBreakPct);
    }

    public YearsOptions withPressureAfterBreakPct(double pct) {
        return new YearsOptions(seasons, draws, seed, discountPct, pct);
    }

    /** Whether the pressure after another crop was typed; else it is drawn. */
    boolean afterBreakTyped() {
        return pressureAfterBreakPct != DEFAULT.pressureAfterBreakPct;
    }

    /** The weighing that has the same draws. */
    WeighingOptions weighing() {
        return WeighingOptions.DEFAULT.withDraws(draws).withSeed(seed);
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "the " + what + " is " + plain(value) + "; expected " + plain(least) + " to " + plain(most));
        }
    }

    private static String plain(double value) {
        return Numbers.plain(value);
    }
}
