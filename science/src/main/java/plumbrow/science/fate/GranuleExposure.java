package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Active ingredient on the ground as granules or treated seed, against the lethal dose of an animal.
 *
 *   mg/ft² = 10.41305·rate·share left on the surface;  RQ = it/(adjusted LD50·BW), BW [kg]
 *
 * Share on the surface: broadcast 1, banded and lightly covered 0.15, in the furrow 0.01 (values from memory).
 *
 * Source: EPA terrestrial screening guidance (value from memory).
 */
public final class GranuleExposure {
    private static final double GRAMS_PER_KG = 1000;

    public static final Figure FIGURE = Figure.declare("granule-exposure", Subject.FATE)
            .question("How many lethal doses lie on a square foot as granules or seed?")
            .input(Asked.RATE)
            .input(number(
                    "surface_share",
                    "Share left on the surface: broadcast 1, banded 0.15, in the furrow 0.01",
                    "",
                    Range.SHARE,
                    "0.15"))
            .input(number("ld50_mg_kg", "LD50 adjusted to the animal's weight", "mg/kg", Range.POSITIVE, "72"))
            .input(number("weight_g", "Weight of the animal", "g", Range.POSITIVE, "20"))
            .output("mg_ft2", "On the surface", "mg/ft²")
            .output("rq", "Risk quotient", "")
            .formula("mg/ft² = 10.41305 × rate × share; quotient = mg/ft² ÷ (LD50 × weight in kg)")
            .source("[epa-terrestrial]", MEMORY)
            .validity("Rate on the area where it lies: of a band, the rate inside the band.")
            .caution(Asked.SCREEN)
            .example(
                    "rate_lb_ac=1 surface_share=1 ld50_mg_kg=100 weight_g=100",
                    "mg_ft2=10.41305 rq=1.041305",
                    "constant of 1 lb/ac, by hand",
                    COMPUTED)
            .model(GranuleExposure::solve);

    private GranuleExposure() {}

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate_lb_ac");
        double share = given.number("surface_share");
        double lies = working.line(
                "on the surface", rate * FieldRate.MG_PER_FT2 * share, "mg/ft²", "10.41305 × {} × {}", rate, share);
        double ld50 = given.number("ld50_mg_kg");
        double weight = given.number("weight_g");
        double lethal = working.line("lethal dose", ld50 * weight / GRAMS_PER_KG, "mg", "{} × {} ÷ 1000", ld50, weight);
        return new Outputs()
                .put("mg_ft2", lies)
                .put("rq", working.line("risk quotient", lies / lethal, "", "{} ÷ {}", lies, lethal));
    }
}
