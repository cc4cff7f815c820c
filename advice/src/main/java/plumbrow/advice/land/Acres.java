package plumbrow.advice.land;

import java.util.List;
import plumbrow.advice.field.Boundary;
import plumbrow.science.soil.PolygonAcres;

/** The acres inside a boundary, along the ellipsoid; holes are taken off. */
public final class Acres {
    private Acres() {}

    /** Area [ac]. */
    public static double inside(Boundary boundary) {
        return boundary.polygons().stream().mapToDouble(Acres::inside).sum();
    }

    private static double inside(Boundary.Polygon polygon) {
        return inside(polygon.shell())
                - polygon.holes().stream().mapToDouble(Acres::inside).sum();
    }

    private static double inside(List<Boundary.Point> ring) {
        return PolygonAcres.acres(ring.stream()
                .map(point -> new double[] {point.latitude(), point.longitude()})
                .toArray(double[][]::new));
    }
}
