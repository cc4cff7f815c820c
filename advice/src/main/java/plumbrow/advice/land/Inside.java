package plumbrow.advice.land;

import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Location;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;

/** How much of what was done at places lies inside a field. */
public final class Inside {
    private Inside() {}

    /** A place and what it counts for. */
    public record Weighed(Point at, double weight) {}

    /** The share of the weight that lies inside the outline or on its edge, 0 to 1; 0 where there is none. */
    public static double share(Boundary field, List<Weighed> places) {
        Plane plane = Plane.under(field);
        IndexedPointInAreaLocator area = new IndexedPointInAreaLocator(plane.field(field));
        double all = 0;
        double inside = 0;
        for (Weighed place : places) {
            all += place.weight();
            if (area.locate(plane.coordinate(place.at())) != Location.EXTERIOR) {
                inside += place.weight();
            }
        }
        return all > 0 ? inside / all : 0;
    }
}
