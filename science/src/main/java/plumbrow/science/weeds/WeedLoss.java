package plumbrow.science.weeds;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Yield lost to one weed species that came with the crop, as a figure. The curve is {@link HyperbolicLoss}. */
public final class WeedLoss {
    public static final Figure FIGURE = Figure.declare("weed-loss", Subject.WEEDS)
            .question("How much yield do weeds of one kind cost that came with the crop?")
            .input(Asked.DENSITY)
            .input(Asked.LOSS_PER_PLANT)
            .input(Asked.HIGHEST_LOSS)
            .output("loss_pct", "Yield lost", "%")
            .formula("loss = I × D ÷ (1 + I × D ÷ A)")
            .source("[cousens-1985], as in [statforbiology]", VERIFIED)
            .validity(
                    "Weeds that compete all season; loss is never above A. Parameters differ between sites by a factor of several.")
            .caution(Asked.WIDE_BAND)
            .example(
                    "density_m2=1 i_pct=3.2 a_pct=56",
                    "loss_pct=3.0270",
                    "volunteer soybean in corn, [alms-corn-2016]",
                    COMPUTED)
            .example(
                    "density_m2=50 i_pct=3.2 a_pct=56",
                    "loss_pct=41.4815",
                    "volunteer soybean in corn, [alms-corn-2016]",
                    COMPUTED)
            .example(
                    "density_m2=0.69 i_pct=136 a_pct=90",
                    "loss_pct=45.9399",
                    "giant ragweed in corn, [harrison-2001]",
                    COMPUTED)
            .model(WeedLoss::solve);

    private WeedLoss() {}

    private static Outputs solve(Given given, Working working) {
        double plants = given.number("density_m2");
        double perPlant = given.number("i_pct");
        double highest = given.number("a_pct");
        double load = working.line(
                "competitive load", perPlant * plants, "%", "{} % per plant/m² × {} plants/m²", perPlant, plants);
        return new Outputs().put("loss_pct", Asked.showLoss(working, load, highest));
    }
}
