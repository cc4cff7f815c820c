package plumbrow.science.weeds;

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
 * A count of weeds as plants on a square metre, and the density that costs a given loss.
 *
 *   plants/m² = plants/ft²·10.764 = plants/ac ÷ 4046.856 = plants on a metre of row ÷ row spacing [m]
 *             = plants on 100 ft of row ÷ (30.48·row spacing [m])
 *   D(YL) = YL/(I·(1 − YL/A)), none where YL ≥ A
 *
 * Source: definition of the units; inverse of Cousens 1985, form as in R package statforbiology.
 */
public final class WeedDensity {
    private static final double FT2_PER_M2 = 10.763910416709722;
    private static final double M2_PER_ACRE = 4046.8564224;
    private static final double METRES_PER_INCH = 0.0254;
    private static final double METRES_PER_100_FEET = 30.48;

    public static final Figure COUNT = Figure.declare("weed-density", Subject.WEEDS)
            .question("How many weeds on a square metre is this count?")
            .input(number("count", "Weeds counted", "plants", Range.NOT_NEGATIVE, "3"))
            .input(word("per", "On", List.of("m2", "ft2", "acre", "metre-of-row", "100-ft-of-row"), "100-ft-of-row"))
            .input(number(
                            "row_spacing_in",
                            "Row spacing, where the count is along the row",
                            "in",
                            Range.above(0, 120),
                            "30")
                    .orElse("30"))
            .output("density_m2", "Density", "plants/m²")
            .formula("× 10.764 from ft², ÷ 4046.856 from acres; along the row ÷ (length × row spacing)")
            .source("Definition of the units", VERIFIED)
            .validity("Several places of the field: weeds stand in patches, and a mean of few counts is worth little.")
            .example("count=3 per=100-ft-of-row row_spacing_in=30", "density_m2=.12917", "3 ÷ 23.226", COMPUTED)
            .example("count=1 per=ft2", "density_m2=10.764", "reference, units", COMPUTED)
            .example("count=8 per=metre-of-row row_spacing_in=30", "density_m2=10.499", "8 ÷ 0.762", COMPUTED)
            .example("count=68 per=acre", "density_m2=.0168", "68 an acre", COMPUTED)
            .example("count=5 per=m2", "density_m2=5", "itself", COMPUTED)
            .model(WeedDensity::solveCount);

    public static final Figure FOR_LOSS = Figure.declare("weed-density-for-loss", Subject.WEEDS)
            .question("How many weeds cost this much yield?")
            .input(number("loss_pct", "Loss looked for", "%", Range.below(0, 100), "10"))
            .input(Asked.LOSS_PER_PLANT)
            .input(Asked.HIGHEST_LOSS)
            .output("density_m2", "Density", "plants/m²")
            .formula("density = loss ÷ (I × (1 − loss ÷ A))")
            .source("Inverse of [cousens-1985], which is as in [statforbiology]", VERIFIED)
            .validity("Weeds of one kind that came with the crop. A loss not below A is never reached: refused.")
            .caution(Asked.WIDE_BAND)
            .example("loss_pct=10 i_pct=3.2 a_pct=56", "density_m2=3.8043", "published 3 to 4 plants", COMPUTED)
            .example("loss_pct=28 i_pct=3.2 a_pct=56", "density_m2=17.5", "half of A is reached at A ÷ I", COMPUTED)
            .model(WeedDensity::solveForLoss);

    private WeedDensity() {}

    private static Outputs solveCount(Given given, Working working) {
        double count = given.number("count");
        double row = given.number("row_spacing_in") * METRES_PER_INCH;
        double density = switch (given.word("per")) {
            case "ft2" -> working.line("density", count * FT2_PER_M2, "", "{} × {}", count, FT2_PER_M2);
            case "acre" -> working.line("density", count / M2_PER_ACRE, "", "{} ÷ {}", count, M2_PER_ACRE);
            case "metre-of-row" -> working.line("density", count / row, "", "{} ÷ {}", count, row);
            case "100-ft-of-row" ->
                working.line(
                        "density",
                        count / (METRES_PER_100_FEET * row),
                        "",
                        "{} ÷ ({} × {})",
                        count,
                        METRES_PER_100_FEET,
                        row);
            default -> working.line("density", count, "", "{}", count);
        };
        return new Outputs().put("density_m2", density);
    }

    private static Outputs solveForLoss(Given given, Working working) {
        double loss = given.number("loss_pct");
        double perPlant = given.number("i_pct");
        double highest = given.number("a_pct");
        if (loss >= highest) {
            throw given.refuse("loss_pct", "a loss below a_pct: this weed never costs more");
        }
        return new Outputs()
                .put(
                        "density_m2",
                        working.line(
                                "density",
                                HyperbolicLoss.densityForLossPct(loss, perPlant, highest),
                                "",
                                "{} ÷ ({} × (1 − {} ÷ {}))",
                                loss,
                                perPlant,
                                loss,
                                highest));
    }
}
