package plumbrow.science.insects;

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
 * Corn yield lost to corn borer larvae.
 *
 *   loss = d·n·s, capped at the whole yield
 *   many larvae: loss = d·min(n, 3) + 0.035·max(0, n − 3)
 *
 *   n  larvae counted per plant
 *   s  share of them that live to tunnel [-]: first instar about 0.2, second or larger 0.5
 *   d  share of yield lost per tunnelling larva: 10-leaf 0.0594, 16-leaf 0.0501, blister 0.0313, dough 0.0241
 *
 * Measured with 2 to 6 larvae per plant.
 *
 * Source: Bode & Calvin 1990, J. Econ. Entomol. 83:1595.
 */
public final class BorerLoss {
    /** Above three larvae a plant each further one costs this share [-]; Illinois Extension bulletin 199911. */
    private static final double SHARE_PER_FURTHER_LARVA = 0.035;

    private static final double LARVAE_AT_FULL_LOSS = 3;

    public static final Figure FIGURE = Figure.declare("borer-loss", Subject.INSECTS)
            .question("How much yield do corn borers cost?")
            .input(Input.number(
                    "larvae_per_plant", "Larvae counted per plant", "larvae/plant", Range.closed(0, 100), "1"))
            .input(Input.number(
                    "loss_per_larva_pct",
                    "Yield lost per larva that tunnels, by stage of the corn",
                    "%",
                    Range.PERCENT,
                    "5.94"))
            .input(Input.number("survival_share", "Share of the larvae that live to tunnel", "", Range.SHARE, "0.2")
                    .orElse("1"))
            .output("loss_pct", "Yield lost", "%")
            .formula("loss = larvae × survival × d, at most 100 %")
            .source(
                    "[bode-calvin-1990]: 5.94 % at 10-leaf, 5.01 % at 16-leaf, 3.13 % at" + " blister, 2.41 % at dough",
                    VERIFIED)
            .validity("Measured with 2 to 6 larvae a plant. A loss above 100 % is shown as 100 %.")
            .example(
                    "larvae_per_plant=3 loss_per_larva_pct=5.9 survival_share=0.2",
                    "loss_pct=3.540",
                    "first-generation worksheet, [pennsylvania-borer], unrounded",
                    COMPUTED)
            .model(BorerLoss::solve);

    private BorerLoss() {}

    /** d·n as a share of yield, at most 1; n counts larvae that tunnel. */
    public static double share(double tunnellingLarvaePerPlant, double lossPerLarva) {
        return Math.min(tunnellingLarvaePerPlant * lossPerLarva, 1);
    }

    /** The same, with larvae beyond three a plant counted at 0.035 each where that is less than d. */
    public static double crowdedShare(double tunnellingLarvaePerPlant, double lossPerLarva) {
        double full = Math.min(tunnellingLarvaePerPlant, LARVAE_AT_FULL_LOSS);
        double further = tunnellingLarvaePerPlant - full;
        return Math.min(full * lossPerLarva + further * Math.min(lossPerLarva, SHARE_PER_FURTHER_LARVA), 1);
    }

    private static Outputs solve(Given given, Working working) {
        double counted = given.number("larvae_per_plant");
        double survival = given.number("survival_share");
        double perLarva = given.number("loss_per_larva_pct");
        double tunnelling = working.line(
                "larvae that tunnel", counted * survival, "larvae/plant", "{} larvae/plant × {}", counted, survival);
        double loss = working.line(
                "yield lost",
                share(tunnelling, perLarva / 100) * 100,
                "%",
                "{} larvae/plant × {} % per larva",
                tunnelling,
                perLarva);
        if (tunnelling * perLarva > 100) {
            working.caution("The product passes 100 %; no more than the whole yield can be lost.");
        }
        return new Outputs().put("loss_pct", loss);
    }
}
