package plumbrow.documents.map;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.field.Boundary.Point;

/**
 * The shapes of a shapefile as GeoJSON geometries in WGS 84; a null shape is an empty text.
 *
 * <p>Points, multipoints, lines and polygons, with heights and measures left aside. Every record must stand where the index
 * says, and stay inside its length.
 */
final class ShpShapes {
    static final int MOST_RECORDS = 20_000;
    private static final int MOST_POINTS = 1_000_000;
    private static final int MAGIC = 9994;
    private static final int HEADER = 100;

    private final Projection projection;
    private final List<String> geometries = new ArrayList<>();
    private int points;

    ShpShapes(byte[] shp, byte[] shx, Projection projection) {
        this.projection = projection;
        ByteBuffer index = sound(shx, ".shx");
        ByteBuffer shapes = sound(shp, ".shp");
        int count = (shx.length - HEADER) / 8;
        if (count > MOST_RECORDS) {
            throw new MapTrouble("it has more than " + MOST_RECORDS + " shapes; cut it down to the farm first");
        }
        for (int i = 0; i < count; i++) {
            int at = Math.multiplyExact(index.getInt(HEADER + i * 8), 2);
            int length = Math.multiplyExact(index.getInt(HEADER + i * 8 + 4), 2);
            if (at < HEADER
                    || length < 4
                    || (long) at + 8 + length > shp.length
                    || shapes.getInt(at + 4) * 2L != length) {
                throw new MapTrouble("its index (.shx) points to no shape at number " + (i + 1));
            }
            ByteBuffer record = shapes.slice(at + 8, length).order(ByteOrder.LITTLE_ENDIAN);
            geometries.add(geometry(record, i + 1));
        }
    }

    List<String> geometries() {
        return geometries;
    }

    private static ByteBuffer sound(byte[] content, String part) {
        if (content.length < HEADER || ByteBuffer.wrap(content).getInt(0) != MAGIC) {
            throw new MapTrouble("its " + part + " file is no part of a shapefile");
        }
        return ByteBuffer.wrap(content);
    }

    private String geometry(ByteBuffer record, int number) {
        int type = record.getInt(0);
        return switch (type) {
            case 0 -> "";
            case 1, 11, 21 -> object("Point", place(record, 4, number));
            case 8, 18, 28 -> multipoint(record, number);
            case 3, 13, 23 -> lines(rings(record, number, 2));
            case 5, 15, 25 -> polygons(rings(record, number, 4), number);
            default ->
                throw new MapTrouble(
                        "shape " + number + " is of type " + type + "; expected points, lines or polygons");
        };
    }

    private String multipoint(ByteBuffer record, int number) {
        int count = counted(record.getInt(36), record, 40, 16, number);
        List<String> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(text(place(record, 40 + 16 * i, number)));
        }
        return object("MultiPoint", places);
    }

    private List<List<Point>> rings(ByteBuffer record, int number, int fewest) {
        int parts = counted(record.getInt(36), record, 44, 4, number);
        int all = counted(record.getInt(40), record, 44 + 4 * parts, 16, number);
        List<List<Point>> rings = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            int from = record.getInt(44 + 4 * part);
            int to = part + 1 < parts ? record.getInt(48 + 4 * part) : all;
            if (from < 0 || to > all || to - from < fewest) {
                throw new MapTrouble("part " + (part + 1) + " of shape " + number + " has too few points");
            }
            List<Point> ring = new ArrayList<>();
            for (int i = from; i < to; i++) {
                ring.add(place(record, 44 + 4 * parts + 16 * i, number));
            }
            rings.add(ring);
        }
        return rings;
    }

    /** A count from the file, refused where so many would not fit into the record. */
    private int counted(int count, ByteBuffer record, int start, int bytesEach, int number) {
        if (count < 0 || start + (long) count * bytesEach > record.limit()) {
            throw new MapTrouble("shape " + number + " says it has " + count + " parts or points, which is not so");
        }
        points += bytesEach == 16 ? count : 0;
        if (points > MOST_POINTS) {
            throw new MapTrouble("it has more than a million points; cut it down to the farm first");
        }
        return count;
    }

    private Point place(ByteBuffer record, int at, int number) {
        double x = record.getDouble(at);
        double y = record.getDouble(at + 8);
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new MapTrouble("shape " + number + " has a point that is no number");
        }
        return projection.place(x, y);
    }

    private static String lines(List<List<Point>> lines) {
        return lines.size() == 1
                ? object(
                        "LineString", lines.get(0).stream().map(ShpShapes::text).toList())
                : object("MultiLineString", lines.stream().map(ShpShapes::ring).toList());
    }

    private static String polygons(List<List<Point>> rings, int number) {
        List<String> polygons = Nesting.of(rings, number).stream()
                .map(polygon -> polygon.stream().map(ShpShapes::ring).collect(Collectors.joining(",", "[", "]")))
                .toList();
        return polygons.size() == 1
                ? "{\"type\":\"Polygon\",\"coordinates\":" + polygons.get(0) + "}"
                : object("MultiPolygon", polygons);
    }

    private static String object(String type, List<String> parts) {
        return "{\"type\":\"" + type + "\",\"coordinates\":[" + String.join(",", parts) + "]}";
    }

    private static String object(String type, Point point) {
        return "{\"type\":\"" + type + "\",\"coordinates\":" + text(point) + "}";
    }

    private static String ring(List<Point> points) {
        return points.stream().map(ShpShapes::text).collect(Collectors.joining(",", "[", "]"));
    }

    private static String text(Point point) {
        return "[" + point.longitude() + "," + point.latitude() + "]";
    }
}
