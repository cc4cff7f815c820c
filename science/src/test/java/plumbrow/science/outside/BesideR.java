package plumbrow.science.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumbrow.science.Figures;
import plumbrow.science.figure.Answer;

/** What a comparison needs: our answers, R's answers, and the slack between them. */
abstract class BesideR {
    /** Below this size a number is compared by its distance, not by its share: R prints 15 digits of the largest. */
    private static final double SMALL = 1e-3;

    final RScript r = new RScript();
    final List<Answer> ours = new ArrayList<>();

    static Answer answer(String id, Map<String, String> typed) {
        return Figures.find(id).orElseThrow().answer(typed);
    }

    /** Our answers under these keys are R's rows, set by set. */
    final void same(List<double[]> theirs, double tolerance, String... keys) {
        for (int set = 0; set < ours.size(); set++) {
            double[] found = new double[keys.length];
            for (int i = 0; i < keys.length; i++) {
                found[i] = ours.get(set).number(keys[i]);
            }
            close(found, theirs.get(set), tolerance, "set " + set + " of " + String.join(", ", keys));
        }
    }

    static void close(double[] found, double[] theirs, double tolerance, String what) {
        assertThat(theirs).as(what).hasSameSizeAs(found);
        for (int i = 0; i < found.length; i++) {
            double slack = tolerance * Math.max(Math.abs(theirs[i]), SMALL);
            assertThat(found[i]).as("%s, number %d", what, i + 1).isCloseTo(theirs[i], within(slack));
        }
    }
}
