package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.science.reference.TypicalValue;

/** Treat the seed, or plant it bare? */
final class SeedTreatmentOrNone extends FieldQuestion {
    private static final String TREATMENT = "Seed treatment";
    private static final String BARE = "Seed, bare";
    private static final String TREATED = "Seed, treated";
    private static final double WHEAT_A_POUND = 14_000;

    SeedTreatmentOrNone() {
        super(
                "seed-treatment",
                "Is the seed treatment worth it?",
                "soybeans, corn or wheat: treated or bare",
                Box.choice("crop", "Crop", "", "soybean", "soybeans", "corn", "corn", "wheat", "wheat"),
                STATE,
                PRICE,
                YIELD,
                Box.number("seeds", "Seeding rate", "seeds/ac", "as dropped", 10_000, 2_500_000),
                Box.number(
                        "cost", "Treatment", "$ a unit", "80,000 kernels, 140,000 soybeans, a bushel of wheat", 0, 200),
                Box.number(
                        "kept", "Yield of bare seed", "% of treated", "of strips side by side, several years", 50, 105),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return cropOf(answers, Crop.SOYBEAN);
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of(
                "seeds", "seeding rate", "cost", "seed treatment price", "kept", "yield kept without a seed treatment");
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        boolean wheat = crop == Crop.WHEAT;
        Draft draft = new Draft(answers, crop, asOf);
        double perUnit = crop == Crop.CORN ? 80_000 : 140_000;
        String price = crop == Crop.CORN ? "seed price, traited" : wheat ? "certified seed price" : "seed price";
        FarmUnit unit = wheat ? FarmUnit.BU : FarmUnit.UNIT;
        for (String name : List.of(BARE, TREATED)) {
            draft.product(
                    name,
                    ProductKind.SEED,
                    draft.typical(price).likely(),
                    unit,
                    draft.typical(price).words());
        }
        TypicalValue typical = draft.typical("yield kept without a seed treatment");
        Double told = answers.numbers().get("kept");
        Distribution kept =
                told == null ? Draft.spread(typical) : new Distribution.Pert(Math.max(0, told - 3), told, told + 3);
        seed(draft, BARE, perUnit, wheat, kept);
        seed(draft, TREATED, perUnit, wheat, new Distribution.Fixed(100));
        draft.told("stand: " + BARE, "kept");
        double seeds = draft.number("seeds", "seeding rate");
        double units = wheat ? seeds / WHEAT_A_POUND / crop.poundsPerBushel() : seeds / perUnit;
        draft.product(
                TREATMENT,
                ProductKind.SEED_TREATMENT,
                draft.number("cost", "seed treatment price"),
                FarmUnit.UNIT,
                draft.source("cost", "seed treatment price"));
        draft.told("price: " + TREATMENT, "cost");
        draft.program(
                "Bare seed", true, "", List.of(draft.planting(BARE, seeds, FarmUnit.SEEDS, 100), draft.harvest()));
        draft.program(
                "Treated seed",
                false,
                "",
                List.of(
                        draft.planting(TREATED, seeds, FarmUnit.SEEDS, 100),
                        Draft.pass(
                                PassKind.GRANULE,
                                draft.day("planting day"),
                                TREATMENT,
                                new Amount(units, FarmUnit.UNIT),
                                100,
                                0,
                                new Distribution.Fixed(0)),
                        draft.harvest()));
        return draft.done();
    }

    private static void seed(Draft draft, String name, double perUnit, boolean wheat, Distribution kept) {
        draft.seed(name, wheat ? null : perUnit, wheat ? WHEAT_A_POUND : null, 92, 0, kept, null, SeedRights.UNASKED);
    }
}
