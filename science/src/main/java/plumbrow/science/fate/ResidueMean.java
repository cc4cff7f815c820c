package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Residue on food averaged over days while it fades, and food by the energy an animal needs.
 *
 *   mean = C0(1 − e^(−kT))/(kT);  end = C0·e^(−kT);  k = ln2/h
 *   energy = 3.12·BW^0.604 [kcal/d];  insects: 4.3 kcal/g dry, 65 % water
 *
 * Source: USDA Forest Service/SERA worksheets (genderi.org, sethoxydim risk assessment pp. 61 and 63).
 */
public final class ResidueMean {
    public static final Figure FIGURE = Figure.declare("residue-mean", Subject.FATE)
            .question("What is the mean residue over days while it fades?")
            .input(number("residue_ppm", "Residue to begin with", "ppm", Range.NOT_NEGATIVE, "25.5"))
            .input(number("half_life_d", "Half-life on the food", "d", Range.POSITIVE, "3"))
            .input(number("days", "Days", "d", Range.POSITIVE, "90"))
            .output("mean_ppm", "Mean", "ppm")
            .output("end_ppm", "At the end", "ppm")
            .formula("mean = residue × (1 − e^(−k × days)) ÷ (k × days), k = ln 2 ÷ half-life")
            .source("[sera-sethoxydim], p. 61", VERIFIED)
            .validity("One application, first-order fading.")
            .example(
                    "residue_ppm=25.5 half_life_d=3 days=90",
                    "mean_ppm=1.22629078 end_ppm=0.0000000237",
                    "[sera-sethoxydim], p. 61: 0.3 lb/ac on range grass",
                    VERIFIED)
            .model(ResidueMean::solve);

    public static final Figure ENERGY = Figure.declare("food-by-energy", Subject.FATE)
            .question("How much does an animal eat by the energy it needs?")
            .input(number("weight_g", "Weight of a bird", "g", Range.closed(2, 1e6), "10"))
            .input(number("kcal_g_dry", "Energy in the food, dry", "kcal/g", Range.POSITIVE, "4.3")
                    .orElse("4.3"))
            .input(number("water_share", "Water in the food", "", Range.below(0, 1), "0.65")
                    .orElse("0.65"))
            .output("kcal_d", "Energy in a day", "kcal/d")
            .output("food_g_d", "Wet food in a day", "g/d")
            .formula("energy = 3.12 × weight^0.604; food = energy ÷ (kcal/g × (1 − water))")
            .source("[sera-sethoxydim], p. 63", VERIFIED)
            .validity("Free-living birds; insects by default.")
            .example("weight_g=10", "kcal_d=12.53587 food_g_d=8.33", "[sera-sethoxydim], p. 63, 10 g bird", VERIFIED)
            .model(ResidueMean::solveEnergy);

    private ResidueMean() {}

    private static Outputs solve(Given given, Working working) {
        double start = given.number("residue_ppm");
        double days = given.number("days");
        double halfLife = given.number("half_life_d");
        double fade = working.line(
                "fading over the days", Math.log(2) / halfLife * days, "", "ln(2) ÷ {} × {}", halfLife, days);
        double mean = working.line(
                "mean", start * -Math.expm1(-fade) / fade, "ppm", "{} × (1 − exp(−{})) ÷ {}", start, fade, fade);
        return new Outputs()
                .put("mean_ppm", mean)
                .put(
                        "end_ppm",
                        working.line("at the end", start * Math.exp(-fade), "ppm", "{} × exp(−{})", start, fade));
    }

    private static Outputs solveEnergy(Given given, Working working) {
        double weight = given.number("weight_g");
        double energy = working.line("energy", 3.12 * Math.pow(weight, 0.604), "kcal/d", "3.12 × {}^0.604", weight);
        double content = given.number("kcal_g_dry");
        double water = given.number("water_share");
        return new Outputs()
                .put("kcal_d", energy)
                .put(
                        "food_g_d",
                        working.line(
                                "wet food",
                                energy / (content * (1 - water)),
                                "g/d",
                                "{} ÷ ({} × (1 − {}))",
                                energy,
                                content,
                                water));
    }
}
