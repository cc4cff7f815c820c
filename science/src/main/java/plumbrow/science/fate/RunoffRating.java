package plumbrow.science.fate;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How an active ingredient leaves a field: dissolved in runoff, on soil that washes off, or down; and together with the soil.
 *
 *   HL half-life [d], S solubility [mg/L], K Koc [mL/g]; high is tried first, then low, the rest is intermediate
 *   dissolved high   (S ≥ 1, HL > 35, K < 100,000) or (10 ≤ S < 100, K ≤ 700)
 *   dissolved low    K ≥ 100,000, or (K ≥ 1000, HL ≤ 1), or (S < 0.5, HL < 35)
 *   on soil high     (HL ≥ 40, K ≥ 1000) or (HL ≥ 40, K ≥ 500, S ≤ 0.5)
 *   on soil low      HL ≤ 1, (HL ≤ 2, K ≤ 500), (HL ≤ 4, K ≤ 900, S ≥ 0.5), (HL ≤ 40, K ≤ 500, S ≥ 0.5), (HL ≤ 40, K ≤ 900, S ≥ 2)
 *   leaching         score above 2.8 high, 1.8 to 2.8 intermediate, 0 to 1.8 low, below 0 very low
 *
 * Source: Goss 1992, Weed Technol. 6:701 (criteria and soil tables from memory; that these are the three ratings of NRCS:
 * Illinois 60 Ways nos. 52 and 53, verified).
 */
public final class RunoffRating {
    private static final List<String> RATINGS = List.of("high", "intermediate", "low", "very low");

    public static final Figure FIGURE = Figure.declare("runoff-ratings", Subject.FATE)
            .question("How does the active ingredient leave the field: dissolved, on soil, or down?")
            .input(Asked.HALF_LIFE)
            .input(Asked.SOLUBILITY)
            .input(Asked.KOC)
            .output("solution", "Dissolved in runoff", "")
            .output("adsorbed", "On soil that washes off", "")
            .output("leaching", "Down with the water", "")
            .formula("bands of half-life, solubility and Koc; leaching by the groundwater ubiquity score")
            .source("[goss-1992]", MEMORY)
            .validity("Ratings of the active ingredient alone; soil, slope and rain decide with it.")
            .caution(
                    "Foliar use, incorporation and banding lower runoff by about one class. The label's setbacks rule.")
            .example(
                    "half_life_d=60 solubility_mg_l=33 koc_ml_g=100",
                    "solution=high adsorbed=intermediate leaching=high",
                    "atrazine",
                    COMPUTED)
            .example(
                    "half_life_d=15 solubility_mg_l=240 koc_ml_g=170",
                    "solution=intermediate adsorbed=low leaching=intermediate",
                    "alachlor",
                    COMPUTED)
            .example(
                    "half_life_d=60 solubility_mg_l=.3 koc_ml_g=8000",
                    "solution=intermediate adsorbed=high leaching=low",
                    "trifluralin",
                    COMPUTED)
            .example(
                    "half_life_d=30 solubility_mg_l=.4 koc_ml_g=6070",
                    "solution=low adsorbed=intermediate leaching=low",
                    "chlorpyrifos",
                    COMPUTED)
            .example(
                    "half_life_d=47 solubility_mg_l=900000 koc_ml_g=24000",
                    "solution=high adsorbed=high leaching=very low",
                    "glyphosate",
                    COMPUTED)
            .example(
                    "half_life_d=40 solubility_mg_l=1220 koc_ml_g=60",
                    "solution=high adsorbed=low leaching=high",
                    "metribuzin",
                    COMPUTED)
            .example(
                    "half_life_d=5 solubility_mg_l=5 koc_ml_g=500",
                    "solution=intermediate adsorbed=low leaching=low",
                    "terbufos",
                    COMPUTED)
            .example(
                    "half_life_d=30 solubility_mg_l=.005 koc_ml_g=180000",
                    "solution=low adsorbed=intermediate leaching=very low",
                    "lambda-cyhalothrin",
                    COMPUTED)
            .example(
                    "half_life_d=1000 solubility_mg_l=620000 koc_ml_g=1000000",
                    "solution=low adsorbed=high leaching=very low",
                    "paraquat",
                    COMPUTED)
            .example(
                    "half_life_d=1 solubility_mg_l=130 koc_ml_g=1800",
                    "solution=low adsorbed=low leaching=low",
                    "malathion",
                    COMPUTED)
            .model(RunoffRating::solve);

    /** Columns high to low (leaching: very low) of the pesticide; rows high to very low of the soil. */
    private static final List<String> LEACHING_ROWS = List.of("HHIL", "HILV", "ILLV", "LLVV");

    private static final List<String> RUNOFF_ROWS = List.of("HHI", "HIL", "ILL");

    public static final Figure WITH_SOIL = Figure.declare("soil-product-rating", Subject.FATE)
            .question("How likely is a loss from this soil?")
            .input(word("path", "Way out", List.of("leaching", "runoff"), "leaching"))
            .input(word("soil", "Rating of the soil", RATINGS, "intermediate"))
            .input(word("product", "Rating of the active ingredient", RATINGS, "high"))
            .output("rating", "Together", "")
            .formula("leaching, soil high to very low: H H I L, H I L V, I L L V, L L V V; runoff: H H I, H I L, I L L")
            .source("[goss-wauchope-1990]", MEMORY)
            .validity("Runoff knows no very low, neither of the soil nor of the product.")
            .caution("The label's setbacks and slopes rule.")
            .example("path=leaching soil=intermediate product=high", "rating=high", "[goss-1992], table", MEMORY)
            .example("path=leaching soil=very low product=low", "rating=very low", "[goss-1992], table", MEMORY)
            .example("path=runoff soil=low product=intermediate", "rating=low", "[goss-1992], table", MEMORY)
            .model(RunoffRating::solveWithSoil);

    private RunoffRating() {}

    /** Rating dissolved in runoff. */
    public static String solution(double halfLifeDays, double solubility, double koc) {
        if ((solubility >= 1 && halfLifeDays > 35 && koc < 100_000)
                || (solubility >= 10 && solubility < 100 && koc <= 700)) {
            return "high";
        }
        boolean low = koc >= 100_000 || (koc >= 1000 && halfLifeDays <= 1) || (solubility < 0.5 && halfLifeDays < 35);
        return low ? "low" : "intermediate";
    }

    /** Rating on soil that washes off. */
    public static String adsorbed(double halfLifeDays, double solubility, double koc) {
        if (halfLifeDays >= 40 && (koc >= 1000 || (koc >= 500 && solubility <= 0.5))) {
            return "high";
        }
        boolean low = halfLifeDays <= 1
                || (halfLifeDays <= 2 && koc <= 500)
                || (halfLifeDays <= 4 && koc <= 900 && solubility >= 0.5)
                || (halfLifeDays <= 40 && koc <= 500 && solubility >= 0.5)
                || (halfLifeDays <= 40 && koc <= 900 && solubility >= 2);
        return low ? "low" : "intermediate";
    }

    /** Soil and product together for leaching; both high, intermediate, low or very low. */
    public static String leachingWithSoil(String soil, String product) {
        return together(LEACHING_ROWS, soil, product);
    }

    /** Soil and product together for runoff; both high, intermediate or low. */
    public static String runoffWithSoil(String soil, String product) {
        return together(RUNOFF_ROWS, soil, product);
    }

    private static String together(List<String> rows, String soil, String product) {
        char found = rows.get(RATINGS.indexOf(soil)).charAt(RATINGS.indexOf(product));
        return RATINGS.get("HILV".indexOf(found));
    }

    /** Rating of leaching by the score. */
    public static String leaching(double score) {
        if (score > 2.8) {
            return "high";
        }
        if (score >= 1.8) {
            return "intermediate";
        }
        return score >= 0 ? "low" : "very low";
    }

    private static Outputs solve(Given given, Working working) {
        double halfLife = given.number("half_life_d");
        double solubility = given.number("solubility_mg_l");
        double koc = given.number("koc_ml_g");
        double score = working.line(
                "leaching score", LeachingScore.of(halfLife, koc), "", "log10({}) × (4 − log10({}))", halfLife, koc);
        return new Outputs()
                .put("solution", solution(halfLife, solubility, koc))
                .put("adsorbed", adsorbed(halfLife, solubility, koc))
                .put("leaching", leaching(score));
    }

    private static Outputs solveWithSoil(Given given, Working working) {
        List<String> rows = given.word("path").equals("leaching") ? LEACHING_ROWS : RUNOFF_ROWS;
        int row = RATINGS.indexOf(given.word("soil"));
        int column = RATINGS.indexOf(given.word("product"));
        if (row >= rows.size()) {
            throw given.refuse("soil", "high, intermediate or low: runoff knows no very low");
        }
        if (column >= rows.get(row).length()) {
            throw given.refuse("product", "high, intermediate or low: runoff knows no very low");
        }
        int found = "HILV".indexOf(rows.get(row).charAt(column));
        working.line(
                "place in the table", found + 1.0, "", "row {}, column {}: 1 high to 4 very low", row + 1, column + 1);
        return new Outputs().put("rating", RATINGS.get(found));
    }
}
