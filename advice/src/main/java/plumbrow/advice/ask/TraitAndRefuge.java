package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.reference.TypicalValue;

/** Which trait, and with it which refuge: none, one rootworm protein with a block, two with the refuge in the bag. */
final class TraitAndRefuge extends FieldQuestion {
    private static final String BORER = "European corn borer";
    private static final String PLAIN = "Seed corn without traits";
    private static final String ONE = "Seed corn, one rootworm trait";
    private static final String TWO = "Seed corn, two rootworm traits";

    TraitAndRefuge() {
        super(
                "trait",
                "Which trait, and which refuge?",
                "corn rootworm and corn borer: no trait, one, two",
                STATE,
                PRICE,
                YIELD,
                Rootworm.HISTORY,
                Rootworm.INJURY,
                Box.number("plain", "Seed without traits", "$/80,000 kernels", "a bag", 10, 600),
                Box.number("one", "Seed with one rootworm trait", "$/80,000 kernels", "a bag", 10, 600),
                Box.number("two", "Seed with two", "$/80,000 kernels", "a bag", 10, 600),
                Rootworm.FAILED,
                Box.number("borers", "Corn borer larvae", "larvae/plant", "second generation, last year", 0, 20)
                        .costing(30),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return Crop.CORN;
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of(
                "injury", Rootworm.quantity(answers),
                "plain", "seed price, no traits",
                "one", "seed price, one rootworm trait",
                "two", "seed price, traited",
                "borers", "borer larvae per plant before scouting");
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Draft draft = new Draft(answers, Crop.CORN, asOf);
        Rootworm.into(draft);
        Borers.into(draft, "borers", 2);
        Rootworm.trait(draft, "rootworm trait A");
        Rootworm.trait(draft, "rootworm trait B");
        draft.trait("borer trait", "borer trait", BORER, "trait control of borers where it works");
        seed(draft, PLAIN, "plain", "seed price, no traits", 0);
        seed(draft, ONE, "one", "seed price, one rootworm trait", 0, "rootworm trait A", "borer trait");
        seed(draft, TWO, "two", "seed price, traited", 5, "rootworm trait A", "rootworm trait B", "borer trait");
        double seeds = draft.typical("seeding rate").likely();
        draft.program(
                "No trait", true, "", List.of(draft.planting(PLAIN, seeds, FarmUnit.SEEDS, 100), draft.harvest()));
        draft.program(
                "One trait, block refuge",
                false,
                "20 % of the acres without traits, as such tags commonly ask",
                List.of(
                        draft.planting(ONE, seeds, FarmUnit.SEEDS, 80),
                        draft.planting(PLAIN, seeds, FarmUnit.SEEDS, 20),
                        draft.harvest()));
        draft.program(
                "Two traits, refuge in the bag",
                false,
                "5 % in the bag, as such tags commonly ask",
                List.of(draft.planting(TWO, seeds, FarmUnit.SEEDS, 100), draft.harvest()));
        return draft.done();
    }

    private static void seed(Draft draft, String name, String box, String typical, double refugePct, String... traits) {
        draft.product(name, ProductKind.SEED, draft.number(box, typical), FarmUnit.UNIT, draft.source(box, typical));
        draft.told("price: " + name, box);
        draft.seed(name, 80_000.0, null, refugePct, traits);
    }

    /** Corn borers, as two questions ask about them. */
    static final class Borers {
        private Borers() {}

        static void into(Draft draft, String box, double times) {
            Double told = draft.answers().numbers().get(box);
            TypicalValue typical = draft.typical("borer larvae per plant before scouting");
            TypicalValue loss = draft.typical("loss per borer larva");
            Distribution pressure = told == null ? Draft.spread(typical) : Draft.about(told, times, 50);
            draft.insect(
                    BORER,
                    Measure.LARVAE_PER_PLANT,
                    pressure,
                    Draft.spread(loss),
                    0,
                    (told == null ? typical.words() : "counted, " + Draft.TOLD) + "; loss "
                            + loss.origin().source());
            draft.told("pressure: " + BORER, box);
        }
    }
}
