package plumbrow.advice.weighing;

import java.time.LocalDate;
import java.util.random.RandomGenerator;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** Fields with something of everything: several insects, weeds, traits, lots, injury and delay, from a seeded generator. */
final class RandomField {
    private RandomField() {}

    static OneField of(RandomGenerator random) {
        OneField field = new OneField()
                .realStands()
                .shares(0.5 + random.nextDouble() / 2, random.nextDouble())
                .assumptions(
                        AssumptionQuantity.PRICE, new Distribution.Lognormal(3 + 3 * random.nextDouble(), 0.25, 0.6))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Weibull(150 + 60 * random.nextDouble(), 0.2))
                .assumptions(AssumptionQuantity.HANDLING, pert(random, 0.1, 0.4))
                .assumptions(AssumptionQuantity.GENETIC_LAG, pert(random, 0.5, 2))
                .assumptions(AssumptionQuantity.DELAY_LOSS, pert(random, 0.2, 1.2))
                .assumptions(AssumptionQuantity.PRICE_YIELD_TIE, new Distribution.Fixed(-0.3))
                .seed("Single", 95 + 20 * random.nextDouble(), 5, pert(random, -3, 6), "Cry3Bb1")
                .seed("Pyramid", 105 + 20 * random.nextDouble(), 10, pert(random, -3, 6), "Cry3Bb1", "Cry34/35")
                .seed("Conventional", 70, 0, pert(random, -4, 4))
                .trait("Cry3Bb1", "Cry3", "corn rootworm", pert(random, 0.7, 0.95))
                .trait("Cry34/35", "Cry34/35", "corn rootworm", pert(random, 0.7, 0.95))
                .trait("Cry3Bb1", "Cry3", "corn borer", pert(random, 0.5, 0.9))
                .doubt("Cry3", "corn rootworm", random.nextDouble() / 2, 0.2)
                .insecticide("Guard", 2 + 2 * random.nextDouble())
                .control("Guard", "corn rootworm", 3, pert(random, 0.3, 0.6))
                .control("Guard", "corn rootworm", 6, pert(random, 0.6, 0.9))
                .control("Guard", "waterhemp", 6, pert(random, 0.0, 0.3))
                .insect("corn rootworm", pert(random, 0.1, 2.5), pert(random, 10, 18))
                .insect("corn borer", pert(random, 0, 2), pert(random, 2, 6))
                .weed("waterhemp", pert(random, 1, 30), 3, 60)
                .weed("giant foxtail", pert(random, 1, 40), 1, 40);
        return field.program("plain", true, OneField.plant("Conventional"), OneField.harvest(2))
                .program("single", false, OneField.plant("Single"), OneField.harvest(2))
                .program(
                        "block and spray",
                        false,
                        OneField.plant(1, "Pyramid", 80),
                        OneField.plant(2, "Conventional", 20),
                        OneField.pass(
                                3,
                                PassKind.SPRAY,
                                LocalDate.of(2026, 5, 3),
                                "Guard",
                                new Amount(2 + 4 * random.nextDouble(), FarmUnit.FL_OZ),
                                60,
                                pert(random, 0, 3),
                                2),
                        OneField.harvest(4));
    }

    private static Distribution pert(RandomGenerator random, double low, double high) {
        return new Distribution.Pert(low, low + (high - low) * random.nextDouble(), high);
    }
}
