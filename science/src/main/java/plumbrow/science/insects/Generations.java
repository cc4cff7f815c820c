package plumbrow.science.insects;

import plumbrow.science.figure.Outputs;

/** A number of generations as an answer, or the words that it was not reached. */
final class Generations {
    private Generations() {}

    static void put(Outputs outputs, String key, int generations) {
        if (generations < 0) {
            outputs.put(key, "not within 20,000");
        } else {
            outputs.put(key, generations);
        }
    }
}
