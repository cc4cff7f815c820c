package plumbrow.science.insects;

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
 * What bird cherry-oat aphids cost wheat before boot, and so what control can save.
 *
 *   preventable = Y·V·loss;  loss 5 % at 10 to 20 aphids a tiller, 7 % at 20 to 40, 9 % above 40
 *
 * Below 10 a tiller no loss is given. Where a tenth of the aphids are mummies, wait.
 *
 * Source: Oklahoma State, in no-tillfarmer.com/articles/6529.
 */
public final class WheatAphid {
    /** Aphids per tiller from which a class begins, and the loss in it [%]. */
    private static final double[][] CLASSES = {{40, 9}, {20, 7}, {10, 5}};

    public static final Figure FIGURE = Figure.declare("wheat-aphid", Subject.INSECTS)
            .question("What can control of aphids in wheat save?")
            .input(number(
                    "aphids_tiller",
                    "Bird cherry-oat aphids per tiller, before boot",
                    "aphids/tiller",
                    Range.NOT_NEGATIVE,
                    "25"))
            .input(number("yield_bu_ac", "Yield without aphids", "bu/ac", Range.POSITIVE, "40"))
            .input(number("price_usd_bu", "Wheat price", "$/bu", Range.POSITIVE, "3.50"))
            .output("loss_pct", "Yield lost", "%")
            .output("preventable_usd_ac", "Most that control can save", "$/ac")
            .formula("saved = yield × price × loss; loss 5 % from 10, 7 % from 20, 9 % above 40 aphids a tiller")
            .source("[oklahoma-wheat-aphids]", VERIFIED)
            .validity(
                    "Before boot. Below 10 a tiller the source gives no loss and 0 is shown. At 20 the higher class counts, at 40 the lower.")
            .caution(
                    "Where 5 to 10 % of the aphids are mummies, wait: wasps are winning. Do not treat after soft dough.")
            .example(
                    "aphids_tiller=25 yield_bu_ac=40 price_usd_bu=3.50",
                    "loss_pct=7.0 preventable_usd_ac=9.80",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "aphids_tiller=60 yield_bu_ac=60 price_usd_bu=6",
                    "loss_pct=9.0 preventable_usd_ac=32.40",
                    "independent arithmetic",
                    COMPUTED)
            .model(WheatAphid::solve);

    private WheatAphid() {}

    private static double lossPct(double aphidsPerTiller) {
        for (double[] step : CLASSES) {
            if (step[0] == 40 ? aphidsPerTiller > step[0] : aphidsPerTiller >= step[0]) {
                return step[1];
            }
        }
        return 0;
    }

    private static Outputs solve(Given given, Working working) {
        double aphids = given.number("aphids_tiller");
        double yield = given.number("yield_bu_ac");
        double price = given.number("price_usd_bu");
        double loss = working.line("yield lost", lossPct(aphids), "%", "class of {} aphids a tiller", aphids);
        double saved = working.line(
                "most that control can save",
                yield * price * loss / 100,
                "$/ac",
                "{} bu/ac × {} $/bu × {} %",
                yield,
                price,
                loss);
        return new Outputs().put("loss_pct", loss).put("preventable_usd_ac", saved);
    }
}
