package plumbrow.app.rows;

import static plumbrow.app.rows.JointForm.finished;
import static plumbrow.app.rows.JointForm.fixed;
import static plumbrow.app.rows.JointForm.maybe;
import static plumbrow.app.rows.JointForm.part;
import static plumbrow.app.rows.JointForm.same;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** What is entered of a season step by step: the first field, what it brings, what presses on it, what is on the shelf. */
public final class EntryForms {
    private EntryForms() {}

    /** The first field, with its farm and the season around it. */
    public static JointForm start() {
        return new JointForm(
                "start",
                "The season and its first field",
                List.of(
                        part("season.", "season", "adviser=Your name, as adviser", "year=Harvest year", "as_of=Today"),
                        part("farms.", "farms", "farm=Farm", "grower=Grower, where it is not you"),
                        same(
                                part("fields.", "fields", "field=Field", "acres", "crop", "state", "county"),
                                Map.of("farm", "farms.farm"))));
    }

    /** What a bushel and an acre bring, in low, likely and high; only likely stands for a number without doubt. */
    public static JointForm money(Season season, Field field) {
        List<JointForm.Part> parts = new ArrayList<>();
        if (season.assumptions(field, AssumptionQuantity.PRICE).isEmpty()) {
            parts.add(assumption(
                    "price.",
                    "price",
                    "Price at harvest",
                    "$/bu",
                    Map.of("crop", field.crop().word())));
        }
        parts.add(assumption("yield.", "yield", "Yield of " + field.name(), "bu/ac", Map.of("field", field.name())));
        if (season.assumptions(field, AssumptionQuantity.HANDLING).isEmpty()) {
            parts.add(assumption(
                    "handling.",
                    "handling",
                    "Drying, haul and check-off",
                    "$/bu",
                    Map.of("crop", field.crop().word())));
        }
        return new JointForm("money", "What it brings", parts);
    }

    private static JointForm.Part assumption(
            String prefix, String quantity, String name, String unit, Map<String, String> whose) {
        Map<String, String> cells = new LinkedHashMap<>(whose);
        cells.put("quantity", quantity);
        cells.put("form", "pert");
        return finished(
                same(
                        fixed(
                                part(
                                        prefix,
                                        "assumptions",
                                        "b*=" + name + ", likely|" + unit + "|most likely",
                                        "a=lowest|" + unit
                                                + "|lowest believable; blank: no doubt about the likely value",
                                        "c=highest|" + unit + "|highest believable; blank likewise"),
                                cells),
                        Map.of("source", "at.source")),
                EntryForms::numberWhereOnlyLikely);
    }

    private static Map<String, String> numberWhereOnlyLikely(Map<String, String> row) {
        if (row.containsKey("a") || row.containsKey("c") || !row.containsKey("b")) {
            return row;
        }
        Map<String, String> number = new LinkedHashMap<>(row);
        number.put("a", row.getOrDefault("b", ""));
        number.remove("b");
        number.put("form", "number");
        return number;
    }

    public static JointForm insect(Field field) {
        return new JointForm(
                "insect",
                "An insect",
                List.of(same(
                        fixed(
                                part(
                                        "insects.",
                                        "insects",
                                        "insect",
                                        "measure=How it is counted",
                                        "pressure_likely=Pressure, likely",
                                        "pressure_low=Pressure, low",
                                        "pressure_high=Pressure, high",
                                        "loss_likely_pct=Yield lost for each unit",
                                        "scouted=Last scouted"),
                                Map.of("field", field.name())),
                        Map.of("source", "at.source"))));
    }

    public static JointForm weed(Field field) {
        return new JointForm(
                "weed",
                "A weed",
                List.of(same(
                        fixed(
                                part(
                                        "weeds.",
                                        "weeds",
                                        "weed",
                                        "density_likely=Plants, likely",
                                        "density_low=Plants, low",
                                        "density_high=Plants, high",
                                        "first_plant_loss_pct=Loss of the first plant",
                                        "most_loss_pct=Most loss"),
                                Map.of("field", field.name())),
                        Map.of("source", "at.source"))));
    }

    /** A seed of the shelf with what turns its price and rate into dollars an acre. */
    public static JointForm seed(Field field) {
        return new JointForm(
                "seed",
                "A seed",
                List.of(
                        same(
                                fixed(
                                        part(
                                                "tag.",
                                                "shelf",
                                                "product=Name on the tag",
                                                "price_usd",
                                                "priced_per=Price is for one"),
                                        Map.of("kind", "seed")),
                                Map.of("source", "at.source")),
                        same(
                                fixed(
                                        part(
                                                "seeds.",
                                                "seeds",
                                                "seeds_per_unit=Seeds in a bag or unit",
                                                "seeds_per_lb",
                                                "germination_pct",
                                                "traits"),
                                        Map.of("crop", field.crop().word())),
                                Map.of("product", "tag.product"))));
    }

    /** A product of the shelf with its label's rates on the crop of the field and what it does to a pest. */
    public static JointForm product(Field field) {
        return new JointForm(
                "product",
                "A product",
                List.of(
                        same(
                                part(
                                        "shelf.",
                                        "shelf",
                                        "product=Name on the label",
                                        "kind",
                                        "price_usd",
                                        "priced_per=Price is for one",
                                        "registration"),
                                Map.of("source", "at.source")),
                        same(
                                fixed(
                                        part(
                                                "label_uses.",
                                                "label_uses",
                                                "low_rate=Lowest rate of the label",
                                                "high_rate=Highest rate of the label",
                                                "rate_unit=Unit of rates"),
                                        Map.of("crop", field.crop().word())),
                                Map.of("product", "shelf.product", "source", "at.source")),
                        maybe(same(
                                part(
                                        "control.",
                                        "control",
                                        "pest=Controls this pest",
                                        "control_likely=Share controlled, likely",
                                        "control_low=Share controlled, low",
                                        "control_high=Share controlled, high"),
                                Map.of(
                                        "product",
                                        "shelf.product",
                                        "rate",
                                        "label_uses.high_rate",
                                        "rate_unit",
                                        "label_uses.rate_unit",
                                        "source",
                                        "at.source")))));
    }
}
