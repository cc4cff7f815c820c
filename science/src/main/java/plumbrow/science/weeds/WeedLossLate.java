package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Yield lost to weeds that came before or after the crop, as a figure. The curve is {@link HyperbolicLoss}. */
public final class WeedLossLate {
    public static final Figure FIGURE = Figure.declare("weed-loss-late", Subject.WEEDS)
            .question("How much yield do weeds cost that came later than the crop?")
            .input(Asked.DENSITY)
            .input(Asked.LOSS_PER_PLANT)
            .input(Asked.HIGHEST_LOSS)
            .input(number("c_per_day", "Strength lost per day of delay", "1/d", Range.closed(0, 5), "0.03"))
            .input(number(
                    "days_after_crop",
                    "Days the weed came after the crop; negative is before it",
                    "d",
                    Range.closed(-120, 200),
                    "10"))
            .output("loss_pct", "Yield lost", "%")
            .formula("loss = I × D ÷ (exp(c × T) + I × D ÷ A)")
            .source("[cousens-1987]", MEMORY)
            .validity(
                    "T from 120 days before to 200 days after the crop. With T = 0 it is weed-loss. Loss is never above A.")
            .caution(Asked.WIDE_BAND)
            .example(
                    "density_m2=5 i_pct=4 a_pct=60 c_per_day=.03 days_after_crop=0",
                    "loss_pct=15.0000",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "density_m2=5 i_pct=4 a_pct=60 c_per_day=.03 days_after_crop=10",
                    "loss_pct=11.8822",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "density_m2=5 i_pct=4 a_pct=60 c_per_day=.03 days_after_crop=-5",
                    "loss_pct=16.7498",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "density_m2=.69 i_pct=136 a_pct=90 c_per_day=.0932168 days_after_crop=28",
                    "loss_pct=6.4087",
                    "giant ragweed four weeks after corn, from [harrison-2001]",
                    COMPUTED)
            .model(WeedLossLate::solve);

    private WeedLossLate() {}

    private static Outputs solve(Given given, Working working) {
        double plants = given.number("density_m2");
        double perPlant = given.number("i_pct");
        double highest = given.number("a_pct");
        double perDay = given.number("c_per_day");
        double days = given.number("days_after_crop");
        double load = working.line(
                "competitive load, weakened by the delay",
                HyperbolicLoss.load(plants, perPlant, perDay, days),
                "%",
                "{} % per plant/m² × {} plants/m² × exp(−{} per day × {} d)",
                perPlant,
                plants,
                perDay,
                days);
        return new Outputs().put("loss_pct", Asked.showLoss(working, load, highest));
    }
}
