package plumbrow.app.desk.map;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.text.TextRule;
import plumbrow.documents.map.MapTrouble;
import plumbrow.documents.map.Placing;

/** What is typed or drawn on the map's form; kept as typed where it can't be used. */
public record FeatureForm(String kind, String name, String form, String places, String feet, String source) {
    /** The word that says the shape is the field's own outline. */
    public static final String OUTLINE = "outline of the field";

    private static final double MOST_FEET = 100_000;

    public static final FeatureForm EMPTY = new FeatureForm("", "", "point", "", "", "");

    static FeatureForm of(Feature feature) {
        Shape shape = feature.shape();
        Double feet = feature.nearestFt();
        return new FeatureForm(
                feature.kind().word(),
                feature.name(),
                shape == null ? "point" : PlaceText.form(shape).name().toLowerCase(Locale.ROOT),
                shape == null ? "" : PlaceText.of(shape),
                feet == null ? "" : String.valueOf(feet),
                feature.source());
    }

    /** The season with what the form says in it, or a sentence of why not. */
    Season in(Season season, Field field) {
        PlaceText.Form drawn = drawn();
        if (kind.equals(OUTLINE)) {
            if (drawn != PlaceText.Form.AREA) {
                throw new MapTrouble("An outline is an area; choose area and give its corners in order.");
            }
            return Placing.outlined(season, field, ((Area) PlaceText.shape(drawn, places)).outline());
        }
        Optional<FeatureKind> known = FeatureKind.called(kind);
        if (known.isEmpty()) {
            throw new MapTrouble("Say what it is: stream, ditch, dwelling and so on.");
        }
        if (name.isBlank()) {
            throw new MapTrouble(
                    "Give it a name of up to " + TextRule.NAME.longest() + " letters, as people here call it.");
        }
        Placing.demand("The name", TextRule.NAME, name.strip());
        Placing.demand("The source", TextRule.PROSE, source.strip());
        Double typed = typedFeet();
        if (places.isBlank() && typed == null) {
            throw new MapTrouble("Draw where it lies, type its places, or type its distance from the field.");
        }
        return Placing.placed(
                season,
                new Feature(
                        field.name(),
                        known.get(),
                        name.strip(),
                        places.isBlank() ? null : PlaceText.shape(drawn, places),
                        typed,
                        source.isBlank() ? "drawn on the map" : source.strip()));
    }

    private PlaceText.Form drawn() {
        try {
            return PlaceText.Form.valueOf(form.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException none) {
            throw new MapTrouble("Say whether it is a point, a line or an area.");
        }
    }

    private @Nullable Double typedFeet() {
        if (feet.isBlank()) {
            return null;
        }
        try {
            double typed = Double.parseDouble(feet.strip());
            if (typed >= 0 && typed <= MOST_FEET) {
                return typed;
            }
        } catch (NumberFormatException none) {
            // Said below.
        }
        throw new MapTrouble("The distance is “" + feet.strip() + "”; expected feet from 0 to 100,000, or nothing.");
    }
}
