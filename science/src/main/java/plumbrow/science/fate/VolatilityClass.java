package plumbrow.science.fate;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How volatile an active ingredient is, by its vapour pressure.
 *
 *   index = VP·10⁷, VP [mmHg]: below 10 low, 10 to 1000 intermediate, above 1000 high
 *
 * Systems disagree by a factor of ten at the top: elsewhere more than 1 mPa counts as volatile. The value and the name of
 * the system always stand beside the class.
 *
 * Source: Kerle, Jenkins & Vogue, Oregon State University Extension EM 8561 (value from memory); New York golf handbook,
 * nygcf.com (verified).
 */
public final class VolatilityClass {
    private static final double PASCAL_PER_MMHG = 133.322368;
    private static final double INDEX = 1e7;

    public static final Figure FIGURE = Figure.declare("volatility-class", Subject.FATE)
            .question("How volatile is the active ingredient?")
            .input(Asked.VAPOUR_PRESSURE)
            .output("index", "Vapour pressure index", "")
            .output("class", "Class by Oregon State", "")
            .output("above_1_mpa", "More than 1 mPa, volatile by the New York handbook", "")
            .formula("index = vapour pressure in mmHg × 10,000,000; below 10 low, 10 to 1000 intermediate, above high")
            .source("[oregon-em8561]", MEMORY)
            .validity("At 20 to 25 °C. A missing vapour pressure is unknown, never low.")
            .caution(
                    "Systems disagree by a factor of ten at the top: compare within one. Read the label on incorporation.")
            .example(
                    "vapour_pressure_pa=.001",
                    "index=75.006 class=intermediate above_1_mpa=no",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "vapour_pressure_pa=.0147",
                    "class=high above_1_mpa=yes",
                    "trifluralin, by the bands printed",
                    COMPUTED)
            .model(VolatilityClass::solve);

    private VolatilityClass() {}

    /** The index of a vapour pressure [Pa]. */
    public static double index(double pascals) {
        return pascals / PASCAL_PER_MMHG * INDEX;
    }

    /** The class of an index. */
    public static String of(double index) {
        if (index < 10) {
            return "low";
        }
        return index <= 1000 ? "intermediate" : "high";
    }

    /** The class of a vapour pressure [Pa] at 20 to 25 °C, which may be infinite. */
    public static String ofPascals(double pascals) {
        return of(pascals / PASCAL_PER_MMHG * INDEX);
    }

    /**
     * What the class asks where the label says nothing of working the product in.
     *
     * Source: common practice, no source. The label's own hours and depth hold.
     */
    public static String workingIn(String volatilityClass) {
        return switch (volatilityClass) {
            case "high" ->
                "Soil-applied: work it in the same day, thiocarbamates within minutes to hours, unless the label says"
                        + " otherwise.";
            case "intermediate" ->
                "On warm moist soil with no rain in sight for 7 days, work it in lightly or irrigate.";
            default -> "It need not be worked in for vapour's sake.";
        };
    }

    private static Outputs solve(Given given, Working working) {
        double pressure = given.number("vapour_pressure_pa");
        double index = working.line("index", index(pressure), "", "{} ÷ 133.322368 × 10,000,000", pressure);
        return new Outputs()
                .put("index", index)
                .put("class", of(index))
                .put("above_1_mpa", pressure > 1e-3 ? "yes" : "no");
    }
}
