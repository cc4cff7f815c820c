package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * A half-life in soil at another temperature and moisture, and the same speed by Arrhenius.
 *
 *   DT50(T) = DT50/(f_T·f_θ);  f_T = Q10^((T − Tref)/10);  f_θ = min(1, (θ/θ_fc)^0.7)
 *   f_T = exp[−(E/R)·(1/T − 1/Tref)], T [K], E 65.4 kJ/mol
 *
 * At or below 0 °C nothing breaks down, so there is no half-life. Field half-lives already hold their own weather.
 *
 * Source: FOCUS kinetics guidance Appendix 8, as in R package mkin (2.58, 0.7); E from memory.
 */
public final class HalfLifeAt {
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double KELVIN = 273.15;

    public static final Figure FIGURE = Figure.declare("half-life-at", Subject.FATE)
            .question("What is the half-life at another soil temperature and moisture?")
            .input(Dissipation.DT50)
            .input(number("temperature_c", "Mean soil temperature", "°C", Range.above(0, 60), "10"))
            .input(Dissipation.REFERENCE)
            .input(Dissipation.Q10)
            .input(number("moisture_share", "Soil moisture as a share of field capacity", "", Range.above(0, 5), "0.6")
                    .orElse("1"))
            .output("half_life_d", "Half-life there", "d")
            .output("speed_factor", "Speed against reference conditions", "")
            .formula("half-life ÷ (Q10^((T − reference) ÷ 10) × moisture^0.7); moisture at most 1")
            .source("[focus-kinetics-2014]", VERIFIED)
            .validity(
                    "Above 0 °C: in frozen soil nothing breaks down. For laboratory half-lives; a field one holds its own weather.")
            .caution("Half-lives vary fivefold between soils: try the ends.")
            .example("dt50_d=60 temperature_c=10", "half_life_d=154.80 speed_factor=.387597", "60 ÷ 0.387597", COMPUTED)
            .example(
                    "dt50_d=60 temperature_c=20 moisture_share=.5",
                    "speed_factor=.615572",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "dt50_d=60 temperature_c=30",
                    "half_life_d=23.26 speed_factor=2.58",
                    "independent arithmetic",
                    COMPUTED)
            .model(HalfLifeAt::solve);

    public static final Figure ARRHENIUS = Figure.declare("arrhenius-speed", Subject.FATE)
            .question("How much faster does it break down when warmer, by Arrhenius?")
            .input(number("temperature_c", "Temperature", "°C", Range.closed(-20, 60), "20"))
            .input(number("reference_c", "Reference temperature", "°C", Range.closed(-20, 60), "10"))
            .input(number("energy_kj_mol", "Activation energy", "kJ/mol", Range.closed(0, 300), "65.4")
                    .orElse("65.4"))
            .output("factor", "Speed against the reference", "")
            .formula("factor = exp(−energy ÷ R × (1 ÷ T − 1 ÷ reference)), in kelvin")
            .source("[efsa-2007], default of 65.4 kJ/mol", MEMORY)
            .validity("Above freezing; R 8.314462618 J/(mol K). From 10 to 20 °C the same as Q10 2.58.")
            .example("temperature_c=20 reference_c=10", "factor=2.5796", "independent arithmetic", COMPUTED)
            .example("temperature_c=20 reference_c=20", "factor=1", "itself", COMPUTED)
            .model(HalfLifeAt::solveArrhenius);

    private HalfLifeAt() {}

    /** Speed at a temperature against a reference [°C], by an activation energy [kJ/mol]. */
    public static double arrhenius(double celsius, double referenceCelsius, double kilojoulePerMol) {
        return Math.exp(
                -kilojoulePerMol * 1000 / GAS_CONSTANT * (1 / (celsius + KELVIN) - 1 / (referenceCelsius + KELVIN)));
    }

    private static Outputs solve(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double reference = given.number("reference_c");
        double q10 = given.number("q10");
        double warm = working.line(
                "speed by temperature",
                Dissipation.temperatureFactor(celsius, reference, q10),
                "",
                "{}^(({} − {}) ÷ 10)",
                q10,
                celsius,
                reference);
        double moisture = Math.min(1, given.number("moisture_share"));
        double wet = working.line("speed by moisture", Dissipation.moistureFactor(moisture), "", "{}^0.7", moisture);
        double speed = working.line("together", warm * wet, "", "{} × {}", warm, wet);
        double halfLife = given.number("dt50_d");
        return new Outputs()
                .put("half_life_d", working.line("half-life there", halfLife / speed, "d", "{} ÷ {}", halfLife, speed))
                .put("speed_factor", speed);
    }

    private static Outputs solveArrhenius(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double reference = given.number("reference_c");
        double energy = given.number("energy_kj_mol");
        return new Outputs()
                .put(
                        "factor",
                        working.line(
                                "factor",
                                arrhenius(celsius, reference, energy),
                                "",
                                "exp(−{} × 1000 ÷ 8.314462618 × (1 ÷ ({} + 273.15) − 1 ÷ ({} + 273.15)))",
                                energy,
                                celsius,
                                reference));
    }
}
