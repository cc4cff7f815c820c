package plumbrow.documents.workbook.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.json.simple.JSONArray;
import org.json.simple.JSONObject;
import org.json.simple.JSONValue;
import org.json.simple.parser.JSONParser;
import org.json.simple.parser.ParseException;

/** The outlines of many fields in one GeoJSON file; each feature names its field in the property "field". */
public final class BoundaryFile {
    private BoundaryFile() {}

    /** One outline of the file: the field it names, empty where it names none, and its geometry's text. */
    public record Feature(String field, String geometry) {}

    /** The features of a file's text. */
    public static List<Feature> read(String text) throws NoBoundary {
        if (!(parsed(text) instanceof JSONObject file) || !(file.get("features") instanceof JSONArray features)) {
            throw new NoBoundary("a GeoJSON FeatureCollection");
        }
        List<Feature> read = new ArrayList<>();
        for (Object each : features) {
            if (!(each instanceof JSONObject feature)) {
                throw new NoBoundary("GeoJSON features");
            }
            Object field = feature.get("properties") instanceof JSONObject named ? named.get("field") : null;
            Object geometry = feature.get("geometry");
            read.add(new Feature(
                    field == null ? "" : String.valueOf(field).strip(),
                    geometry == null ? "" : JSONValue.toJSONString(geometry)));
        }
        return read;
    }

    private static Object parsed(String text) throws NoBoundary {
        try {
            return new JSONParser().parse(text);
        } catch (ParseException broken) {
            throw new NoBoundary("GeoJSON; it is broken at character " + broken.getPosition());
        } catch (RuntimeException | Error broken) {
            throw new NoBoundary("GeoJSON");
        }
    }

    /** The file's text for the geometries of fields. */
    public static String write(Map<String, String> geometryByField) {
        return geometryByField.entrySet().stream()
                .map(entry -> "{\"type\":\"Feature\",\"properties\":{\"field\":"
                        + JSONValue.toJSONString(entry.getKey()) + "},\"geometry\":" + entry.getValue() + "}")
                .collect(Collectors.joining(",\n", "{\"type\":\"FeatureCollection\",\"features\":[\n", "\n]}\n"));
    }
}
