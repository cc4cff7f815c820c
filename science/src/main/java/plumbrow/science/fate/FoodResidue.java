package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Residue on what birds and mammals eat, just after the last of several applications.
 *
 *   C = rate·F·(1 − e^(−nki))/(1 − e^(−ki));  k = ln2/h
 *
 *   F  residue per lb/ac by food, see {@link Food} [ppm wet weight];  n  applications, whole;  i  interval [d]
 *   h  half-life on the food [d], 35 by default (Willis & McDowell 1987 gives shorter ones for most)
 *
 * Source: Hoerger & Kenaga 1972, changed by Fletcher, Nellessen & Pfleeger 1994, as in USDA Forest Service/SERA worksheet
 * A04 (genderi.org, sethoxydim risk assessment p. 46).
 */
public final class FoodResidue {
    public static final Figure FIGURE = Figure.declare("food-residue", Subject.FATE)
            .question("How much residue is on what birds and mammals eat?")
            .input(Asked.RATE)
            .input(number("applications", "Applications", "", Range.closed(1, 100), "2")
                    .orElse("1"))
            .input(number("interval_d", "Days between applications", "d", Range.POSITIVE, "14")
                    .optional())
            .input(number("half_life_d", "Half-life on the food", "d", Range.POSITIVE, "35")
                    .orElse("35"))
            .output("short_grass_ppm", "Short grass, upper", "ppm")
            .output("tall_grass_ppm", "Tall grass, upper", "ppm")
            .output("broadleaf_ppm", "Broadleaf plants and small insects, upper", "ppm")
            .output("seeds_ppm", "Fruits, pods, seeds and large insects, upper", "ppm")
            .output("short_grass_mean_ppm", "Short grass, mean", "ppm")
            .output("tall_grass_mean_ppm", "Tall grass, mean", "ppm")
            .output("broadleaf_mean_ppm", "Broadleaf plants and small insects, mean", "ppm")
            .output("seeds_mean_ppm", "Fruits, pods, seeds and large insects, mean", "ppm")
            .formula("peak = rate × ppm per lb × (1 − e^(−n·k·i)) ÷ (1 − e^(−k·i)), k = ln 2 ÷ half-life")
            .source("[fletcher-1994] after [hoerger-kenaga-1972], worksheet A04 of [sera-sethoxydim]", VERIFIED)
            .validity("Wet weight, just after the last application. More than one application needs the interval.")
            .caution(Asked.SCREEN)
            .example(
                    "rate_lb_ac=1",
                    "short_grass_ppm=240.0 tall_grass_ppm=110.0 broadleaf_ppm=135.0 seeds_ppm=15.0"
                            + " short_grass_mean_ppm=85.0 tall_grass_mean_ppm=36.0 broadleaf_mean_ppm=45.0",
                    "[sera-sethoxydim], worksheet A04",
                    VERIFIED)
            .example(
                    "rate_lb_ac=.5 applications=2 interval_d=14",
                    "short_grass_ppm=210.943 tall_grass_ppm=96.6822 broadleaf_ppm=118.655 seeds_ppm=13.1839",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 applications=3 interval_d=7 half_life_d=35",
                    "short_grass_ppm=630.818 tall_grass_ppm=289.125 broadleaf_ppm=354.835 seeds_ppm=39.4261",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=.025 applications=2 interval_d=7 half_life_d=10",
                    "short_grass_ppm=9.69343 tall_grass_ppm=4.44282 broadleaf_ppm=5.45256 seeds_ppm=0.605840",
                    "independent arithmetic",
                    COMPUTED)
            .model(FoodResidue::solve);

    private FoodResidue() {}

    /** How many times one application's residue lies on the food just after the last of n. */
    public static double pileUp(double applications, double intervalDays, double halfLifeDays) {
        double fade = -Math.log(2) / halfLifeDays * intervalDays;
        return applications == 1 ? 1 : Math.expm1(applications * fade) / Math.expm1(fade);
    }

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate_lb_ac");
        double applications = Asked.whole(given, "applications");
        double pile = 1;
        if (applications > 1) {
            if (!given.has("interval_d")) {
                throw given.refuse("interval_d", "the days between the applications, a number more than 0");
            }
            double interval = given.number("interval_d");
            double fade = working.line(
                    "fading over an interval",
                    Math.log(2) / given.number("half_life_d") * interval,
                    "",
                    "ln(2) ÷ {} × {}",
                    given.number("half_life_d"),
                    interval);
            pile = working.line(
                    "times one application",
                    pileUp(applications, interval, given.number("half_life_d")),
                    "",
                    "(1 − exp(−{} × {})) ÷ (1 − exp(−{}))",
                    applications,
                    fade,
                    fade);
        }
        Outputs outputs = new Outputs();
        for (Food food : Food.values()) {
            outputs.put(food.key() + "_ppm", showPpm(working, food.words() + ", upper", rate, food.upperPpm(), pile));
        }
        for (Food food : Food.values()) {
            outputs.put(
                    food.key() + "_mean_ppm", showPpm(working, food.words() + ", mean", rate, food.meanPpm(), pile));
        }
        return outputs;
    }

    private static double showPpm(Working working, String label, double rate, double perLb, double pile) {
        return working.line(label, rate * perLb * pile, "ppm", "{} lb/ac × {} × {}", rate, perLb, pile);
    }
}
