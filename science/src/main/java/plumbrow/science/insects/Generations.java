package plumbrow.science.insects;

import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Working;

/** A number of generations as an answer, or the words that it was not reached. */
final class Generations {
    private Generations() {}

    /** Puts the count and its line of working, or the words. A count below 0 stands for not reached. */
    static void put(Outputs outputs, Working working, String key, String label, int generations) {
        if (generations < 0) {
            outputs.put(key, "not within 20,000");
        } else {
            outputs.put(
                    key,
                    working.step(
                            label,
                            "the step of one generation, repeated until more than half resist",
                            generations,
                            ""));
        }
    }
}
