package plumbrow.documents.map;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.field.Boundary.Point;

/** Sorts the rings of a shapefile's polygon: those with the clock are shells, those against it holes in one of them. */
final class Nesting {
    private Nesting() {}

    /** Polygons, each its shell and then its holes. */
    static List<List<List<Point>>> of(List<List<Point>> rings, int number) {
        List<List<List<Point>>> polygons = new ArrayList<>();
        List<List<Point>> holes = new ArrayList<>();
        for (List<Point> ring : rings) {
            if (!ring.get(0).equals(ring.get(ring.size() - 1))) {
                throw new MapTrouble("shape " + number + " has a ring that does not end where it begins");
            }
            if (doubledArea(ring) <= 0) {
                polygons.add(new ArrayList<>(List.of(ring)));
            } else {
                holes.add(ring);
            }
        }
        for (List<Point> hole : holes) {
            polygons.stream()
                    .filter(polygon -> inside(hole.get(0), polygon.get(0)))
                    .findFirst()
                    .orElseThrow(() -> new MapTrouble("shape " + number + " has a hole outside every outline"))
                    .add(hole);
        }
        return polygons;
    }

    /** Twice the area in square degrees, negative with the clock. */
    static double doubledArea(List<Point> ring) {
        double sum = 0;
        for (int i = 1; i < ring.size(); i++) {
            Point from = ring.get(i - 1);
            Point to = ring.get(i);
            sum += (from.longitude() - ring.get(0).longitude())
                            * (to.latitude() - ring.get(0).latitude())
                    - (to.longitude() - ring.get(0).longitude())
                            * (from.latitude() - ring.get(0).latitude());
        }
        return sum;
    }

    private static boolean inside(Point point, List<Point> ring) {
        boolean inside = false;
        for (int i = 1; i < ring.size(); i++) {
            Point a = ring.get(i - 1);
            Point b = ring.get(i);
            if (a.latitude() > point.latitude() != b.latitude() > point.latitude()
                    && point.longitude()
                            < a.longitude()
                                    + (point.latitude() - a.latitude())
                                            / (b.latitude() - a.latitude())
                                            * (b.longitude() - a.longitude())) {
                inside = !inside;
            }
        }
        return inside;
    }
}
