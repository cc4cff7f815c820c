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
 * At how many true armyworms corn and wheat are treated.
 *
 *   corn   a quarter of the plants with two larvae or more, or three quarters with one, larvae 1¼ in or less
 *   wheat  larvae on a square foot: 3 (Wisconsin), 4 or 2 % of heads clipped (Missouri), 6 at milk (Tennessee)
 *
 * Source: ipcm.wisc.edu 2018/06 and 2013/07; farmerpublishing.com 2022 (Missouri); news.utcrops.com 2017/04 (Tennessee).
 */
public final class Armyworm {
    private static final double TWO_LARVAE_PCT = 25;
    private static final double ONE_LARVA_PCT = 75;
    private static final double SMALL_IN = 1.25;
    private static final double CLIPPED_PCT = 2;
    private static final List<String> STATES = List.of("wisconsin", "missouri", "tennessee-milk");
    private static final double[] LARVAE_FT2 = {3, 4, 6};

    public static final Figure CORN = Figure.declare("armyworm-corn", Subject.INSECTS)
            .question("Are there so many armyworms that corn is treated?")
            .input(number("two_pct", "Plants with two larvae or more", "%", Range.PERCENT, "28"))
            .input(number("any_pct", "Plants with one larva or more", "%", Range.PERCENT, "50"))
            .input(number("length_in", "Length of most larvae", "in", Range.closed(0, 3), "0.75"))
            .output("of_threshold", "Nearer of the two counts over its threshold", "")
            .output("verdict", "In words", "")
            .formula("treat from 25 % of plants with two larvae, or 75 % with one, while larvae are 1¼ in or less")
            .source("[wisconsin-armyworm]", VERIFIED)
            .validity("Whole plants looked at in five places. Larger larvae have done most of their feeding.")
            .caution("Look for white eggs of a fly behind the head: larvae that carry them die and need no spray.")
            .example(
                    "two_pct=28 any_pct=50 length_in=.75",
                    "of_threshold=1.12 verdict=treat",
                    "[wisconsin-armyworm]: 25 % with two",
                    VERIFIED)
            .example("two_pct=10 any_pct=75 length_in=1", "of_threshold=1.00 verdict=treat", "75 % with one", VERIFIED)
            .example(
                    "two_pct=10 any_pct=60 length_in=1",
                    "of_threshold=.80 verdict=below the threshold",
                    "[wisconsin-armyworm]",
                    VERIFIED)
            .example(
                    "two_pct=40 any_pct=80 length_in=1.5",
                    "verdict=larvae too large: most feeding is over",
                    "[wisconsin-armyworm]",
                    VERIFIED)
            .model(Armyworm::solveCorn);

    public static final Figure WHEAT = Figure.declare("armyworm-wheat", Subject.INSECTS)
            .question("Are there so many armyworms that wheat is treated?")
            .input(number("larvae_ft2", "Larvae on a square foot", "larvae/ft²", Range.NOT_NEGATIVE, "3.5"))
            .input(number("clipped_pct", "Heads clipped", "%", Range.PERCENT, "0")
                    .orElse("0"))
            .input(word("state", "Rule of the state", STATES, "missouri"))
            .output("threshold", "Threshold", "larvae/ft²")
            .output("of_threshold", "Larvae over the threshold", "")
            .output("verdict", "In words", "")
            .formula("treat from 3, 4 or 6 larvae on a square foot, or in Missouri from 2 % of heads clipped")
            .source("[wisconsin-armyworm]; [missouri-armyworm-2022]; [tennessee-armyworm-2017]", VERIFIED)
            .validity("Tennessee prints 6 to 8 at milk: 6 is taken. Past soft dough only clipping of heads counts.")
            .caution("The label's pre-harvest interval may rule out a late spray: check it first.")
            .example(
                    "larvae_ft2=3.5 state=missouri",
                    "threshold=4 of_threshold=.875 verdict=below the threshold",
                    "[missouri-armyworm-2022]",
                    VERIFIED)
            .example("larvae_ft2=1 clipped_pct=2 state=missouri", "verdict=treat", "2 % clipped", VERIFIED)
            .example("larvae_ft2=3.5 state=wisconsin", "threshold=3 verdict=treat", "[wisconsin-armyworm]", VERIFIED)
            .example("larvae_ft2=3.5 state=tennessee-milk", "threshold=6", "[tennessee-armyworm-2017]", VERIFIED)
            .model(Armyworm::solveWheat);

    private Armyworm() {}

    private static Outputs solveCorn(Given given, Working working) {
        double two = given.number("two_pct");
        double any = given.number("any_pct");
        if (two > any) {
            throw given.refuse("two_pct", "a share not above any_pct, of which it is a part");
        }
        double byTwo =
                working.line("two or more, of the threshold", two / TWO_LARVAE_PCT, "", "{} ÷ {}", two, TWO_LARVAE_PCT);
        double byAny =
                working.line("one or more, of the threshold", any / ONE_LARVA_PCT, "", "{} ÷ {}", any, ONE_LARVA_PCT);
        double nearer = Math.max(byTwo, byAny);
        String verdict = nearer < 1
                ? "below the threshold"
                : given.number("length_in") > SMALL_IN ? "larvae too large: most feeding is over" : "treat";
        return new Outputs().put("of_threshold", nearer).put("verdict", verdict);
    }

    private static Outputs solveWheat(Given given, Working working) {
        double larvae = given.number("larvae_ft2");
        String state = given.word("state");
        double threshold = LARVAE_FT2[STATES.indexOf(state)];
        double of = working.line("larvae over the threshold", larvae / threshold, "", "{} ÷ {}", larvae, threshold);
        boolean clipped = state.equals("missouri") && given.number("clipped_pct") >= CLIPPED_PCT;
        return new Outputs()
                .put("threshold", threshold)
                .put("of_threshold", of)
                .put("verdict", of >= 1 || clipped ? "treat" : "below the threshold");
    }
}
