package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;

/**
 * A piece of ground as a drawing, north up: degrees to the drawing's units and back are straight lines, so that a place
 * touched on it has exact degrees. It is a picture; acres and distances are measured elsewhere.
 *
 * @param west left edge [degrees]
 * @param north upper edge [degrees]
 * @param acrossDegree units of the drawing to a degree of longitude
 * @param downDegree units of the drawing to a degree of latitude
 */
public record Chart(double west, double north, double acrossDegree, double downDegree, double width, double height) {
    private static final double LONGER_SIDE = 720;
    private static final double AIR = 0.18;
    private static final double LEAST_DEGREES = 0.001;
    /** Of the height, so that a long field does not fill the page from top to bottom. */
    private static final double LEAST_WIDTH = 0.9;
    /** Metres to a degree of latitude at 45°, WGS 84; right to 0.5 % over the lower states. */
    private static final double M_PER_DEGREE = 111_132;

    private static final double M_PER_FT = 0.3048;
    /** Shapes so far off the field, measured in its own length, are not drawn. */
    private static final double FARTHEST = 1.0;

    /** A chart that shows all these places, with some air around them. */
    public static Chart of(List<Point> shown) {
        double west = shown.stream().mapToDouble(Point::longitude).min().orElseThrow();
        double east = shown.stream().mapToDouble(Point::longitude).max().orElseThrow();
        double south = shown.stream().mapToDouble(Point::latitude).min().orElseThrow();
        double north = shown.stream().mapToDouble(Point::latitude).max().orElseThrow();
        double narrowing = Math.cos(Math.toRadians((south + north) / 2));
        double tall = Math.max(north - south, LEAST_DEGREES);
        double wide = Math.max(Math.max((east - west) * narrowing, LEAST_DEGREES), LEAST_WIDTH * tall);
        double air = AIR * Math.max(tall, wide);
        double scale = LONGER_SIDE / (Math.max(tall, wide) + 2 * air);
        return new Chart(
                (west + east) / 2 - (wide / 2 + air) / narrowing,
                (north + south) / 2 + tall / 2 + air,
                scale * narrowing,
                scale,
                (wide + 2 * air) * scale,
                (tall + 2 * air) * scale);
    }

    /**
     * A chart of a field with what lies around it; empty where neither outline nor shapes are on file. What lies farther off than the
     * field is long is not on it.
     */
    public static Optional<Chart> around(@Nullable Boundary outline, List<Shape> shapes) {
        if (outline == null) {
            return shapes.isEmpty()
                    ? Optional.empty()
                    : Optional.of(of(shapes.stream().flatMap(Chart::points).toList()));
        }
        List<Point> ground = points(outline).toList();
        Chart alone = of(ground);
        List<Point> shown = new ArrayList<>(ground);
        shapes.stream()
                .flatMap(Chart::points)
                .filter(point -> Math.abs(alone.x(point) - alone.width() / 2) < (FARTHEST + 0.5) * alone.width()
                        && Math.abs(alone.y(point) - alone.height() / 2) < (FARTHEST + 0.5) * alone.height())
                .forEach(shown::add);
        return Optional.of(of(shown));
    }

    /** The same drawing, so wide and no higher than that. */
    public Chart within(double mostWidth, double mostHeight) {
        double times = Math.min(mostWidth / width, mostHeight / height);
        return new Chart(west, north, acrossDegree * times, downDegree * times, width * times, height * times);
    }

    /** Whether a shape is on the drawing. */
    public boolean shows(Shape shape) {
        return points(shape).anyMatch(this::shows);
    }

    /** Where the name of a shape goes. */
    public Point labelled(Shape shape) {
        List<Point> points = points(shape).toList();
        List<Point> shown = points.stream().filter(this::shows).toList();
        return shown.isEmpty() ? points.get(0) : shown.get(shown.size() / 2);
    }

    public static Stream<Point> points(Shape shape) {
        if (shape instanceof Spot spot) {
            return Stream.of(spot.at());
        }
        return shape instanceof Line line ? line.points().stream() : points(((Area) shape).outline());
    }

    public static Stream<Point> points(Boundary outline) {
        return outline.polygons().stream().flatMap(polygon -> polygon.shell().stream());
    }

    public double x(Point point) {
        return (point.longitude() - west) * acrossDegree;
    }

    public double y(Point point) {
        return (north - point.latitude()) * downDegree;
    }

    /** Whether a place lies on the drawing. */
    public boolean shows(Point point) {
        return x(point) >= 0 && x(point) <= width && y(point) >= 0 && y(point) <= height;
    }

    /** An outline with its holes in the words of an SVG path. */
    public String path(Boundary outline) {
        return outline.polygons().stream()
                .flatMap(polygon -> Stream.concat(Stream.of(polygon.shell()), polygon.holes().stream()))
                .map(ring -> line(ring) + " Z")
                .collect(Collectors.joining(" "));
    }

    /** A line in the words of an SVG path. */
    public String line(List<Point> points) {
        return points.stream()
                .map(point -> text(x(point)) + " " + text(y(point)))
                .collect(Collectors.joining(" L", "M", ""));
    }

    public String viewBox() {
        return "0 0 " + text(width) + " " + text(height);
    }

    public static String text(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** A round length that takes up to a third of the width [ft]. */
    public int barFt() {
        double most = width / 3 / unitsPerFoot();
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        return (int) (power * (most >= 5 * power ? 5 : most >= 2 * power ? 2 : 1));
    }

    public double unitsPerFoot() {
        return downDegree / M_PER_DEGREE * M_PER_FT;
    }
}
