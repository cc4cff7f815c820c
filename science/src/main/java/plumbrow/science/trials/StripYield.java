package plumbrow.science.trials;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The yield of a strip at the moisture at which it is sold.
 *
 *   bu/ac = weight·(100 − M)/(100 − M₀)/lb per bu / (length·width/43,560)
 *
 *   weight [lb];  M  moisture, M₀ standard moisture [%]: corn 15.5, soybean 13.0, wheat 13.5;  length, width [ft]
 *
 * Source: arithmetic; standard moistures are common practice.
 */
public final class StripYield {
    private static final double SQ_FT_PER_ACRE = 43_560;

    public static final Figure FIGURE = Figure.declare("strip-yield", Subject.TRIALS)
            .question("What did this strip yield at standard moisture?")
            .input(number("weight_lb", "Weight of the grain", "lb", Range.NOT_NEGATIVE, "4860"))
            .input(number("moisture_pct", "Moisture of the grain", "%", Range.below(0, 100), "18.2"))
            .input(number(
                    "standard_pct",
                    "Standard moisture: corn 15.5, soybean 13.0, wheat 13.5",
                    "%",
                    Range.below(0, 100),
                    "15.5"))
            .input(number("lb_bu", "Pounds in a bushel: corn 56, soybean and wheat 60", "lb/bu", Range.POSITIVE, "56"))
            .input(number("length_ft", "Length of the strip", "ft", Range.POSITIVE, "1320"))
            .input(number("width_ft", "Width harvested", "ft", Range.POSITIVE, "20"))
            .output("yield_bu_ac", "Yield at standard moisture", "bu/ac")
            .output("acres", "Area", "ac")
            .formula("bu/ac = weight × (100 − moisture) ÷ (100 − standard) ÷ lb per bushel ÷ acres")
            .source("Arithmetic; standard moistures", PRACTICE)
            .validity("Shrink of dry matter in handling is not in it.")
            .example(
                    "weight_lb=4860 moisture_pct=18.2 standard_pct=15.5 lb_bu=56 length_ft=1320 width_ft=20",
                    "yield_bu_ac=138.62",
                    "corn",
                    COMPUTED)
            .example(
                    "weight_lb=1630 moisture_pct=11.4 standard_pct=13 lb_bu=60 length_ft=1000 width_ft=30",
                    "yield_bu_ac=40.17",
                    "soybean",
                    COMPUTED)
            .model(StripYield::solve);

    private StripYield() {}

    /** Yield of a strip at standard moisture [bu/ac]; weight [lb], moistures [%], length and width [ft]. */
    public static double buPerAcre(
            double weightLb,
            double moisturePct,
            double standardPct,
            double poundsPerBushel,
            double lengthFt,
            double widthFt) {
        return weightLb
                * (100 - moisturePct)
                / (100 - standardPct)
                / poundsPerBushel
                / (lengthFt * widthFt / SQ_FT_PER_ACRE);
    }

    private static Outputs solve(Given given, Working working) {
        double length = given.number("length_ft");
        double width = given.number("width_ft");
        double acres = working.line("area", length * width / SQ_FT_PER_ACRE, "ac", "{} × {} ÷ 43,560", length, width);
        double weight = given.number("weight_lb");
        double moisture = given.number("moisture_pct");
        double standard = given.number("standard_pct");
        double dry = working.line(
                "weight at standard moisture",
                weight * (100 - moisture) / (100 - standard),
                "lb",
                "{} × (100 − {}) ÷ (100 − {})",
                weight,
                moisture,
                standard);
        double perBushel = given.number("lb_bu");
        return new Outputs()
                .put(
                        "yield_bu_ac",
                        working.line("yield", dry / perBushel / acres, "bu/ac", "{} ÷ {} ÷ {}", dry, perBushel, acres))
                .put("acres", acres);
    }
}
