package plumbrow.advice.land;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.precision.GeometryPrecisionReducer;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;

/** The flat drawing of one field and what lies around it, in metres, areas true. */
final class Plane {
    static final double M_PER_FT = 0.3048;
    static final double M2_PER_ACRE = 4046.8564224;
    /** A quarter of a circle is drawn with so many sides, around the circle: at most 0.005 % too large, never too small. */
    private static final int SIDES = 64;
    /** Degrees are written to a millimetre. */
    private static final int DECIMALS = 8;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final EqualArea earth;

    private Plane(EqualArea earth) {
        this.earth = earth;
    }

    /** The plane that touches the Earth in the middle of a field. */
    static Plane under(Boundary boundary) {
        List<Point> points = boundary.polygons().stream()
                .flatMap(polygon -> polygon.shell().stream())
                .toList();
        double west = points.stream().mapToDouble(Point::longitude).min().orElse(0);
        double east = points.stream().mapToDouble(Point::longitude).max().orElse(0);
        double south = points.stream().mapToDouble(Point::latitude).min().orElse(0);
        double north = points.stream().mapToDouble(Point::latitude).max().orElse(0);
        return new Plane(new EqualArea(new Point((west + east) / 2, (south + north) / 2)));
    }

    Geometry field(Boundary boundary) {
        return union(SHAPES.createMultiPolygon(
                boundary.polygons().stream().map(this::polygon).toArray(Polygon[]::new)));
    }

    /** The same outline with degrees for metres. */
    static Geometry degrees(Boundary boundary) {
        return union(SHAPES.createMultiPolygon(boundary.polygons().stream()
                .map(polygon -> SHAPES.createPolygon(
                        degrees(polygon.shell()),
                        polygon.holes().stream().map(Plane::degrees).toArray(LinearRing[]::new)))
                .toArray(Polygon[]::new)));
    }

    private static LinearRing degrees(List<Point> ring) {
        return SHAPES.createLinearRing(ring.stream()
                .map(point -> new Coordinate(point.longitude(), point.latitude()))
                .toArray(Coordinate[]::new));
    }

    Geometry shape(Shape shape) {
        if (shape instanceof Spot spot) {
            return SHAPES.createPoint(coordinate(spot.at()));
        } else if (shape instanceof Line line) {
            return SHAPES.createLineString(coordinates(line.points()));
        }
        return field(((Area) shape).outline());
    }

    private Polygon polygon(Boundary.Polygon polygon) {
        return SHAPES.createPolygon(
                ring(polygon.shell()), polygon.holes().stream().map(this::ring).toArray(LinearRing[]::new));
    }

    LinearRing ring(List<Point> points) {
        return SHAPES.createLinearRing(coordinates(points));
    }

    Polygon polygon(LinearRing shell, List<LinearRing> holes) {
        return SHAPES.createPolygon(shell, holes.toArray(LinearRing[]::new));
    }

    private Coordinate[] coordinates(List<Point> points) {
        return points.stream().map(this::coordinate).toArray(Coordinate[]::new);
    }

    Coordinate coordinate(Point point) {
        double[] metres = earth.metres(point);
        return new Coordinate(metres[0], metres[1]);
    }

    /** All within a distance of a shape. */
    static Geometry within(Geometry shape, double feet) {
        BufferParameters corners = new BufferParameters(SIDES);
        corners.setSimplifyFactor(0);
        double drawn = feet * M_PER_FT / Math.cos(Math.PI / (4 * SIDES));
        return BufferOp.bufferOp(shape, drawn, corners);
    }

    static Geometry both(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
    }

    static Geometry without(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.DIFFERENCE);
    }

    static Geometry union(Geometry parts) {
        Geometry joined = UnaryUnionOp.union(parts);
        return joined == null ? SHAPES.createPolygon() : joined;
    }

    static Geometry union(List<Geometry> parts) {
        return union(SHAPES.buildGeometry(parts));
    }

    static double acres(Geometry area) {
        return area.getArea() / M2_PER_ACRE;
    }

    static double feet(Geometry one, Geometry other) {
        return one.distance(other) / M_PER_FT;
    }

    /**
     * The areas of a drawing on the Earth: shells against the clock, holes with it. Corners are put on the written digits together,
     * so that no outline crosses or touches itself afterwards; what is thinner than those digits vanishes.
     */
    List<Boundary.Polygon> polygons(Geometry drawing) {
        Geometry exact = onEarth(drawing);
        if (exact.isEmpty()) {
            return List.of();
        }
        Geometry written = written(exact);
        List<Boundary.Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < written.getNumGeometries(); i++) {
            if (written.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                polygons.add(new Boundary.Polygon(
                        points(polygon.getExteriorRing(), true),
                        IntStream.range(0, polygon.getNumInteriorRing())
                                .mapToObj(hole -> points(polygon.getInteriorRingN(hole), false))
                                .toList()));
            }
        }
        return polygons;
    }

    private static Geometry written(Geometry exact) {
        PrecisionModel digits = new PrecisionModel(Math.pow(10, DECIMALS));
        try {
            return GeometryPrecisionReducer.reduce(exact, digits);
        } catch (IllegalArgumentException crossed) {
            return GeometryPrecisionReducer.reduce(GeometryFixer.fix(exact), digits);
        }
    }

    /** The areas of a drawing, its corners in degrees. */
    private Geometry onEarth(Geometry drawing) {
        List<Geometry> polygons = new ArrayList<>();
        for (int i = 0; i < drawing.getNumGeometries(); i++) {
            if (drawing.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                polygons.add(SHAPES.createPolygon(
                        onEarth(polygon.getExteriorRing()),
                        IntStream.range(0, polygon.getNumInteriorRing())
                                .mapToObj(hole -> onEarth(polygon.getInteriorRingN(hole)))
                                .toArray(LinearRing[]::new)));
            }
        }
        return SHAPES.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    private LinearRing onEarth(LinearRing ring) {
        Coordinate[] places = ring.getCoordinates();
        Coordinate[] degrees = new Coordinate[places.length];
        for (int i = 0; i < places.length; i++) {
            Point point = earth.point(places[i].x, places[i].y);
            degrees[i] = new Coordinate(point.longitude(), point.latitude());
        }
        degrees[places.length - 1] = degrees[0].copy();
        return SHAPES.createLinearRing(degrees);
    }

    private static List<Point> points(LinearRing ring, boolean againstTheClock) {
        Coordinate[] places = ring.getCoordinates();
        boolean turn = Orientation.isCCW(places) != againstTheClock;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            Coordinate place = places[turn ? places.length - 1 - i : i];
            points.add(new Point(rounded(place.x), rounded(place.y)));
        }
        return points;
    }

    private static double rounded(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}
