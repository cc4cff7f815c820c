package plumbrow.science.insects;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How many days soybean takes from one stage to another: usual, and the fewest and most that were seen of each step added.
 *
 * Day length rules the reproductive stages, so no degree days are used. V stages count nodes with unrolled leaves, V1 the
 * unifoliolate node; some states count trifoliolates, one lower.
 *
 * Source: Fehr & Caviness 1977 (values from memory).
 */
public final class SoybeanCalendar {
    private static final List<String> STAGES =
            List.of("ve", "vc", "v1", "v2", "v3", "v4", "v5", "r1", "r2", "r3", "r4", "r5", "r6", "r7", "r8");

    /** Usual, fewest and most days from each stage to the one after it; from V5 to R1 no step is published. */
    private static final double[][] STEPS = {
        {5, 3, 10}, {5, 3, 10}, {5, 3, 10}, {5, 3, 8}, {5, 3, 8}, {5, 3, 8}, {},
        {3, 0, 7}, {10, 5, 15}, {9, 5, 15}, {9, 4, 26}, {15, 11, 20}, {18, 9, 30}, {9, 7, 18}
    };

    public static final Figure FIGURE = Figure.declare("soybean-stage-days", Subject.INSECTS)
            .question("How many days does soybean take from one stage to another?")
            .input(word("from", "Stage now", STAGES, "r5"))
            .input(word("to", "Stage wanted", STAGES, "r7"))
            .output("days", "Usual days", "d")
            .output("fewest", "Fewest of each step, added", "d")
            .output("most", "Most of each step, added", "d")
            .formula("sum of the steps between the stages")
            .source("[fehr-caviness-1977]", MEMORY)
            .validity(
                    "Within VE to V5, or within R1 to R8: from V5 to R1 day length rules and no step is given. Each step up to V5 takes 5 days, 3 to 10 early and 3 to 8 later.")
            .caution("A field is at a stage when half of its plants are. Some states count V stages one lower: ask.")
            .example("from=r5 to=r7", "days=33 fewest=20 most=50", "[fehr-caviness-1977]: 15 + 18", MEMORY)
            .example("from=ve to=v1", "days=10 fewest=6 most=20", "[fehr-caviness-1977]: 5 + 5", MEMORY)
            .example("from=r1 to=r8", "days=73 fewest=41 most=131", "sum of the seven steps by hand", COMPUTED)
            .model(SoybeanCalendar::solve);

    private SoybeanCalendar() {}

    private static Outputs solve(Given given, Working working) {
        int from = STAGES.indexOf(given.word("from"));
        int to = STAGES.indexOf(given.word("to"));
        int firstReproductive = STAGES.indexOf("r1");
        if (to <= from) {
            throw given.refuse("to", "a stage after from (" + given.word("from") + ")");
        }
        if (from < firstReproductive && to >= firstReproductive) {
            throw given.refuse("to", "a stage up to v5: from v5 to r1 day length rules and no step is published");
        }
        String[] keys = {"days", "fewest", "most"};
        Outputs outputs = new Outputs();
        for (int column = 0; column < keys.length; column++) {
            double[] steps = new double[to - from];
            double sum = 0;
            for (int i = 0; i < steps.length; i++) {
                steps[i] = STEPS[from + i][column];
                sum += steps[i];
            }
            outputs.put(keys[column], working.step(keys[column], Numbers.terms(steps), sum, "d"));
        }
        return outputs;
    }
}
