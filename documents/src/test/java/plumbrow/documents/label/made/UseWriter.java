package plumbrow.documents.label.made;

import static plumbrow.documents.label.made.FrontWriter.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.Soil;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Crops with their rates, limits and intervals. */
final class UseWriter {
    private static final List<String> TIMINGS =
            List.of("Preemergence", "Postemergence", "Early postemergence", "Burndown", "At planting");
    private static final List<String> TEXTURES =
            List.of("Coarse (sand, loamy sand, sandy loam)", "Medium (loam, silt loam)", "Fine (clay loam, clay)");

    private UseWriter() {}

    static void write(Draft draft, Pesticide product) {
        if (draft.layout.rates() == Layout.Rates.ONE_TABLE) {
            draft.heading("Use Rates");
            oneTable(draft, product);
            return;
        }
        for (Pesticide.Use use : product.uses()) {
            draft.heading(use.crop());
            switch (draft.layout.rates()) {
                case TABLE_EACH_CROP -> table(draft, use);
                case SOIL_MATRIX -> matrix(draft, use);
                case SOIL_ROWS -> soils(draft, use);
                default -> sentence(draft, use);
            }
            limits(draft, use, product);
        }
    }

    private static void rate(
            Draft draft, Pesticide.Use use, Soil soil, double low, double high, String timing, String method) {
        draft.truth(
                LabelKind.USE_RATE,
                new LabelContent.Use(use.crop(), soil, Draft.range(low, high, use.unit() + "/ac"), timing, method));
    }

    private static String range(Draft draft, double low, double high) {
        return low == high ? number(low) : number(low) + draft.pick(" to ", "-", " - ", "–") + number(high);
    }

    private static String unit(Draft draft, String unit) {
        return switch (unit) {
            case "fl oz" -> draft.pick("fl oz", "fl. oz.", "fluid ounces");
            case "oz" -> draft.pick("oz", "ounces");
            case "pt" -> draft.pick("pt", "pints");
            default -> draft.pick("qt", "quarts");
        };
    }

    private static String amount(Draft draft, double low, double high, String unit) {
        return range(draft, low, high) + " " + unit(draft, unit);
    }

    private static String acre(Draft draft) {
        return draft.pick("/A", " per acre", "/acre");
    }

    private static void sentence(Draft draft, Pesticide.Use use) {
        String timing = TIMINGS.get(draft.random.nextInt(TIMINGS.size())).toLowerCase(Locale.ROOT);
        String method = draft.pick("broadcast", "", "");
        String amount = amount(draft, use.low(), use.high(), use.unit());
        draft.paragraph(draft.pick(
                "Apply " + amount + acre(draft) + " " + timing
                        + (method.isEmpty() ? "" : " as a " + method + " treatment") + ".",
                "For " + timing + " use, apply at a rate of " + amount + " of this product per acre"
                        + (method.isEmpty() ? "" : " " + method) + ".",
                (method.isEmpty() ? "A" : "B").equals("A")
                        ? "Use " + amount + acre(draft) + " for " + timing + " control of listed pests."
                        : "Apply " + amount + acre(draft) + " " + timing + " " + method + "."));
        rate(draft, use, Soil.ANY, use.low(), use.high(), timing, method);
    }

    private static void table(Draft draft, Pesticide.Use use) {
        String one = TIMINGS.get(draft.random.nextInt(2));
        String two = TIMINGS.get(2 + draft.random.nextInt(3));
        String head = unit(draft, use.unit()) + draft.pick("/A", "/acre", " per acre");
        List<List<String>> rows = List.of(
                List.of(one, range(draft, use.low(), use.high()), "Apply to clean seedbeds or small weeds."),
                List.of(two, number(use.low()), "See the general directions."));
        draft.blocks.add(new Block.Table(
                List.of(28, 26, 46),
                List.of(
                        draft.pick("Timing", "Application timing"),
                        draft.pick("Rate (", "Use rate (") + head + ")",
                        "Remarks"),
                rows));
        rate(draft, use, Soil.ANY, use.low(), use.high(), one, "");
        rate(draft, use, Soil.ANY, use.low(), use.low(), two, "");
    }

    private static void matrix(Draft draft, Pesticide.Use use) {
        draft.paragraph("Broadcast rates per acre for preemergence use:");
        String head = unit(draft, use.unit()) + "/A";
        List<List<String>> rows = new ArrayList<>();
        double step = use.unit().endsWith("oz") ? 1 : .25;
        for (int i = 0; i < TEXTURES.size(); i++) {
            double low = use.low() + i * step;
            rows.add(List.of(
                    TEXTURES.get(i), number(low) + " " + head, range(draft, low + step, low + 2 * step) + " " + head));
            rate(
                    draft,
                    use,
                    new Soil(TEXTURES.get(i), Draft.amount(Qualifier.LESS_THAN, 3, "%")),
                    low,
                    low,
                    "preemergence",
                    "");
            rate(
                    draft,
                    use,
                    new Soil(TEXTURES.get(i), Draft.amount(Qualifier.AT_LEAST, 3, "%")),
                    low + step,
                    low + 2 * step,
                    "preemergence",
                    "");
        }
        draft.blocks.add(new Block.Table(
                List.of(44, 28, 28),
                List.of("Soil texture", "Less than 3% organic matter", "3% organic matter or more"),
                rows));
    }

    private static void soils(Draft draft, Pesticide.Use use) {
        List<List<String>> rows = new ArrayList<>();
        double step = use.unit().endsWith("oz") ? 1 : .25;
        String head = unit(draft, use.unit());
        for (int i = 0; i < TEXTURES.size(); i++) {
            double low = use.low() + i * step;
            boolean rich = i == 2;
            rows.add(List.of(TEXTURES.get(i), rich ? "3% or more" : "1 to 3%", range(draft, low, low + step)));
            Amount matter = rich ? Draft.amount(Qualifier.AT_LEAST, 3, "%") : Draft.range(1, 3, "%");
            rate(draft, use, new Soil(TEXTURES.get(i), matter), low, low + step, "", "");
        }
        draft.blocks.add(new Block.Table(
                List.of(46, 26, 28), List.of("Soil type", "Organic matter", "Rate per acre (" + head + ")"), rows));
    }

    private static void oneTable(Draft draft, Pesticide product) {
        List<List<String>> rows = new ArrayList<>();
        String unit = product.uses().get(0).unit();
        String head = unit(draft, unit);
        for (Pesticide.Use use : product.uses()) {
            String timing = TIMINGS.get(draft.random.nextInt(TIMINGS.size()));
            rows.add(List.of(
                    use.crop(),
                    timing,
                    range(draft, use.low(), use.high()),
                    number(use.season()),
                    String.valueOf(use.times()),
                    String.valueOf(use.apart()),
                    String.valueOf(use.harvest())));
            rate(draft, use, Soil.ANY, use.low(), use.high(), timing, "");
            most(draft, use, use.season(), use.unit(), Of.PRODUCT, "", "year");
            draft.truth(LabelKind.APPLICATIONS, new LabelContent.Count(use.crop(), use.times(), "year"));
            draft.truth(
                    LabelKind.REAPPLICATION,
                    new LabelContent.Interval(use.crop(), Draft.exactly(use.apart(), "d"), ""));
            draft.truth(
                    LabelKind.PRE_HARVEST,
                    new LabelContent.Interval(use.crop(), Draft.exactly(use.harvest(), "d"), ""));
        }
        draft.blocks.add(new Block.Table(
                List.of(18, 17, 13, 15, 14, 12, 11),
                List.of(
                        "Crop",
                        "Timing",
                        "Rate (" + head + "/A)",
                        "Max. per year (" + head + "/A)",
                        "Max. applications per year",
                        "Minimum interval (days)",
                        "PHI (days)"),
                rows));
    }

    private static void most(
            Draft draft, Pesticide.Use use, double amount, String unit, Of of, String ingredient, String per) {
        draft.truth(
                LabelKind.SEASON_MAX,
                new LabelContent.Most(
                        use.crop(), Draft.amount(Qualifier.AT_MOST, amount, unit + "/ac"), of, ingredient, per));
    }

    private static void limits(Draft draft, Pesticide.Use use, Pesticide product) {
        List<String> items = new ArrayList<>();
        String per = draft.pick("year", "season");
        String printed = per.equals("season")
                ? draft.pick("season", "crop season", "growing season")
                : draft.pick("year", "calendar year");
        String amount = number(use.season()) + " " + unit(draft, use.unit());
        items.add(draft.pick(
                "Do not apply more than " + amount + acre(draft) + " per " + printed,
                "Do not exceed a total of " + amount + " of this product per acre per " + printed,
                "Maximum " + (per.equals("year") ? "annual" : "seasonal") + " rate: " + amount + acre(draft)));
        most(draft, use, use.season(), use.unit(), Of.PRODUCT, "", per);
        if (draft.chance(2)) {
            Pesticide.Active active = product.actives().get(0);
            String name = active.name().toLowerCase(Locale.ROOT);
            items.add(draft.pick(
                    "Do not apply more than 2.5 lb " + (active.acid() ? "a.e." : "a.i.") + " of " + name
                            + " per acre per year",
                    "Do not exceed 2.5 pounds of " + name + (active.acid() ? " acid equivalent" : " active ingredient")
                            + " per acre per year"));
            most(draft, use, 2.5, "lb", active.acid() ? Of.ACID : Of.ACTIVE, name, "year");
        }
        List<String> words = List.of("zero", "one", "two", "three");
        items.add(draft.pick(
                "Do not make more than " + words.get(use.times()) + " applications per " + per,
                "Maximum number of applications per " + per + ": " + use.times(),
                "Make no more than " + use.times() + " applications per " + per));
        draft.truth(LabelKind.APPLICATIONS, new LabelContent.Count(use.crop(), use.times(), per));
        if (use.times() > 1) {
            items.add(draft.pick(
                    "Allow at least " + use.apart() + " days between applications",
                    "Minimum retreatment interval: " + use.apart() + " days",
                    "Sequential applications must be at least " + use.apart() + " days apart"));
            draft.truth(
                    LabelKind.REAPPLICATION,
                    new LabelContent.Interval(use.crop(), Draft.exactly(use.apart(), "d"), ""));
        }
        items.add(draft.pick(
                "Do not apply within " + use.harvest() + " days of harvest",
                "Pre-harvest interval (PHI): " + use.harvest() + " days",
                "Do not harvest within " + use.harvest() + " days after the last application",
                "Allow a minimum of " + use.harvest() + " days between the last application and harvest"));
        draft.truth(
                LabelKind.PRE_HARVEST, new LabelContent.Interval(use.crop(), Draft.exactly(use.harvest(), "d"), ""));
        feed(draft, use, items);
        items.addAll(StageWriter.ofCrop(draft, use));
        if (draft.layout.rates() == Layout.Rates.SENTENCES) {
            draft.paragraph(String.join(". ", items) + ".");
        } else {
            draft.paragraph("Restrictions:");
            draft.bullets(items);
        }
    }

    private static void feed(Draft draft, Pesticide.Use use, List<String> items) {
        if (use.feed() > 0) {
            items.add(draft.pick(
                    "Do not graze or feed treated forage to livestock within " + use.feed() + " days of application",
                    "Allow " + use.feed() + " days between application and grazing or harvest for forage"));
            draft.truth(LabelKind.GRAZING, new LabelContent.Interval(use.crop(), Draft.exactly(use.feed(), "d"), ""));
        } else {
            String text = draft.pick(
                    "Do not graze livestock on treated fields or feed treated hay or straw",
                    "Do not feed treated forage to livestock");
            items.add(text);
            draft.truth(LabelKind.GRAZING, new LabelContent.Ban(use.crop(), text));
        }
    }
}
