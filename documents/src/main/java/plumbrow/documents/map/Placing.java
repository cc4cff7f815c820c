package plumbrow.documents.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Acres;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.land.TypedPlace;
import plumbrow.advice.season.Season;
import plumbrow.advice.text.TextRule;

/** Changes to the ground of a season: an outline, a feature more, a feature less. */
public final class Placing {
    /** Acres written down and acres inside an outline may differ by this share of the latter, as in a workbook. */
    private static final double ACRES_SLACK = 0.10;

    private Placing() {}

    /** What is wrong with an outline for a field, in words; empty where nothing is. */
    static Optional<String> fault(Field field, Boundary outline) {
        double inside = Acres.inside(outline);
        if (Math.abs(field.acres() - inside) > ACRES_SLACK * inside) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "the outline holds %.1f ac, but %.1f ac are written down; expected them within 10 %%",
                    inside,
                    field.acres()));
        }
        TypedPlace place = TypedPlace.of(field.state(), field.county(), CountyFit.of(outline));
        return place.verdict().wrong()
                ? Optional.of("the county written down is " + field.county() + ", " + field.state() + "; expected "
                        + place.says())
                : Optional.empty();
    }

    static Field outlined(Field field, Boundary outline) {
        return new Field(
                field.name(),
                field.farm(),
                field.acres(),
                outline,
                field.state(),
                field.county(),
                field.crop(),
                field.texture(),
                field.organicMatterPct(),
                field.ph(),
                field.slopePct());
    }

    static String said(Boundary outline) {
        CountyFit fit = CountyFit.of(outline);
        return String.format(Locale.ROOT, "outline, %.1f ac", Acres.inside(outline))
                + (fit.in().isEmpty() ? "" : ", ")
                + fit.in().stream().map(part -> part.county().words()).collect(Collectors.joining(" and "));
    }

    /** Adds a feature, or gives one of the same field, kind and name its new shape; a typed distance stays. */
    static Feature placed(List<Feature> features, Feature feature) {
        for (int i = 0; i < features.size(); i++) {
            Feature known = features.get(i);
            if (same(known, feature.field(), feature.kind(), feature.name())) {
                features.set(
                        i,
                        new Feature(
                                known.field(),
                                known.kind(),
                                known.name(),
                                feature.shape(),
                                feature.nearestFt() == null ? known.nearestFt() : feature.nearestFt(),
                                feature.source()));
                return features.get(i);
            }
        }
        features.add(feature);
        return feature;
    }

    /** The season with another outline of a field; refused with a sentence where it can't be that field's. */
    public static Season outlined(Season season, Field field, Boundary outline) {
        fault(field, outline).ifPresent(says -> {
            throw new MapTrouble(field.name() + ": " + says + ".");
        });
        return with(
                season,
                season.fields().stream()
                        .map(one -> one.equals(field) ? outlined(field, outline) : one)
                        .toList(),
                season.ground().features());
    }

    /** The season with a feature more, or with the new shape and distance of one that it knows by kind and name. */
    public static Season placed(Season season, Feature feature) {
        List<Feature> features = new ArrayList<>(season.ground().features());
        features.removeIf(known -> same(known, feature.field(), feature.kind(), feature.name()));
        features.add(feature);
        return with(season, season.fields(), features);
    }

    /** Refuses words that the workbook's column would not take. */
    public static void demand(String what, TextRule rule, String text) {
        rule.objection(text).ifPresent(expected -> {
            throw new MapTrouble(what + " can't be so; expected " + expected + ".");
        });
    }

    /** The season without a feature. */
    public static Season removed(Season season, String field, FeatureKind kind, String name) {
        return with(
                season,
                season.fields(),
                season.ground().features().stream()
                        .filter(known -> !same(known, field, kind, name))
                        .toList());
    }

    private static boolean same(Feature known, String field, FeatureKind kind, String name) {
        return known.field().equals(field)
                && known.kind() == kind
                && known.name().equals(name);
    }

    static Season with(Season season, List<Field> fields, List<Feature> features) {
        return season.withFields(fields).withGround(season.ground().withFeatures(features));
    }
}
