package plumbrow.documents.picture;

import java.util.List;
import plumbrow.advice.weighing.WeighedProgram;

/**
 * The margins of a program from its worst to its best draw [$/ac], read off at evenly spaced shares of the draws.
 *
 * @param values at least two, in rising order
 */
record MarginPoints(List<Double> values) {
    MarginPoints {
        if (values.size() < 2) {
            throw new IllegalArgumentException(
                    "a strip needs the margin at two or more shares of the draws, not " + values.size());
        }
    }

    static MarginPoints of(WeighedProgram program) {
        return new MarginPoints(program.marginPoints());
    }

    /** The margin that the given share of draws stays below, by straight lines between the points. */
    double at(double share) {
        double place = Math.max(0, Math.min(1, share)) * (values.size() - 1);
        int below = (int) Math.min(place, values.size() - 2.0);
        double rest = place - below;
        return values.get(below) * (1 - rest) + values.get(below + 1) * rest;
    }
}
