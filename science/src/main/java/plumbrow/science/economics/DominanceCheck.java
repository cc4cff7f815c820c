package plumbrow.science.economics;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.Arrays;
import java.util.Locale;
import plumbrow.science.chance.Dominance;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Stochastic dominance between two lists of outcomes as a figure. The rule is {@link Dominance}. */
public final class DominanceCheck {
    public static final Figure FIGURE = Figure.declare("dominance", Subject.ECONOMICS)
            .question("Is one set of outcomes better for everyone, whatever his nerves?")
            .input(list("a", "Outcomes of a, in any order", "$/ac", Range.ANY, "10,20,30,40"))
            .input(list("b", "Outcomes of b, in any order", "$/ac", Range.ANY, "5,20,25,40"))
            .output("first", "Better for all who prefer more", "")
            .output("second", "Better for all who prefer more and dislike risk", "")
            .formula("first: F(x) nowhere above the other's; second: the area under F nowhere above the other's")
            .source("[hadar-russell-1969]; [hanoch-levy-1969]", MEMORY)
            .validity(
                    "Each list at least one number; the lists may differ in length. Differences within 1e-9 of the range count as none.")
            .caution(
                    "Holds in these outcomes only: with few of them, noise near the ends often hides a dominance that is real.")
            .example("a=10,20,30,40 b=5,20,25,40", "first=a second=a", "independent arithmetic", COMPUTED)
            .example("a=10,20,30 b=0,20,35", "first=none second=a", "independent arithmetic", COMPUTED)
            .example("a=12,18,24,30 b=10,20", "first=a second=a", "independent arithmetic", COMPUTED)
            .example("a=10,20,30 b=10,20,30", "first=none second=none", "independent arithmetic", COMPUTED)
            .example(
                    "a=292,179,114,247,426,259 b=420,187,366,249,322,159",
                    "first=none second=b",
                    "carrot and cucumber, [hazell-1971]",
                    COMPUTED)
            .model(DominanceCheck::solve);

    private DominanceCheck() {}

    private static Outputs solve(Given given, Working working) {
        double[] a = given.list("a");
        double[] b = given.list("b");
        Arrays.sort(a);
        Arrays.sort(b);
        working.step("mean of a", mean(a), SortedDraws.mean(a), "$/ac");
        working.step("mean of b", mean(b), SortedDraws.mean(b), "$/ac");
        working.line("worst of a", a[0], "$/ac", "lowest of the sorted outcomes");
        working.line("worst of b", b[0], "$/ac", "lowest of the sorted outcomes");
        return new Outputs()
                .put("first", inWords(Dominance.first(a, b)))
                .put("second", inWords(Dominance.second(a, b)));
    }

    private static String mean(double[] outcomes) {
        return "(" + Numbers.terms(outcomes) + ") ÷ " + outcomes.length;
    }

    private static String inWords(Dominance dominance) {
        return dominance.name().toLowerCase(Locale.ROOT);
    }
}
