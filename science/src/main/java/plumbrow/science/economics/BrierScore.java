package plumbrow.science.economics;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How good stated chances were, by the mean square of chance less outcome, and its parts.
 *
 * The arithmetic is {@link BrierParts}. Sources: Brier 1950, Mon. Weather Rev. 78:1-3; Murphy 1973, J. Appl. Meteorol. 12:595-600.
 */
public final class BrierScore {
    private static final String RAIN =
            "forecasts of rain for Tampere, 2003, [cawcr-pop3]; counts from the days ([r-verification], data pop)";

    public static final Figure FIGURE = Figure.declare("brier-score", Subject.ECONOMICS)
            .question("How good were the chances that were stated?")
            .alsoAsked("score of probability forecasts")
            .input(list("chances", "Chances as stated", "", Range.SHARE, "0.7,0.9,0.2,0.6"))
            .input(list("came", "What came: 1 if it did, 0 if not", "", Range.SHARE, "1,1,0,0"))
            .output("brier", "Brier score", "")
            .formula("Brier score = mean of (chance − outcome)²")
            .source("[brier-1950], as worked in [cawcr-pop3]", VERIFIED)
            .validity("As many outcomes as chances, each 0 or 1. 0 is perfect; one half stated always scores 0.25.")
            .example("chances=.7,.9,.2,.6 came=1,1,0,0", "brier=0.125", "(.09 + .01 + .04 + .36) ÷ 4 by hand", COMPUTED)
            .example("chances=.5,.5,.5 came=1,0,1", "brier=0.25", "always one half, by hand", COMPUTED)
            .model(BrierScore::score);

    public static final Figure PARTS = Figure.declare("brier-parts", Subject.ECONOMICS)
            .question("Are stated chances honest, and do they tell one case from another?")
            .alsoAsked("reliability resolution uncertainty of probability forecasts")
            .alsoAsked("decomposition of the Brier score")
            .input(list("chances", "Each different chance that was stated", "", Range.SHARE, "0.2,0.5,0.8"))
            .input(list("times", "How often it was stated", "", Range.NOT_NEGATIVE, "10,20,10"))
            .input(list("came", "How often it came", "", Range.NOT_NEGATIVE, "3,9,8"))
            .output("brier", "Brier score", "")
            .output("reliability", "Reliability: 0 is honest", "")
            .output("resolution", "Resolution: more is better", "")
            .output("uncertainty", "Uncertainty of what came", "")
            .output("skill", "Share of the uncertainty taken away", "")
            .formula("Brier score = reliability − resolution + uncertainty; reliability = Σ n(p − came/n)² ÷ N;"
                    + " resolution = Σ n(came/n − share of all)² ÷ N; uncertainty = share × (1 − share)")
            .source("[murphy-1973]", VERIFIED)
            .validity("Lists of the same length; no chance came more often than it was stated; at least one was stated."
                    + " With few cases reliability is overestimated: honest chances of n cases each score about"
                    + " p(1 − p)/n (Ferro & Fricker 2012).")
            .example(
                    "chances=0,.1,.2,.3,.4,.5,.6,.7,.8,.9,1 times=46,55,59,41,19,22,22,34,24,11,13"
                            + " came=1,1,5,5,4,8,6,16,16,8,11",
                    "brier=0.144 reliability=0.025 resolution=0.060 uncertainty=0.179 skill=0.194",
                    RAIN + ", 24 hours ahead",
                    VERIFIED)
            .example(
                    "chances=0,.1,.2,.3,.4,.5,.6,.8 times=243,58,19,13,5,1,6,1 came=4,1,3,3,2,1,5,1",
                    "brier=0.037 reliability=0.003 resolution=0.020 uncertainty=0.054 skill=0.312",
                    RAIN + ", heavy rain",
                    VERIFIED)
            .example(
                    "chances=0,.1,.2,.3,.4,.5,.6,.7,.8,.9,1 times=31,53,67,39,38,16,26,30,31,8,7"
                            + " came=1,5,7,7,12,5,8,14,15,6,6",
                    "brier=0.178 reliability=0.027 resolution=0.036 uncertainty=0.187 skill=0.047",
                    RAIN + ", 48 hours ahead",
                    VERIFIED)
            .model(BrierScore::parts);

    private BrierScore() {}

    private static Outputs score(Given given, Working working) {
        double[] chances = given.list("chances");
        double[] came = given.list("came");
        if (came.length != chances.length) {
            throw given.refuse("came", chances.length + " outcomes, one for each chance");
        }
        if (Arrays.stream(came).anyMatch(one -> one != 0 && one != 1)) {
            throw given.refuse("came", "1 for what came and 0 for what did not");
        }
        double[] once = new double[chances.length];
        Arrays.fill(once, 1);
        double score = working.line(
                "mean of (chance − outcome)²",
                BrierParts.of(chances, once, came).brier(),
                "",
                "over {} chances",
                chances.length);
        return new Outputs().put("brier", score);
    }

    private static Outputs parts(Given given, Working working) {
        double[] chances = given.list("chances");
        double[] times = given.list("times");
        double[] came = given.list("came");
        if (times.length != chances.length) {
            throw given.refuse("times", chances.length + " numbers, one for each chance");
        }
        if (came.length != chances.length) {
            throw given.refuse("came", chances.length + " numbers, one for each chance");
        }
        for (int k = 0; k < came.length; k++) {
            if (came[k] > times[k]) {
                throw given.refuse("came", "no more than how often each chance was stated");
            }
        }
        double all = Arrays.stream(times).sum();
        if (all <= 0) {
            throw given.refuse("times", "at least one chance that was stated");
        }
        BrierParts parts = BrierParts.of(chances, times, came);
        double share = working.line(
                "share that came",
                Arrays.stream(came).sum() / all,
                "",
                "{} ÷ {}",
                Arrays.stream(came).sum(),
                all);
        double reliability =
                working.line("reliability", parts.reliability(), "", "Σ n(p − came ÷ n)² ÷ {} over the chances", all);
        double resolution = working.line("resolution", parts.resolution(), "", "Σ n(came ÷ n − {})² ÷ {}", share, all);
        double uncertainty = working.line("uncertainty", parts.uncertainty(), "", "{} × (1 − {})", share, share);
        double brier =
                working.line("Brier score", parts.brier(), "", "{} − {} + {}", reliability, resolution, uncertainty);
        if (uncertainty == 0) {
            working.caution("All of it came, or none: there was nothing to tell apart, and no skill can be shown.");
        }
        return new Outputs()
                .put("brier", brier)
                .put("reliability", reliability)
                .put("resolution", resolution)
                .put("uncertainty", uncertainty)
                .put("skill", parts.skill());
    }
}
