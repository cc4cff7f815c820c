package plumbrow.documents.label.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Setback;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.Task;
import plumbrow.documents.label.Way;
import plumbrow.documents.label.grammar.CropList;
import plumbrow.documents.sheet.Amount;

/** Rows about ground, water, bees, the next crop, the tank and the people. */
final class GroundRows {
    private static final double FEET_PER_MILE = 5280;
    private static final double FEET_PER_YARD = 3;

    private GroundRows() {}

    /** Distances for spraying; one for mixing and loading alone is no setback of the sprayed field. */
    static List<Proposal<Setback>> setbacks(LabelPaper label, String product) {
        List<Proposal<Setback>> rows = new ArrayList<>();
        for (LabelReading.Stated stated : label.all(LabelKind.SETBACK)) {
            if (stated.content() instanceof LabelContent.Distance one
                    && one.kind() != null
                    && !one.mixing()
                    && one.way() != Way.AIR) {
                rows.add(new Proposal<>(
                        new Setback(
                                product,
                                one.kind(),
                                feet(one.distance()),
                                one.downwind(),
                                Values.source(product, stated)),
                        Map.of("distance_ft", stated)));
            }
        }
        return rows;
    }

    private static double feet(Amount distance) {
        return switch (distance.unit()) {
            case "mile" -> distance.high() * FEET_PER_MILE;
            case "yd" -> distance.high() * FEET_PER_YARD;
            default -> distance.high();
        };
    }

    static List<Proposal<PlantBack>> plantBacks(LabelPaper label, String product) {
        List<Proposal<PlantBack>> rows = new ArrayList<>();
        for (LabelReading.Stated stated : label.all(LabelKind.PLANT_BACK)) {
            if (stated.content() instanceof LabelContent.Interval one) {
                LabelReading sure = label.sameMatter(stated);
                for (String crop : crops(one.crop())) {
                    rows.add(new Proposal<>(
                            new PlantBack(
                                    product,
                                    crop,
                                    Values.days(sure),
                                    null,
                                    null,
                                    one.condition(),
                                    Values.source(product, stated)),
                            Map.of("days", sure)));
                }
            }
        }
        return rows;
    }

    /** The crops of a row one by one, as the plant-back check asks for them. */
    private static List<String> crops(String printed) {
        return printed.toLowerCase(Locale.ROOT).matches(".*(?:other|not listed|all crops).*")
                ? List.of(PlantBack.ANY_OTHER)
                : CropList.of(printed);
    }

    static List<Proposal<MixRule>> mixRules(LabelPaper label, String product) {
        return label.all(LabelKind.MIX_BAN).stream()
                .map(stated -> new Proposal<>(
                        new MixRule(product, stated.words(), MixRule.Word.FORBIDDEN, Values.source(product, stated)),
                        Map.<String, LabelReading>of("word", stated)))
                .toList();
    }

    static Proposal<ProductCare> care(LabelPaper label, String product) {
        Map<String, LabelReading> grounds = new LinkedHashMap<>();
        LabelReading ahead = label.of(LabelKind.RAIN_AHEAD);
        Set<String> wear = new LinkedHashSet<>();
        for (LabelReading.Stated stated : label.all(LabelKind.GEAR)) {
            if (stated.content() instanceof LabelContent.Gear gear && gear.task() != Task.EARLY_ENTRY) {
                wear.add(gear.item());
            }
        }
        grounds.put("restricted_use", label.of(LabelKind.RESTRICTED_USE));
        grounds.put("bulletin", label.of(LabelKind.BULLETIN));
        grounds.put("groundwater", label.of(LabelKind.GROUND_WATER));
        grounds.put("bees", label.of(LabelKind.BEES));
        grounds.put("saturated_soil", label.of(LabelKind.SATURATED_SOIL));
        grounds.put("rain_ahead_hours", ahead);
        grounds.put("wear", label.of(LabelKind.GEAR));
        Amount hours = Values.measured(ahead);
        return new Proposal<>(
                new ProductCare(
                        product,
                        null,
                        ask(grounds, "restricted_use"),
                        ask(grounds, "bulletin"),
                        ask(grounds, "groundwater"),
                        ask(grounds, "bees"),
                        ask(grounds, "saturated_soil"),
                        hours == null ? null : Integer.valueOf((int) Math.ceil(hours.high())),
                        wear.isEmpty() ? null : wear,
                        Values.source(product, grounds.values().toArray(LabelReading[]::new))),
                grounds);
    }

    /** A statement found is a yes; none found is unknown, for it may stand there in words nobody thought of. */
    private static Ask ask(Map<String, LabelReading> grounds, String property) {
        return grounds.get(property) instanceof LabelReading.Stated ? Ask.YES : Ask.UNKNOWN;
    }
}
