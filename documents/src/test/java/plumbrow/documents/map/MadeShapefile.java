package plumbrow.documents.map;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes small shapefiles after the ESRI description of 1998, by other code than reads them. */
final class MadeShapefile {
    static final String WGS84 =
            "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],"
                    + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";
    static final String UTM_38N = "PROJCS[\"WGS_1984_UTM_Zone_38N\"," + WGS84 + ",PROJECTION[\"Transverse_Mercator\"],"
            + "PARAMETER[\"False_Easting\",500000.0],PARAMETER[\"False_Northing\",0.0],"
            + "PARAMETER[\"Central_Meridian\",45.0],PARAMETER[\"Scale_Factor\",0.9996],"
            + "PARAMETER[\"Latitude_Of_Origin\",0.0],UNIT[\"Meter\",1.0]]";

    private final List<byte[]> records = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final List<String> kinds = new ArrayList<>();
    String projection = WGS84;

    /** A shape of rings or lines, each x and y in turn. */
    MadeShapefile parts(int type, String name, String kind, double[]... parts) {
        int points = 0;
        for (double[] part : parts) {
            points += part.length / 2;
        }
        ByteBuffer record = little(44 + 4 * parts.length + 16 * points);
        record.putInt(0, type).putInt(36, parts.length).putInt(40, points);
        int at = 44 + 4 * parts.length;
        int first = 0;
        for (int i = 0; i < parts.length; i++) {
            record.putInt(44 + 4 * i, first);
            first += parts[i].length / 2;
            for (double number : parts[i]) {
                record.putDouble(at, number);
                at += 8;
            }
        }
        return add(record, name, kind);
    }

    MadeShapefile point(String name, String kind, double x, double y) {
        return add(little(20).putInt(0, 1).putDouble(4, x).putDouble(12, y), name, kind);
    }

    MadeShapefile nothing(String name) {
        return add(little(4), name, "");
    }

    private MadeShapefile add(ByteBuffer record, String name, String kind) {
        records.add(bytes(record));
        names.add(name);
        kinds.add(kind);
        return this;
    }

    byte[] zip() {
        return zip(files());
    }

    Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        ByteArrayOutputStream shp = new ByteArrayOutputStream();
        ByteArrayOutputStream shx = new ByteArrayOutputStream();
        int at = 100;
        for (int i = 0; i < records.size(); i++) {
            int length = records.get(i).length;
            shp.writeBytes(
                    ByteBuffer.allocate(8).putInt(i + 1).putInt(length / 2).array());
            shp.writeBytes(records.get(i));
            shx.writeBytes(
                    ByteBuffer.allocate(8).putInt(at / 2).putInt(length / 2).array());
            at += 8 + length;
        }
        files.put("fields.shp", headed(shp.toByteArray()));
        files.put("fields.shx", headed(shx.toByteArray()));
        files.put("fields.dbf", dbf());
        files.put("fields.prj", projection.getBytes(StandardCharsets.US_ASCII));
        return files;
    }

    private static byte[] headed(byte[] body) {
        byte[] file = new byte[100 + body.length];
        System.arraycopy(body, 0, file, 100, body.length);
        ByteBuffer.wrap(file).putInt(0, 9994).putInt(24, file.length / 2);
        ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000);
        return file;
    }

    private byte[] dbf() {
        int start = 32 + 2 * 32 + 1;
        ByteBuffer table = little(start + names.size() * 61);
        table.put(0, (byte) 3)
                .putInt(4, names.size())
                .putShort(8, (short) start)
                .putShort(10, (short) 61);
        column(table, 32, "NAME", 40);
        column(table, 64, "KIND", 20);
        table.put(96, (byte) 0x0D);
        for (int i = 0; i < names.size(); i++) {
            byte[] row =
                    String.format(" %-40s%-20s", names.get(i), kinds.get(i)).getBytes(StandardCharsets.ISO_8859_1);
            table.put(start + 61 * i, row);
        }
        return bytes(table);
    }

    private static void column(ByteBuffer table, int at, String name, int width) {
        table.put(at, name.getBytes(StandardCharsets.US_ASCII))
                .put(at + 11, (byte) 'C')
                .put(at + 16, (byte) width);
    }

    static byte[] zip(Map<String, byte[]> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static byte[] bytes(ByteBuffer buffer) {
        byte[] all = new byte[buffer.capacity()];
        buffer.get(0, all);
        return all;
    }

    private static ByteBuffer little(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
