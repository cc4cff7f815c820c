package plumbrow.documents.machine;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.json.simple.JSONValue;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.ratemap.Metering;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.ratemap.RateMaps.DrawnZone;
import plumbrow.documents.map.MapText;
import plumbrow.documents.map.MapTrouble;
import plumbrow.documents.map.ShapeWriter;
import plumbrow.documents.workbook.ground.FeatureShape;
import plumbrow.documents.workbook.ground.GeoJsonFile;
import plumbrow.documents.workbook.ground.NoBoundary;

/**
 * The parts of a rate map as shapes with their rate, written and read: GeoJSON (RFC 7946) and shapefile, in WGS 84.
 *
 * <p>The rate stands under the name of its unit: gal_ac, lb_ac or seeds_ac; beside it in metric units under l_ha, kg_ha or
 * seeds_ha. What is kept clear has rate 0.
 */
public final class RateZones {
    private static final double ACRES_PER_HECTARE = 10_000 / Metering.M2_PER_ACRE;
    private static final List<String> NAMES = List.of("zone", "name", "label");
    private static final List<String> UNITS = List.of("unit", "rate_unit");
    private static final int LONGEST_SHOWN = 40;

    private RateZones() {}

    /** As a GeoJSON FeatureCollection. */
    public static String geoJson(RateMap map) {
        return parts(map).stream()
                .map(row -> "{\"type\":\"Feature\",\"properties\":" + JSONValue.toJSONString(row.attributes())
                        + ",\"geometry\":" + MapText.outline(row.outline()) + "}")
                .collect(Collectors.joining(",\n", "{\"type\":\"FeatureCollection\",\"features\":[\n", "\n]}\n"));
    }

    /** As the files of a shapefile, by name. */
    public static Map<String, byte[]> shapefile(RateMap map) {
        return ShapeWriter.files("rates", map.year(), parts(map));
    }

    private static List<ShapeWriter.Row> parts(RateMap map) {
        List<ShapeWriter.Row> rows = new ArrayList<>();
        for (RateMap.Part part : map.parts()) {
            Boundary outline = part.outline();
            if (outline != null) {
                rows.add(new ShapeWriter.Row(outline, attributes(map, part)));
            }
        }
        return rows;
    }

    private static Map<String, Object> attributes(RateMap map, RateMap.Part part) {
        Metering metering = map.metering();
        Map<String, Object> attributes = new LinkedHashMap<>();
        attributes.put("zone", part.name());
        attributes.put("code", part.code());
        attributes.put(perAcre(metering), part.perAcre().in(metering.farmUnit()).value());
        switch (metering) {
            case VOLUME -> attributes.put("l_ha", part.perAcre().in(FarmUnit.L).value() * ACRES_PER_HECTARE);
            case MASS -> attributes.put("kg_ha", part.perAcre().in(FarmUnit.KG).value() * ACRES_PER_HECTARE);
            case COUNT -> attributes.put("seeds_ha", part.perAcre().inBase() * ACRES_PER_HECTARE);
        }
        attributes.put("acres", part.acres());
        attributes.put(
                "product", map.products().stream().map(RateMap.Share::name).collect(Collectors.joining(" + ")));
        attributes.put("field", map.field());
        return attributes;
    }

    private static String perAcre(Metering metering) {
        return metering.farmUnit().symbol() + "_ac";
    }

    /**
     * Zones out of the shapes of a map file: each an area with a rate, under rate (with a unit under unit, else the unit in which
     * the pass is metered) or under the name of a unit, as this class writes it.
     *
     * @throws MapTrouble with a sentence where a shape is no zone
     */
    public static List<DrawnZone> read(String file, List<GeoJsonFile.Feature> shapes) {
        List<DrawnZone> zones = new ArrayList<>();
        for (GeoJsonFile.Feature shape : shapes) {
            int number = zones.size() + 1;
            String name = attribute(shape, NAMES).orElse("zone " + number);
            zones.add(zone(file + ", shape " + number + " (" + name + "): ", name, shape));
        }
        if (zones.isEmpty()) {
            throw new MapTrouble(file + " holds no shape; expected zones, each with its rate.");
        }
        return zones;
    }

    private static DrawnZone zone(String where, String name, GeoJsonFile.Feature shape) {
        FarmUnit unit = null;
        String rate = attribute(shape, List.of("rate")).orElse("");
        if (rate.isEmpty()) {
            for (Metering metering : Metering.values()) {
                String found = attribute(shape, List.of(perAcre(metering))).orElse("");
                if (!found.isEmpty()) {
                    rate = found;
                    unit = metering.farmUnit();
                }
            }
        } else {
            unit = unit(where, attribute(shape, UNITS).orElse(""));
        }
        if (rate.isEmpty()) {
            throw new MapTrouble(
                    where + "it bears no rate; expected the attribute rate, or gal_ac, lb_ac or seeds_ac.");
        }
        return new DrawnZone(name, outline(where, shape), number(where, rate), unit);
    }

    private static @Nullable FarmUnit unit(String where, String written) {
        if (written.isEmpty()) {
            return null;
        }
        String bare = written.toLowerCase(Locale.ROOT).replaceFirst("\\s*(/|per|an?)\\s*(ac|acre)$", "");
        return FarmUnit.parse(bare)
                .orElseThrow(() -> new MapTrouble(where + "the unit is “" + shown(written)
                        + "”; expected one such as gal/ac, lb/ac or seeds/ac."));
    }

    private static double number(String where, String written) {
        try {
            double rate = new BigDecimal(written).doubleValue();
            if (Double.isFinite(rate) && rate >= 0) {
                return rate;
            }
        } catch (NumberFormatException none) {
            // Said below.
        }
        throw new MapTrouble(where + "the rate is “" + shown(written)
                + "”; expected a number of zero or more with a point for decimals, such as 12.5.");
    }

    private static Boundary outline(String where, GeoJsonFile.Feature shape) {
        try {
            List<Shape> shapes = shape.geometry().isEmpty() ? List.of() : FeatureShape.all(shape.geometry());
            if (shapes.size() == 1 && shapes.get(0) instanceof Area area) {
                return area.outline();
            }
            throw new MapTrouble(where + "expected an area, drawn as a polygon.");
        } catch (NoBoundary broken) {
            throw new MapTrouble(where + "expected " + broken.expected() + ".");
        }
    }

    private static Optional<String> attribute(GeoJsonFile.Feature shape, List<String> names) {
        return names.stream()
                .flatMap(name -> shape.properties().entrySet().stream()
                        .filter(entry -> entry.getKey().strip().equalsIgnoreCase(name))
                        .map(entry -> entry.getValue().strip()))
                .filter(value -> !value.isEmpty())
                .findFirst();
    }

    private static String shown(String written) {
        return written.length() > LONGEST_SHOWN ? written.substring(0, LONGEST_SHOWN) + "…" : written;
    }

    /** The GeoJSON as bytes. */
    public static byte[] geoJsonBytes(RateMap map) {
        return geoJson(map).getBytes(StandardCharsets.UTF_8);
    }
}
