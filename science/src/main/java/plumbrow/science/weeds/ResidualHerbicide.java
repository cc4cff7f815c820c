package plumbrow.science.weeds;

/**
 * What is left of a soil-applied herbicide, and what it still controls.
 *
 *   C(t) = R·(1 − v)·2^{−t/DT50};  control = 100/(1 + (ED50/C)^b)
 *   days above p: t_p = DT50·log2(R(1 − v)/(ED50·(p/(100 − p))^{1/b})), at least 0
 *
 *   R     rate [g/ha, or any unit shared with ED50];  v  share lost before rain or incorporation [-]
 *   DT50  time to half [d];  ED50  dose that controls half of the emergers at the reference depth and soil;  b  slope [-]
 *
 * Log-odds of control fall along a line, by b·ln2/DT50 a day: a record of control shows DT50/b, not DT50. Half the rate
 * controls exactly one DT50 shorter.
 *
 * Source: first-order loss and log-logistic response, Seefeldt, Jensen & Fuerst 1995, Weed Technol. 9:218 (from memory).
 */
public final class ResidualHerbicide {
    private ResidualHerbicide() {}

    /** C(t), in the unit of the rate. */
    public static double left(double rate, double lostShare, double dt50Days, double days) {
        return rate * (1 - lostShare) * Math.pow(2, -days / dt50Days);
    }

    /** Control [%] by a dose of 0 or more. */
    public static double controlPct(double dose, double ed50, double slope) {
        return dose == 0 ? 0 : 100 / (1 + Math.pow(ed50 / dose, slope));
    }

    /** Days for which control stays at or above p [%], p strictly between 0 and 100. */
    public static double daysAbove(
            double percent, double rate, double lostShare, double dt50Days, double ed50, double slope) {
        double needed = Math.log(ed50) + Math.log(percent / (100 - percent)) / slope;
        return Math.max(0, dt50Days * (Math.log(rate * (1 - lostShare)) - needed) / Math.log(2));
    }

    /** Fall of the log-odds of control per day, from control [%] seen at two times. */
    public static double logOddsPerDay(double firstPct, double laterPct, double daysBetween) {
        return (logOdds(firstPct) - logOdds(laterPct)) / daysBetween;
    }

    /** ln(p/(100 − p)), p in percent. */
    public static double logOdds(double percent) {
        return Math.log(percent / (100 - percent));
    }
}
