package plumbrow.documents.workbook.ground;

import java.util.List;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import plumbrow.advice.field.Boundary;

/**
 * The acres inside a boundary, along geodesics of the WGS 84 ellipsoid; holes are taken off.
 *
 * <p>Source: Karney 2013, Algorithms for geodesics, J. Geodesy 87:43-55. 1 ac = 4 046.856 422 4 m².
 */
public final class Acres {
    static final double SQUARE_METRES_PER_ACRE = 4_046.856_422_4;

    private Acres() {}

    /** Area [ac]. */
    public static double inside(Boundary boundary) {
        return boundary.polygons().stream().mapToDouble(Acres::squareMetres).sum() / SQUARE_METRES_PER_ACRE;
    }

    private static double squareMetres(Boundary.Polygon polygon) {
        return squareMetres(polygon.shell())
                - polygon.holes().stream().mapToDouble(Acres::squareMetres).sum();
    }

    static double squareMetres(List<Boundary.Point> ring) {
        PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
        ring.subList(0, ring.size() - 1).forEach(point -> area.AddPoint(point.latitude(), point.longitude()));
        return Math.abs(area.Compute().area);
    }
}
