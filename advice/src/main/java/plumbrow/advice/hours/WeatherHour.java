package plumbrow.advice.hours;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The weather of one hour. Null is unknown, never calm, dry or clear.
 *
 * @param begin the moment at which it begins; what was measured or fell by an hour of the clock is of the hour that ends there
 * @param forecast whether it is forecast and not measured
 * @param temperatureC air temperature [°C]
 * @param humidityPct relative humidity [%], 0 to 100
 * @param windMph mean wind at the height of the file's wind [mph]
 * @param gustMph gusts there [mph]; null too where the file reports none
 * @param windFromDeg where the wind comes from [° from north]
 * @param rainIn rain of the hour [in]
 * @param trace whether rain too little to measure fell
 * @param rainChancePct chance of rain, of a forecast [%]
 * @param cloudPct sky covered [%]
 */
public record WeatherHour(
        Instant begin,
        boolean forecast,
        @Nullable Double temperatureC,
        @Nullable Double humidityPct,
        @Nullable Double windMph,
        @Nullable Double gustMph,
        @Nullable Double windFromDeg,
        @Nullable Double rainIn,
        boolean trace,
        @Nullable Double rainChancePct,
        @Nullable Double cloudPct) {
    /** An hour of which nothing is known. */
    public static WeatherHour unknown(Instant begin) {
        return new WeatherHour(begin, false, null, null, null, null, null, null, false, null, null);
    }

    /** The same with its winds taken times a factor. */
    WeatherHour windTimes(double factor) {
        return factor == 1
                ? this
                : new WeatherHour(
                        begin,
                        forecast,
                        temperatureC,
                        humidityPct,
                        windMph == null ? null : Double.valueOf(windMph * factor),
                        gustMph == null ? null : Double.valueOf(gustMph * factor),
                        windFromDeg,
                        rainIn,
                        trace,
                        rainChancePct,
                        cloudPct);
    }
}
