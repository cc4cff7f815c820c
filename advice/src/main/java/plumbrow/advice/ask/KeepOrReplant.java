package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.stand.StandCount;
import plumbrow.science.reference.TypicalValue;

/** Keep a poor stand, or replant it? */
final class KeepOrReplant extends FieldQuestion {
    private static final String SEED = "Seed";
    private static final String AGAIN = "Seed for replanting";
    private static final double COUNT_TIMES = 1.15;
    private static final int COUNTED_DAYS = 16;
    private static final int AGAIN_DAYS = 6;

    KeepOrReplant() {
        super(
                "replant",
                "Replant, or keep the stand?",
                "corn or soybeans that came up poorly",
                Box.choice("crop", "Crop", "", "corn", "corn", "soybean", "soybeans"),
                STATE,
                PRICE,
                YIELD,
                Box.number(
                                "plants",
                                "Plants that live",
                                "plants/ac",
                                "ten places; a thousandth of an acre × 1,000",
                                0,
                                300_000)
                        .costing(20),
                Box.day("planted", "Planted on", "month/day"),
                Box.day("again", "Could be replanted on", "month/day"),
                Box.number(
                        "seed",
                        "Seed for replanting",
                        "$ a unit",
                        "80,000 kernels or 140,000 soybeans; 0 if free",
                        0,
                        500),
                Box.number(
                        "payment",
                        "Insurance pays for replanting",
                        "$/ac",
                        "ask the agent before tearing it up",
                        0,
                        200),
                Box.number("killing", "Killing the old stand", "$/ac", "herbicide or tillage with its trip", 0, 100),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return cropOf(answers, Crop.CORN);
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of("plants", "poor stand", "seed", price(crop(answers)), "killing", "killing a poor stand");
    }

    @Override
    Map<String, String> days(LocalDate asOf) {
        LocalDate planted = LocalDate.of(Draft.year(asOf), 5, 4);
        LocalDate again = planted.plusDays(COUNTED_DAYS + AGAIN_DAYS);
        return Map.of(
                "planted", planted.getMonthValue() + "/" + planted.getDayOfMonth(),
                "again", again.getMonthValue() + "/" + again.getDayOfMonth());
    }

    private static String price(Crop crop) {
        return crop == Crop.CORN ? "replant seed price" : "seed price";
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        Draft draft = new Draft(answers, crop, asOf);
        LocalDate planted = answers.days().getOrDefault("planted", LocalDate.of(draft.year(), 5, 4));
        LocalDate again = answers.days().getOrDefault("again", planted.plusDays(COUNTED_DAYS + AGAIN_DAYS));
        LocalDate replanted = again.isAfter(planted.plusDays(1)) ? again : planted.plusDays(2);
        LocalDate counted = replanted.minusDays(1);
        TypicalValue typical = draft.typical("poor stand");
        Double plants = answers.numbers().get("plants");
        draft.stand(new StandCount(
                Draft.FIELD,
                planted,
                counted,
                plants == null ? Draft.spread(typical) : Draft.about(plants, COUNT_TIMES, 400_000),
                null,
                answers.numbers().get("payment"),
                plants == null ? typical.words() : "counted, " + Draft.TOLD));
        draft.told("plants counted", "plants");
        String first = crop == Crop.CORN ? "seed price, traited" : "seed price";
        draft.product(
                SEED,
                ProductKind.SEED,
                draft.typical(first).likely(),
                FarmUnit.UNIT,
                draft.typical(first).words());
        draft.product(
                AGAIN,
                ProductKind.SEED,
                draft.number("seed", price(crop)),
                FarmUnit.UNIT,
                draft.source("seed", price(crop)));
        draft.told("price: " + AGAIN, "seed");
        double perUnit = crop == Crop.CORN ? 80_000 : 140_000;
        draft.seed(SEED, perUnit, null, 0);
        draft.seed(AGAIN, perUnit, null, 0);
        double seeds = draft.typical("seeding rate").likely();
        draft.program("Keep the stand", true, "", passes(draft, seeds, planted, List.of()));
        draft.program(
                "Replant",
                false,
                "",
                passes(
                        draft,
                        seeds,
                        planted,
                        List.of(
                                Draft.pass(
                                        PassKind.TILLAGE,
                                        replanted,
                                        null,
                                        null,
                                        100,
                                        draft.number("killing", "killing a poor stand"),
                                        new Distribution.Fixed(0)),
                                draft.planting(AGAIN, seeds, FarmUnit.SEEDS, 100, replanted))));
        return draft.done();
    }

    private static List<Pass> passes(Draft draft, double seeds, LocalDate planted, List<Pass> more) {
        List<Pass> passes = new ArrayList<>();
        passes.add(draft.planting(SEED, seeds, FarmUnit.SEEDS, 100, planted));
        passes.addAll(more);
        passes.add(draft.harvest());
        return passes;
    }
}
