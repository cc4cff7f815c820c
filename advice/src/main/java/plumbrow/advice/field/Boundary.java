package plumbrow.advice.field;

import java.util.List;

/** The outline of a field in WGS 84, one or more polygons. */
public record Boundary(List<Polygon> polygons) {
    public Boundary {
        polygons = List.copyOf(polygons);
        if (polygons.isEmpty()) {
            throw new IllegalArgumentException("a boundary has at least one polygon");
        }
    }

    /** A closed outline and the holes in it; first and last point of each ring are the same. */
    public record Polygon(List<Point> shell, List<List<Point>> holes) {
        public Polygon {
            shell = List.copyOf(shell);
            holes = holes.stream().map(List::copyOf).toList();
        }
    }

    /** A place: longitude −180 to 180, latitude −90 to 90 [degrees]. */
    public record Point(double longitude, double latitude) {}
}
