package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What a bird or mammal takes in with its food, and the toxicity that fits its weight.
 *
 *   dry food [g/d]: birds 0.648·BW^0.651, mammals 0.621·BW^0.564;  wet = dry/(1 − water), see {@link Food}
 *   dose [mg/kg] = ppm·wet/BW;  adjusted LD50 = LD50·(AW/TW)^p, p 0.15 birds, −0.25 mammals
 *
 *   BW, AW  weight of the animal [g];  TW  weight of the tested one: 178 g bobwhite, 350 g rat by default
 *
 * Scaling is contested: a review of EPA in 2022 keeps weight itself for single doses. The power is a setting. For large birds
 * the adjusted value exceeds the tested one: that is right.
 *
 * Source: Nagy 1987; EPA Wildlife Exposure Factors Handbook EPA/600/R-93/187 (values from memory); Mineau, Collins & Baril
 * 1996 (abstract verified).
 */
public final class WildlifeDose {
    /** Weight of a tested bobwhite quail [g]. */
    public static final double BOBWHITE_G = 178;

    /** Weight of a tested rat [g]. */
    public static final double RAT_G = 350;

    private static final List<String> ANIMALS = List.of("bird", "mammal");
    private static final Input ANIMAL = word("animal", "Animal", ANIMALS, "bird");
    private static final Input WEIGHT = number("weight_g", "Weight of the animal", "g", Range.closed(2, 1e6), "20");

    public static final Figure FIGURE = Figure.declare("wildlife-dose", Subject.FATE)
            .question("Which dose does a bird or mammal take in with its food?")
            .input(ANIMAL)
            .input(WEIGHT)
            .input(word("food", "Food: fresh is grass, leaves and insects", List.of("fresh", "seeds"), "fresh"))
            .input(number("residue_ppm", "Residue on the food, wet weight", "ppm", Range.NOT_NEGATIVE, "240"))
            .output("dose_mg_kg", "Dose in a day", "mg/kg")
            .output("intake_pct", "Food in a day, of the body weight", "%")
            .formula(
                    "dry food = 0.648 × weight^0.651 (mammals 0.621 × weight^0.564); wet = dry ÷ (1 − water); dose = ppm × wet ÷ weight")
            .source("[nagy-1987]; [epa-factors-1993]", MEMORY)
            .validity("Water: 80 % fresh, 10 % seeds. All food from the field: the high end.")
            .caution(Asked.SCREEN)
            .example(
                    "animal=bird weight_g=20 food=fresh residue_ppm=240",
                    "intake_pct=113.890 dose_mg_kg=273.336",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=bird weight_g=100 food=fresh residue_ppm=1",
                    "intake_pct=64.9449",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=bird weight_g=1000 food=fresh residue_ppm=1",
                    "intake_pct=29.0767",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=bird weight_g=20 food=seeds residue_ppm=1",
                    "intake_pct=25.3089",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=bird weight_g=100 food=seeds residue_ppm=1",
                    "intake_pct=14.4322",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=bird weight_g=1000 food=seeds residue_ppm=1",
                    "intake_pct=6.46149",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=15 food=fresh residue_ppm=240",
                    "intake_pct=95.3423 dose_mg_kg=228.822",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=35 food=fresh residue_ppm=1",
                    "intake_pct=65.8943",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=1000 food=fresh residue_ppm=1",
                    "intake_pct=15.2778",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=15 food=seeds residue_ppm=1",
                    "intake_pct=21.1872",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=35 food=seeds residue_ppm=1",
                    "intake_pct=14.6432",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal weight_g=1000 food=seeds residue_ppm=1",
                    "intake_pct=3.39507",
                    "independent arithmetic",
                    COMPUTED)
            .model(WildlifeDose::solve);

    public static final Figure ADJUSTED = Figure.declare("adjusted-ld50", Subject.FATE)
            .question("Which LD50 fits the weight of this animal?")
            .input(ANIMAL)
            .input(number("ld50_mg_kg", "LD50 of the tested animal", "mg/kg", Range.POSITIVE, "100"))
            .input(WEIGHT)
            .input(number(
                            "tested_weight_g",
                            "Weight of the tested animal: bobwhite 178, mallard 1580, rat 350",
                            "g",
                            Range.closed(2, 1e6),
                            "178")
                    .optional())
            .input(number("power", "Power of the weight: birds 0.15, mammals −0.25", "", Range.closed(-1, 1), "0.15")
                    .optional())
            .output("ld50_mg_kg", "LD50 for this weight", "mg/kg")
            .formula("LD50 × (weight ÷ tested weight)^power")
            .source("[mineau-1996]; [epa-terrestrial]", MEMORY)
            .validity("Without a tested weight: bobwhite for birds, rat for mammals.")
            .caution("How toxicity scales with weight is contested: try the power 0 as well.")
            .example("animal=bird ld50_mg_kg=100 weight_g=20", "ld50_mg_kg=72.0430", "independent arithmetic", COMPUTED)
            .example(
                    "animal=bird ld50_mg_kg=100 weight_g=100", "ld50_mg_kg=91.7143", "independent arithmetic", COMPUTED)
            .example(
                    "animal=bird ld50_mg_kg=100 weight_g=1000",
                    "ld50_mg_kg=129.550",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal ld50_mg_kg=100 weight_g=15",
                    "ld50_mg_kg=219.783",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal ld50_mg_kg=100 weight_g=35",
                    "ld50_mg_kg=177.828",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal ld50_mg_kg=100 weight_g=1000",
                    "ld50_mg_kg=76.9161",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "animal=mammal ld50_mg_kg=500 weight_g=15",
                    "ld50_mg_kg=1098.915",
                    "independent arithmetic",
                    COMPUTED)
            .model(WildlifeDose::solveAdjusted);

    private WildlifeDose() {}

    /** Dry food of a bird of a weight [g], g in a day. */
    public static double birdDryGrams(double weightG) {
        return 0.648 * Math.pow(weightG, 0.651);
    }

    /** Dry food of a mammal of a weight [g], g in a day. */
    public static double mammalDryGrams(double weightG) {
        return 0.621 * Math.pow(weightG, 0.564);
    }

    /** LD50 for an animal of another weight. */
    public static double adjustedLd50(double ld50, double weightG, double testedWeightG, double power) {
        return ld50 * Math.pow(weightG / testedWeightG, power);
    }

    private static Outputs solve(Given given, Working working) {
        double weight = given.number("weight_g");
        double residue = given.number("residue_ppm");
        double water = (given.word("food").equals("seeds") ? Food.SEEDS : Food.SHORT_GRASS).waterShare();
        double dry = given.word("animal").equals("bird")
                ? working.line("dry food", birdDryGrams(weight), "g", "0.648 × {}^0.651", weight)
                : working.line("dry food", mammalDryGrams(weight), "g", "0.621 × {}^0.564", weight);
        double wet = working.line("wet food", dry / (1 - water), "g", "{} ÷ (1 − {})", dry, water);
        double share = working.line("of the body weight", 100 * wet / weight, "%", "100 × {} ÷ {}", wet, weight);
        double dose = working.line("dose", residue * wet / weight, "mg/kg", "{} ppm × {} ÷ {}", residue, wet, weight);
        return new Outputs().put("dose_mg_kg", dose).put("intake_pct", share);
    }

    private static Outputs solveAdjusted(Given given, Working working) {
        boolean bird = given.word("animal").equals("bird");
        double ld50 = given.number("ld50_mg_kg");
        double weight = given.number("weight_g");
        double tested = given.numberOr("tested_weight_g", bird ? BOBWHITE_G : RAT_G);
        double power = given.numberOr("power", bird ? 0.15 : -0.25);
        return new Outputs()
                .put(
                        "ld50_mg_kg",
                        working.line(
                                "LD50 for this weight",
                                adjustedLd50(ld50, weight, tested, power),
                                "mg/kg",
                                "{} × ({} ÷ {})^({})",
                                ld50,
                                weight,
                                tested,
                                power));
    }
}
