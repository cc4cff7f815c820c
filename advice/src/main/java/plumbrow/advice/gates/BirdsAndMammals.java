package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.science.fate.Dissipation;
import plumbrow.science.fate.Food;
import plumbrow.science.fate.LevelOfConcern;
import plumbrow.science.fate.WildlifeDose;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * Whether residue on food may harm small birds and mammals that feed in the sprayed field.
 *
 * <p>Protects wildlife. A screen: it never bars. Residue is 240 ppm for each lb/ac on short grass, what earlier sprays left
 * of it added with a half-life of 35 days; a bird of 20 g and a mammal of 15 g eat nothing else. Dose over the LD50 for
 * that weight: from 0.1, the level for listed species, on it is conditional. An LD50 that the reference data lack counts as
 * the worst. An LD50 known only as more than a number gives a quotient that is at most so high. Unknown where a rate or
 * content is missing. Granules and treated seed are not in this screen.
 *
 * <p>Source: Fletcher et al. 1994; Nagy 1987; Mineau et al. 1996; levels: US FWS exercise on EPA quotients. Needs: rates
 * and content.
 */
final class BirdsAndMammals extends Question {
    private static final double LISTED_SPECIES = 0.1;
    private static final double HALF_LIFE_DAYS = 35;
    private static final String SOURCE = "Fletcher et al. 1994; Nagy 1987; EPA levels of concern for birds and mammals";
    private static final String CARE =
            "Keep grass edges and waterways unsprayed and take the lower rate, or choose another "
                    + "ingredient; look for listed species here.";

    /** A small animal that eats only from the field. */
    private enum Eater {
        BIRD("bird", 20, WildlifeDose.BOBWHITE_G, 0.15, Property.BOBWHITE_ORAL),
        MAMMAL("mammal", 15, WildlifeDose.RAT_G, -0.25, Property.RAT_ORAL);

        private final String word;
        private final double grams;
        private final double testedGrams;
        private final double power;
        private final Property lethal;

        Eater(String word, double grams, double testedGrams, double power, Property lethal) {
            this.word = word;
            this.grams = grams;
            this.testedGrams = testedGrams;
            this.power = power;
            this.lethal = lethal;
        }

        /** Dose of a day [mg/kg] for each ppm on the food. */
        double dosePerPpm() {
            double dry = this == BIRD ? WildlifeDose.birdDryGrams(grams) : WildlifeDose.mammalDryGrams(grams);
            return dry / (1 - Food.SHORT_GRASS.waterShare()) / grams;
        }

        double lethalMgPerKg(double tested) {
            return WildlifeDose.adjustedLd50(tested, grams, testedGrams, power);
        }
    }

    BirdsAndMammals() {
        super("birds-and-mammals", Protects.WILDLIFE, "May residue on food harm birds and mammals?");
    }

    @Override
    public List<Finding> check(Case at) {
        Map<String, List<Dose>> byIngredient = new TreeMap<>();
        at.all().stream()
                .filter(application -> application.pass() == null || application.throughAir())
                .flatMap(application -> Dose.of(at, application))
                .forEach(dose -> byIngredient
                        .computeIfAbsent(dose.ingredient().name(), name -> new ArrayList<>())
                        .add(dose));
        return byIngredient.values().stream()
                .filter(doses ->
                        doses.stream().anyMatch(dose -> dose.application().pass() != null))
                .flatMap(this::judge)
                .map(finding -> finding.standingIn(SOURCE))
                .toList();
    }

    private Stream<Finding> judge(List<Dose> doses) {
        Ingredient ingredient = doses.get(0).ingredient();
        if (doses.stream().anyMatch(dose -> dose.poundsPerAcre() == null)) {
            return Stream.of(unknown(
                    ingredient.name(),
                    "How much goes on an acre is not known.",
                    "Write the rate in the unit of the product's content."));
        }
        double ppm = Food.SHORT_GRASS.upperPpm() * mostLeft(doses);
        return Stream.of(Eater.values()).map(eater -> judge(ingredient, eater, ppm));
    }

    private Finding judge(Ingredient ingredient, Eater eater, double ppm) {
        String subject = ingredient.name() + ", " + eater.word;
        double dose = ppm * eater.dosePerPpm();
        Double tested = ingredient.number(eater.lethal);
        if (tested == null) {
            return conditional(
                            subject,
                            "The reference data lack the LD50 of " + ingredient.name() + " for this " + eater.word
                                    + ": unknown, and counted as harmful.",
                            CARE)
                    .lacking(ingredient.name(), "LD50 of a " + eater.word);
        }
        double quotient = dose / eater.lethalMgPerKg(tested);
        boolean atMost =
                ingredient.bound(eater.lethal).filter(bound -> bound.limit()).isPresent();
        List<String> reached = LevelOfConcern.reached(quotient, eater.word, "acute");
        String says = "Eating short grass of the field brings " + (atMost ? "at most " : "") + Numbers.read(quotient)
                + " of what kills half; "
                + (reached.isEmpty() ? "no level reached." : "reached: " + DriftToWater.levels(reached) + ".");
        Finding finding = reached.isEmpty() ? clear(subject, says) : conditional(subject, says, CARE);
        return finding.against(quotient, LISTED_SPECIES, "of the LD50");
    }

    /** The most that lies on an acre at once [lb/ac]; a pass without a day is taken on the day of each other. */
    private static double mostLeft(List<Dose> doses) {
        return doses.stream()
                .mapToDouble(last -> doses.stream()
                        .mapToDouble(one -> left(one, last.application().date()))
                        .sum())
                .max()
                .orElse(0);
    }

    private static double left(Dose dose, @Nullable LocalDate on) {
        LocalDate applied = dose.application().date();
        double pounds = Objects.requireNonNull(dose.poundsPerAcre());
        if (applied == null || on == null) {
            return pounds;
        }
        long days = ChronoUnit.DAYS.between(applied, on);
        return days < 0 ? 0 : pounds * Dissipation.leftShare((double) days, HALF_LIFE_DAYS, 1);
    }
}
