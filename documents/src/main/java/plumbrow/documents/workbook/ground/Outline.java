package plumbrow.documents.workbook.ground;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import plumbrow.advice.field.Boundary;

/** Makes a boundary of a shape, or says why the shape cannot be one. */
final class Outline {
    private Outline() {}

    static Boundary boundary(Geometry shape) throws NoBoundary {
        if (shape.isEmpty() || !Stream.of("Polygon", "MultiPolygon").toList().contains(shape.getGeometryType())) {
            throw new NoBoundary("a Polygon or MultiPolygon, not a " + shape.getGeometryType());
        }
        checkDegrees(shape);
        TopologyValidationError error = new IsValidOp(shape).getValidationError();
        if (error != null) {
            throw new NoBoundary("an outline that does not cross or touch itself; it does ("
                    + error.getMessage().toLowerCase(java.util.Locale.ROOT) + ") near " + text(error.getCoordinate()));
        }
        return new Boundary(IntStream.range(0, shape.getNumGeometries())
                .mapToObj(i -> polygon((Polygon) shape.getGeometryN(i)))
                .toList());
    }

    static void checkDegrees(Geometry shape) throws NoBoundary {
        for (Coordinate place : shape.getCoordinates()) {
            if (!(Math.abs(place.x) <= 180 && Math.abs(place.y) <= 90)) {
                throw new NoBoundary("longitude and latitude in degrees, in that order, not " + text(place));
            }
        }
    }

    private static Boundary.Polygon polygon(Polygon polygon) {
        return new Boundary.Polygon(
                ring(polygon.getExteriorRing()),
                IntStream.range(0, polygon.getNumInteriorRing())
                        .mapToObj(i -> ring(polygon.getInteriorRingN(i)))
                        .toList());
    }

    private static List<Boundary.Point> ring(LinearRing ring) {
        return Stream.of(ring.getCoordinates())
                .map(place -> new Boundary.Point(place.x, place.y))
                .toList();
    }

    private static String text(Coordinate place) {
        return place.x + ", " + place.y;
    }
}
