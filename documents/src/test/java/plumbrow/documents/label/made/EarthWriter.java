package plumbrow.documents.label.made;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.FeatureKind;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Way;

/** Water, wells, bees, rare creatures. */
final class EarthWriter {
    private EarthWriter() {}

    static void write(Draft draft, Pesticide product) {
        draft.heading("Environmental Hazards");
        draft.paragraph(
                "This product is toxic to fish. Drift and runoff may be hazardous to aquatic organisms near treated"
                        + " areas. Do not contaminate water when disposing of equipment washwaters.");
        if (draft.chance(2)) {
            statement(
                    draft,
                    LabelKind.GROUND_WATER,
                    "This chemical is known to leach through soil into ground water under certain conditions as a result of agricultural use",
                    "Use of this product in areas where soils are permeable, particularly where the water table is shallow, may result in ground water contamination",
                    "Groundwater Advisory: this active ingredient has properties associated with chemicals detected in groundwater");
        }
        setbacks(draft);
        if (draft.chance(2)) {
            statement(
                    draft,
                    LabelKind.BEES,
                    "Do not apply this product or allow it to drift to blooming crops or weeds while bees are actively visiting the treatment area",
                    "Do not apply while bees are foraging",
                    "Do not apply until flowering is complete and all petals have fallen");
        }
        if (draft.chance(2)) {
            statement(
                    draft,
                    LabelKind.BULLETIN,
                    "Before using this product, you must obtain the endangered species protection bulletin for your county and follow it",
                    "To protect threatened and endangered species, follow the measures in the Bulletins Live system for the month of application");
        }
        if (draft.chance(2)) {
            statement(
                    draft,
                    LabelKind.SATURATED_SOIL,
                    "Do not apply to water-saturated or frozen soils",
                    "Do not apply when soil is saturated or above field capacity",
                    "Do not apply to frozen or snow-covered ground");
        }
    }

    private static void statement(Draft draft, LabelKind kind, String... words) {
        String text = draft.pick(words);
        draft.paragraph(text + ".");
        draft.text(kind, text);
    }

    private static void setbacks(Draft draft) {
        int feet = draft.pick(25, 30, 50, 66, 100, 200);
        switch (draft.random.nextInt(5)) {
            case 0 -> {
                draft.paragraph("This product must not be mixed or loaded within " + feet
                        + " feet of wells, sinkholes, intermittent streams, or natural or impounded lakes.");
                keep(draft, "wells", FeatureKind.WELL, feet, false, true);
                keep(draft, "sinkholes", FeatureKind.SINKHOLE, feet, false, true);
                keep(draft, "intermittent streams", FeatureKind.STREAM, feet, false, true);
                keep(draft, "natural or impounded lakes", FeatureKind.POND, feet, false, true);
            }
            case 1 -> {
                draft.paragraph(
                        "Do not apply within " + feet + " feet of standpipes in tile-outletted fields or within "
                                + (feet * 2) + " feet of reservoirs.");
                keep(draft, "standpipes", FeatureKind.TILE_INLET, feet, false, false);
                keep(draft, "reservoirs", FeatureKind.POND, feet * 2, false, false);
            }
            case 2 -> {
                draft.paragraph("Maintain a " + feet + draft.pick("-foot", " ft.", " foot")
                        + " downwind buffer between the last spray row and the nearest sensitive crops.");
                keep(draft, "sensitive crops", FeatureKind.SENSITIVE_CROP, feet, true, false);
            }
            case 3 -> {
                draft.paragraph("A buffer of at least " + feet + " feet must be kept from rivers, ponds and wetlands.");
                keep(draft, "rivers", FeatureKind.STREAM, feet, false, false);
                keep(draft, "ponds", FeatureKind.POND, feet, false, false);
                keep(draft, "wetlands", FeatureKind.HABITAT, feet, false, false);
            }
            default -> {
                draft.paragraph(
                        "Do not apply closer than " + feet + " ft to occupied dwellings, schools or bee hives.");
                keep(draft, "occupied dwellings", FeatureKind.DWELLING, feet, false, false);
                keep(draft, "schools", FeatureKind.SCHOOL, feet, false, false);
                keep(draft, "bee hives", FeatureKind.BEE_YARD, feet, false, false);
            }
        }
    }

    private static void keep(
            Draft draft, String feature, @Nullable FeatureKind kind, int feet, boolean downwind, boolean mixing) {
        draft.truth(
                LabelKind.SETBACK,
                new LabelContent.Distance(feature, kind, Draft.exactly(feet, "ft"), downwind, mixing, Way.ANY));
    }
}
