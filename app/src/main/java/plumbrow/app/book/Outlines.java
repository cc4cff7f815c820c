package plumbrow.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Boundary.Polygon;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.documents.workbook.form.Storage;

/** Outlines and places as points in rows, and back. */
final class Outlines {
    private Outlines() {}

    /** What points make. */
    enum Form {
        SPOT,
        LINE,
        AREA;

        static final Storage.Plain<Form> STORAGE = Storage.word(Form.class);
    }

    /** Points and what they make. */
    record Drawn(Form form, List<Mark> marks) {}

    /** One point of an outline: ring 0 of a polygon is its shell, the others are holes. */
    record Mark(int polygon, int ring, Point point) {
        static Mark of(@Nullable Object[] row) {
            return new Mark(
                    (Integer) Objects.requireNonNull(row[1]),
                    (Integer) Objects.requireNonNull(row[2]),
                    new Point((Double) Objects.requireNonNull(row[3]), (Double) Objects.requireNonNull(row[4])));
        }

        @Nullable
        Object[] row(Object owner) {
            return new @Nullable Object[] {owner, polygon, ring, point.longitude(), point.latitude()};
        }
    }

    /** A table of points, whose first column names the row they belong to. */
    static StoredTable table(String name, String owner, Storage.Type ownerType) {
        return StoredTable.of(
                name,
                new StoredTable.Column(owner, ownerType),
                new StoredTable.Column("polygon", Storage.Type.INTEGER),
                new StoredTable.Column("ring", Storage.Type.INTEGER),
                new StoredTable.Column("longitude", Storage.Type.REAL),
                new StoredTable.Column("latitude", Storage.Type.REAL));
    }

    static Drawn drawn(Boundary boundary) {
        List<Mark> marks = new ArrayList<>();
        for (int polygon = 0; polygon < boundary.polygons().size(); polygon++) {
            List<List<Point>> rings = rings(boundary.polygons().get(polygon));
            for (int ring = 0; ring < rings.size(); ring++) {
                if (rings.get(ring).isEmpty()) {
                    throw new BookException("An outline has a ring without points.");
                }
                for (Point point : rings.get(ring)) {
                    marks.add(new Mark(polygon, ring, point));
                }
            }
        }
        return new Drawn(Form.AREA, marks);
    }

    static Drawn drawn(Shape shape) {
        if (shape instanceof Spot spot) {
            return new Drawn(Form.SPOT, List.of(new Mark(0, 0, spot.at())));
        } else if (shape instanceof Line line) {
            return new Drawn(
                    Form.LINE,
                    line.points().stream().map(point -> new Mark(0, 0, point)).toList());
        }
        return drawn(((Area) shape).outline());
    }

    private static List<List<Point>> rings(Polygon polygon) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(polygon.shell());
        rings.addAll(polygon.holes());
        return rings;
    }

    /** The outline of points in their order; at least one. */
    static Boundary boundary(Drawn drawn) {
        Map<Integer, Map<Integer, List<Point>>> rings = new LinkedHashMap<>();
        for (Mark mark : drawn.marks()) {
            rings.computeIfAbsent(mark.polygon(), polygon -> new LinkedHashMap<>())
                    .computeIfAbsent(mark.ring(), ring -> new ArrayList<>())
                    .add(mark.point());
        }
        return new Boundary(rings.values().stream()
                .map(polygon -> List.copyOf(polygon.values()))
                .map(polygon -> new Polygon(polygon.get(0), polygon.subList(1, polygon.size())))
                .toList());
    }

    static Shape shape(Drawn drawn) {
        if (drawn.marks().isEmpty() && drawn.form() != Form.LINE) {
            throw new BookException("The book is damaged: a thing beside a field has a shape without points.");
        }
        return switch (drawn.form()) {
            case SPOT -> new Spot(drawn.marks().get(0).point());
            case LINE -> new Line(drawn.marks().stream().map(Mark::point).toList());
            case AREA -> new Area(boundary(drawn));
        };
    }
}
