package plumbrow.documents.map;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbrow.documents.workbook.ground.GeoJsonFile;
import plumbrow.documents.workbook.ground.GeoJsonFile.Feature;
import plumbrow.documents.workbook.ground.KmlFile;
import plumbrow.documents.workbook.ground.NoBoundary;

/**
 * Shapes with their attributes out of a GeoJSON file, a KML file or a zipped shapefile, in WGS 84.
 *
 * <p>Where the file is none of them or broken, a {@link MapTrouble} says so in a sentence.
 */
public final class MapFile {
    /** The largest file that is read [bytes]. */
    public static final int MOST_BYTES = 32 << 20;

    public static final String EXPECTED = "GeoJSON (.geojson or .json), KML (.kml) or a zipped shapefile (.zip)";

    /** The content types of what is read, in words. */
    public static final String TYPES =
            "application/geo+json, application/json, application/vnd.google-earth.kml+xml or application/zip";

    private MapFile() {}

    /** How the name of a file of this content type ends; empty where it is of no kind that is read. */
    public static Optional<String> ending(String type) {
        return Optional.ofNullable(
                switch (type) {
                    case "application/geo+json", "application/json" -> ".geojson";
                    case "application/vnd.google-earth.kml+xml" -> ".kml";
                    case "application/zip" -> ".zip";
                    default -> null;
                });
    }

    public static List<Feature> read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw tooLarge(name);
            }
            return read(name, Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new MapTrouble(file + " can't be read; expected " + EXPECTED + ".");
        }
    }

    /** The shapes of a file by its name and bytes. */
    public static List<Feature> read(String name, byte[] content) {
        if (content.length > MOST_BYTES) {
            throw tooLarge(name);
        }
        String ending = name.toLowerCase(Locale.ROOT);
        try {
            if (ending.endsWith(".zip")) {
                return ShapeZip.read(name, content);
            }
            String text = new String(content, StandardCharsets.UTF_8).replaceFirst("^\uFEFF", "");
            if (ending.endsWith(".kml")) {
                return KmlFile.everything(text);
            }
            if (ending.endsWith(".geojson") || ending.endsWith(".json")) {
                return GeoJsonFile.read(text);
            }
        } catch (NoBoundary broken) {
            throw new MapTrouble(name + " can't be used; expected " + broken.expected() + ".");
        }
        throw new MapTrouble(name + " is of no kind that is read; expected " + EXPECTED + ".");
    }

    private static MapTrouble tooLarge(String name) {
        return new MapTrouble(name + " is larger than 32 MB; cut it down to the farm first.");
    }
}
