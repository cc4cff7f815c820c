package plumbrow.advice.gates;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Nearness;

/** A thing in or near a field, and how far from the field's edge it counts as lying. */
record Lying(Feature feature, Nearness nearness) {
    static Lying of(Field field, Feature feature) {
        return new Lying(feature, Nearness.of(field.boundary(), feature));
    }

    FeatureKind kind() {
        return feature.kind();
    }

    String name() {
        return feature.name();
    }

    /** How far from the field's edge it counts as lying [ft]; null where nothing tells. */
    @Nullable
    Double nearestFt() {
        return nearness.feet();
    }

    /** A sentence with where its distance comes from, after a blank; empty where it is as written down. */
    String whence() {
        return nearness.says().isEmpty() ? "" : " " + nearness.says();
    }
}
