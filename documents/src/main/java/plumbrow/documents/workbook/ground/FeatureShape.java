package plumbrow.documents.workbook.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;

/** Shapes of wells, creeks and yards as GeoJSON geometries, longitude before latitude, WGS 84. */
public final class FeatureShape {
    private static final String WANTED = "a GeoJSON Point, LineString, Polygon or MultiPolygon such as "
            + "{\"type\":\"Point\",\"coordinates\":[-93.6,42.0]}";

    private FeatureShape() {}

    /** The shape that a geometry's text describes. */
    public static Shape read(String geometry) throws NoBoundary {
        return shape(GeoJson.geometry(geometry, WANTED));
    }

    private static Shape shape(Geometry shape) throws NoBoundary {
        return switch (shape.getGeometryType()) {
            case Geometry.TYPENAME_POINT -> new Spot(points(shape).get(0));
            case Geometry.TYPENAME_LINESTRING -> line((LineString) shape);
            case Geometry.TYPENAME_POLYGON, Geometry.TYPENAME_MULTIPOLYGON -> new Area(Outline.boundary(shape));
            default ->
                throw new NoBoundary("a Point, LineString, Polygon or MultiPolygon, not a " + shape.getGeometryType());
        };
    }

    /** The shapes of a geometry's text; what is several places or lines at once is taken apart. */
    public static List<Shape> all(String geometry) throws NoBoundary {
        Geometry read = GeoJson.geometry(geometry, WANTED);
        boolean whole = read.getNumGeometries() < 2 || read.getGeometryType().equals(Geometry.TYPENAME_MULTIPOLYGON);
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < (whole ? 1 : read.getNumGeometries()); i++) {
            shapes.add(shape(whole && read.getNumGeometries() != 1 ? read : read.getGeometryN(i)));
        }
        return shapes;
    }

    private static Line line(LineString shape) throws NoBoundary {
        List<Point> points = points(shape);
        if (points.stream().distinct().count() < 2) {
            throw new NoBoundary("a line between at least two places");
        }
        return new Line(points);
    }

    static List<Point> points(Geometry shape) throws NoBoundary {
        if (shape.isEmpty()) {
            throw new NoBoundary(WANTED);
        }
        Outline.checkDegrees(shape);
        return Stream.of(shape.getCoordinates())
                .map(place -> new Point(place.x, place.y))
                .toList();
    }

    /** The geometry's text, from which {@link #read} makes the same shape to the last digit. */
    public static String write(Shape shape) {
        if (shape instanceof Spot spot) {
            return "{\"type\":\"Point\",\"coordinates\":" + GeoJson.place(spot.at()) + "}";
        } else if (shape instanceof Line line) {
            return line.points().stream()
                    .map(GeoJson::place)
                    .collect(Collectors.joining(",", "{\"type\":\"LineString\",\"coordinates\":[", "]}"));
        }
        return GeoJson.write(((Area) shape).outline());
    }
}
