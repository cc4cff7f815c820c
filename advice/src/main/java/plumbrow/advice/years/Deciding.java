package plumbrow.advice.years;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.science.chance.RankCorrelation;

/**
 * Which of the values that nobody has measured decide: how closely the draws of each go with what the best rotation earns over
 * the next, as a rank correlation. The most deciding come first.
 */
record Deciding(Map<Assumption, Double> weights) {
    /** Well above what chance gives on 300 draws or more: 0.2 · √300 ≈ 3.5 standard errors; common practice, no source. */
    private static final double DECIDES = .2;

    private static final int MOST_NAMED = 3;

    /**
     * @param taken draws of each assumption
     * @param difference present value of the best rotation less the next, or of the only one, draw by draw [$/ac]
     */
    static Deciding of(Map<Assumption, List<double[]>> taken, double[] difference) {
        Map<Assumption, Double> found = new LinkedHashMap<>();
        taken.forEach((assumption, columns) -> found.put(
                assumption,
                columns.stream()
                        .mapToDouble(column -> weight(column, difference))
                        .max()
                        .orElse(0)));
        Map<Assumption, Double> sorted = new LinkedHashMap<>();
        found.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .forEach(one -> sorted.put(one.getKey(), one.getValue()));
        return new Deciding(sorted);
    }

    private static double weight(double[] column, double[] difference) {
        return steady(column) || steady(difference) ? 0 : Math.abs(RankCorrelation.spearman(column, difference));
    }

    private static boolean steady(double[] values) {
        return Arrays.stream(values).allMatch(value -> value == values[0]);
    }

    /** All of them, the most deciding first. */
    List<Assumption> assumptions() {
        return List.copyOf(weights.keySet());
    }

    /** One sentence, to stand first on the page; empty where none was taken. */
    String says() {
        if (weights.isEmpty()) {
            return "";
        }
        String named = weights.entrySet().stream()
                .filter(one -> one.getValue() >= DECIDES)
                .limit(MOST_NAMED)
                .map(one -> one.getKey().label() + " (" + one.getKey().words() + ")")
                .collect(Collectors.joining("; "));
        return named.isEmpty()
                ? "Of the values taken here that nobody has measured on this field, none decides the order by itself."
                : "What decides most here was measured by nobody on this field, and is drawn wide: " + named + ".";
    }
}
