package plumbrow.science.figure;

import java.util.ArrayList;
import java.util.List;

/** The arithmetic of an answer, collected line by line while a model runs, with the cautions that came up. */
public final class Working {
    private final List<Step> steps = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    /** Records a line and hands its value back, so that the line that is shown is the line that is computed. */
    public double step(String label, String arithmetic, double value, String unit) {
        steps.add(new Step(label, arithmetic, value, unit));
        return value;
    }

    /** Records a sentence that must stand beside the answer. */
    public void caution(String sentence) {
        cautions.add(sentence);
    }

    public List<Step> steps() {
        return List.copyOf(steps);
    }

    public List<String> cautions() {
        return List.copyOf(cautions);
    }
}
