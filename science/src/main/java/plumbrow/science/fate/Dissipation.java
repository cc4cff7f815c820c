package plumbrow.science.fate;

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
 * What is left of a residue after days in soil, at the soil's temperature and moisture.
 *
 *   left = 2^(−t·f/DT50);  f = fT·fθ;  fT = Q10^((T − Tref)/10), 0 at T ≤ 0 °C;  fθ = min(1, (θ/θfc)^0.7)
 *
 *   t  days, ≥ 0;  DT50  half-life at reference conditions [d], > 0;  T  soil temperature [°C];  θ/θfc  moisture as a
 *   share of field capacity
 *
 * The correction belongs to laboratory or normalised half-lives. A field half-life already holds its own weather: correct
 * it only for the difference from the trial's temperature.
 *
 * Source: Q10 2.58 (EFSA 2007) and 0.7 (Walker): defaults of the FOCUS kinetics guidance Appendix 8 as in R package mkin,
 * f_time_norm_focus (verified); older Q10 2.2 (value from memory).
 */
public final class Dissipation {
    static final Input DT50 = number("dt50_d", "Half-life at reference conditions", "d", Range.POSITIVE, "60");
    static final Input REFERENCE = number(
                    "reference_c", "Temperature of the half-life", "°C", Range.closed(-10, 50), "20")
            .orElse("20");
    static final Input Q10 = number("q10", "Factor for each 10 °C", "", Range.closed(1, 10), "2.58")
            .orElse("2.58");
    static final Range SOIL_C = Range.closed(-50, 60);
    private static final double WALKER = 0.7;

    public static final Figure FIGURE = Figure.declare("dissipation", Subject.FATE)
            .question("What share of the residue is left?")
            .input(number("days", "Days since the application", "d", Range.NOT_NEGATIVE, "90"))
            .input(DT50)
            .input(number("temperature_c", "Mean soil temperature", "°C", SOIL_C, "10")
                    .optional())
            .input(REFERENCE)
            .input(Q10)
            .input(number("moisture_share", "Soil moisture as a share of field capacity", "", Range.closed(0, 5), "0.6")
                    .optional())
            .output("left_share", "Share left", "")
            .output("speed_factor", "Speed against reference conditions", "")
            .formula("left = 0.5^(days × f ÷ half-life); f = Q10^((T − reference)/10) × min(1, moisture^0.7)")
            .source("[focus-kinetics-2014]", VERIFIED)
            .validity(
                    "Nothing breaks down at or below 0 °C. Without a temperature, or a moisture, none is corrected for. Soil, not air.")
            .caution("Half-lives vary fivefold between fields: carry a range. The label's rotation interval rules.")
            .example("days=60 dt50_d=60", "left_share=0.5 speed_factor=1.0", "independent arithmetic", COMPUTED)
            .example("days=120 dt50_d=90", "left_share=0.396850", "independent arithmetic", COMPUTED)
            .example("days=90 dt50_d=60 temperature_c=10", "left_share=0.668317", "independent arithmetic", COMPUTED)
            .example(
                    "days=90 dt50_d=60 temperature_c=10 q10=2.2",
                    "left_share=0.623379",
                    "independent arithmetic",
                    COMPUTED)
            .example("days=45 dt50_d=30 temperature_c=28", "left_share=0.108687", "independent arithmetic", COMPUTED)
            .example(
                    "days=60 dt50_d=60 moisture_share=.6",
                    "speed_factor=0.699368",
                    "moisture factor of [focus-kinetics-2014]",
                    COMPUTED)
            .model(Dissipation::solve);

    private Dissipation() {}

    /** Share left after days at a speed factor. */
    public static double leftShare(double days, double dt50Days, double speedFactor) {
        return Math.pow(2, -days * speedFactor / dt50Days);
    }

    /** Speed at a soil temperature [°C] against that at the reference; 0 in frozen soil. */
    public static double temperatureFactor(double celsius, double referenceC, double q10) {
        return celsius <= 0 ? 0 : Math.pow(q10, (celsius - referenceC) / 10);
    }

    /** Speed at a moisture, as a share of field capacity, against that at field capacity. */
    public static double moistureFactor(double shareOfFieldCapacity) {
        return Math.min(1, Math.pow(shareOfFieldCapacity, WALKER));
    }

    private static Outputs solve(Given given, Working working) {
        double days = given.number("days");
        double dt50 = given.number("dt50_d");
        double speed = 1;
        if (given.has("temperature_c")) {
            speed *= showTemperature(
                    working, given.number("temperature_c"), given.number("reference_c"), given.number("q10"));
        }
        if (given.has("moisture_share")) {
            double moisture = given.number("moisture_share");
            speed *= working.line(
                    "moisture factor",
                    moistureFactor(moisture),
                    "",
                    moisture < 1 ? "{}^0.7" : "1, not less than field capacity: {}",
                    moisture);
        }
        double left =
                working.line("share left", leftShare(days, dt50, speed), "", "0.5^({} × {} ÷ {})", days, speed, dt50);
        return new Outputs().put("left_share", left).put("speed_factor", speed);
    }

    static double showTemperature(Working working, double celsius, double reference, double q10) {
        double factor = temperatureFactor(celsius, reference, q10);
        return celsius <= 0
                ? working.line("temperature factor", factor, "", "none in frozen soil, {} °C", celsius)
                : working.line("temperature factor", factor, "", "{}^(({} − {}) ÷ 10)", q10, celsius, reference);
    }
}
