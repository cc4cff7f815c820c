package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.program.Pass;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.reference.TypicalValue;

/** A weed as two questions ask about it, and the crop that it stands in. */
final class Weeds {
    static final Box CROP = Box.choice("crop", "Crop", "", "soybean", "soybeans", "corn", "corn");
    static final Box WEED = Box.choice(
            "weed",
            "The weed that matters most",
            "",
            "waterhemp",
            "waterhemp",
            "giant foxtail",
            "giant foxtail",
            "giant ragweed",
            "giant ragweed");
    static final Box DENSITY = Box.number(
                    "density", "Weeds before spraying", "plants/m²", "ten frames; 1 a square foot is 11", 0, 2000)
            .costing(30);
    private static final String SEED = "Seed";
    private static final double COUNTED_TIMES = 2;

    private Weeds() {}

    static String name(Answers answers) {
        String weed = answers.choice("weed");
        return weed.isEmpty() ? "waterhemp" : weed;
    }

    static void into(Draft draft) {
        String weed = name(draft.answers());
        TypicalValue density = draft.typical("density before scouting: " + weed);
        TypicalValue loss = draft.typical("loss per plant: " + weed);
        Double told = draft.answers().numbers().get("density");
        draft.weed(
                weed,
                told == null ? Draft.spread(density) : Draft.about(told, COUNTED_TIMES, 5000),
                Draft.spread(loss),
                draft.typical("most loss: " + weed).likely(),
                (told == null ? density.words() : "counted, " + Draft.TOLD) + "; loss per plant "
                        + loss.origin().source());
        draft.told("density: " + weed, "density");
    }

    static void seed(Draft draft, Crop crop) {
        String price = crop == Crop.CORN ? "seed price, traited" : "seed price";
        draft.product(
                SEED,
                ProductKind.SEED,
                draft.typical(price).likely(),
                FarmUnit.UNIT,
                draft.typical(price).words());
        draft.seed(SEED, crop == Crop.CORN ? 80_000.0 : 140_000.0, null, 0);
    }

    static void program(Draft draft, String name, boolean baseline, String note, Pass... sprays) {
        List<Pass> passes = new ArrayList<>();
        passes.add(draft.planting(SEED, draft.typical("seeding rate").likely(), FarmUnit.SEEDS, 100));
        passes.addAll(List.of(sprays));
        passes.add(draft.harvest());
        draft.program(name, baseline, note, passes);
    }

    /** So many days after planting. */
    static LocalDate after(Draft draft, int days) {
        return draft.day("planting day").plusDays(days);
    }

    static Distribution burn(Draft draft) {
        return Draft.spread(draft.typical("crop injury by a post spray"));
    }
}
