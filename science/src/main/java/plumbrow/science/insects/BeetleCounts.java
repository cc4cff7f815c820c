package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Rootworm beetles counted this year, against the thresholds for next year's corn on the field.
 *
 *   rate = beetles / (traps·days);  beetles per plant: 0.75·24,000/population, in first-year corn 0.75 of that
 *
 * A card count serves next year's choice, never a rescue spray, and explains little of next year's injury (27 % of its
 * variation in soybean): it is a class of risk, not a forecast.
 *
 * Source: corn 2 per trap and day: dtnpf.com 2017-11-03 quoting Iowa State; soybean 5: agcrops.osu.edu/newsletters/2005/38;
 * whole plants: scaling farms.com 125274, numbers from memory.
 */
public final class BeetleCounts {
    /** Beetles per trap and day. */
    private static final double CORN_THRESHOLD = 2;

    /** Beetles per trap and day, in any week. */
    private static final double SOYBEAN_THRESHOLD = 5;

    /** Beetles per plant in continuous corn at {@link #REFERENCE_POPULATION}. */
    private static final double PER_PLANT = 0.75;

    /** Plants per acre for which {@link #PER_PLANT} was set. */
    private static final double REFERENCE_POPULATION = 24_000;

    /** First-year corn has more females among its beetles. */
    private static final double FIRST_YEAR_FACTOR = 0.75;

    public static final Figure TRAPS = Figure.declare("beetle-trap-rate", Subject.INSECTS)
            .question("Do this year's rootworm beetles on sticky cards call for control in next year's corn?")
            .input(number("beetles", "Beetles on all cards", "beetles", Range.NOT_NEGATIVE, "180"))
            .input(number("traps", "Cards", "cards", Range.closed(1, 1000), "6"))
            .input(number("days", "Days they hung", "d", Range.above(0, 60), "7"))
            .input(word("field", "Crop in which they hung", List.of("corn", "soybean"), "corn"))
            .output("per_trap_day", "Beetles per card and day", "beetles/card/d")
            .output("threshold", "Threshold", "beetles/card/d")
            .output("verdict", "In words", "")
            .formula("rate = beetles ÷ (cards × days)")
            .source("corn: [dtn-2017-rootworm]; soybean: [ohio-2005-38]", VERIFIED)
            .validity(
                    "Unbaited yellow cards at ear height; in soybean 6 cards at least 100 ft in, late July to early September.")
            .caution(
                    "For next year's corn on this field only, never for a rescue spray. A class of risk, not a forecast of injury.")
            .example(
                    "beetles=180 traps=6 days=7 field=soybean",
                    "per_trap_day=4.29 threshold=5.0 verdict=below the threshold",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "beetles=252 traps=12 days=7 field=corn",
                    "per_trap_day=3.00 threshold=2.0 verdict=at or above the threshold",
                    "independent arithmetic",
                    COMPUTED)
            .model(BeetleCounts::solveTraps);

    public static final Figure PLANTS = Figure.declare("beetles-per-plant", Subject.INSECTS)
            .question("At how many rootworm beetles a plant is next year's corn at risk?")
            .input(number("plants_ac", "Plants per acre", "plants/ac", Range.POSITIVE, "30000"))
            .input(word(
                    "corn", "Corn after corn or first-year corn", List.of("continuous", "first-year"), "continuous"))
            .output("threshold", "Threshold", "beetles/plant")
            .formula("threshold = 0.75 × 24,000 ÷ plants per acre; in first-year corn 0.75 of that")
            .source("scaling: [farms-125274]; 0.75 and the first-year factor", MEMORY)
            .validity("Whole-plant counts. The numbers are values from memory: confirm with the state's own rule.")
            .example("plants_ac=18000 corn=continuous", "threshold=1.00", "independent arithmetic", COMPUTED)
            .example("plants_ac=28000 corn=continuous", "threshold=0.64", "independent arithmetic", COMPUTED)
            .example("plants_ac=30000 corn=continuous", "threshold=0.60", "independent arithmetic", COMPUTED)
            .example("plants_ac=34000 corn=continuous", "threshold=0.53", "independent arithmetic", COMPUTED)
            .model(BeetleCounts::solvePlants);

    private BeetleCounts() {}

    private static Outputs solveTraps(Given given, Working working) {
        double beetles = given.number("beetles");
        double traps = given.number("traps");
        double days = given.number("days");
        double rate = working.line(
                "rate", beetles / (traps * days), "beetles/card/d", "{} ÷ ({} cards × {} d)", beetles, traps, days);
        double threshold = given.word("field").equals("corn") ? CORN_THRESHOLD : SOYBEAN_THRESHOLD;
        return new Outputs()
                .put("per_trap_day", rate)
                .put("threshold", threshold)
                .put("verdict", rate >= threshold ? "at or above the threshold" : "below the threshold");
    }

    private static Outputs solvePlants(Given given, Working working) {
        double plants = given.number("plants_ac");
        double threshold = working.line(
                "continuous corn",
                PER_PLANT * REFERENCE_POPULATION / plants,
                "beetles/plant",
                "{} × {} ÷ {}",
                PER_PLANT,
                REFERENCE_POPULATION,
                plants);
        if (given.word("corn").equals("first-year")) {
            threshold = working.line(
                    "first-year corn",
                    threshold * FIRST_YEAR_FACTOR,
                    "beetles/plant",
                    "{} × {}",
                    threshold,
                    FIRST_YEAR_FACTOR);
        }
        return new Outputs().put("threshold", threshold);
    }
}
