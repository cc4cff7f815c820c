package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What a change leaves over, when only what changes is counted.
 *
 *   net = (added return + reduced cost) − (added cost + reduced return)
 *
 * All four in the same unit, $ or $/ac, none below 0. Adopt if net is above 0 and the risk is acceptable.
 *
 * Source: pubs.nmsu.edu Guide Z-123; deltafarmpress.com "Partial budget: a simple, useful financial tool".
 */
public final class PartialBudget {
    public static final Figure FIGURE = Figure.declare("partial-budget", Subject.ECONOMICS)
            .question("What does a change leave over?")
            .input(money("added_return", "Return added", "97500"))
            .input(money("reduced_cost", "Cost no longer spent", "55000"))
            .input(money("reduced_return", "Return given up", "88000"))
            .input(money("added_cost", "Cost added", "69000"))
            .output("net", "Net change", "$")
            .formula("net = (added return + reduced cost) − (added cost + reduced return)")
            .source("[new-mexico-z123]", VERIFIED)
            .validity("All four for the same acres and season, each 0 or more. What does not change stays out.")
            .example(
                    "added_return=97500 reduced_cost=55000 reduced_return=88000 added_cost=69000",
                    "net=-4500",
                    "100 ac beans to corn, [southeast-partial-budget]",
                    VERIFIED)
            .example(
                    "added_return=0 reduced_cost=10000 reduced_return=1500 added_cost=8000",
                    "net=500",
                    "500 ac: drop rootworm trait, add insecticide, lose 1 bu at $3; inputs of [wisconsin-aae320]",
                    COMPUTED)
            .example(
                    "added_return=0 reduced_cost=10000 reduced_return=3000 added_cost=8000",
                    "net=-1000",
                    "the same, lose 2 bu",
                    COMPUTED)
            .model(PartialBudget::solve);

    private PartialBudget() {}

    /** The net change, in the unit of the four. */
    public static double net(double addedReturn, double reducedCost, double reducedReturn, double addedCost) {
        return addedReturn + reducedCost - (addedCost + reducedReturn);
    }

    private static Input money(String key, String label, String example) {
        return number(key, label, "$", Range.NOT_NEGATIVE, example);
    }

    private static Outputs solve(Given given, Working working) {
        double addedReturn = given.number("added_return");
        double reducedCost = given.number("reduced_cost");
        double reducedReturn = given.number("reduced_return");
        double addedCost = given.number("added_cost");
        double in =
                working.line("what comes in", addedReturn + reducedCost, "$", "{} $ + {} $", addedReturn, reducedCost);
        double out =
                working.line("what goes out", addedCost + reducedReturn, "$", "{} $ + {} $", addedCost, reducedReturn);
        return new Outputs()
                .put(
                        "net",
                        working.line(
                                "net change",
                                net(addedReturn, reducedCost, reducedReturn, addedCost),
                                "$",
                                "{} $ − {} $",
                                in,
                                out));
    }
}
