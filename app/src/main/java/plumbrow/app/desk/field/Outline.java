package plumbrow.app.desk.field;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;

/**
 * A field's outline as a drawing, north up. Degrees of longitude are narrowed by the cosine of the latitude, so that
 * the shape is true; it is a picture, areas are not taken from it.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param path the outline with its holes, in the words of an SVG path
 */
public record Outline(double width, double height, String path) {
    private static final double LONGER_SIDE = 240;

    public static Outline of(Boundary boundary) {
        List<List<Point>> rings = boundary.polygons().stream()
                .flatMap(polygon -> Stream.concat(Stream.of(polygon.shell()), polygon.holes().stream()))
                .toList();
        List<Point> all = rings.stream().flatMap(List::stream).toList();
        double west = all.stream().mapToDouble(Point::longitude).min().orElseThrow();
        double east = all.stream().mapToDouble(Point::longitude).max().orElseThrow();
        double south = all.stream().mapToDouble(Point::latitude).min().orElseThrow();
        double north = all.stream().mapToDouble(Point::latitude).max().orElseThrow();
        double narrowing = Math.cos(Math.toRadians((south + north) / 2));
        double scale = LONGER_SIDE / Math.max(Math.max((east - west) * narrowing, north - south), 1e-9);
        String path = rings.stream()
                .map(ring -> ring.stream()
                        .map(point ->
                                at((point.longitude() - west) * narrowing * scale, (north - point.latitude()) * scale))
                        .collect(Collectors.joining(" L", "M", " Z")))
                .collect(Collectors.joining(" "));
        return new Outline((east - west) * narrowing * scale, (north - south) * scale, path);
    }

    /** The part of the plane that is shown, with a little air around the outline. */
    public String viewBox() {
        return String.format(Locale.ROOT, "-8 -8 %.1f %.1f", width + 16, height + 16);
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "%.1f %.1f", x, y);
    }
}
