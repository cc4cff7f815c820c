package plumbrow.science.safety;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * A vapour pressure in the units of another sheet.
 *
 *   1 mmHg = 1 torr = 133.322 Pa;  1 hPa = 1 mbar = 100 Pa;  1 atm = 101,325 Pa;  1 mPa = 0.001 Pa
 *
 * mPa is a thousandth and MPa a million pascals: an active ingredient in MPa is a slip of the pen and refused. Values at 20
 * and at 25 °C are not compared without saying so.
 *
 * Source: definitions of the units, as in SciPy.
 */
public final class VapourPressure {
    private static final double PA_PER_MMHG = 133.322;

    public static final Figure FIGURE = Figure.declare("vapour-pressure", Subject.SAFETY)
            .question("What is this vapour pressure in the units of another sheet?")
            .input(number("value", "Vapour pressure as printed", "", Range.NOT_NEGATIVE, "2.9e-7"))
            .input(word(
                    "unit",
                    "Its unit, capitals as printed",
                    List.of("mmHg", "torr", "Pa", "kPa", "hPa", "mPa", "mbar", "atm", "MPa"),
                    "mmHg"))
            .output("mpa", "Millipascals", "mPa")
            .output("mmhg", "Millimetres of mercury", "mmHg")
            .output("pa", "Pascals", "Pa")
            .formula("pascals = value × pascals per unit; mPa = 1000 × pascals; mmHg = pascals ÷ 133.322")
            .source("Definitions of the units, as in [scipy]", VERIFIED)
            .validity("Capitals count: MPa is a billion mPa and refused.")
            .caution(
                    "Keep the temperature beside it. On the sheet of a water-based product it is usually that of water.")
            .example(
                    "value=2.9e-7 unit=mmHg",
                    "mpa=.03866 mmhg=.00000029 pa=.00003866",
                    "independent arithmetic",
                    COMPUTED)
            .example("value=1.5E-07 unit=torr", "mpa=.02000", "independent arithmetic", COMPUTED)
            .example("value=.0026 unit=hPa", "mpa=260.0 mmhg=.001950 pa=.2600", "independent arithmetic", COMPUTED)
            .example("value=1.38e-2 unit=mPa", "mpa=.01380 mmhg=.0000001035", "independent arithmetic", COMPUTED)
            .example("value=4.5e-6 unit=mbar", "mpa=.4500 mmhg=.000003375", "independent arithmetic", COMPUTED)
            .example("value=1.2e-9 unit=kPa", "mpa=.001200 mmhg=.000000009001", "independent arithmetic", COMPUTED)
            .example("value=3.0E-10 unit=atm", "mpa=.03040 mmhg=.0000002280", "independent arithmetic", COMPUTED)
            .model(VapourPressure::solve);

    private VapourPressure() {}

    /** Pascals in one of a unit. */
    public static double pascalsPer(String unit) {
        return switch (unit) {
            case "mmHg", "torr" -> PA_PER_MMHG;
            case "kPa" -> 1000;
            case "hPa", "mbar" -> 100;
            case "mPa" -> .001;
            case "atm" -> 101_325;
            case "MPa" -> 1e6;
            default -> 1;
        };
    }

    private static Outputs solve(Given given, Working working) {
        String unit = given.word("unit");
        if (unit.equals("MPa")) {
            throw given.refuse("unit", "mPa: MPa is a billion times as much, and no pesticide evaporates so");
        }
        double value = given.number("value");
        double per = pascalsPer(unit);
        double pascals = working.line("pascals", value * per, "Pa", "{} × {}", value, per);
        double milli = working.line("millipascals", pascals * 1000, "mPa", "{} × 1000", pascals);
        double mercury =
                working.line("millimetres of mercury", pascals / PA_PER_MMHG, "mmHg", "{} ÷ {}", pascals, PA_PER_MMHG);
        return new Outputs().put("mpa", milli).put("mmhg", mercury).put("pa", pascals);
    }
}
