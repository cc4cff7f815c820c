package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Bean leaf beetles on soybean, counted along the row or with a net, by the printed rules.
 *
 *   cotyledon (South Dakota)  beetles a foot = 4·cost, from 4 a seedling at $10, ten plants a foot, $5 a bushel, 40 bu
 *   seedlings (Illinois)      VC–V1 16 a foot of row, V2 and later 39
 *   pods                      6 a foot in 30-inch rows, or 4 a sweep, at $5, 40 to 45 bu, $8 an acre
 *
 * Source: farmprogress.com, bean leaf beetles (South Dakota); bulletin.ipm.illinois.edu id=529; cornandsoybeandigest.com.
 */
public final class BeanLeafBeetleCounts {
    private static final double PER_SEEDLING = 4;
    private static final double AT_COST_USD = 10;
    private static final List<String> COUNTS = List.of("vc-v1-foot", "v2-foot", "pods-foot", "pods-sweep");
    private static final double[] THRESHOLDS = {16, 39, 6, 4};

    public static final Figure COTYLEDON = Figure.declare("bean-leaf-beetle-cotyledon", Subject.INSECTS)
            .question("At how many bean leaf beetles a foot do soybean seedlings need help?")
            .input(number("cost_usd_ac", "Cost of control, product and pass", "$/ac", Range.NOT_NEGATIVE, "10"))
            .input(number("plants_ft", "Seedlings on a foot of row", "plants/ft", Range.above(0, 100), "10")
                    .orElse("10"))
            .output("beetles_plant", "Threshold a seedling", "beetles/plant")
            .output("beetles_ft", "Threshold a foot of row", "beetles/ft")
            .formula("beetles a seedling = 4 × cost ÷ $10; a foot = that × seedlings a foot")
            .source("[south-dakota-bean-leaf]", VERIFIED)
            .validity("Cotyledon stage, $5 a bushel and 40 bushels: the source gives no other price.")
            .caution("Treating seedlings rarely pays: soybeans outgrow the loss of cotyledons late.")
            .example(
                    "cost_usd_ac=10 plants_ft=10",
                    "beetles_plant=4.0 beetles_ft=40",
                    "[south-dakota-bean-leaf]",
                    VERIFIED)
            .example("cost_usd_ac=2 plants_ft=10", "beetles_ft=8", "[south-dakota-bean-leaf]", VERIFIED)
            .example("cost_usd_ac=4 plants_ft=10", "beetles_ft=16", "[south-dakota-bean-leaf]", VERIFIED)
            .model(BeanLeafBeetleCounts::solveCotyledon);

    public static final Figure COUNTED = Figure.declare("bean-leaf-beetle-count", Subject.INSECTS)
            .question("Are there so many bean leaf beetles that soybeans are treated?")
            .input(number("beetles", "Beetles a foot of row, or a sweep", "beetles", Range.NOT_NEGATIVE, "5"))
            .input(word("count", "Stage, and whether a foot of row or a sweep", COUNTS, "pods-foot"))
            .output("threshold", "Threshold", "beetles")
            .output("of_threshold", "Beetles over the threshold", "")
            .output("verdict", "In words", "")
            .formula("VC–V1 16 a foot, V2 and later 39 a foot; pods 6 a foot in 30-inch rows or 4 a sweep")
            .source("[illinois-bean-leaf-529]; [digest-bean-leaf]", VERIFIED)
            .validity(
                    "Pod rules hold at $5 a bushel, 40 to 45 bushels and $8 an acre: scale with your own state's table.")
            .caution("At pod stage beetles must be feeding on pods; clipped pods weigh more than eaten leaves.")
            .example(
                    "beetles=5 count=pods-foot",
                    "threshold=6 of_threshold=.8333 verdict=below the threshold",
                    "[digest-bean-leaf]",
                    VERIFIED)
            .example("beetles=4 count=pods-sweep", "threshold=4 verdict=treat", "[digest-bean-leaf]", VERIFIED)
            .example("beetles=16 count=vc-v1-foot", "threshold=16 verdict=treat", "[illinois-bean-leaf-529]", VERIFIED)
            .example(
                    "beetles=16 count=v2-foot",
                    "threshold=39 verdict=below the threshold",
                    "[illinois-bean-leaf-529]",
                    VERIFIED)
            .model(BeanLeafBeetleCounts::solveCounted);

    private BeanLeafBeetleCounts() {}

    private static Outputs solveCotyledon(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double plants = given.number("plants_ft");
        double each = working.line(
                "beetles a seedling",
                PER_SEEDLING * cost / AT_COST_USD,
                "",
                "{} × {} ÷ {}",
                PER_SEEDLING,
                cost,
                AT_COST_USD);
        double foot = working.line("beetles a foot", each * plants, "", "{} × {}", each, plants);
        return new Outputs().put("beetles_plant", each).put("beetles_ft", foot);
    }

    private static Outputs solveCounted(Given given, Working working) {
        double beetles = given.number("beetles");
        double threshold = THRESHOLDS[COUNTS.indexOf(given.word("count"))];
        double of = working.line("beetles over the threshold", beetles / threshold, "", "{} ÷ {}", beetles, threshold);
        return new Outputs()
                .put("threshold", threshold)
                .put("of_threshold", of)
                .put("verdict", of >= 1 ? "treat" : "below the threshold");
    }
}
