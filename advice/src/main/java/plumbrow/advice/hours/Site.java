package plumbrow.advice.hours;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.science.reference.Counties;
import plumbrow.science.reference.County;
import plumbrow.science.weather.SunTimes;
import plumbrow.science.weather.WindAtHeight;

/**
 * Where a tank goes out: the place of the sun and the height at which the wind counts.
 *
 * @param latitude [°], {@code longitude} east positive [°]
 * @param sunSource whose place that is, in words
 * @param boomIn boom over the target [in]
 * @param cropIn height of the crop under it [in], 0 for bare ground
 */
public record Site(double latitude, double longitude, String sunSource, ZoneId zone, double boomIn, double cropIn) {
    /** A usual boom over the target, where none is planned [in]. */
    public static final double USUAL_BOOM_IN = 20;

    private static final double METRES_PER_INCH = 0.0254;

    /**
     * The site of a field: the sun of the weather station where its place is on file, else of the middle of the field's county, which
     * is within two minutes. Empty where neither is known.
     */
    public static Optional<Site> of(
            Field field, HourlyWeather weather, @Nullable Double boomIn, @Nullable Double cropIn) {
        double boom = boomIn == null ? USUAL_BOOM_IN : boomIn;
        double crop = cropIn == null ? 0 : cropIn;
        Double latitude = weather.latitude();
        Double longitude = weather.longitude();
        if (latitude != null && longitude != null) {
            return Optional.of(new Site(latitude, longitude, "the weather station", weather.zone(), boom, crop));
        }
        return Counties.named(field.state(), field.county()).map(county -> {
            double[] middle = middle(county);
            return new Site(middle[1], middle[0], "the middle of " + county.words(), weather.zone(), boom, crop);
        });
    }

    private static double[] middle(County county) {
        double[] box = {180, 90, -180, -90};
        for (County.Ring ring : county.rings()) {
            double[] degrees = ring.degrees();
            for (int i = 0; i + 1 < degrees.length; i += 2) {
                box[0] = Math.min(box[0], degrees[i]);
                box[1] = Math.min(box[1], degrees[i + 1]);
                box[2] = Math.max(box[2], degrees[i]);
                box[3] = Math.max(box[3], degrees[i + 1]);
            }
        }
        return new double[] {(box[0] + box[2]) / 2, (box[1] + box[3]) / 2};
    }

    /** The wind at the boom as a share of the wind at a height over the ground [m]. */
    double windFactor(double heightM) {
        double crop = cropIn * METRES_PER_INCH;
        double displacement = crop * 2 / 3;
        double roughness = crop < LOW_CROP_M ? HourlyWeather.GRASS_M : CROP_M;
        double boom = Math.max(crop + boomIn * METRES_PER_INCH, displacement + 2 * roughness);
        return Math.min(1, WindAtHeight.factor(heightM, boom, roughness, displacement));
    }

    private static final double LOW_CROP_M = 0.3;
    private static final double CROP_M = 0.1;

    /** Sunrise and sunset of a day, minutes from midnight UTC of its date; empty where the sun does not rise or set. */
    Sunlight sunlight(LocalDate day) {
        return new Sunlight(
                SunTimes.sunriseUtc(latitude, longitude, day), SunTimes.sunsetUtc(latitude, longitude, day));
    }

    /** Sunrise and sunset [min UTC]. */
    record Sunlight(OptionalDouble rise, OptionalDouble set) {}
}
