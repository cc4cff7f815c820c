package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.reference.TypicalValue;

/** Spray insects now, or leave them: aphids and leaf feeders in soybeans, borers in corn. */
final class SprayNowOrWait extends FieldQuestion {
    private static final String SPRAY = "Foliar insecticide";
    private static final String SEED = "Seed";
    private static final String APHID = "soybean aphid";
    private static final String LEAVES = "bean leaf beetle";
    private static final int LATER_DAYS = 7;

    /** Minnesota and Manitoba extension: 250 a plant on more than 80 % of plants, rising, R1 to R5. */
    private static final double THRESHOLD = 250;

    /** Common practice, no source: what comes of a count lies within this factor. */
    private static final double COUNT_WITHIN = 2.5;

    private static final double BORERS_TIMES = 1.6;
    private static final double LEAVES_TIMES = 1.6;

    SprayNowOrWait() {
        super(
                "spray-now",
                "Spray now, or leave them?",
                "soybean aphids, corn borers, leaf feeding in soybeans",
                Box.choice(
                        "pest",
                        "Insect",
                        "",
                        "aphids",
                        "soybean aphids",
                        "borers",
                        "corn borers",
                        "leaves",
                        "leaf feeding in soybeans"),
                STATE,
                PRICE,
                YIELD,
                Box.number(
                                "count",
                                "How many now",
                                "a plant, or % of leaf",
                                "aphids or borer larvae a plant; of leaf feeding the % still to be lost",
                                0,
                                20_000)
                        .costing(30),
                Box.number("cost", "Insecticide", "$/ac", "product only", 0, 100),
                Box.number("trip", "One spraying trip", "$/ac", "hired, or your own marginal cost", 0, 60),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return answers.choice("pest").equals("borers") ? Crop.CORN : Crop.SOYBEAN;
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of(
                "count",
                switch (answers.choice("pest")) {
                    case "borers" -> "borer larvae per plant before scouting";
                    case "leaves" -> "leaf lost before scouting";
                    default -> "aphids per plant before scouting";
                },
                "cost",
                "foliar insecticide price",
                "trip",
                "custom rate: spraying now");
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        Draft draft = new Draft(answers, crop, asOf);
        String pest;
        switch (answers.choice("pest")) {
            case "borers" -> {
                pest = "European corn borer";
                TraitAndRefuge.Borers.into(draft, "count", BORERS_TIMES);
                control(draft, pest, "insecticide control of borers");
            }
            case "leaves" -> {
                pest = LEAVES;
                leaves(draft);
                control(draft, pest, "foliar insecticide control of leaf feeders");
            }
            default -> {
                pest = APHID;
                aphids(draft);
                control(draft, pest, "foliar insecticide control of aphids");
            }
        }
        String price = crop == Crop.CORN ? "seed price, no traits" : "seed price";
        draft.product(
                SEED,
                ProductKind.SEED,
                draft.typical(price).likely(),
                FarmUnit.UNIT,
                draft.typical(price).words());
        draft.seed(SEED, crop == Crop.CORN ? 80_000.0 : 140_000.0, null, 0);
        LocalDate usual = LocalDate.of(draft.year(), 8, 1);
        LocalDate day =
                asOf.getYear() == draft.year() && asOf.getMonthValue() >= 6 && asOf.getMonthValue() <= 8 ? asOf : usual;
        Distribution run = Draft.spread(draft.typical("crop run down by spraying late"));
        program(draft, "Leave them", true, List.of());
        program(draft, "Spray now", false, List.of(draft.spray(SPRAY, 1, day, run)));
        if (pest.equals(APHID)) {
            program(
                    draft,
                    "Scout again, spray at 250",
                    false,
                    List.of(draft.spray(SPRAY, 1, day.plusDays(LATER_DAYS), run).waitingFor(again(draft))));
        }
        return draft.done();
    }

    private static void control(Draft draft, String pest, String typical) {
        draft.byTheAcre(SPRAY, ProductKind.INSECTICIDE, "cost", "foliar insecticide price");
        draft.control(SPRAY, pest, 1, typical);
    }

    private static void program(Draft draft, String name, boolean baseline, List<Pass> sprays) {
        List<Pass> passes = new ArrayList<>();
        passes.add(draft.planting(SEED, draft.typical("seeding rate").likely(), FarmUnit.SEEDS, 100));
        passes.addAll(sprays);
        passes.add(draft.harvest());
        draft.program(name, baseline, "", passes);
    }

    /** Scouted a week later: sprayed where 250 a plant are found, the published threshold. */
    private static ScoutingTrigger again(Draft draft) {
        return new ScoutingTrigger(
                APHID,
                THRESHOLD,
                "aphids/plant",
                1 / draft.typical("aphids at their peak over aphids now").likely(),
                COUNT_WITHIN,
                draft.typical("scouting aphids again").likely());
    }

    /** What aphids come to at their peak, from how many there are now. */
    private static void aphids(Draft draft) {
        TypicalValue before = draft.typical("aphids per plant before scouting");
        TypicalValue growth = draft.typical("aphids at their peak over aphids now");
        TypicalValue loss = draft.typical("loss per aphid at the peak");
        Double now = draft.answers().numbers().get("count");
        Distribution peak = now == null
                ? Draft.spread(before)
                : now == 0
                        ? new Distribution.Fixed(0)
                        : new Distribution.Pert(
                                now * growth.low().orElse(growth.likely()),
                                now * growth.likely(),
                                now * growth.high().orElse(growth.likely()));
        draft.insect(
                APHID,
                Measure.INSECTS_PER_PLANT,
                peak,
                Draft.spread(loss),
                0,
                (now == null
                                ? before.words()
                                : "counted now, " + Draft.TOLD + "; at the peak "
                                        + growth.origin().source())
                        + "; loss " + loss.origin().source());
        draft.told("pressure: " + APHID, "count");
    }

    private static void leaves(Draft draft) {
        TypicalValue before = draft.typical("leaf lost before scouting");
        TypicalValue loss = draft.typical("loss per % of leaf lost");
        Double now = draft.answers().numbers().get("count");
        draft.insect(
                LEAVES,
                Measure.LEAF_LOST,
                now == null ? Draft.spread(before) : Draft.about(now, LEAVES_TIMES, 100),
                Draft.spread(loss),
                0,
                (now == null ? before.words() : "judged now, " + Draft.TOLD) + "; loss "
                        + loss.origin().source());
        draft.told("pressure: " + LEAVES, "count");
    }
}
