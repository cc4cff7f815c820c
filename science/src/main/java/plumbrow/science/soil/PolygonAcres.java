package plumbrow.science.soil;

import static plumbrow.science.figure.Input.table;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import net.sf.geographiclib.PolygonResult;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Acres of a field from its corners, on the ellipsoid of the Earth (WGS 84), with geodesics for edges.
 *
 * Corners in order, either way round, each latitude, longitude [°]; a last corner equal to the first is not needed and
 * does no harm. Edges must not cross; an area is never negative. A sphere is wrong by about 0.15 % at 42°: too much for
 * payments and rates.
 *
 * Source: Karney 2013, J. Geodesy 87:43, by GeographicLib.
 */
public final class PolygonAcres {
    private static final double M2_PER_ACRE = 4046.8564224;
    private static final double POLE = 90;

    public static final Figure FIGURE = Figure.declare("polygon-acres", Subject.SOIL)
            .question("How many acres lie between these corners?")
            .input(table(
                    "points",
                    "Corners as latitude,longitude, semicolons between",
                    "",
                    Range.closed(-180, 180),
                    "42.00,-93.50;42.00,-93.49;42.01,-93.49;42.01,-93.50"))
            .output("acres", "Area", "ac")
            .output("perimeter_m", "Round the edge", "m")
            .formula("area between geodesics on the WGS 84 ellipsoid ÷ 4046.8564224 m²")
            .source("[karney-2013]", VERIFIED)
            .validity("At least three corners, latitude first, west and south negative. Edges must not cross.")
            .caution(
                    "Acres between corners, not acres planted: waterways, borders and the farm agency's figure differ.")
            .example(
                    "points=42.00,-93.50;42.00,-93.49;42.01,-93.49;42.01,-93.50",
                    "acres=227.3813 perimeter_m=3878.35",
                    "first polygon, independent geodesic library",
                    COMPUTED)
            .example("points=30,-90;30,-89.99;30.01,-89.99;30.01,-90", "acres=264.2844", "second polygon", COMPUTED)
            .example("points=40.10,-88.25;40.10,-88.24;40.108,-88.25", "acres=93.5838", "triangle", COMPUTED)
            .example(
                    "points=41.50,-93.60;41.50,-93.59;41.505,-93.59;41.505,-93.595;41.51,-93.595;41.51,-93.60",
                    "acres=171.8506",
                    "L-shape",
                    COMPUTED)
            .example(
                    "points=42.0,-93.5;41.9999984,-93.4805754;42.0144874,-93.4805754;42.0144890,-93.5",
                    "acres=639.9265",
                    "mile square",
                    COMPUTED)
            .model(PolygonAcres::solve);

    private PolygonAcres() {}

    /** Acres between corners, each a latitude and a longitude [°]. */
    public static double acres(double[][] corners) {
        return squareMetres(measured(corners)) / M2_PER_ACRE;
    }

    private static PolygonResult measured(double[][] corners) {
        PolygonArea polygon = new PolygonArea(Geodesic.WGS84, false);
        for (double[] corner : corners) {
            polygon.AddPoint(corner[0], corner[1]);
        }
        return polygon.Compute(false, true);
    }

    private static double squareMetres(PolygonResult polygon) {
        return Math.abs(polygon.area);
    }

    private static Outputs solve(Given given, Working working) {
        double[][] corners = given.table("points");
        if (corners.length < 3) {
            throw given.refuse("points", "at least three corners with semicolons between");
        }
        for (double[] corner : corners) {
            if (corner.length != 2 || Math.abs(corner[0]) > POLE) {
                throw given.refuse(
                        "points", "corners of two numbers, latitude (−90 to 90) then longitude, as 42.03,-93.62");
            }
        }
        PolygonResult polygon = measured(corners);
        double metres = working.line(
                "area on the ellipsoid", squareMetres(polygon), "m²", "geodesics between {} corners", polygon.num);
        return new Outputs()
                .put("acres", working.line("area", metres / M2_PER_ACRE, "ac", "{} ÷ 4046.8564224", metres))
                .put("perimeter_m", polygon.perimeter);
    }
}
