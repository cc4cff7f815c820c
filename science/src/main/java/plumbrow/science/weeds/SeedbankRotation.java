package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Whether weed seed in the soil grows over a rotation, as a figure. The growth of a crop is {@link Seedbank#growth}. */
public final class SeedbankRotation {
    public static final Figure FIGURE = Figure.declare("seedbank-rotation", Subject.WEEDS)
            .question("Does the weed seed in the soil grow or shrink over this rotation?")
            .input(list(
                    "germination",
                    "Share of the seed that emerges, for each crop of the rotation",
                    "",
                    Range.SHARE,
                    "0.38,0.54,0.54"))
            .input(list(
                    "bank_alive",
                    "Share of ungerminated seed alive next spring",
                    "",
                    Range.SHARE,
                    "0.4752,0.4752,0.4644"))
            .input(list("survival", "Share of seedlings that sets seed, after control", "", Range.SHARE, "0.1,0.1,0.1"))
            .input(list(
                    "fecundity", "Viable seeds per surviving plant", "seeds/plant", Range.NOT_NEGATIVE, "1150,459,111"))
            .input(list(
                    "escape",
                    "Share of new seed alive next spring, after predation and winter",
                    "",
                    Range.SHARE,
                    "0.01408,0.3168,3.956e-7"))
            .output("growth", "Times as much seed after one rotation", "")
            .output("by_crop", "Times as much seed after each crop", "")
            .output("verdict", "In words", "")
            .formula("times = product over crops of ((1 − g) × bank alive + g × survival × seeds per plant × escape)")
            .source("[davis-2004], equation and Table 2", VERIFIED)
            .validity(
                    "All lists of one length, one number for each crop, in any order. No crowding: the rate of a thin stand.")
            .caution(SeedbankNext.CONTESTED)
            .example(
                    "germination=.38,.54,.54 bank_alive=.4752,.4752,.4644 survival=.1,.1,.1 fecundity=1150,459,111"
                            + " escape=.01408,.3168,3.956e-7",
                    "growth=1.57 by_crop=.9099,8.071,.2136 verdict=grows",
                    "giant foxtail, corn-soybean-wheat, 2000: published 1.57, [davis-2004]",
                    VERIFIED)
            .model(SeedbankRotation::solve);

    private SeedbankRotation() {}

    private static Outputs solve(Given given, Working working) {
        double[] g = given.list("germination");
        double[] byCrop = new double[g.length];
        double growth = 1;
        for (String key : new String[] {"bank_alive", "survival", "fecundity", "escape"}) {
            if (given.list(key).length != g.length) {
                throw given.refuse(key, "as many numbers as germination has (" + g.length + ")");
            }
        }
        for (int i = 0; i < g.length; i++) {
            double bank = given.list("bank_alive")[i];
            double s = given.list("survival")[i];
            double f = given.list("fecundity")[i];
            double escape = given.list("escape")[i];
            byCrop[i] = working.line(
                    "times after crop " + (i + 1),
                    Seedbank.growth(g[i], bank, s, f, escape),
                    "",
                    "(1 − {}) × {} + {} × {} × {} × {}",
                    g[i],
                    bank,
                    g[i],
                    s,
                    f,
                    escape);
            growth *= byCrop[i];
        }
        working.step("times after the rotation", product(byCrop), growth, "");
        return new Outputs()
                .put("growth", growth)
                .put("by_crop", byCrop)
                .put("verdict", growth > 1 ? "grows" : growth < 1 ? "shrinks" : "holds");
    }

    private static String product(double[] factors) {
        StringBuilder text = new StringBuilder();
        for (double factor : factors) {
            text.append(text.isEmpty() ? "" : " × ").append(Numbers.plain(factor));
        }
        return text.toString();
    }
}
