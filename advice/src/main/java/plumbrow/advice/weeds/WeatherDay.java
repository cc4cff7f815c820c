package plumbrow.advice.weeds;

import java.time.LocalDate;

/**
 * One measured day, to reckon a season with days as they were instead of monthly normals.
 *
 * @param place a field's name, or a county as "IA: Alder"
 * @param date of any one year: the day of the year counts
 * @param lowF lowest air temperature [°F]
 * @param highF highest air temperature [°F]
 * @param rainIn rain [in]
 */
public record WeatherDay(String place, LocalDate date, double lowF, double highF, double rainIn, String source) {}
