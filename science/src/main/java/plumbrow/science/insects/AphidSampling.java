package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether enough soybeans have been looked at for aphids: the plan of 11 to 31 plants.
 *
 * A plant with 40 aphids or more counts as infested; counting stops at 40. Every result that says treat is confirmed by a
 * second visit three to four days later. The plan is careful: it agrees with whole-plant counts four times of five and
 * treats early when it differs.
 *
 * Source: Hodgson, Burkness, Hutchison & Ragsdale 2004; first row, tally, step and confirmation as in
 * iasoybeans.mobi/publications/aphid/directions.php, other rows from memory.
 */
public final class AphidSampling {
    /** Plants looked at, infested at most for no treatment, infested at least for treatment. */
    private static final int[][] PLAN = {{11, 6, 11}, {16, 10, 15}, {21, 14, 19}, {26, 18, 23}, {31, 22, 27}};

    private static final int LAST = 31;

    public static final Figure FIGURE = Figure.declare("aphid-sampling", Subject.INSECTS)
            .question("Have enough soybeans been looked at for aphids to decide?")
            .input(number("plants", "Plants looked at: 11, 16, 21, 26 or 31", "plants", Range.closed(11, LAST), "16"))
            .input(number("infested", "Plants with 40 aphids or more", "plants", Range.closed(0, LAST), "12"))
            .output("verdict", "In words", "")
            .output("do_not_treat_at_most", "Do not treat at this number or fewer", "plants")
            .output("treat_at_least", "Treat at this number or more", "plants")
            .formula("look the number of infested plants up in the row of the plants looked at")
            .source("[hodgson-2004]; [iasoybeans-aphid]", VERIFIED)
            .validity("R1 to R5. 11, 16, 21, 26 or 31 plants from all over the field; other numbers are refused.")
            .caution("Only the first row of the plan was seen in a source; the others are values from memory.")
            .example(
                    "plants=16 infested=12",
                    "verdict=keep sampling: five more plants",
                    "independent arithmetic",
                    COMPUTED)
            .example("plants=21 infested=14", "verdict=do not treat", "independent arithmetic", COMPUTED)
            .example(
                    "plants=31 infested=25",
                    "verdict=stop and sample again in 3 to 4 days",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "plants=11 infested=11",
                    "verdict=treat, if a second visit in 3 to 4 days says so too do_not_treat_at_most=6.0 treat_at_least=11.0",
                    "[iasoybeans-aphid]",
                    VERIFIED)
            .model(AphidSampling::solve);

    private AphidSampling() {}

    private static Outputs solve(Given given, Working working) {
        double plants = given.number("plants");
        double infested = given.number("infested");
        if (infested > plants || infested != Math.rint(infested)) {
            throw given.refuse("infested", "a whole number not above plants (" + Numbers.plain(plants) + ")");
        }
        for (int[] row : PLAN) {
            if (row[0] == plants) {
                working.line("do not treat at", row[1], "plants or fewer", "row of {} plants", plants);
                working.line("treat at", row[2], "plants or more", "row of {} plants", plants);
                return new Outputs()
                        .put("verdict", verdict(infested, row))
                        .put("do_not_treat_at_most", row[1])
                        .put("treat_at_least", row[2]);
            }
        }
        throw given.refuse("plants", "11, 16, 21, 26 or 31");
    }

    private static String verdict(double infested, int[] row) {
        if (infested <= row[1]) {
            return "do not treat";
        }
        if (infested >= row[2]) {
            return "treat, if a second visit in 3 to 4 days says so too";
        }
        return row[0] == LAST ? "stop and sample again in 3 to 4 days" : "keep sampling: five more plants";
    }
}
