package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Yield lost to several weed species together, as a figure. The curve is {@link HyperbolicLoss}. */
public final class MixedWeedLoss {
    public static final Figure FIGURE = Figure.declare("mixed-weed-loss", Subject.WEEDS)
            .question("How much yield do several kinds of weeds cost together?")
            .input(list("densities_m2", "Density of each species", "plants/m²", Range.NOT_NEGATIVE, "1,2,10"))
            .input(list(
                    "i_pcts",
                    "Loss per plant of each species, as the density goes to 0",
                    "% per plant/m²",
                    Range.POSITIVE,
                    "6,3.2,0.5"))
            .input(Asked.HIGHEST_LOSS)
            .output("loss_pct", "Yield lost", "%")
            .output("shares_pct", "Share of each species in the loss", "%")
            .formula("load = Σ I × D; loss = load ÷ (1 + load ÷ A); share of a species = its I × D ÷ load")
            .source("Total competitive load: [swinton-1994]", MEMORY)
            .validity(
                    "Both lists of one length, else refused. Losses of single species are never added: the sum could pass 100 %.")
            .caution(Asked.WIDE_BAND)
            .example(
                    "densities_m2=1,2,10 i_pcts=6,3.2,.5 a_pct=65",
                    "loss_pct=13.7257",
                    "independent arithmetic",
                    COMPUTED)
            .model(MixedWeedLoss::solve);

    private MixedWeedLoss() {}

    private static Outputs solve(Given given, Working working) {
        double[] plants = given.list("densities_m2");
        double[] perPlant = given.list("i_pcts");
        if (plants.length != perPlant.length) {
            throw given.refuse("i_pcts", "as many numbers as densities_m2 has (" + plants.length + ")");
        }
        double load = 0;
        double[] shares = new double[plants.length];
        for (int i = 0; i < plants.length; i++) {
            shares[i] = working.line(
                    "load of species " + (i + 1),
                    perPlant[i] * plants[i],
                    "%",
                    "{} % per plant/m² × {} plants/m²",
                    perPlant[i],
                    plants[i]);
            load += shares[i];
        }
        working.step("competitive load", Numbers.terms(shares), load, "%");
        for (int i = 0; i < shares.length; i++) {
            shares[i] = load == 0 ? 0 : shares[i] / load * 100;
        }
        double loss = Asked.showLoss(working, load, given.number("a_pct"));
        return new Outputs().put("loss_pct", loss).put("shares_pct", shares);
    }
}
