package plumbrow.advice.weeds;

import java.time.LocalDate;

/**
 * One measured day of a past year, or of the season's own.
 *
 * @param place a field's name, or a county as "IA: Alder"
 * @param lowF lowest air temperature [°F]
 * @param highF highest air temperature [°F]
 * @param rainIn rain [in]
 */
public record WeatherDay(String place, LocalDate date, double lowF, double highF, double rainIn, String source) {}
