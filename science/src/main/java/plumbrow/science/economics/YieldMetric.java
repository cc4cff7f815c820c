package plumbrow.science.economics;

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
 * A yield in kilograms a hectare.
 *
 *   1 bu/ac = pounds a bushel·0.45359237/0.40468564224 kg/ha
 *
 * Source: definitions of pound and acre; 56 lb a bushel of corn, 60 of soybean and wheat.
 */
public final class YieldMetric {
    private static final List<String> CROPS = List.of("corn", "soybean", "wheat");
    private static final double[] LB_BU = {56, 60, 60};
    private static final double KG_PER_LB = 0.45359237;
    private static final double HA_PER_ACRE = 0.40468564224;

    public static final Figure FIGURE = Figure.declare("yield-metric", Subject.ECONOMICS)
            .question("How many kilograms a hectare are so many bushels an acre?")
            .input(number("yield_bu_ac", "Yield", "bu/ac", Range.NOT_NEGATIVE, "180"))
            .input(word("crop", "Crop", CROPS, "corn"))
            .output("kg_ha", "Yield", "kg/ha")
            .output("kg_ha_per_bu", "One bushel an acre", "kg/ha")
            .formula("kg/ha = bu/ac × pounds a bushel × 0.45359237 ÷ 0.40468564224")
            .source("Definitions; 56 lb a bushel of corn, 60 of soybean and wheat", VERIFIED)
            .validity("At the moisture the bushel is counted at.")
            .example("yield_bu_ac=1 crop=corn", "kg_ha=62.768 kg_ha_per_bu=62.768", "reference, units", COMPUTED)
            .example("yield_bu_ac=1 crop=soybean", "kg_ha=67.251", "reference, units", COMPUTED)
            .example("yield_bu_ac=1.67 crop=corn", "kg_ha=104.8", "105 kg/ha a year is 1.67 bu", COMPUTED)
            .model(YieldMetric::solve);

    private YieldMetric() {}

    private static Outputs solve(Given given, Working working) {
        double weight = LB_BU[CROPS.indexOf(given.word("crop"))];
        double one = working.line(
                "one bushel an acre",
                weight * KG_PER_LB / HA_PER_ACRE,
                "",
                "{} × {} ÷ {}",
                weight,
                KG_PER_LB,
                HA_PER_ACRE);
        double yield = given.number("yield_bu_ac");
        return new Outputs()
                .put("kg_ha", working.line("yield in kg/ha", yield * one, "", "{} × {}", yield, one))
                .put("kg_ha_per_bu", one);
    }
}
