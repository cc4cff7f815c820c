package plumbrow.advice.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import plumbrow.advice.weeds.WeatherDay;

/**
 * Days out of measured hours: highest and lowest temperature and the sum of the rain, of days of standard time of which all 24 hours
 * are known. A trace of rain adds nothing. A day that lacks one hour of either is left out, since what is missing may have been rain.
 */
public final class MeasuredDays {
    private static final int HOURS_PER_DAY = 24;
    private static final Instant WINTER = Instant.parse("2026-01-15T12:00:00Z");

    private MeasuredDays() {}

    /** The whole days of a file, in order. */
    public static List<WeatherDay> of(HourlyWeather weather) {
        ZoneOffset clock = weather.zone().getRules().getStandardOffset(WINTER);
        Map<LocalDate, List<WeatherHour>> days = new TreeMap<>();
        for (WeatherHour hour : weather.hours()) {
            if (!hour.forecast() && hour.temperatureC() != null && hour.rainIn() != null) {
                days.computeIfAbsent(hour.begin().atOffset(clock).toLocalDate(), first -> new ArrayList<>())
                        .add(hour);
            }
        }
        List<WeatherDay> whole = new ArrayList<>();
        days.forEach((day, hours) -> {
            if (hours.size() == HOURS_PER_DAY) {
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                double rain = 0;
                for (WeatherHour hour : hours) {
                    double celsius = Objects.requireNonNull(hour.temperatureC());
                    low = Math.min(low, celsius);
                    high = Math.max(high, celsius);
                    rain += Objects.requireNonNull(hour.rainIn());
                }
                whole.add(new WeatherDay(
                        weather.place(),
                        day,
                        fahrenheit(low),
                        fahrenheit(high),
                        Math.rint(rain * 1000) / 1000,
                        weather.source()));
            }
        });
        return whole;
    }

    private static double fahrenheit(double celsius) {
        return Math.rint((celsius * 9 / 5 + 32) * 10) / 10;
    }
}
