package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Least ammonium sulfate that takes the minerals of the carrier water out of the way, and the hardness of the water.
 *
 *   AMS = 0.002·K + 0.005·Na + 0.009·Ca + 0.014·Mg + 0.042·Fe      [lb/100 gal], ions [ppm]
 *   hardness = 2.497·Ca + 4.118·Mg [ppm CaCO3]; grains = hardness/17.1
 *
 * The least to neutralise, not a use rate: advice is 4 to 6, glyphosate labels say 8.5 to 17 lb/100 gal. Older copies lack
 * the iron.
 *
 * Source: NDSU Crop & Pest Report 2 July 2015, quoting the North Dakota Weed Control Guide, after Nalewaja & Matysiak 1993.
 */
public final class WaterConditioner {
    private static final double POTASSIUM = 0.002;
    private static final double SODIUM = 0.005;
    private static final double CALCIUM = 0.009;
    private static final double MAGNESIUM = 0.014;
    private static final double IRON = 0.042;

    public static final Figure FIGURE = Figure.declare("water-conditioner", Subject.SPRAYING)
            .question("How much ammonium sulfate does the carrier water need?")
            .alsoAsked("How much AMS does hard water take?")
            .input(ion("ca_ppm", "Calcium", "120"))
            .input(ion("mg_ppm", "Magnesium", "45"))
            .input(ion("na_ppm", "Sodium", "55"))
            .input(ion("k_ppm", "Potassium", "12"))
            .input(ion("fe_ppm", "Iron", "0.5").orElse("0"))
            .output("ams_lb_100gal", "Least ammonium sulfate", "lb/100 gal")
            .output("hardness_ppm", "Hardness as calcium carbonate", "ppm")
            .output("hardness_gpg", "Hardness in grains", "grains/gal")
            .formula("0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe; hardness = 2.497 Ca + 4.118 Mg")
            .source("[ndsu-ams-2015]", VERIFIED)
            .validity("Ions in ppm from a water test, 0 or more.")
            .caution(
                    "The least that neutralises, not a use rate: advice is 4 to 6 lb, glyphosate labels say 8.5 to 17. Take the larger of label and this.")
            .caution("Some labels, as those of dicamba, forbid ammonium sulfate in the tank: the label decides.")
            .example(
                    "k_ppm=12 na_ppm=55 ca_ppm=120 mg_ppm=45 fe_ppm=0",
                    "ams_lb_100gal=2.009 hardness_ppm=484.95 hardness_gpg=28.4",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "k_ppm=10 na_ppm=50 ca_ppm=150 mg_ppm=40 fe_ppm=.5",
                    "ams_lb_100gal=2.201 hardness_ppm=539.3 hardness_gpg=31.5",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "k_ppm=20 na_ppm=100 ca_ppm=200 mg_ppm=60 fe_ppm=2",
                    "ams_lb_100gal=3.264 hardness_ppm=746.5 hardness_gpg=43.7",
                    "independent arithmetic",
                    COMPUTED)
            .model(WaterConditioner::solve);

    private WaterConditioner() {}

    /** Least ammonium sulfate [lb/100 gal] for ions [ppm]. */
    public static double lbPer100Gal(double calcium, double magnesium, double sodium, double potassium, double iron) {
        return POTASSIUM * potassium + SODIUM * sodium + CALCIUM * calcium + MAGNESIUM * magnesium + IRON * iron;
    }

    /** Hardness [ppm CaCO3]. */
    public static double hardnessPpm(double calciumPpm, double magnesiumPpm) {
        return 2.497 * calciumPpm + 4.118 * magnesiumPpm;
    }

    private static Input ion(String key, String name, String example) {
        return number(key, name + " in the water", "ppm", Range.NOT_NEGATIVE, example);
    }

    private static Outputs solve(Given given, Working working) {
        double calcium = given.number("ca_ppm");
        double magnesium = given.number("mg_ppm");
        double sodium = given.number("na_ppm");
        double potassium = given.number("k_ppm");
        double iron = given.number("fe_ppm");
        double sulfate = working.line(
                "least ammonium sulfate",
                lbPer100Gal(calcium, magnesium, sodium, potassium, iron),
                "lb/100 gal",
                "0.002 × {} + 0.005 × {} + 0.009 × {} + 0.014 × {} + 0.042 × {}",
                potassium,
                sodium,
                calcium,
                magnesium,
                iron);
        double hardness = working.line(
                "hardness", hardnessPpm(calcium, magnesium), "ppm", "2.497 × {} + 4.118 × {}", calcium, magnesium);
        return new Outputs()
                .put("ams_lb_100gal", sulfate)
                .put("hardness_ppm", hardness)
                .put("hardness_gpg", working.line("in grains", hardness / 17.1, "grains/gal", "{} ÷ 17.1", hardness));
    }
}
