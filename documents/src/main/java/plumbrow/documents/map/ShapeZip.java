package plumbrow.documents.map;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import plumbrow.documents.workbook.ground.GeoJsonFile.Feature;

/**
 * A shapefile in a zip: its shapes (shp), their index (shx), attributes (dbf) and projection (prj), all four needed.
 *
 * <p>Source: ESRI Shapefile Technical Description, July 1998.
 */
final class ShapeZip {
    private static final Set<String> PARTS = new TreeSet<>(Set.of("shp", "shx", "dbf", "prj"));
    private static final int MOST_ENTRIES = 200;
    private static final long MOST_UNPACKED = 64L << 20;

    private ShapeZip() {}

    static List<Feature> read(String name, byte[] zip) {
        Map<String, byte[]> parts = parts(name, zip);
        for (String part : PARTS) {
            if (!parts.containsKey(part)) {
                throw new MapTrouble(
                        name + " lacks its ." + part + " file; expected .shp, .shx, .dbf and .prj together.");
            }
        }
        try {
            Projection projection = Projection.of(new String(part(parts, "prj"), StandardCharsets.ISO_8859_1));
            List<String> shapes = new ShpShapes(part(parts, "shp"), part(parts, "shx"), projection).geometries();
            List<Map<String, String>> rows = new DbfTable(part(parts, "dbf"), charset(parts)).rows();
            if (rows.size() != shapes.size()) {
                throw new MapTrouble("it has " + shapes.size() + " shapes and " + rows.size()
                        + " rows of attributes; expected one row for each");
            }
            List<Feature> features = new ArrayList<>();
            for (int i = 0; i < shapes.size(); i++) {
                if (!shapes.get(i).isEmpty()) {
                    features.add(new Feature(rows.get(i), shapes.get(i)));
                }
            }
            return features;
        } catch (MapTrouble broken) {
            throw new MapTrouble(name + " can't be used: " + broken.getMessage() + ".");
        } catch (RuntimeException cutOff) {
            // Whatever a position outside the bytes throws: the file ends before it should or points outside itself.
            throw new MapTrouble(name + " is broken: a part of the shapefile is cut off or points outside itself.");
        }
    }

    private static byte[] part(Map<String, byte[]> parts, String ending) {
        return parts.getOrDefault(ending, new byte[0]);
    }

    private static Charset charset(Map<String, byte[]> parts) {
        String named = new String(part(parts, "cpg"), StandardCharsets.ISO_8859_1)
                .strip()
                .toUpperCase(Locale.ROOT);
        return named.contains("UTF-8") || named.equals("65001") ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
    }

    /** The files of the one shapefile in the zip, by ending. */
    private static Map<String, byte[]> parts(String name, byte[] zip) {
        Map<String, byte[]> parts = new HashMap<>();
        Set<String> layers = new TreeSet<>();
        long unpacked = 0;
        int entries = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (++entries > MOST_ENTRIES) {
                    throw new MapTrouble(name + " holds more than " + MOST_ENTRIES + " files; expected one shapefile.");
                }
                String file = entry.getName().toLowerCase(Locale.ROOT);
                byte[] content = in.readNBytes((int) (MOST_UNPACKED - unpacked) + 1);
                unpacked += content.length;
                if (unpacked > MOST_UNPACKED) {
                    throw new MapTrouble(name + " unpacks to more than 64 MB; cut it down to the farm first.");
                }
                int dot = file.lastIndexOf('.');
                if (dot < 0 || file.startsWith("__macosx/") || entry.isDirectory()) {
                    continue;
                }
                String ending = file.substring(dot + 1);
                if (ending.equals("shp")) {
                    layers.add(file.substring(0, dot));
                }
                if (PARTS.contains(ending) || ending.equals("cpg")) {
                    parts.put(ending, content);
                }
            }
        } catch (IOException | IllegalArgumentException broken) {
            throw new MapTrouble(name + " is no sound zip file; expected a zipped shapefile.");
        }
        if (layers.size() > 1) {
            throw new MapTrouble(name + " holds " + layers.size() + " shapefiles (" + String.join(", ", layers)
                    + "); expected one in each zip.");
        }
        return parts;
    }
}
