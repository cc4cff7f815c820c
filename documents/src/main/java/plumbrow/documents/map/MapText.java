package plumbrow.documents.map;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.json.simple.JSONValue;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Acres;
import plumbrow.advice.land.Nearness;
import plumbrow.advice.land.Zone;
import plumbrow.advice.land.Zones;
import plumbrow.documents.workbook.ground.FeatureShape;
import plumbrow.documents.workbook.ground.GeoJson;

/**
 * A field, what lies around it and the zones of its setbacks as a GeoJSON FeatureCollection after RFC 7946: longitude before
 * latitude in WGS 84, shells against the clock, holes with it. The property part says what a shape is: field, feature, zone
 * or sprayable.
 */
public final class MapText {
    private final List<String> features = new ArrayList<>();

    private MapText() {}

    /** A field with what lies around it, and the zones of a program where there are any. */
    public static String of(Field field, List<Feature> around, List<Zones> zones) {
        MapText text = new MapText();
        text.field(field, around);
        zones.forEach(text::zones);
        return text.text();
    }

    private void field(Field field, List<Feature> around) {
        Boundary outline = field.boundary();
        Map<String, @Nullable Object> properties = new LinkedHashMap<>();
        properties.put("part", "field");
        properties.put("field", field.name());
        properties.put("acres", outline == null ? field.acres() : Acres.inside(outline));
        add(properties, outline == null ? null : new Area(outline));
        for (Feature feature : around) {
            Nearness nearness = Nearness.of(outline, feature);
            Map<String, @Nullable Object> about = about("feature", feature);
            about.put("nearest_ft", nearness.feet());
            about.put("measured_ft", nearness.measuredFt());
            about.put("source", feature.source());
            add(about, feature.shape());
        }
    }

    private void zones(Zones zones) {
        for (Zone zone : zones.zones()) {
            Map<String, @Nullable Object> about = about("zone", zone.feature());
            about.put("pass", zones.pass());
            about.put("product", zones.product());
            about.put("setback_ft", zone.feet());
            about.put("downwind_only", zone.downwindOnly());
            about.put("acres", zone.acres());
            about.put("source", zone.source());
            add(about, zone.drawn().map(Area::new).orElse(null));
        }
        Map<String, @Nullable Object> left = new LinkedHashMap<>();
        left.put("part", "sprayable");
        left.put("pass", zones.pass());
        left.put("product", zones.product());
        left.put("acres", zones.sprayableAcres());
        left.put("more_acres_by_wind", zones.windAcres());
        left.put("setback_not_read", List.copyOf(zones.notRead()));
        Boundary sprayable = zones.sprayable();
        add(left, sprayable == null ? null : new Area(sprayable));
    }

    private static Map<String, @Nullable Object> about(String part, Feature feature) {
        Map<String, @Nullable Object> about = new LinkedHashMap<>();
        about.put("part", part);
        about.put("field", feature.field());
        about.put("kind", feature.kind().word());
        about.put("name", feature.name());
        return about;
    }

    private void add(Map<String, @Nullable Object> properties, @Nullable Shape shape) {
        features.add("{\"type\":\"Feature\",\"properties\":" + JSONValue.toJSONString(properties) + ",\"geometry\":"
                + (shape == null ? "null" : geometry(shape)) + "}");
    }

    private String text() {
        return "{\"type\":\"FeatureCollection\",\"features\":[\n" + String.join(",\n", features) + "\n]}\n";
    }

    private static String geometry(Shape shape) {
        return shape instanceof Area area ? outline(area.outline()) : FeatureShape.write(shape);
    }

    /** An outline as a GeoJSON geometry. */
    public static String outline(Boundary outline) {
        return GeoJson.write(turned(outline));
    }

    private static Boundary turned(Boundary outline) {
        return new Boundary(outline.polygons().stream()
                .map(polygon -> new Boundary.Polygon(
                        turned(polygon.shell(), true),
                        polygon.holes().stream()
                                .map(hole -> turned(hole, false))
                                .toList()))
                .toList());
    }

    private static List<Point> turned(List<Point> ring, boolean againstTheClock) {
        if (Nesting.doubledArea(ring) > 0 == againstTheClock) {
            return ring;
        }
        List<Point> turned = new ArrayList<>(ring);
        Collections.reverse(turned);
        return turned;
    }
}
