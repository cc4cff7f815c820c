package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.SeedRights;

/** Plant seed saved from the bin, or buy it? */
final class SavedOrBought extends FieldQuestion {
    private static final String BOUGHT = "Bought seed";
    private static final String SAVED = "Saved seed";

    /** Seeds in a pound. Common practice, no source. */
    private static final double SOYBEANS_A_POUND = 2800;

    private static final double WHEAT_A_POUND = 14_000;
    private static final double LOT_ACRES = 200;
    private static final double BOUGHT_GERMINATION = 90;

    SavedOrBought() {
        super(
                "saved-seed",
                "Plant saved seed, or buy it?",
                "soybeans or wheat from the own bin",
                Box.choice("crop", "Crop", "corn hybrids don’t breed true", "soybean", "soybeans", "wheat", "wheat"),
                STATE,
                PRICE,
                YIELD,
                Box.number("bought", "Price of bought seed", "$", "140,000 soybeans, or a bushel of wheat", 1, 300),
                Box.number("germination", "Germination of the saved seed", "%", "of a test", 20, 100)
                        .costing(20),
                Box.number("behind", "Years since the variety was new", "years", "new ones yield more", 0, 40),
                Box.choice(
                        "right",
                        "May it be saved?",
                        "bag tag, patent, variety protection",
                        "asked",
                        "asked, nothing forbids it",
                        "forbidden",
                        "tag or patent forbids it"),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return cropOf(answers, Crop.SOYBEAN);
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of(
                "bought", bought(crop(answers)), "germination", "saved seed germination", "behind", "years behind");
    }

    private static String bought(Crop crop) {
        return crop == Crop.WHEAT ? "certified seed price" : "seed price";
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        boolean wheat = crop == Crop.WHEAT;
        Draft draft = new Draft(answers, crop, asOf);
        draft.typicalLine(AssumptionQuantity.GENETIC_LAG, "yield gained by new varieties each year");
        draft.product(
                BOUGHT,
                ProductKind.SEED,
                draft.number("bought", bought(crop)),
                wheat ? FarmUnit.BU : FarmUnit.UNIT,
                draft.source("bought", bought(crop)));
        draft.told("price: " + BOUGHT, "bought");
        double perPound = wheat ? WHEAT_A_POUND : SOYBEANS_A_POUND;
        draft.seed(
                BOUGHT,
                wheat ? null : 140_000.0,
                perPound,
                BOUGHT_GERMINATION,
                0,
                new Distribution.Fixed(100),
                null,
                SeedRights.UNASKED);
        draft.product(SAVED, ProductKind.SEED, 0, FarmUnit.BU, "the grain, its cleaning, treatment and tests");
        double bin = answers.numbers()
                .getOrDefault(
                        "price",
                        draft.typical(wheat ? "planning price" : "projected price")
                                .likely());
        draft.seed(
                SAVED,
                null,
                perPound,
                draft.number("germination", "saved seed germination"),
                0,
                new Distribution.Fixed(100),
                new SavedSeed(
                        draft.number("behind", "years behind"),
                        bin,
                        draft.typical("cleaning charge").likely(),
                        draft.typical("treating charge with product").likely(),
                        draft.typical("cleanout loss").likely(),
                        draft.typical("cost of a germination test").likely(),
                        LOT_ACRES),
                rights(answers.choice("right")));
        double seeds = draft.typical("seeding rate").likely();
        draft.program(
                "Buy seed", true, "", List.of(draft.planting(BOUGHT, seeds, FarmUnit.SEEDS, 100), draft.harvest()));
        draft.program(
                "Saved seed",
                false,
                "",
                List.of(draft.planting(SAVED, seeds * BOUGHT_GERMINATION / 100, FarmUnit.SEEDS, 100), draft.harvest()));
        return draft.done();
    }

    private static SeedRights rights(String right) {
        return switch (right) {
            case "asked" -> new SeedRights(Ask.NO, Ask.NO, Ask.NO, Ask.YES, Ask.NO);
            case "forbidden" -> new SeedRights(Ask.YES, Ask.UNKNOWN, Ask.UNKNOWN, Ask.UNKNOWN, Ask.NO);
            default -> SeedRights.UNASKED;
        };
    }
}
