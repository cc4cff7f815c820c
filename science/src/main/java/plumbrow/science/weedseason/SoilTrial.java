package plumbrow.science.weedseason;

import java.util.Arrays;
import java.util.OptionalDouble;
import plumbrow.science.weeds.RatingTrial;

/**
 * The trial in which a residual herbicide was rated on a weed: the season model without a field around it. A rating is of all
 * that came up from application to the day it was seen; the response fitted here gives that rating back when the same model is run
 * over the same days, at work from the first of them.
 *
 *   rating = Σ_i e_i·c_i / Σ_i e_i;   odds of c_i = (rate/ED50)^b·2^{−b·w_i/DT50}
 *
 *   e_i  what comes up on day i of the trial;  w_i  warm days since application, the clock of {@link Residual} too
 *
 * <p>Nothing is taken off for vapour or for waiting for rain: a trial that is published had its rain.
 *
 * Source: {@link RatingTrial}.
 */
public final class SoilTrial {
    /**
     * Central Illinois: monthly means of 1995 to 2023 at Champaign, from its daily record (means of wet and dry days by their
     * shares), as that is where most published ratings of the reference come from.
     */
    private static final double[] CHAMPAIGN_C = {-2.8, -0.8, 4.7, 11.6, 17.7, 21.9, 23.6, 22.8, 19.1, 13.0, 5.6, -0.4};

    private static final Days CHAMPAIGN = Days.ofMonths(CHAMPAIGN_C, 1, 273, Surface.MOIST);
    private static final int USUALLY_LAID = 125;

    /** Days that a trial is followed; a rating of a later day is taken as of the last. */
    private static final int FOLLOWED = 120;

    private static final double FADED = 30;

    private final RatingTrial trial;
    private final int seen;
    private final double spent;

    private SoilTrial(Days days, Emergence emergence, int seenDays) {
        seen = within(seenDays);
        double[] up = emergence.byDay(days);
        double[] warm = Weathering.warmDays(days);
        int from = USUALLY_LAID - days.first();
        double[] came = new double[FOLLOWED];
        double[] warmDays = new double[FOLLOWED];
        double all = 0;
        for (int j = 0; j < FOLLOWED; j++) {
            int i = Math.min(days.count() - 1, from + 1 + j);
            came[j] = up[i] - up[i - 1];
            warmDays[j] = warm[i] - warm[from];
            all += j < seen ? came[j] : 0;
        }
        if (all <= 0) {
            Arrays.fill(
                    came, 1); // Of a weed that does not come up in those days nothing says on which of them it would.
        }
        trial = RatingTrial.of(came, warmDays);
        spent = warmDays[seen - 1];
    }

    /**
     * The usual trial: laid on 5 May in central Illinois, corn planting (common practice), the weed coming up by its own curve there.
     *
     * @param seen whole days after application, 1 to 120
     */
    public static SoilTrial usual(Emergence emergence, int seen) {
        return new SoilTrial(CHAMPAIGN, emergence, seen);
    }

    /** One's own trial, laid on that day in the field's own days. */
    public static SoilTrial on(Days days, Emergence emergence, int seen) {
        return new SoilTrial(days, emergence, seen);
    }

    private static int within(int seen) {
        return Math.max(1, Math.min(FOLLOWED, seen));
    }

    /**
     * The log-odds of control at application by which a rating comes out.
     *
     * @param rating share of all that came up; held to what some dose gives
     * @param fade fall of the log-odds in a warm day, b·ln 2/DT50
     */
    private double start(double rating, double fade) {
        OptionalDouble halfAt = trial.halfAt(rating, seen, fade);
        return halfAt.isPresent() ? fade * halfAt.getAsDouble() : rating < .5 ? -FADED : fade * spent + FADED;
    }

    /** The rating by log-odds at application. */
    double rating(double start, double fade) {
        return trial.rating(fade, start / fade, seen);
    }

    /** The rating that a response gets in this trial at a rate [share]; its doubt left out. */
    public double rating(SoilResponse response, double rate, Chemistry chemistry) {
        double fade = response.slope() * Math.log(2) / chemistry.halfLifeDays();
        double start = response.slope() * Math.log(rate / response.ed50());
        return rating(start, fade);
    }

    /** The response that gives a rating at a rate in this trial, doubt multiplying its odds. */
    public SoilResponse response(double rating, double rate, double slope, Chemistry chemistry, Uncertain oddsTimes) {
        double start = start(rating, slope * Math.log(2) / chemistry.halfLifeDays());
        return new SoilResponse(rate * Math.exp(-start / slope), slope, oddsTimes);
    }

    /**
     * The slope of control over dose by which a later rating comes out as well; empty where no fading control gives both: see
     * {@link RatingTrial#perDay}.
     *
     * @param later rating of the later day [share]
     */
    public OptionalDouble slope(double rating, double later, int laterDay, Chemistry chemistry) {
        OptionalDouble fade = trial.perDay(rating, seen, later, within(laterDay));
        return fade.isEmpty() ? fade : OptionalDouble.of(fade.getAsDouble() * chemistry.halfLifeDays() / Math.log(2));
    }

    /** The least that a later rating can be, as what was controlled does not come back [share]. */
    public double leastLater(double rating, int laterDay) {
        return trial.bounds(rating, seen, within(laterDay))[0];
    }

    /** By how much other ratings move the odds of control from those of a likely one, worked out once for many. */
    public RatingOdds odds(double likely, double slope, Chemistry chemistry) {
        return new RatingOdds(this, likely, slope * Math.log(2) / chemistry.halfLifeDays(), spent);
    }
}
