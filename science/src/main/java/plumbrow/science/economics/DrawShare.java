package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How exact a chance is that was counted over draws.
 *
 *   SE = √(p(1 − p)/N);  p share, N draws
 *
 * Source: variance of a share.
 */
public final class DrawShare {

    public static final Figure ERROR = Figure.declare("share-error", Subject.ECONOMICS)
            .question("How exact is a chance that was counted over so many draws?")
            .input(number("share", "Share of the draws", "", Range.SHARE, "0.5"))
            .input(number("draws", "Draws", "", Range.closed(1, 1e9), "10000"))
            .output("standard_error", "Standard error", "")
            .output("points", "Two standard errors either side, in percent", "%")
            .formula("standard error = √(share × (1 − share) ÷ draws)")
            .source("Variance of a share", MEMORY)
            .validity("Draws independent; stratified draws are more exact than this says.")
            .caution("Whole percents are all that 10,000 draws can show.")
            .example("share=.5 draws=10000", "standard_error=.005 points=1.0", "independent arithmetic", COMPUTED)
            .example("share=0 draws=10000", "standard_error=0", "limit", COMPUTED)
            .model(DrawShare::solveError);

    private DrawShare() {}

    private static Outputs solveError(Given given, Working working) {
        double share = given.number("share");
        double draws = given.number("draws");
        if (draws != Math.rint(draws)) {
            throw given.refuse("draws", "a whole number");
        }
        double error = working.line(
                "standard error",
                SortedDraws.shareError(share, (int) Math.min(draws, Integer.MAX_VALUE)),
                "",
                "√({} × (1 − {}) ÷ {})",
                share,
                share,
                draws);
        double points = working.line("two of them, in points", 200 * error, "", "200 × {}", error);
        return new Outputs().put("standard_error", error).put("points", points);
    }
}
