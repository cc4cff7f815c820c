package plumbrow.science.soil;

import static plumbrow.science.figure.Status.COMPUTED;

import java.util.List;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Acres, setbacks and the layer a tool mixes: values from outside. */
public final class SoilChecks {
    private static final double[][] SQUARE = {{42.00, -93.50}, {42.00, -93.49}, {42.01, -93.49}, {42.01, -93.50}};
    private static final double[][] HOLE = {{42.003, -93.497}, {42.003, -93.493}, {42.007, -93.493}, {42.007, -93.497}};

    private SoilChecks() {}

    public static List<Check> all() {
        return CheckList.of(Subject.SOIL)
                .from("independent geodesic library", COMPUTED)
                .value(
                        "acres of polygon A less its hole",
                        "191.0003",
                        () -> PolygonAcres.acres(SQUARE) - PolygonAcres.acres(HOLE))
                .from("on a sphere", COMPUTED)
                .differs(
                        "acres of polygon A",
                        "227.035",
                        () -> PolygonAcres.acres(SQUARE),
                        "a sphere is .15 % off; the ellipsoid decides what is paid for")
                .from("independent arithmetic", COMPUTED)
                .value(
                        "million pounds in a furrow slice of 6.67 in at 1.33 g/cm³",
                        "2.01",
                        () -> 1 / Incorporation.ppm(1, 6.67, 1.33))
                .from("1 kg/ha in 5 cm at 1.5 g/cm³", COMPUTED)
                .value("mg/kg", "1.3333", () -> Incorporation.ppm(1 / 1.12085116, 5 / 2.54, 1.5))
                .all();
    }
}
