package plumbrow.documents.label.made;

import java.util.List;
import plumbrow.advice.shelf.Droplets;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Task;
import plumbrow.documents.label.Way;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Directions for every crop: re-entry, drift, carrier, rain, mixing. */
final class DirectionsWriter {
    private DirectionsWriter() {}

    static void write(Draft draft, Pesticide product) {
        draft.heading("Directions for Use");
        draft.paragraph(
                "It is a violation of Federal law to use this product in a manner inconsistent with its labeling. Do"
                        + " not apply this product in a way that will contact workers or other persons, either directly or through drift.");
        entry(draft);
        draft.heading("Spray Drift Management");
        drift(draft);
        draft.heading("Application Instructions");
        carrier(draft);
        rain(draft);
        StageWriter.ofAll(draft, product);
        draft.heading("Mixing Instructions");
        draft.paragraph(
                "Fill the tank one-half full with clean water, add the product, and complete the filling with agitation running.");
        mixing(draft);
    }

    private static void entry(Draft draft) {
        int hours = List.of(4, 12, 24, 48).get(draft.random.nextInt(4));
        draft.heading("Agricultural Use Requirements");
        draft.paragraph(
                "Use this product only in accordance with its labeling and with the Worker Protection Standard, 40 CFR part 170.");
        String words =
                List.of("four", "twelve", "24", "48").get(List.of(4, 12, 24, 48).indexOf(hours));
        draft.paragraph(draft.pick(
                "Do not enter or allow worker entry into treated areas during the restricted-entry interval (REI) of "
                        + hours + " hours.",
                "Do not enter or allow entry into treated areas during the restricted entry interval (REI) of "
                        + (hours < 13 ? words + " (" + hours + ")" : words) + " hours.",
                "The restricted-entry interval (REI) is " + hours + " hours.",
                "REI: " + hours + " hours"));
        draft.truth(LabelKind.REENTRY, new LabelContent.Interval("", Draft.exactly(hours, "h"), ""));
        if (draft.chance(2)) {
            PeopleWriter.gear(
                    draft,
                    Task.EARLY_ENTRY,
                    "PPE required for early entry to treated areas that is permitted under the Worker Protection Standard and that involves contact with anything that has been treated is:",
                    3);
        }
    }

    private static void drift(Draft draft) {
        switch (draft.random.nextInt(4)) {
            case 0 -> {
                draft.paragraph("Apply only with a " + draft.pick("medium or coarser", "medium or coarser")
                        + " droplet size (ASABE S572.1).");
                drops(draft, Droplets.MEDIUM, null);
            }
            case 1 -> {
                draft.paragraph("Use nozzles that deliver coarse or coarser droplets.");
                drops(draft, Droplets.COARSE, null);
            }
            case 2 -> {
                draft.paragraph("Select nozzles and pressure that deliver very coarse to ultra coarse spray droplets.");
                drops(draft, Droplets.VERY_COARSE, Droplets.ULTRA_COARSE);
            }
            default -> {
                draft.paragraph("Applicators are required to use a Medium or coarser droplet spectrum.");
                drops(draft, Droplets.MEDIUM, null);
            }
        }
        int most = List.of(10, 15).get(draft.random.nextInt(2));
        switch (draft.random.nextInt(4)) {
            case 0 -> {
                draft.paragraph("Do not apply when wind speeds exceed " + most + " mph at the application site.");
                wind(draft, Draft.amount(Qualifier.AT_MOST, most, "mph"));
            }
            case 1 -> {
                draft.paragraph("Apply only when the wind speed is between 3 and " + most + " mph.");
                wind(draft, Draft.range(3, most, "mph"));
            }
            case 2 -> {
                draft.paragraph("Do not apply when wind is greater than " + most
                        + " miles per hour. Do not apply when wind speed is below 3 mph.");
                wind(draft, Draft.amount(Qualifier.AT_MOST, most, "mph"));
                wind(draft, Draft.amount(Qualifier.AT_LEAST, 3, "mph"));
            }
            default -> {
                draft.paragraph("Do not spray if winds are less than 2 mph or more than " + most + " mph.");
                wind(draft, Draft.amount(Qualifier.AT_LEAST, 2, "mph"));
                wind(draft, Draft.amount(Qualifier.AT_MOST, most, "mph"));
            }
        }
        if (draft.chance(2)) {
            draft.paragraph(
                    draft.pick(
                            "Ground boom height must not exceed 24 inches above the target.",
                            "For ground boom applications, do not release spray at a height greater than 24 inches above the crop canopy."));
            draft.truth(
                    LabelKind.BOOM, new LabelContent.Measured(Draft.amount(Qualifier.AT_MOST, 24, "in"), Way.GROUND));
        }
        if (draft.chance(3)) {
            draft.paragraph(
                    "For aerial applications, do not release spray at a height greater than 10 ft above the crop canopy.");
            draft.truth(LabelKind.BOOM, new LabelContent.Measured(Draft.amount(Qualifier.AT_MOST, 10, "ft"), Way.AIR));
        }
    }

    private static void drops(Draft draft, Droplets finest, @org.jspecify.annotations.Nullable Droplets coarsest) {
        draft.truth(LabelKind.DROPLETS, new LabelContent.Drops(finest, coarsest, Way.ANY));
    }

    private static void wind(Draft draft, Amount amount) {
        draft.truth(LabelKind.WIND, new LabelContent.Measured(amount, Way.ANY));
    }

    private static void carrier(Draft draft) {
        int ground = List.of(10, 15, 20).get(draft.random.nextInt(3));
        int air = List.of(2, 3, 5).get(draft.random.nextInt(3));
        draft.paragraph(draft.pick(
                "Apply in a minimum of " + ground + " gallons of water per acre by ground or a minimum of " + air
                        + " gallons of water per acre by air.",
                "Ground application: use at least " + ground
                        + " gallons of spray solution per acre. Aerial application: use at least " + air
                        + " gallons of spray solution per acre.",
                "Use a minimum spray volume of " + ground + " GPA for ground application and " + air
                        + " GPA minimum for aerial application."));
        draft.truth(
                LabelKind.CARRIER,
                new LabelContent.Measured(Draft.amount(Qualifier.AT_LEAST, ground, "gal/ac"), Way.GROUND));
        draft.truth(
                LabelKind.CARRIER, new LabelContent.Measured(Draft.amount(Qualifier.AT_LEAST, air, "gal/ac"), Way.AIR));
    }

    private static void rain(Draft draft) {
        if (draft.chance(2)) {
            int hours = List.of(1, 2, 4, 6).get(draft.random.nextInt(4));
            String unit = hours == 1 ? " hour" : " hours";
            draft.paragraph(draft.pick(
                    "This product is rainfast " + hours + unit + " after application.",
                    "Rainfall within " + hours + unit + " after application may reduce control.",
                    "Rainfast within " + hours + unit + "."));
            draft.truth(LabelKind.RAINFAST, new LabelContent.Measured(Draft.exactly(hours, "h"), Way.ANY));
        }
        if (draft.chance(3)) {
            draft.paragraph("Do not apply if rainfall is expected within 48 hours.");
            draft.truth(LabelKind.RAIN_AHEAD, new LabelContent.Measured(Draft.exactly(48, "h"), Way.ANY));
        }
    }

    private static void mixing(Draft draft) {
        switch (draft.random.nextInt(4)) {
            case 0 -> {
                draft.paragraph("Do not tank mix with organophosphate insecticides or liquid fertilizer.");
                draft.text(LabelKind.MIX_BAN, "organophosphate insecticides");
                draft.text(LabelKind.MIX_BAN, "liquid fertilizer");
            }
            case 1 -> {
                draft.paragraph(
                        "Do not mix this product with products containing chlorpyrifos, terbufos, or malathion.");
                draft.text(LabelKind.MIX_BAN, "chlorpyrifos");
                draft.text(LabelKind.MIX_BAN, "terbufos");
                draft.text(LabelKind.MIX_BAN, "malathion");
            }
            case 2 -> {
                draft.paragraph("Do not tank mix this product with ammonium sulfate because drift may increase.");
                draft.text(LabelKind.MIX_BAN, "ammonium sulfate");
            }
            default -> draft.paragraph("Test compatibility in a jar before mixing.");
        }
    }
}
