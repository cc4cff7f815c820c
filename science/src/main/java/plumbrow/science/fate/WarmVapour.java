package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Vapour pressure at another temperature, and the heat of vaporisation behind it.
 *
 *   VP2 = VP1·exp[−(ΔH/R)(1/T2 − 1/T1)], T [K];  ΔH 95 kJ/mol by default, better from two measured points
 *
 * Holds from 5 to 45 °C and not across a melting point.
 *
 * Source: Clausius and Clapeyron; 95 kJ/mol: FOCUS default (value from memory).
 */
public final class WarmVapour {
    private static final double KELVIN = 273.15;
    private static final Range SUMMER_C = Range.closed(5, 45);

    public static final Figure FIGURE = Figure.declare("vapour-pressure-at", Subject.FATE)
            .question("What is the vapour pressure at another temperature?")
            .input(number("vapour_pressure", "Vapour pressure, in any unit", "", Range.POSITIVE, "14.7"))
            .input(number("at_c", "Temperature of that value", "°C", SUMMER_C, "25"))
            .input(number("to_c", "Temperature asked for", "°C", SUMMER_C, "35"))
            .input(number("heat_kj_mol", "Heat of vaporisation", "kJ/mol", Range.closed(10, 300), "95")
                    .orElse("95"))
            .output("vapour_pressure", "Vapour pressure there, in the unit given", "")
            .output("factor", "Times the value given", "")
            .formula("pressure × e^(−heat ÷ R × (1 ÷ T2 − 1 ÷ T1)), T in kelvin, R = 8.314462618")
            .source("Clausius and Clapeyron; 95 kJ/mol: default of [efsa-2007]", MEMORY)
            .validity("5 to 45 °C, not across a melting point.")
            .example("vapour_pressure=1 at_c=20 to_c=30", "factor=3.6172", "independent arithmetic", COMPUTED)
            .example("vapour_pressure=1 at_c=25 to_c=20", "factor=0.52015", "independent arithmetic", COMPUTED)
            .example(
                    "vapour_pressure=14.7 at_c=25 to_c=35",
                    "vapour_pressure=50.982 factor=3.4682",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "vapour_pressure=14.7 at_c=25 to_c=10",
                    "vapour_pressure=1.9303",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "vapour_pressure=1 at_c=20 to_c=25 heat_kj_mol=102.432",
                    "vapour_pressure=2.02338",
                    "independent arithmetic",
                    COMPUTED)
            .model(WarmVapour::solve);

    public static final Figure HEAT = Figure.declare("vaporisation-heat", Subject.FATE)
            .question("Which heat of vaporisation stands behind two vapour pressures?")
            .input(number("cool_pressure", "Vapour pressure when cool", "", Range.POSITIVE, "1"))
            .input(number("cool_c", "Temperature of it", "°C", SUMMER_C, "20"))
            .input(number("warm_pressure", "Vapour pressure when warm, in the same unit", "", Range.POSITIVE, "4"))
            .input(number("warm_c", "Temperature of it", "°C", SUMMER_C, "30"))
            .output("heat_kj_mol", "Heat of vaporisation", "kJ/mol")
            .formula("heat = R × ln(warm ÷ cool) ÷ (1 ÷ T cool − 1 ÷ T warm)")
            .source("Clausius and Clapeyron", PRACTICE)
            .validity("Two temperatures at least 1 °C apart, the cool one first.")
            .example(
                    "cool_pressure=1 cool_c=20 warm_pressure=4 warm_c=30",
                    "heat_kj_mol=102.432",
                    "independent arithmetic",
                    COMPUTED)
            .model(WarmVapour::solveHeat);

    private WarmVapour() {}

    /** Factor from one temperature [°C] to another at a heat [kJ/mol]. */
    public static double factor(double fromC, double toC, double heatKjPerMol) {
        double heat = heatKjPerMol * 1000;
        return Math.exp(-heat / HenryConstant.GAS_CONSTANT * (1 / (toC + KELVIN) - 1 / (fromC + KELVIN)));
    }

    private static Outputs solve(Given given, Working working) {
        double pressure = given.number("vapour_pressure");
        double from = given.number("at_c");
        double to = given.number("to_c");
        double heat = given.number("heat_kj_mol");
        double factor = working.line(
                "factor",
                factor(from, to, heat),
                "",
                "exp((0 − {}) × 1000 ÷ 8.314462618 × (1 ÷ ({} + 273.15) − 1 ÷ ({} + 273.15)))",
                heat,
                to,
                from);
        return new Outputs()
                .put(
                        "vapour_pressure",
                        working.line("vapour pressure", pressure * factor, "", "{} × {}", pressure, factor))
                .put("factor", factor);
    }

    private static Outputs solveHeat(Given given, Working working) {
        double cool = given.number("cool_c");
        double warm = given.number("warm_c");
        if (warm < cool + 1) {
            throw given.refuse("warm_c", "a temperature at least 1 °C above cool_c (" + Numbers.plain(cool) + ")");
        }
        double low = given.number("cool_pressure");
        double high = given.number("warm_pressure");
        return new Outputs()
                .put(
                        "heat_kj_mol",
                        working.line(
                                "heat",
                                HenryConstant.GAS_CONSTANT
                                        * Math.log(high / low)
                                        / (1 / (cool + KELVIN) - 1 / (warm + KELVIN))
                                        / 1000,
                                "kJ/mol",
                                "8.314462618 × ln({} ÷ {}) ÷ (1 ÷ ({} + 273.15) − 1 ÷ ({} + 273.15)) ÷ 1000",
                                high,
                                low,
                                cool,
                                warm));
    }
}
