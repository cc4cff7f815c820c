package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The weed density at which a spray pays for itself within the season.
 *
 *   L* = 100·C / (Y·P·H);  D* = L* / (I·(1 − L* / A));  none where L* ≥ A
 *   exact: Y·P·[YL(D) − YL((1−H)·D)]/100 = C
 *
 *   C  cost [$/ac];  P price [$/bu];  Y weed-free yield [bu/ac];  H share of the weeds killed [-]
 *   I, A as in {@link HyperbolicLoss}
 *
 * It knows nothing of the seed that survivors leave nor of resistance: for prolific weeds it is too high by far.
 *
 * Source: rectangular hyperbola solved for density; economic threshold as in weeds reference section 9.
 */
public final class WeedThreshold {
    private static final int HALVINGS = 200;

    public static final Figure FIGURE = Figure.declare("weed-threshold", Subject.WEEDS)
            .question("From how many weeds on does a spray pay for itself this season?")
            .alsoAsked("Are there enough weeds to spray?")
            .input(number("cost_usd_ac", "Cost of control, product and pass", "$/ac", Range.NOT_NEGATIVE, "25"))
            .input(number("price_usd_bu", "Crop price", "$/bu", Range.POSITIVE, "10.50"))
            .input(number("yield_bu_ac", "Yield without weeds", "bu/ac", Range.POSITIVE, "55"))
            .input(Asked.LOSS_PER_PLANT)
            .input(Asked.HIGHEST_LOSS)
            .input(number("control_share", "Share of the weeds killed", "", Range.above(0, 1), "0.9"))
            .output("density_m2", "Threshold", "plants/m²")
            .output("loss_that_pays_pct", "Loss that pays for the spray", "%")
            .sometimes("exact_m2", "Threshold with the survivors' loss counted on the curve", "plants/m²")
            .formula("L* = 100 × cost ÷ (yield × price × share killed); D* = L* ÷ (I × (1 − L* ÷ A))")
            .source("Rectangular hyperbola of [cousens-1985], as in [statforbiology], solved for density", VERIFIED)
            .validity("Where the loss that pays is A or more no density pays, and the answer is the word never.")
            .caution(
                    "One season only: seed return and resistance are not in it. For waterhemp, Palmer amaranth, giant ragweed,"
                            + " kochia and horseweed look at the seedbank and at resistance before you spare a plant.")
            .caution(Asked.WIDE_BAND)
            .example(
                    "cost_usd_ac=25 price_usd_bu=10.50 yield_bu_ac=55 i_pct=39.7 a_pct=71 control_share=.90",
                    "loss_that_pays_pct=4.8100 density_m2=0.12996 exact_m2=0.13098",
                    "volunteer corn in soybean",
                    COMPUTED)
            .example(
                    "cost_usd_ac=30 price_usd_bu=4.50 yield_bu_ac=180 i_pct=3.2 a_pct=56 control_share=.95",
                    "loss_that_pays_pct=3.8986 density_m2=1.30949 exact_m2=1.31478",
                    "volunteer soybean in corn",
                    COMPUTED)
            .example(
                    "cost_usd_ac=18 price_usd_bu=4.25 yield_bu_ac=200 i_pct=136 a_pct=90 control_share=.95",
                    "loss_that_pays_pct=2.2291 density_m2=0.016807 exact_m2=0.016829",
                    "giant ragweed in corn",
                    COMPUTED)
            .example(
                    "cost_usd_ac=14 price_usd_bu=6.00 yield_bu_ac=60 i_pct=1.0231 a_pct=48.9 control_share=.90",
                    "loss_that_pays_pct=4.3210 density_m2=4.63280 exact_m2=4.68263",
                    "wild oat in wheat",
                    COMPUTED)
            .model(WeedThreshold::solve);

    private WeedThreshold() {}

    /** L* [%], the loss that pays for the control. */
    public static double lossThatPaysPct(
            double costUsdPerAcre, double priceUsdPerBu, double yieldBuPerAcre, double controlShare) {
        return 100 * costUsdPerAcre / (yieldBuPerAcre * priceUsdPerBu * controlShare);
    }

    /**
     * The lowest density [plants/m²] at which the loss prevented on the curve equals what pays, or +∞ where none does.
     *
     * @param preventedPct 100·C/(Y·P)
     */
    public static double exactDensity(double preventedPct, double perPlantPct, double highestPct, double controlShare) {
        // The loss prevented rises up to I·D = A/√(1−H) and falls after it.
        double peak = controlShare == 1
                ? Double.MAX_VALUE / (perPlantPct + 1)
                : highestPct / (perPlantPct * Math.sqrt(1 - controlShare));
        if (preventedPct(peak, perPlantPct, highestPct, controlShare) <= preventedPct) {
            return Double.POSITIVE_INFINITY;
        }
        if (controlShare == 1) {
            return HyperbolicLoss.densityForLossPct(preventedPct, perPlantPct, highestPct);
        }
        double low = 0;
        double high = peak;
        for (int i = 0; i < HALVINGS && high - low > 1e-15 * high; i++) {
            double middle = (low + high) / 2;
            if (preventedPct(middle, perPlantPct, highestPct, controlShare) < preventedPct) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double preventedPct(double plants, double perPlant, double highest, double control) {
        return HyperbolicLoss.lossPct(plants, perPlant, highest)
                - HyperbolicLoss.lossPct((1 - control) * plants, perPlant, highest);
    }

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double price = given.number("price_usd_bu");
        double yield = given.number("yield_bu_ac");
        double perPlant = given.number("i_pct");
        double highest = given.number("a_pct");
        double control = given.number("control_share");
        double pays = working.line(
                "loss that pays",
                lossThatPaysPct(cost, price, yield, control),
                "%",
                "100 × {} $/ac ÷ ({} bu/ac × {} $/bu × {})",
                cost,
                yield,
                price,
                control);
        Outputs outputs = new Outputs();
        if (pays >= highest) {
            working.caution(
                    "Never pays: even the densest stand costs less yield than the loss that would pay for control.");
            return outputs.put("density_m2", "never").put("loss_that_pays_pct", pays);
        }
        double density = working.line(
                "threshold",
                HyperbolicLoss.densityForLossPct(pays, perPlant, highest),
                "plants/m²",
                "{} % ÷ ({} % per plant/m² × (1 − {} ÷ {}))",
                pays,
                perPlant,
                pays,
                highest);
        outputs.put("density_m2", density).put("loss_that_pays_pct", pays);
        double exact = exactDensity(pays * control, perPlant, highest, control);
        if (Double.isFinite(exact)) {
            outputs.put(
                    "exact_m2",
                    working.line(
                            "threshold with the survivors' loss",
                            exact,
                            "plants/m²",
                            "density at which {} bu/ac × {} $/bu × (its loss less that of {} survivors of 100) is {} $/ac",
                            yield,
                            price,
                            100 * (1 - control),
                            cost));
        } else {
            working.caution("With the survivors' loss counted, control never quite pays within the season.");
        }
        return outputs;
    }
}
