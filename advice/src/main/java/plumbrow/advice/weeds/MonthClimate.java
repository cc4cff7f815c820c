package plumbrow.advice.weeds;

import org.jspecify.annotations.Nullable;

/**
 * The usual weather of one month.
 *
 * @param place a field's name, or a county as "IA: Alder" for all fields in it
 * @param month 1 to 12
 * @param meanF mean air temperature [°F]
 * @param lowF mean of the daily lows [°F], where known
 * @param highF mean of the daily highs [°F], where known
 * @param rainIn rain of the month [in]
 * @param rainDays days with rain in the month, above 0
 * @param source table or station
 */
public record MonthClimate(
        String place,
        int month,
        double meanF,
        @Nullable Double lowF,
        @Nullable Double highF,
        double rainIn,
        double rainDays,
        String source) {}
