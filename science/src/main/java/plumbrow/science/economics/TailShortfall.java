package plumbrow.science.economics;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.Arrays;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How bad the bad cases are: the mean of the worst share of outcomes, and where that share ends.
 *
 * The arithmetic is {@link SortedDraws#worstShareMean} and {@link SortedDraws#quantile}.
 */
public final class TailShortfall {
    public static final Figure FIGURE = Figure.declare("tail-shortfall", Subject.ECONOMICS)
            .question("How bad are the bad cases?")
            .input(list("values", "Outcomes, in any order", "$/ac", Range.ANY, "-42,-18,-5,3,8,12,15,21,30,46"))
            .input(number("share", "Share of the worst outcomes", "", Range.above(0, 1), "0.1"))
            .output("quantile", "Outcome below which about that share lies", "$/ac")
            .output("shortfall", "Mean of the worst share", "$/ac")
            .formula(
                    "quantile: straight line at place (N−1) × share; shortfall: mean of the worst share × N outcomes, the last in part")
            .source("[rockafellar-uryasev-2002]", MEMORY)
            .validity(
                    "At least one outcome; share above 0, at most 1. Where share × N is below 1 the worst outcome answers.")
            .example(
                    "values=-42,-18,-5,3,8,12,15,21,30,46 share=.1",
                    "quantile=-20.4 shortfall=-42.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "values=46,30,21,15,12,8,3,-5,-18,-42 share=.25",
                    "quantile=-3.0 shortfall=-25.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "values=-42,-18,-5,3,8,12,15,21,30,46 share=.2",
                    "shortfall=-30.0",
                    "independent arithmetic",
                    COMPUTED)
            .model(TailShortfall::solve);

    private TailShortfall() {}

    private static Outputs solve(Given given, Working working) {
        double[] values = given.list("values");
        Arrays.sort(values);
        double share = given.number("share");
        double place = working.line(
                "place of the quantile, from 0",
                (values.length - 1) * share,
                "",
                "({} − 1) × {}",
                values.length,
                share);
        double quantile = working.line(
                "quantile",
                SortedDraws.quantile(values, share),
                "$/ac",
                "straight line at place {} of the sorted outcomes",
                place);
        double count =
                working.line("outcomes in the worst share", values.length * share, "", "{} × {}", values.length, share);
        double shortfall =
                working.step("shortfall", worst(values, count), SortedDraws.worstShareMean(values, share), "$/ac");
        if (count < 1) {
            working.caution(
                    "The share is less than one outcome: the worst outcome answers, and the tail is not known.");
        }
        return new Outputs().put("quantile", quantile).put("shortfall", shortfall);
    }

    /** The mean of the worst outcomes written out, the last of them counted in part. */
    private static String worst(double[] sorted, double count) {
        if (count <= 1) {
            return Numbers.plain(sorted[0]);
        }
        int whole = (int) (count + 1e-9);
        double part = count - whole;
        String terms = Numbers.terms(Arrays.copyOf(sorted, whole));
        if (part > 1e-9) {
            terms += " + " + Numbers.plain(part) + " × " + Numbers.inBrackets(sorted[whole]);
        }
        return "(" + terms + ") ÷ " + Numbers.plain(count);
    }
}
