package plumbrow.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Boundary.Polygon;

/** Outlines as points in a row, and back. */
final class Outlines {
    private Outlines() {}

    /** One point of an outline: ring 0 of a polygon is its shell, the others are holes. */
    record Mark(int polygon, int ring, Point point) {}

    /** The points of an outline; {@code whose} names it where it can't be kept. */
    static List<Mark> marks(String whose, Boundary boundary) {
        List<Mark> marks = new ArrayList<>();
        for (int polygon = 0; polygon < boundary.polygons().size(); polygon++) {
            List<List<Point>> rings = rings(boundary.polygons().get(polygon));
            for (int ring = 0; ring < rings.size(); ring++) {
                if (rings.get(ring).isEmpty()) {
                    throw new BookException("The outline of " + whose + " has a ring without points.");
                }
                for (Point point : rings.get(ring)) {
                    marks.add(new Mark(polygon, ring, point));
                }
            }
        }
        return marks;
    }

    private static List<List<Point>> rings(Polygon polygon) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(polygon.shell());
        rings.addAll(polygon.holes());
        return rings;
    }

    /** The outline of points in their order; at least one. */
    static Boundary boundary(List<Mark> marks) {
        Map<Integer, Map<Integer, List<Point>>> rings = new LinkedHashMap<>();
        for (Mark mark : marks) {
            rings.computeIfAbsent(mark.polygon(), polygon -> new LinkedHashMap<>())
                    .computeIfAbsent(mark.ring(), ring -> new ArrayList<>())
                    .add(mark.point());
        }
        return new Boundary(rings.values().stream()
                .map(polygon -> List.copyOf(polygon.values()))
                .map(polygon -> new Polygon(polygon.get(0), polygon.subList(1, polygon.size())))
                .toList());
    }
}
