package plumbrow.advice.hours;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import plumbrow.science.weather.WindAtHeight;

/**
 * Weather of a place hour by hour, in order; hours that are not in it are unknown.
 *
 * @param place a field's name, or a county as "IA: Story" for all fields in it
 * @param zone by whose clock people there live
 * @param latitude of the station [°]; null where the file does not say
 * @param longitude of it [°], east positive
 * @param windHeightM height of its wind over the ground [m], more than 0
 * @param source file, station, who gave it
 */
public record HourlyWeather(
        String place,
        ZoneId zone,
        @Nullable Double latitude,
        @Nullable Double longitude,
        double windHeightM,
        String source,
        List<WeatherHour> hours) {
    /** Height at which weather stations measure wind and forecasts give it [m]. */
    public static final double STATION_WIND_M = 10;

    /** Roughness of the short grass around stations [m]. */
    static final double GRASS_M = 0.03;

    public HourlyWeather {
        hours = List.copyOf(hours);
        for (int i = 0; i < hours.size(); i++) {
            Instant begin = hours.get(i).begin();
            if (!begin.truncatedTo(ChronoUnit.HOURS).equals(begin)
                    || (i > 0 && !hours.get(i - 1).begin().isBefore(begin))) {
                throw new IllegalArgumentException("hours stand in order and begin on the hour, not at " + begin);
            }
        }
    }

    /**
     * Several files of one place as one: an hour is taken from the measured before the forecast, and of two alike from the later in
     * the list. Place, wind height and station are those of the last; winds of other heights are brought to it.
     */
    public static HourlyWeather merged(List<HourlyWeather> files) {
        TreeMap<Instant, WeatherHour> all = new TreeMap<>();
        HourlyWeather last = files.get(files.size() - 1);
        for (HourlyWeather file : files) {
            double factor = WindAtHeight.factor(file.windHeightM(), last.windHeightM(), GRASS_M, 0);
            for (WeatherHour hour : file.hours()) {
                all.merge(
                        hour.begin(),
                        hour.windTimes(factor),
                        (old, now) -> now.forecast() && !old.forecast() ? old : now);
            }
        }
        return new HourlyWeather(
                last.place(),
                last.zone(),
                last.latitude(),
                last.longitude(),
                last.windHeightM(),
                String.join(
                        "; ",
                        files.stream().map(HourlyWeather::source).distinct().toList()),
                List.copyOf(all.values()));
    }

    public boolean empty() {
        return hours.isEmpty();
    }
}
