package plumbrow.documents.map;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;

/**
 * A shapefile of polygons with attributes, in WGS 84: .shp, .shx, .dbf, .prj and .cpg. Shells go with the clock, holes against it;
 * text is UTF-8.
 *
 * <p>Source: ESRI Shapefile Technical Description, July 1998; dBASE III.
 */
public final class ShapeWriter {
    private static final int POLYGON = 5;
    private static final int HEADER = 100;
    private static final int LONGEST_TEXT = 254;
    private static final int NUMBER_WIDTH = 19;
    private static final int DECIMALS = 6;
    private static final String WGS84 = "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,"
            + "298.257223563]],PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";

    private ShapeWriter() {}

    /** One shape with its attributes: texts and numbers. Names of attributes are of 10 letters at most. */
    public record Row(Boundary outline, Map<String, Object> attributes) {}

    /**
     * The files, by their names.
     *
     * @param name without ending
     * @param year the year noted as that of the last change
     * @param rows one at least, all with the same attributes in the same order
     */
    @SuppressWarnings("ByteBufferBackingArray") // header allocates them
    public static Map<String, byte[]> files(String name, int year, List<Row> rows) {
        List<byte[]> records = rows.stream().map(row -> record(row.outline())).toList();
        double[] box = box(rows.stream().map(Row::outline).toList());
        int length = HEADER + records.stream().mapToInt(one -> 8 + one.length).sum();
        ByteBuffer shp = header(length, box);
        ByteBuffer shx = header(HEADER + 8 * records.size(), box);
        for (int i = 0; i < records.size(); i++) {
            byte[] record = records.get(i);
            shx.order(ByteOrder.BIG_ENDIAN).putInt(shp.position() / 2).putInt(record.length / 2);
            shp.order(ByteOrder.BIG_ENDIAN).putInt(i + 1).putInt(record.length / 2);
            shp.put(record);
        }
        Map<String, byte[]> files = new TreeMap<>();
        files.put(name + ".shp", shp.array());
        files.put(name + ".shx", shx.array());
        files.put(name + ".dbf", table(year, rows));
        files.put(name + ".prj", WGS84.getBytes(StandardCharsets.US_ASCII));
        files.put(name + ".cpg", "UTF-8".getBytes(StandardCharsets.US_ASCII));
        return files;
    }

    private static ByteBuffer header(int length, double[] box) {
        ByteBuffer out = ByteBuffer.allocate(length);
        out.putInt(0, 9994).putInt(24, length / 2);
        out.order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000).putInt(32, POLYGON);
        for (int i = 0; i < box.length; i++) {
            out.putDouble(36 + 8 * i, box[i]);
        }
        return out.position(HEADER);
    }

    private static double[] box(List<Boundary> outlines) {
        double[] box = {180, 90, -180, -90};
        for (Boundary outline : outlines) {
            for (Boundary.Polygon polygon : outline.polygons()) {
                for (Point point : polygon.shell()) {
                    box[0] = Math.min(box[0], point.longitude());
                    box[1] = Math.min(box[1], point.latitude());
                    box[2] = Math.max(box[2], point.longitude());
                    box[3] = Math.max(box[3], point.latitude());
                }
            }
        }
        return box;
    }

    private static byte[] record(Boundary outline) {
        List<List<Point>> rings = new ArrayList<>();
        for (Boundary.Polygon polygon : outline.polygons()) {
            rings.add(turned(polygon.shell(), true));
            polygon.holes().forEach(hole -> rings.add(turned(hole, false)));
        }
        int points = rings.stream().mapToInt(List::size).sum();
        ByteBuffer out =
                ByteBuffer.allocate(44 + 4 * rings.size() + 16 * points).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(POLYGON);
        for (double side : box(List.of(outline))) {
            out.putDouble(side);
        }
        out.putInt(rings.size()).putInt(points);
        int start = 0;
        for (List<Point> ring : rings) {
            out.putInt(start);
            start += ring.size();
        }
        for (List<Point> ring : rings) {
            ring.forEach(point -> out.putDouble(point.longitude()).putDouble(point.latitude()));
        }
        return out.array();
    }

    private static List<Point> turned(List<Point> ring, boolean withTheClock) {
        if (Nesting.doubledArea(ring) < 0 == withTheClock) {
            return ring;
        }
        List<Point> turned = new ArrayList<>(ring);
        Collections.reverse(turned);
        return turned;
    }

    private static byte[] table(int year, List<Row> rows) {
        List<String> names = List.copyOf(rows.get(0).attributes().keySet());
        List<List<byte[]>> cells = new ArrayList<>();
        int[] widths = new int[names.size()];
        Arrays.fill(widths, 1);
        for (Row row : rows) {
            List<byte[]> line = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                Object value = row.attributes().get(names.get(i));
                byte[] text = value instanceof Number number ? number(number) : text(String.valueOf(value));
                widths[i] = value instanceof Number ? NUMBER_WIDTH : Math.max(widths[i], text.length);
                line.add(text);
            }
            cells.add(line);
        }
        int start = 32 + 32 * names.size() + 1;
        int width = 1 + Arrays.stream(widths).sum();
        ByteBuffer out = ByteBuffer.allocate(start + width * rows.size() + 1).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 3).put((byte) (year - 1900)).put((byte) 1).put((byte) 1);
        out.putInt(rows.size()).putShort((short) start).putShort((short) width);
        for (int i = 0; i < names.size(); i++) {
            boolean number = rows.get(0).attributes().get(names.get(i)) instanceof Number;
            int at = 32 + 32 * i;
            byte[] name = names.get(i).getBytes(StandardCharsets.US_ASCII);
            if (name.length > 10) {
                throw new IllegalArgumentException(names.get(i) + " is longer than 10 letters");
            }
            out.put(at, name);
            out.put(at + 11, (byte) (number ? 'N' : 'C'));
            out.put(at + 16, (byte) widths[i]);
            out.put(at + 17, (byte) (number ? DECIMALS : 0));
        }
        out.put(start - 1, (byte) 0x0D);
        out.position(start);
        for (int row = 0; row < rows.size(); row++) {
            out.put((byte) ' ');
            for (int i = 0; i < names.size(); i++) {
                byte[] text = cells.get(row).get(i);
                boolean number = rows.get(row).attributes().get(names.get(i)) instanceof Number;
                byte[] padding = new byte[widths[i] - text.length];
                Arrays.fill(padding, (byte) ' ');
                // Numbers stand at the right of their column, texts at the left.
                out.put(number ? padding : text).put(number ? text : padding);
            }
        }
        return out.put((byte) 0x1A).array();
    }

    private static byte[] number(Number value) {
        return String.format(Locale.ROOT, "%." + DECIMALS + "f", value.doubleValue())
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** As UTF-8, cut between characters where it is too long. */
    private static byte[] text(String value) {
        byte[] all = value.getBytes(StandardCharsets.UTF_8);
        int end = Math.min(all.length, LONGEST_TEXT);
        while (end > 0 && end < all.length && (all[end] & 0xC0) == 0x80) {
            end--;
        }
        return Arrays.copyOf(all, end);
    }
}
