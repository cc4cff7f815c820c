package plumbrow.bench;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbrow.advice.hours.HourRule;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.Practice;
import plumbrow.advice.hours.Site;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.SprayHours;
import plumbrow.documents.weather.WeatherAsked;
import plumbrow.documents.weather.WeatherFile;
import plumbrow.documents.weather.WeatherRead;

/**
 * Counts the hours of a measured year month by month, to be held against counts made elsewhere: wind as measured within 3 to 10 mph,
 * the same in the hours that end at 7 to 19, delta T of 2 to 8 °C above freezing; then the hours that pass every rule of good
 * practice, and those that are unknown.
 */
public final class HoursRun {
    private static final ZoneOffset CENTRAL = ZoneOffset.ofHours(-6);

    private HoursRun() {}

    /** Arguments: the file, with the headings of a typical meteorological year as the project's shared data have them. */
    public static void main(String[] arguments) {
        WeatherRead read = WeatherFile.read(
                Path.of(arguments[0]),
                new WeatherAsked(
                        "IL: Cook",
                        ZoneId.of("America/Chicago"),
                        CENTRAL,
                        41.98,
                        -87.92,
                        10,
                        Map.of(
                                "hour_ending", "hour_ending_lst",
                                "temperature_c", "dry_bulb_c",
                                "humidity_pct", "relative_humidity_pct",
                                "wind_m_s", "wind_speed_m_s",
                                "wind_from_deg", "wind_direction_deg",
                                "rain_mm", "liquid_precipitation_mm",
                                "cloud_tenths", "total_sky_tenths"),
                        "measured year"));
        HourlyWeather weather = read.weather();
        read.notes().forEach(System.out::println);
        List<HourRule> rules = Practice.DEFAULT.rules(true);
        Site site = new Site(41.98, -87.92, "station", ZoneId.of("America/Chicago"), 20, 0);
        SprayHours held = new SprayHours(weather, site, rules);
        System.out.println("month hours wind wind7-19 deltaT mean_c fit unknown");
        for (int month = 1; month <= 12; month++) {
            int hours = 0;
            int wind = 0;
            int day = 0;
            int delta = 0;
            int fit = 0;
            int unknown = 0;
            double sum = 0;
            for (var hour : weather.hours()) {
                var local = hour.begin().atOffset(CENTRAL);
                if (local.getMonthValue() != month) {
                    continue;
                }
                hours++;
                sum += hour.temperatureC() == null ? 0 : hour.temperatureC();
                boolean calm = hour.windMph() != null && hour.windMph() >= 3 && hour.windMph() <= 10;
                wind += calm ? 1 : 0;
                int ends = local.getHour() + 1;
                day += calm && ends >= 7 && ends <= 19 ? 1 : 0;
                SprayHour one = held.between(hour.begin(), hour.begin().plusSeconds(3600))
                        .get(0);
                Double dry = one.deltaTC();
                Double air = hour.temperatureC();
                delta += dry != null && air != null && air > 0 && dry >= 2 && dry <= 8 ? 1 : 0;
                fit += one.fit() ? 1 : 0;
                unknown += one.standing() == SprayHour.Standing.UNKNOWN ? 1 : 0;
            }
            System.out.printf(
                    Locale.ROOT,
                    "%d %d %d %d %d %.2f %d %d%n",
                    month,
                    hours,
                    wind,
                    day,
                    delta,
                    sum / hours,
                    fit,
                    unknown);
        }
    }
}
