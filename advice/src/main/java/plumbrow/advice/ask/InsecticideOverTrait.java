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

/** Is a soil insecticide worth it over the rootworm trait: none, half the rate, the full rate? */
final class InsecticideOverTrait extends FieldQuestion {
    private static final String INSECTICIDE = "Soil insecticide";
    private static final String SEED = "Seed corn";

    InsecticideOverTrait() {
        super(
                "insecticide",
                "Is the soil insecticide worth it over the trait?",
                "corn rootworm: none, half rate, full rate",
                STATE,
                PRICE,
                YIELD,
                Box.choice(
                        "trait",
                        "Rootworm traits in the seed",
                        "as the bag tag says",
                        "none",
                        "none",
                        "one",
                        "one protein",
                        "two",
                        "two proteins"),
                Rootworm.HISTORY,
                Rootworm.INJURY,
                Rootworm.FAILED,
                Box.number("cost", "Insecticide, full rate", "$/ac", "product only", 0, 200),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return Crop.CORN;
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of("injury", Rootworm.quantity(answers), "cost", "soil insecticide price, full rate");
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Draft draft = new Draft(answers, Crop.CORN, asOf);
        Rootworm.into(draft);
        String trait = answers.choice("trait");
        List<String> traits = trait.equals("none")
                ? List.of()
                : trait.equals("two") ? List.of("rootworm trait A", "rootworm trait B") : List.of("rootworm trait A");
        for (String name : traits) {
            Rootworm.trait(draft, name);
        }
        draft.product(
                SEED,
                ProductKind.SEED,
                draft.typical(traits.isEmpty() ? "seed price, no traits" : "seed price, traited")
                        .likely(),
                FarmUnit.UNIT,
                draft.typical(traits.isEmpty() ? "seed price, no traits" : "seed price, traited")
                        .words());
        draft.seed(SEED, 80_000.0, null, traits.isEmpty() ? 0 : 5, traits.toArray(String[]::new));
        draft.byTheAcre(INSECTICIDE, ProductKind.INSECTICIDE, "cost", "soil insecticide price, full rate");
        draft.control(INSECTICIDE, Rootworm.INSECT, 0.5, "soil insecticide control, half rate");
        draft.control(INSECTICIDE, Rootworm.INSECT, 1, "soil insecticide control, full rate");
        program(draft, "No insecticide", 0);
        program(draft, "Half rate", 0.5);
        program(draft, "Full rate", 1);
        return draft.done();
    }

    private static void program(Draft draft, String name, double share) {
        List<Pass> passes = new ArrayList<>();
        passes.add(draft.planting(SEED, draft.typical("seeding rate").likely(), FarmUnit.SEEDS, 100));
        if (share > 0) {
            passes.add(Draft.pass(
                    PassKind.GRANULE,
                    draft.day("planting day"),
                    INSECTICIDE,
                    Draft.rate(share),
                    100,
                    draft.typical("granule trip").likely(),
                    new Distribution.Fixed(0)));
        }
        passes.add(draft.harvest());
        draft.program(name, share == 0, "", passes);
    }
}
