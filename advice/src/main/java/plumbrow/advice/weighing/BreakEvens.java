package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.outlook.Chances;
import plumbrow.advice.outlook.Column;
import plumbrow.advice.outlook.Law;
import plumbrow.science.chance.SortedDraws;

/**
 * Where each uncertain input turns the order of two courses: the root of the mean difference of their margins, the input
 * held at one value and everything else drawn as before.
 */
final class BreakEvens {
    private static final int SEGMENTS = 4;
    private static final int MOST_ROUNDS = 60;

    private final FieldModel model;
    private final Column[] drawn;
    private final double[][] columns;
    private final Set<Integer> read;
    private final CourseModel first;
    private final CourseModel second;
    private final Kernel kernel;
    private final double[][] margins;
    private final SeasonTurns turns;

    BreakEvens(FieldModel model, Column[] drawn, SeasonLoads loads, CourseModel first, CourseModel second) {
        this.model = model;
        this.drawn = drawn;
        this.columns = Arrays.stream(drawn).map(Column::values).toArray(double[][]::new);
        this.read = Stream.of(first, second).flatMapToInt(model::inputs).boxed().collect(Collectors.toSet());
        this.first = first;
        this.second = second;
        this.kernel = new Kernel(model, loads);
        this.margins = new double[2][columns[0].length];
        this.turns = new SeasonTurns(model, columns, loads, List.of(first, second));
    }

    List<BreakEven> all() {
        List<BreakEven> all = new ArrayList<>();
        for (int place = 0; place < model.variables().size(); place++) {
            if (!Chances.settled(model.variables().get(place).law())) {
                all.add(of(place));
            }
        }
        return all;
    }

    private BreakEven of(int place) {
        Variable input = model.variables().get(place);
        double[] sorted = drawn[place].sorted();
        boolean chance = input.law() instanceof Law.Chance;
        double low = chance ? 0 : SortedDraws.quantile(sorted, 0.01);
        double high = chance ? 1 : SortedDraws.quantile(sorted, 0.99);
        double mean = SortedDraws.mean(sorted);
        double[] held = new double[sorted.length];
        double[] own = columns[place];
        UnivariateFunction difference = value -> {
            if (turns.follows(place)) {
                return turns.at(place, value);
            }
            Arrays.fill(held, value);
            columns[place] = held;
            double answer = meanDifference();
            columns[place] = own;
            return answer;
        };
        // What neither course reads turns nothing.
        Double root = low < high && read.contains(place) ? nearestRoot(difference, low, high, mean) : null;
        return new BreakEven(
                input.id(),
                input.label(),
                input.unit(),
                mean,
                low,
                high,
                root,
                root == null ? never(input, low, high) : turns(input, root, mean, difference.value(mean)));
    }

    private double meanDifference() {
        kernel.run(List.of(first, second), columns, new double[2][0], margins);
        double sum = 0;
        for (int i = 0; i < margins[0].length; i++) {
            sum += margins[0][i] - margins[1][i];
        }
        return sum / margins[0].length;
    }

    private static @Nullable Double nearestRoot(UnivariateFunction difference, double low, double high, double mean) {
        double[] at = new double[SEGMENTS + 1];
        double[] value = new double[SEGMENTS + 1];
        for (int i = 0; i <= SEGMENTS; i++) {
            at[i] = low + (high - low) * i / SEGMENTS;
            value[i] = difference.value(at[i]);
        }
        Double nearest = null;
        for (int i = 0; i < SEGMENTS; i++) {
            if (value[i] * value[i + 1] < 0) {
                double root = new BrentSolver((high - low) * 1e-6).solve(MOST_ROUNDS, difference, at[i], at[i + 1]);
                if (nearest == null || Math.abs(root - mean) < Math.abs(nearest - mean)) {
                    nearest = root;
                }
            } else if (value[i] == 0 && value[i + 1] != 0 && i > 0 && value[i - 1] * value[i + 1] < 0) {
                nearest = at[i];
            }
        }
        return nearest;
    }

    private String turns(Variable input, double root, double mean, double differenceNow) {
        String ahead =
                differenceNow >= 0 ? first.course().name() : second.course().name();
        String other =
                differenceNow >= 0 ? second.course().name() : first.course().name();
        String side = mean >= root ? "above" : "below";
        return ahead + " stays ahead of " + other + " while " + input.label() + " is " + side + " "
                + withUnit(root, input.unit()) + "; it is taken as about " + withUnit(mean, input.unit()) + ".";
    }

    private String never(Variable input, double low, double high) {
        return "From " + Quantities.text(low, "") + " to " + withUnit(high, input.unit()) + ", " + input.label()
                + " never turns the order of " + first.course().name() + " and "
                + second.course().name() + ".";
    }

    private static String withUnit(double value, String unit) {
        return Quantities.text(value, unit);
    }
}
