package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.function.DoubleUnaryOperator;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Half a rate of herbicide or the full one.
 *
 *   margin(x) = P·Y·(1 − L(x)) − c·x − pass;  control(x) = 1/(1 + (e/x)^b);  L = I·D'/(1 + I·D'/A), D' = D·(1 − control)
 *
 *   x  rate in full label rates;  P  price [$/bu];  Y  weed-free yield [bu/ac];  c  product at the full rate [$/ac]
 *   D  weeds [plants/m²];  e  rate that controls half [full rates];  b  slope;  I, A as in {@link HyperbolicLoss}
 *
 * The best rate is sought up to the label's rate; a best at that end is an end, not an optimum. Seed of the survivors and
 * the selection of tolerant plants are not in it.
 *
 * Source: {@link DoseResponse} and {@link HyperbolicLoss} put together; margin by arithmetic.
 */
public final class RateMargin {
    private static final double FULL = 1;
    private static final double FARTHEST = 10;
    private static final int GRID = 2000;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final Input PRODUCT =
            number("product_usd_ac", "Product at the full rate", "$/ac", Range.NOT_NEGATIVE, "14");

    public static final Figure FIGURE = Figure.declare("rate-margin", Subject.WEEDS)
            .question("What is left with no spray, half the rate or the full rate?")
            .alsoAsked("Is half a rate good enough?")
            .input(number("price_usd_bu", "Crop price", "$/bu", Range.POSITIVE, "4.50"))
            .input(number("yield_bu_ac", "Yield without weeds", "bu/ac", Range.POSITIVE, "180"))
            .input(Asked.DENSITY)
            .input(Asked.LOSS_PER_PLANT)
            .input(Asked.HIGHEST_LOSS)
            .input(number("ed50_full_rates", "Rate that controls half, in full rates", "", Range.above(0, 10), "0.25"))
            .input(number("slope", "Slope of control over rate", "", Range.above(0, 20), "2.2"))
            .input(PRODUCT)
            .input(number("pass_usd_ac", "Pass", "$/ac", Range.NOT_NEGATIVE, "7.50"))
            .output("none_usd_ac", "Left without spray", "$/ac")
            .output("half_usd_ac", "Left with half the rate", "$/ac")
            .output("full_usd_ac", "Left with the full rate", "$/ac")
            .output("best_rate", "Best rate up to the label's, in full rates; 0 is none", "")
            .output("best_usd_ac", "Left with it", "$/ac")
            .output("unconstrained_rate", "Best rate if there were no label, up to ten times", "")
            .formula("left = price × yield × (1 − loss) − product × rate − pass")
            .source("Log-logistic control, [rstats4ag], and hyperbolic loss, [statforbiology]", VERIFIED)
            .validity("One weed, one season, one pass. Never above the label's rate.")
            .caution(
                    "The survivors' seed and the selection of tolerant plants are not in it: see the seedbank and resistance first.")
            .caution("Below the label's lowest rate is barred where the label says so; above its highest always.")
            .example(
                    "price_usd_bu=4.50 yield_bu_ac=180 density_m2=2 i_pct=5 a_pct=60 ed50_full_rates=.25 slope=2.2 product_usd_ac=14 pass_usd_ac=7.50",
                    "none_usd_ac=740.57 half_usd_ac=781.44 full_usd_ac=784.86 unconstrained_rate=.810 best_usd_ac=785.55",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "price_usd_bu=4.50 yield_bu_ac=180 density_m2=5 i_pct=5 a_pct=60 ed50_full_rates=.25 slope=2.2 product_usd_ac=14 pass_usd_ac=7.50",
                    "none_usd_ac=667.06 half_usd_ac=761.81 full_usd_ac=779.51 unconstrained_rate=1.100 best_rate=1.00",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "price_usd_bu=4.50 yield_bu_ac=180 density_m2=20 i_pct=5 a_pct=60 ed50_full_rates=.25 slope=2.2 product_usd_ac=14 pass_usd_ac=7.50",
                    "none_usd_ac=506.25 half_usd_ac=683.95 full_usd_ac=754.44 unconstrained_rate=1.712 best_rate=1.00",
                    "independent arithmetic",
                    COMPUTED)
            .model(RateMargin::solve);

    private RateMargin() {}

    private static Outputs solve(Given given, Working working) {
        double worth = working.line(
                "crop without weeds",
                given.number("price_usd_bu") * given.number("yield_bu_ac"),
                "$/ac",
                "{} × {}",
                given.number("price_usd_bu"),
                given.number("yield_bu_ac"));
        DoubleUnaryOperator margin = rate -> margin(given, worth, rate);
        double none = show(given, working, "no spray", worth, 0);
        double half = show(given, working, "half rate", worth, .5);
        double full = show(given, working, "full rate", worth, FULL);
        double free = best(margin, FARTHEST);
        double within = best(margin, FULL);
        boolean pays = margin.applyAsDouble(within) > none;
        if (!pays) {
            working.caution("No rate up to the label's pays for itself this season.");
        } else if (within > FULL - 1e-6) {
            working.caution("The best is at the label's rate, which is an end, not an optimum.");
        }
        double rate = pays ? within : 0;
        return new Outputs()
                .put("none_usd_ac", none)
                .put("half_usd_ac", half)
                .put("full_usd_ac", full)
                .put("best_rate", rate)
                .put("best_usd_ac", margin.applyAsDouble(rate))
                .put("unconstrained_rate", free);
    }

    private static double margin(Given given, double worth, double rate) {
        double control = ResidualHerbicide.controlPct(rate, given.number("ed50_full_rates"), given.number("slope"));
        double left = given.number("density_m2") * (1 - control / 100);
        double loss = HyperbolicLoss.lossPct(left, given.number("i_pct"), given.number("a_pct"));
        double cost = rate == 0 ? 0 : given.number("product_usd_ac") * rate + given.number("pass_usd_ac");
        return worth * (1 - loss / 100) - cost;
    }

    private static double show(Given given, Working working, String label, double worth, double rate) {
        double slope = given.number("slope");
        double half = given.number("ed50_full_rates");
        double control = rate == 0
                ? 0
                : working.line(
                        label + ": control",
                        ResidualHerbicide.controlPct(rate, half, slope),
                        "%",
                        "100 ÷ (1 + ({} ÷ {})^{})",
                        half,
                        rate,
                        slope);
        double load = working.line(
                label + ": competitive load",
                given.number("i_pct") * given.number("density_m2") * (1 - control / 100),
                "%",
                "{} × {} × (1 − {} ÷ 100)",
                given.number("i_pct"),
                given.number("density_m2"),
                control);
        double loss = Asked.showLoss(working, load, given.number("a_pct"));
        double cost = rate == 0 ? 0 : given.number("product_usd_ac") * rate + given.number("pass_usd_ac");
        return working.line(
                label + ": left",
                worth * (1 - loss / 100) - cost,
                "$/ac",
                "{} × (1 − {} ÷ 100) − {}",
                worth,
                loss,
                cost);
    }

    /** The best rate above 0, up to a highest one, by a grid and golden section around its best place. */
    private static double best(DoubleUnaryOperator margin, double highest) {
        int at = 1;
        for (int i = 2; i <= GRID; i++) {
            if (margin.applyAsDouble(highest * i / GRID) > margin.applyAsDouble(highest * at / GRID)) {
                at = i;
            }
        }
        double low = highest * (at - 1) / GRID;
        double high = Math.min(highest, highest * (at + 1) / GRID);
        while (high - low > 1e-9) {
            double a = high - GOLDEN * (high - low);
            double b = low + GOLDEN * (high - low);
            if (margin.applyAsDouble(a) < margin.applyAsDouble(b)) {
                low = a;
            } else {
                high = b;
            }
        }
        return margin.applyAsDouble(highest) >= margin.applyAsDouble((low + high) / 2) ? highest : (low + high) / 2;
    }
}
