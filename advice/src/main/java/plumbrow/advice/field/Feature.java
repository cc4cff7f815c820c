package plumbrow.advice.field;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary.Point;

/**
 * Something in or near a field from which distance may have to be kept.
 *
 * @param field the field it was noted for
 * @param kind what it is
 * @param name as people here call it
 * @param shape where it lies, in WGS 84; null where only the distance is known
 * @param nearestFt least distance from the field's edge [ft], 0 for inside or touching; null where only the shape is known
 * @param source map, survey or who said so
 */
public record Feature(
        String field,
        FeatureKind kind,
        String name,
        @Nullable Shape shape,
        @Nullable Double nearestFt,
        String source) {

    /** Where a feature lies. */
    public sealed interface Shape {}

    /** A well or an inlet. */
    public record Spot(Point at) implements Shape {}

    /** A stream or a ditch, point by point. */
    public record Line(List<Point> points) implements Shape {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** A pond, a yard or another field. */
    public record Area(Boundary outline) implements Shape {}
}
