package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Treated seed as food: what a bird or mammal takes in that eats nothing else, how few seeds are a lethal dose, and what
 * bees find in nectar and pollen of plants from treated seed.
 *
 *   ppm on the seed = mg a seed·10⁶/weight of a seed [mg];  dose = ppm·intake;  seeds to the LD50 = LD50·weight/mg a seed
 *   intake of seeds: dry g/d = 0.648·BW^0.651 (birds), 0.621·BW^0.564 (mammals); wet = dry/0.9
 *   bees: 0.29 µg/day for an adult and 0.12 for a larva per mg/kg in nectar and pollen
 *
 * Source: Nagy 1987 in EPA/600/R-93/187 (memory); Guidance for Assessing Pesticide Risks to Bees 2014 (numbers from memory).
 */
public final class TreatedSeed {
    private static final double SEED_DRY_SHARE = 0.9;
    private static final double ADULT_UG = 0.29;
    private static final double LARVA_UG = 0.12;

    public static final Figure FEED = Figure.declare("treated-seed-feed", Subject.FATE)
            .question("What does a bird or mammal take in that eats nothing but treated seed?")
            .input(word("animal", "Animal", List.of("bird", "mammal"), "bird"))
            .input(number("weight_g", "Weight of the animal", "g", Range.closed(1, 1_000_000), "20"))
            .input(number("mg_seed", "Active ingredient on a seed", "mg/seed", Range.POSITIVE, "0.25"))
            .input(number("seeds_lb", "Seeds in a pound", "seeds/lb", Range.POSITIVE, "1600"))
            .input(number("ld50_mg_kg", "LD50 adjusted to the animal's weight", "mg/kg", Range.POSITIVE, "72"))
            .output("residue_ppm", "On the seed", "ppm")
            .output("dose_mg_kg", "Dose of a day", "mg/kg")
            .output("seeds_to_ld50", "Seeds that hold a half-lethal dose", "seeds")
            .output("rq", "Risk quotient", "")
            .formula(
                    "ppm = mg a seed × seeds a pound ÷ 0.45359237; dose = ppm × seed eaten a day ÷ weight; quotient = dose ÷ LD50")
            .source("[nagy-1987], [epa-factors-1993]", MEMORY)
            .validity("Seed is all it eats, none is covered: the worst day. Seed with 10 % water.")
            .caution("Cover spilled seed at once: a handful beside the drill is more than a field of planted rows.")
            .caution(Asked.SCREEN)
            .example(
                    "animal=bird weight_g=20 mg_seed=.25 seeds_lb=1600 ld50_mg_kg=72",
                    "residue_ppm=881.85 dose_mg_kg=223.19 seeds_to_ld50=5.76 rq=3.0998",
                    "from an intake of 25.3089 % of the body weight",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=15 mg_seed=.25 seeds_lb=1600 ld50_mg_kg=1098.915",
                    "dose_mg_kg=186.84 rq=.17002",
                    "from an intake of 21.1872 % of the body weight",
                    COMPUTED)
            .model(TreatedSeed::solveFeed);

    public static final Figure BEES = Figure.declare("bee-treated-seed", Subject.FATE)
            .question("What do bees take in from plants of treated seed?")
            .input(number("mg_kg", "Active ingredient in nectar and pollen", "mg/kg", Range.NOT_NEGATIVE, "1"))
            .input(number("oral_ld50_ug", "Acute oral LD50", "µg/bee", Range.POSITIVE, "0.0039"))
            .output("adult_ug", "Eaten by an adult", "µg/bee/d")
            .output("larva_ug", "Eaten by a larva", "µg/larva/d")
            .output("rq", "Adult over its oral LD50", "")
            .formula("adult = 0.29 × mg/kg; larva = 0.12 × mg/kg; quotient = adult ÷ LD50")
            .source("[epa-bees-2014]", MEMORY)
            .validity("EPA takes 1 mg/kg where nothing is measured. The level of concern is 0.4.")
            .caution("Dust from the planter is another way to bees, and not in this.")
            .example(
                    "mg_kg=1 oral_ld50_ug=.0039",
                    "adult_ug=.29 larva_ug=.12 rq=74.36",
                    "independent arithmetic",
                    COMPUTED)
            .model(TreatedSeed::solveBees);

    private TreatedSeed() {}

    private static Outputs solveFeed(Given given, Working working) {
        double weight = given.number("weight_g");
        boolean bird = given.word("animal").equals("bird");
        double eaten = bird
                ? working.line(
                        "seed eaten in grams a day",
                        .648 * Math.pow(weight, .651) / SEED_DRY_SHARE,
                        "",
                        "0.648 × {}^0.651 ÷ 0.9",
                        weight)
                : working.line(
                        "seed eaten in grams a day",
                        .621 * Math.pow(weight, .564) / SEED_DRY_SHARE,
                        "",
                        "0.621 × {}^0.564 ÷ 0.9",
                        weight);
        double perSeed = given.number("mg_seed");
        double seeds = given.number("seeds_lb");
        double ppm = working.line(
                "ppm on the seed", perSeed * seeds / 0.45359237, "", "{} × {} ÷ 0.45359237", perSeed, seeds);
        double dose = working.line("dose of a day", ppm * eaten / weight, "mg/kg", "{} × {} ÷ {}", ppm, eaten, weight);
        double lethal = given.number("ld50_mg_kg");
        double count = working.line(
                "seeds to the half-lethal dose",
                lethal * weight / 1000 / perSeed,
                "",
                "{} × {} ÷ 1000 ÷ {}",
                lethal,
                weight,
                perSeed);
        return new Outputs()
                .put("residue_ppm", ppm)
                .put("dose_mg_kg", dose)
                .put("seeds_to_ld50", count)
                .put("rq", working.line("risk quotient", dose / lethal, "", "{} ÷ {}", dose, lethal));
    }

    private static Outputs solveBees(Given given, Working working) {
        double strength = given.number("mg_kg");
        double lethal = given.number("oral_ld50_ug");
        double adult = working.line("adult", ADULT_UG * strength, "", "{} × {}", ADULT_UG, strength);
        double larva = working.line("larva", LARVA_UG * strength, "", "{} × {}", LARVA_UG, strength);
        return new Outputs()
                .put("adult_ug", adult)
                .put("larva_ug", larva)
                .put("rq", working.line("quotient", adult / lethal, "", "{} ÷ {}", adult, lethal));
    }
}
