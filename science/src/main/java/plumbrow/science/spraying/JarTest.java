package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Amounts for a jar test, and what rinsing leaves in a tank.
 *
 *   per acre: rate·V/(GPA·gallon);  percent: rate·V/100;  per 100 gal: rate·V/100 gal, V the volume in the jar [mL]
 *   rinsing: C/C0 = (r/(r + v))^n, r residue, v each rinse
 *
 * Source: arithmetic; order and standing times: turf.arizona.edu/ccps599.htm.
 */
public final class JarTest {
    private static final double ML_PER_GALLON = 3785.411784;
    /** Millilitres of a fluid ounce, or grams of an ounce of weight: the answer's unit for a rate of one. */
    private static final List<String> UNITS = List.of("fl-oz", "pt", "qt", "gal", "oz", "lb", "percent", "lb-100gal");

    private static final double[] ML_OR_G = {
        29.5735295625, 473.176473, 946.352946, ML_PER_GALLON, 28.349523125, 453.59237, ML_PER_GALLON / 100, 4.5359237
    };

    public static final Figure FIGURE = Figure.declare("jar-test", Subject.SPRAYING)
            .question("How much product goes into the jar?")
            .input(number("rate", "Rate in the field", "", Range.NOT_NEGATIVE, "1"))
            .input(word(
                    "unit",
                    "Its unit, an acre unless percent or per 100 gallons; oz and lb are of weight",
                    UNITS,
                    "pt"))
            .input(Asked.VOLUME)
            .input(number("jar_ml", "Carrier in the jar: a quart is 946.35", "mL", Range.POSITIVE, "946.353")
                    .orElse("946.353"))
            .output("amount", "Into the jar: mL of a liquid, g of a dry product", "mL or g")
            .formula("amount = rate in mL or g × jar ÷ (gal/ac × 3785.41); percent and per 100 gal by the jar alone")
            .source("Arithmetic; [arizona-jar]", VERIFIED)
            .validity(
                    "Add in tank order, cap, invert, stand 15 to 30 minutes; look for flakes, gel, sludge, oil, heat.")
            .caution("A clean jar says that the mix flows, not that it is legal or safe to the crop: read both labels.")
            .example("rate=1 unit=pt gpa=25 jar_ml=946.35", "amount=4.73", "independent arithmetic", COMPUTED)
            .example("rate=1 unit=lb gpa=25 jar_ml=946.35", "amount=4.54", "independent arithmetic", COMPUTED)
            .example("rate=.25 unit=percent gpa=25 jar_ml=946.35", "amount=2.37", "independent arithmetic", COMPUTED)
            .example("rate=32 unit=fl-oz gpa=15 jar_ml=500", "amount=8.33", "independent arithmetic", COMPUTED)
            .example("rate=3 unit=oz gpa=15 jar_ml=500", "amount=0.749", "independent arithmetic", COMPUTED)
            .example("rate=8.5 unit=lb-100gal gpa=15 jar_ml=500", "amount=5.09", "independent arithmetic", COMPUTED)
            .model(JarTest::solve);

    public static final Figure RINSE = Figure.declare("tank-rinse", Subject.SPRAYING)
            .question("How much of the last product is left after rinsing?")
            .input(number("residue_gal", "What the pump leaves in tank and lines", "gal", Range.POSITIVE, "5"))
            .input(number("rinse_gal", "Water of each rinse", "gal", Range.NOT_NEGATIVE, "50"))
            .input(number("rinses", "Rinses", "", Range.closed(1, 20), "3").orElse("3"))
            .output("left_share", "Concentration left", "")
            .formula("left = (residue ÷ (residue + rinse))^rinses")
            .source("Dilution", PRACTICE)
            .validity("Each rinse mixed through boom ends and screens, and drained.")
            .caution("The label's cleaner and rinses are the law. Never mix chlorine bleach with ammonia: toxic gas.")
            .example("residue_gal=5 rinse_gal=50 rinses=3", "left_share=0.00075", "independent arithmetic", COMPUTED)
            .example("residue_gal=5 rinse_gal=150 rinses=1", "left_share=0.032", "43 times worse", COMPUTED)
            .model(JarTest::solveRinse);

    private JarTest() {}

    /**
     * Into the jar: mL of a liquid, g of a dry product.
     *
     * @param unit fl-oz, pt, qt, gal, oz or lb an acre; percent or lb-100gal of the spray
     * @param gpa spray volume [gal/ac]
     * @param jarMl carrier in the jar [mL]
     */
    public static double intoJar(double rate, String unit, double gpa, double jarMl) {
        boolean byVolume = unit.equals("percent") || unit.equals("lb-100gal");
        return rate * ML_OR_G[UNITS.indexOf(unit)] * jarMl / ((byVolume ? 1 : gpa) * ML_PER_GALLON);
    }

    /** Share of the concentration left after rinses of a volume each [gal], where the pump leaves a residue [gal]. */
    public static double leftAfter(double residueGal, double rinseGal, double rinses) {
        return Math.pow(residueGal / (residueGal + rinseGal), rinses);
    }

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate");
        String unit = given.word("unit");
        double jar = given.number("jar_ml");
        double size = ML_OR_G[UNITS.indexOf(unit)];
        boolean byVolume = unit.equals("percent") || unit.equals("lb-100gal");
        double gallons = byVolume ? 1 : given.number("gpa");
        return new Outputs()
                .put(
                        "amount",
                        working.line(
                                "into the jar",
                                intoJar(rate, unit, gallons, jar),
                                "mL or g",
                                "{} × {} × {} ÷ ({} × 3785.41)",
                                rate,
                                size,
                                jar,
                                gallons));
    }

    private static Outputs solveRinse(Given given, Working working) {
        double residue = given.number("residue_gal");
        double rinse = given.number("rinse_gal");
        double rinses = Asked.whole(given, "rinses");
        return new Outputs()
                .put(
                        "left_share",
                        working.line(
                                "left",
                                leftAfter(residue, rinse, rinses),
                                "",
                                "({} ÷ ({} + {}))^{}",
                                residue,
                                residue,
                                rinse,
                                rinses));
    }
}
