package plumbrow.documents.workbook.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.json.simple.JSONArray;
import org.json.simple.JSONObject;
import org.json.simple.JSONValue;
import org.json.simple.parser.JSONParser;
import org.json.simple.parser.ParseException;

/** Many shapes in one GeoJSON file, each with the properties that say whose it is. */
public final class GeoJsonFile {
    private GeoJsonFile() {}

    /** One shape of the file: its properties as text, and its geometry's text, empty where it has none. */
    public record Feature(Map<String, String> properties, String geometry) {
        public Feature {
            properties = Map.copyOf(properties);
        }

        /** A property without blanks around it; empty where the file lacks it. */
        public String property(String name) {
            return properties.getOrDefault(name, "").strip();
        }
    }

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
            Map<String, String> properties = new LinkedHashMap<>();
            if (feature.get("properties") instanceof JSONObject named) {
                for (Object key : named.keySet()) {
                    Object value = named.get(key);
                    if (value != null) {
                        properties.put(String.valueOf(key), String.valueOf(value));
                    }
                }
            }
            Object geometry = feature.get("geometry");
            read.add(new Feature(properties, geometry == null ? "" : JSONValue.toJSONString(geometry)));
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

    /** The file's text for geometries by their properties. */
    public static String write(Map<Map<String, String>, String> geometries) {
        return geometries.entrySet().stream()
                .map(entry -> "{\"type\":\"Feature\",\"properties\":{" + properties(entry.getKey()) + "},\"geometry\":"
                        + entry.getValue() + "}")
                .collect(Collectors.joining(",\n", "{\"type\":\"FeatureCollection\",\"features\":[\n", "\n]}\n"));
    }

    private static String properties(Map<String, String> properties) {
        return properties.entrySet().stream()
                .map(entry -> JSONValue.toJSONString(entry.getKey()) + ":" + JSONValue.toJSONString(entry.getValue()))
                .collect(Collectors.joining(","));
    }
}
