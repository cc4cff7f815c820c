package plumbrow.science.figure;

import java.util.ArrayList;
import java.util.List;

/** The arithmetic of an answer, collected line by line while a model runs, with the cautions that came up. */
public final class Working {
    private final List<Step> steps = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    /** Records a line and hands its value back, so that the line that is shown is the line that is computed. */
    public double step(String label, String arithmetic, double value, String unit) {
        return keep(new Step(label, arithmetic, finite(label, value), unit));
    }

    /** Records a line that the page of another figure explains, and hands its value back. */
    public double step(String label, String arithmetic, double value, String unit, String figure) {
        return keep(new Step(label, arithmetic, finite(label, value), unit, figure));
    }

    private double keep(Step step) {
        steps.add(step);
        return step.value();
    }

    private static double finite(String label, double value) {
        if (!Double.isFinite(value)) {
            throw new FigureInputException(
                    "", label + " has no finite answer for these inputs; check that they are plausible together");
        }
        return value;
    }

    /**
     * Records a line whose numbers are written into the blanks of its arithmetic, and hands its value back.
     *
     * @param arithmetic the formula with units, a blank {@code {}} for each number: {@code "{} $/ac ÷ {} $/bu"}
     * @param numbers what goes into the blanks, in order
     */
    public double line(String label, double value, String unit, String arithmetic, double... numbers) {
        return step(label, filled(arithmetic, numbers), value, unit);
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

    private static String filled(String arithmetic, double... numbers) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (double number : numbers) {
            int blank = arithmetic.indexOf("{}", from);
            if (blank < 0) {
                throw new IllegalArgumentException("more numbers than blanks in: " + arithmetic);
            }
            text.append(arithmetic, from, blank).append(Numbers.inBrackets(number));
            from = blank + 2;
        }
        if (arithmetic.indexOf("{}", from) >= 0) {
            throw new IllegalArgumentException("more blanks than numbers in: " + arithmetic);
        }
        return text.append(arithmetic, from, arithmetic.length()).toString();
    }
}
