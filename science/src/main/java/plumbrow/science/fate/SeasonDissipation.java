package plumbrow.science.fate;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What is left of a residue after a season of several temperatures, when the next crop may follow, and what yearly use builds
 * up. The distribution is that of {@link Dissipation}.
 *
 *   equivalent days = Σ days·fT;  left = 2^(−equivalent days/DT50)
 *   days to a safe residue = DT50·log2(residue/safe);  yearly use: p = 2^(−365·f/DT50), just after application 1/(1 − p)
 *
 * Soil temperature, not air. The label's rotation interval rules: it also counts breakdown products, pH and rain.
 */
public final class SeasonDissipation {
    private static final double DAYS_PER_YEAR = 365;
    private static final String LABEL = "The label's rotation interval is the law; this may only ask for more.";

    public static final Figure FIGURE = Figure.declare("season-dissipation", Subject.FATE)
            .question("What share is left after a season of several temperatures?")
            .input(list("days", "Days of each period", "d", Range.NOT_NEGATIVE, "120,150,45"))
            .input(list("temperatures_c", "Mean soil temperature of each", "°C", Dissipation.SOIL_C, "22,4,12"))
            .input(Dissipation.DT50)
            .input(Dissipation.REFERENCE)
            .input(Dissipation.Q10)
            .output("left_share", "Share left", "")
            .output("equivalent_days", "Days at the reference temperature", "d")
            .formula("equivalent days = Σ days × Q10^((T − reference)/10); left = 0.5^(equivalent days ÷ half-life)")
            .source("[focus-kinetics-2014]", VERIFIED)
            .validity("A temperature for each period; nothing breaks down at or below 0 °C. Soil, not air.")
            .caution(LABEL)
            .example(
                    "days=120,150,45 temperatures_c=22,4,12 dt50_d=60",
                    "equivalent_days=199.0511 left_share=0.100306",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "days=120,150,45 temperatures_c=22,4,12 dt50_d=60 q10=2.2",
                    "left_share=0.0915817",
                    "independent arithmetic",
                    COMPUTED)
            .model(SeasonDissipation::solve);

    public static final Figure SAFE = Figure.declare("days-to-safe-residue", Subject.FATE)
            .question("How many days until the residue is safe for the next crop?")
            .alsoAsked("Will the herbicide carry over and hurt next year's crop?")
            .input(number("residue", "Residue now, in any unit", "", Range.POSITIVE, "70"))
            .input(number("safe", "Residue that is safe, in the same unit", "", Range.POSITIVE, "4"))
            .input(Dissipation.DT50)
            .output("days", "Days at reference conditions", "d")
            .formula("days = half-life × log2(residue ÷ safe)")
            .source("First-order breakdown", PRACTICE)
            .validity("0 where the residue is safe already.")
            .caution(LABEL)
            .example("residue=70 safe=4 dt50_d=60", "days=247.757", "independent arithmetic", COMPUTED)
            .model(SeasonDissipation::solveSafe);

    public static final Figure YEARLY = Figure.declare("yearly-residue", Subject.FATE)
            .question("What does use in every year build up to?")
            .input(Dissipation.DT50)
            .input(number(
                            "speed_factor",
                            "Speed over the year against reference conditions",
                            "",
                            Range.above(0, 10),
                            "1")
                    .orElse("1"))
            .output("left_share", "Left after a year", "")
            .output("plateau", "Just after application, times one year's", "")
            .formula("left = 0.5^(365 × speed ÷ half-life); plateau = 1 ÷ (1 − left)")
            .source("First-order breakdown", PRACTICE)
            .validity("The same rate every year, for many years.")
            .example("dt50_d=120", "left_share=0.121441 plateau=1.138228", "independent arithmetic", COMPUTED)
            .model(SeasonDissipation::solveYearly);

    private SeasonDissipation() {}

    private static Outputs solve(Given given, Working working) {
        double[] days = given.list("days");
        double[] temperatures = given.list("temperatures_c");
        if (days.length != temperatures.length) {
            throw given.refuse("temperatures_c", days.length + " temperatures, one for each period");
        }
        double sum = 0;
        for (int i = 0; i < days.length; i++) {
            double factor = Dissipation.showTemperature(
                    working, temperatures[i], given.number("reference_c"), given.number("q10"));
            sum = working.line(
                    "equivalent days so far", sum + days[i] * factor, "d", "{} + {} × {}", sum, days[i], factor);
        }
        double dt50 = given.number("dt50_d");
        return new Outputs()
                .put(
                        "left_share",
                        working.line("share left", Dissipation.leftShare(sum, dt50, 1), "", "0.5^({} ÷ {})", sum, dt50))
                .put("equivalent_days", sum);
    }

    private static Outputs solveSafe(Given given, Working working) {
        double residue = given.number("residue");
        double safe = given.number("safe");
        double dt50 = given.number("dt50_d");
        if (residue <= safe) {
            return new Outputs().put("days", working.line("days", 0, "d", "none: {} is not above {}", residue, safe));
        }
        double halvings = Math.log(residue / safe) / Math.log(2);
        return new Outputs()
                .put("days", working.line("days", dt50 * halvings, "d", "{} × log2({} ÷ {})", dt50, residue, safe));
    }

    private static Outputs solveYearly(Given given, Working working) {
        double dt50 = given.number("dt50_d");
        double speed = given.number("speed_factor");
        double left = working.line(
                "left after a year",
                Dissipation.leftShare(DAYS_PER_YEAR, dt50, speed),
                "",
                "0.5^(365 × {} ÷ {})",
                speed,
                dt50);
        return new Outputs()
                .put("left_share", left)
                .put("plateau", working.line("plateau", 1 / (1 - left), "", "1 ÷ (1 − {})", left));
    }
}
