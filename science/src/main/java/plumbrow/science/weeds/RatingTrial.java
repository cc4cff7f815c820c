package plumbrow.science.weeds;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * A residual herbicide as a trial sees it: the rating is of all that came up since application, not of one day's seedlings.
 *
 *   c(s) = 1/(1 + e^{k·(s − h)});  R(t) = Σ_{j ≤ t} e_j·c(s_j) / (u₀ + Σ_{j ≤ t} e_j)
 *
 *   c    control of seedlings that come up at time s on the clock of the herbicide's decay: log-logistic response to a dose that
 *        halves every DT50, so k = b·ln2/DT50 and h = DT50·log2(dose/ED50), the time at which a seedling has an even chance
 *   e_j  what comes up on day j after application [any share];  u₀  what was up before, which the herbicide does not touch
 *   s_j  that clock at day j: calendar days at their middle, or days at 20 °C
 *
 * A plant that was let through on day 10 still counts on day 56. Ratings tell k and h, never b and DT50 apart. Survivors are
 * taken to die of other causes at the same share in the check.
 *
 * Source: what a rating is: "Rating scales for weed control experiments", Weeds; first-order loss and log-logistic response
 * (forms from memory).
 */
public final class RatingTrial {
    private static final int ROUNDS = 200;
    private static final double FLATTEST = 1e-4;
    private static final double STEEPEST = 20;

    private final double[] came;
    private final double[] clock;
    private final double upBefore;
    private final int firstAtWork;

    private RatingTrial(double[] came, double[] clock, double upBefore, int firstAtWork) {
        this.came = came;
        this.clock = clock;
        this.upBefore = upBefore;
        this.firstAtWork = firstAtWork;
    }

    /**
     * With a clock of its own.
     *
     * @param came what comes up on each day after application, the first day first; 0 or more
     * @param clock time of the herbicide's decay at each of those days, rising [d]
     */
    public static RatingTrial of(double[] came, double[] clock) {
        if (came.length != clock.length
                || came.length == 0
                || Arrays.stream(came).anyMatch(one -> !(one >= 0))) {
            throw new IllegalArgumentException(came.length + " days of emergence and " + clock.length
                    + " of decay; expected as many of each, at least one, none below 0");
        }
        return new RatingTrial(came.clone(), clock.clone(), 0, 0);
    }

    /**
     * On calendar days, weeds coming up along E(s) = 1 − e^{−(s/λ)^g} of the days since application.
     *
     * @param scaleDays λ, by which 63 % is up [d], more than 0
     * @param shape g, more than 0
     * @param days that are followed, at least 1
     */
    public static RatingTrial weibull(double scaleDays, double shape, int days) {
        double[] came = new double[days];
        double[] clock = new double[days];
        for (int j = 0; j < days; j++) {
            came[j] = emerged(j + 1, scaleDays, shape) - emerged(j, scaleDays, shape);
            clock[j] = j + .5;
        }
        return new RatingTrial(came, clock, 0, 0);
    }

    /** E(s), the share that is up s days after application. */
    static double emerged(double days, double scaleDays, double shape) {
        return -Math.expm1(-Math.pow(days / scaleDays, shape));
    }

    /** The same with weeds that were up at application, in the unit of what comes up. */
    public RatingTrial withUpBefore(double share) {
        return new RatingTrial(came, clock, share, firstAtWork);
    }

    /** The same without the rain that puts the herbicide to work until so many days have gone: what comes up before is not controlled. */
    public RatingTrial withoutRainFor(int days) {
        return new RatingTrial(came, clock, upBefore, days);
    }

    /** Days that are followed. */
    public int days() {
        return came.length;
    }

    /** Control of one time's seedlings [share]. */
    public static double control(double perDay, double halfAt, double at) {
        return 1 / (1 + Math.exp(perDay * (at - halfAt)));
    }

    /**
     * The rating R(t) [share].
     *
     * @param perDay k [1/d], 0 or more
     * @param halfAt h [d on the clock]
     * @param day t, 1 to {@link #days}
     */
    public double rating(double perDay, double halfAt, int day) {
        return rating(perDay, halfAt, day, 0);
    }

    /**
     * The same by size: each plant counts by its age to a power, 0 for a count of plants.
     *
     * @param agePower 2 where plants count by the size that grows with the square of their age
     */
    public double rating(double perDay, double halfAt, int day, double agePower) {
        double killed = 0;
        double all = upBefore * Math.pow(day, agePower);
        for (int j = 0; j < day; j++) {
            double counts = came[j] * Math.pow(day - j - .5, agePower);
            all += counts;
            killed += j < firstAtWork ? 0 : counts * control(perDay, halfAt, clock[j]);
        }
        return all == 0 ? 0 : killed / all;
    }

    /**
     * h by which the rating of a day comes out; empty where none does: it is more than all that came up while the herbicide was
     * at work, 0 or 1.
     *
     * @param rating on that day [share]
     */
    public OptionalDouble halfAt(double rating, int day, double perDay) {
        double low = clock[0] - 60 / perDay;
        double high = clock[day - 1] + 60 / perDay;
        if (!(rating > rating(perDay, low, day) && rating < rating(perDay, high, day))) {
            return OptionalDouble.empty();
        }
        for (int round = 0; round < ROUNDS && high - low > 1e-12 * (1 + Math.abs(low)); round++) {
            double middle = (low + high) / 2;
            if (rating(perDay, middle, day) < rating) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of((low + high) / 2);
    }

    /**
     * The lowest and highest later rating that can follow a first one: what was controlled does not come back, and new seedlings
     * are at most all controlled.
     */
    public double[] bounds(double first, int firstDay, int laterDay) {
        double up = upBy(firstDay);
        double all = upBy(laterDay);
        return new double[] {first * up / all, (first * up + all - up) / all};
    }

    /** Mean control of the seedlings between two ratings; outside 0 to 1 where they can't both be true [share]. */
    public double between(double first, int firstDay, double later, int laterDay) {
        double up = upBy(firstDay);
        double all = upBy(laterDay);
        return (later * all - first * up) / (all - up);
    }

    /** u₀ + Σ e_j up to a day. */
    public double upBy(int day) {
        double up = upBefore;
        for (int j = 0; j < day; j++) {
            up += came[j];
        }
        return up;
    }

    /**
     * k by which two ratings come out; empty where none does: the later one lies outside its {@link #bounds}, or control rises
     * from the first to the later, as where rain came late.
     */
    public OptionalDouble perDay(double first, int firstDay, double later, int laterDay) {
        double[] bounds = bounds(first, firstDay, laterDay);
        if (!(later > bounds[0] && later < Math.min(bounds[1], first))) {
            return OptionalDouble.empty();
        }
        double low = Math.log(FLATTEST);
        double high = Math.log(STEEPEST);
        if (!(laterAt(low, first, firstDay, laterDay) > later && laterAt(high, first, firstDay, laterDay) < later)) {
            return OptionalDouble.empty();
        }
        for (int round = 0; round < ROUNDS && high - low > 1e-12; round++) {
            double middle = (low + high) / 2;
            if (laterAt(middle, first, firstDay, laterDay) > later) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(Math.exp((low + high) / 2));
    }

    private double laterAt(double logPerDay, double first, int firstDay, int laterDay) {
        double perDay = Math.exp(logPerDay);
        return rating(perDay, halfAt(first, firstDay, perDay).orElse(0), laterDay);
    }
}
