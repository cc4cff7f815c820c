package plumbrow.documents.workbook.ground;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import plumbrow.advice.field.Boundary;

/** Boundaries as GeoJSON geometries (RFC 7946): longitude before latitude, WGS 84. */
public final class GeoJson {
    private static final String WANTED = "a GeoJSON Polygon or MultiPolygon such as " + "{\"type\":\"Polygon\","
            + "\"coordinates\":[[[-93.6,42.0],[-93.59,42.0],[-93.59,42.01],[-93.6,42.0]]]}";

    private GeoJson() {}

    /** The boundary that a geometry's text describes. */
    public static Boundary read(String geometry) throws NoBoundary {
        return Outline.boundary(geometry(geometry, WANTED));
    }

    /** Whatever geometry the text describes; {@code wanted} says what is expected where it describes none. */
    static Geometry geometry(String text, String wanted) throws NoBoundary {
        try {
            Geometry shape = new GeoJsonReader().read(text);
            if (shape != null) {
                return shape;
            }
        } catch (ParseException | RuntimeException unreadable) {
            // The reader throws whatever its casts and lookups throw when a member is missing or of another type.
            boolean open = String.valueOf(unreadable.getMessage()).contains("closed");
            throw new NoBoundary(open ? "rings that end where they begin" : wanted);
        }
        throw new NoBoundary(wanted);
    }

    /** The geometry's text, from which {@link #read} makes the same boundary to the last digit. */
    public static String write(Boundary boundary) {
        List<String> polygons =
                boundary.polygons().stream().map(GeoJson::polygon).toList();
        return polygons.size() == 1
                ? "{\"type\":\"Polygon\",\"coordinates\":" + polygons.get(0) + "}"
                : "{\"type\":\"MultiPolygon\",\"coordinates\":[" + String.join(",", polygons) + "]}";
    }

    private static String polygon(Boundary.Polygon polygon) {
        String holes = polygon.holes().stream().map(ring -> "," + ring(ring)).collect(Collectors.joining());
        return "[" + ring(polygon.shell()) + holes + "]";
    }

    private static String ring(List<Boundary.Point> ring) {
        return ring.stream().map(GeoJson::place).collect(Collectors.joining(",", "[", "]"));
    }

    static String place(Boundary.Point point) {
        return "[" + number(point.longitude()) + "," + number(point.latitude()) + "]";
    }

    private static String number(double degrees) {
        return new BigDecimal(Double.toString(degrees)).toPlainString();
    }
}
