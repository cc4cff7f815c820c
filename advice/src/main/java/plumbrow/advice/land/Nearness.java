package plumbrow.advice.land;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.science.figure.Numbers;

/**
 * How far a feature lies from a field's edge, by what is typed and by its shape.
 *
 * <p>Where both are known and differ by more than a tenth of the greater and by more than 15 ft, the lesser counts; where
 * they agree, what is typed.
 *
 * @param feet the distance that counts [ft], 0 inside or touching; null where nothing tells it
 * @param measuredFt by the shape [ft], cut to a tenth; null where field or feature has no shape
 * @param says where the distance comes from, as a sentence, where it is not what is typed; else empty
 */
public record Nearness(@Nullable Double feet, @Nullable Double measuredFt, String says) {
    private static final double SLACK_SHARE = 0.10;
    private static final double SLACK_FT = 15;

    public static Nearness of(@Nullable Boundary boundary, Feature feature) {
        Shape shape = feature.shape();
        Double typed = feature.nearestFt();
        if (boundary == null || shape == null) {
            return new Nearness(typed, null, "");
        }
        double measured = measured(boundary, shape);
        if (typed == null) {
            return new Nearness(measured, measured, "The distance is measured on the map.");
        }
        double apart = Math.abs(typed - measured);
        if (apart <= SLACK_FT || apart <= SLACK_SHARE * Math.max(typed, measured)) {
            return new Nearness(typed, measured, "");
        }
        return new Nearness(
                Math.min(typed, measured),
                measured,
                "On the map it lies " + Numbers.read(measured) + " ft from the field, written down are "
                        + Numbers.read(typed) + " ft: the lesser counts until somebody has looked.");
    }

    private static double measured(Boundary boundary, Shape shape) {
        Plane plane = Plane.under(boundary);
        return Math.floor(Plane.feet(plane.field(boundary), plane.shape(shape)) * 10) / 10;
    }

    /** How much nearer it is taken to lie than its shape does [ft]; what a zone drawn around the shape must add. */
    double nearerThanDrawnFt() {
        return feet == null || measuredFt == null ? 0 : Math.max(0, measuredFt - feet);
    }
}
