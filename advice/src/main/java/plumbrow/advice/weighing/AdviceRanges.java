package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hipparchus.analysis.solvers.BrentSolver;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.science.chance.SortedDraws;

/**
 * For each uncertain input the values over which each program is the best by mean margin, of all that may be advised, and what
 * knowing the input before deciding is worth by the same means.
 *
 *   best(x) = argmax_c m_c(x)      worth = mean over draws of m_best(x)(x) − m_advised(x)
 *
 *   m_c(x)  mean margin of program c with the input held at x, everything else drawn as before [$/ac]
 *
 * <p>Looked at on equal steps from the input's lowest draw to its highest, ends between two steps found by root. A program that
 * takes the lead from the advised one, or from its neighbour, by less than two standard errors has no band: the draws can't tell
 * it. So worth and bands come from the same numbers: what turns nothing is worth nothing to know by itself.
 */
final class AdviceRanges {
    private static final int STEPS = 12;
    private static final int FOLLOWED_STEPS = 6;
    private static final int MOST_ROUNDS = 60;
    private static final int MOST_BETWEEN = 4;
    private static final double ERRORS = 2;
    private static final double NEGLIGIBLE = 1e-9;

    private final FieldModel model;
    private final Column[] drawn;
    private final double[] likely;
    private final List<Integer> programs;
    private final HeldMargins held;
    private final int advised;
    private final Map<Integer, Looked> looked = new HashMap<>();

    /** What was found for one input: ends and bands over all its draws, and the means at its steps. */
    private record Looked(double low, double high, NavigableMap<Double, double[]> means, List<Piece> pieces) {}

    /** A stretch over which one program is best; {@code error} is that of where it begins. */
    private record Piece(int program, double from, double to, double error) {}

    private record End(double at, int above, double error) {}

    /**
     * @param likely mean of each input
     * @param choice at least two programs that may be advised, one of them advised
     */
    AdviceRanges(
            FieldModel model, Column[] drawn, double[] likely, SeasonLoads loads, double[][] margins, Choice choice) {
        this.model = model;
        this.drawn = drawn;
        this.likely = likely;
        this.programs = choice.advisable();
        this.advised = programs.indexOf(choice.advised());
        this.held = new HeldMargins(
                model,
                Arrays.stream(drawn).map(Column::values).toArray(double[][]::new),
                loads,
                programs.stream().map(model.programs()::get).toList(),
                programs.stream().map(c -> margins[c]).toArray(double[][]::new));
        for (int place = 0; place < drawn.length; place++) {
            Variable variable = model.variables().get(place);
            if (!Chances.settled(variable.distribution()) && !TriggerReader.luck(variable)) {
                looked.put(place, look(place));
            }
        }
    }

    /** What knowing an input by itself is worth before deciding [$/ac]; 0 where it turns nothing. */
    double worth(int place) {
        Looked found = looked.get(place);
        if (found == null || found.pieces().size() < 2) {
            return 0;
        }
        double[] draws = drawn[place].values();
        double sum = 0;
        if (model.variables().get(place).distribution() instanceof Distribution.Chance) {
            double share = SortedDraws.mean(draws);
            double[] no = found.means().firstEntry().getValue();
            double[] yes = found.means().lastEntry().getValue();
            List<Piece> pieces = found.pieces();
            return (1 - share) * (no[pieces.get(0).program()] - no[advised])
                    + share * (yes[pieces.get(pieces.size() - 1).program()] - yes[advised]);
        }
        for (double draw : draws) {
            int best = piece(found.pieces(), draw).program();
            if (best != advised) {
                sum += between(found.means(), draw, best) - between(found.means(), draw, advised);
            }
        }
        return Math.max(0, sum / draws.length);
    }

    private static Piece piece(List<Piece> pieces, double at) {
        return pieces.stream().filter(piece -> at <= piece.to()).findFirst().orElse(pieces.get(pieces.size() - 1));
    }

    /** The mean margin of a program between two steps, by straight line. */
    private static double between(NavigableMap<Double, double[]> means, double at, int program) {
        var below = means.floorEntry(at);
        var above = means.ceilingEntry(at);
        if (below == null || above == null) {
            return (below == null ? means.firstEntry() : means.lastEntry()).getValue()[program];
        }
        double width = above.getKey() - below.getKey();
        double low = below.getValue()[program];
        return width == 0 ? low : low + (above.getValue()[program] - low) * (at - below.getKey()) / width;
    }

    /** @param worths what knowing each input is worth by itself [$/ac], by its place */
    List<AdviceRange> all(double[] worths) {
        List<AdviceRange> all = new ArrayList<>();
        for (int place = 0; place < drawn.length; place++) {
            Looked found = looked.get(place);
            if (found != null) {
                all.add(range(place, found, worths[place]));
            }
        }
        all.sort(
                Comparator.comparing((AdviceRange range) -> !range.turns()).thenComparingDouble(AdviceRange::distance));
        return List.copyOf(all);
    }

    private AdviceRange range(int place, Looked found, double worth) {
        Variable input = model.variables().get(place);
        List<BestBand> bands = new ArrayList<>();
        for (Piece piece : found.pieces()) {
            double from = Math.max(found.low(), piece.from());
            double to = Math.min(found.high(), piece.to());
            if (to > from || found.pieces().size() == 1) {
                bands.add(new BestBand(name(piece.program()), from, to, from == piece.from() ? piece.error() : 0));
            }
        }
        AdviceRange range = AdviceRange.of(input, name(advised), likely[place], found.low(), found.high(), bands);
        return range.saying(RangeWords.of(range, held.reads(place), worth));
    }

    private Looked look(int place) {
        double[] sorted = drawn[place].sorted();
        boolean chance = model.variables().get(place).distribution() instanceof Distribution.Chance;
        double low = chance ? 0 : FieldWeighing.withoutRounding(SortedDraws.quantile(sorted, 0.01), sorted);
        double high = chance ? 1 : FieldWeighing.withoutRounding(SortedDraws.quantile(sorted, 0.99), sorted);
        NavigableMap<Double, double[]> means = new TreeMap<>();
        if (!held.reads(place) || !(low < high)) {
            return new Looked(low, high, means, List.of(new Piece(advised, low, high, 0)));
        }
        int steps = held.follows(place) ? FOLLOWED_STEPS : STEPS;
        for (int i = 0; i <= steps; i++) {
            double at = low + (high - low) * i / steps;
            means.put(at, held.at(place, at));
        }
        if (!chance) {
            means.computeIfAbsent(likely[place], at -> held.at(place, at));
            means.computeIfAbsent(sorted[0], at -> held.at(place, at));
            means.computeIfAbsent(sorted[sorted.length - 1], at -> held.at(place, at));
        }
        List<Piece> pieces = told(place, pieces(place, means), means, low, high);
        return new Looked(low, high, means, pieces);
    }

    private List<Piece> pieces(int place, NavigableMap<Double, double[]> means) {
        List<End> ends = new ArrayList<>();
        double last = means.firstKey();
        int best = best(means.firstEntry().getValue());
        for (var step : means.tailMap(last, false).entrySet()) {
            int next = best(step.getValue());
            if (next != best) {
                cross(place, last, best, step.getKey(), next, ends, 0);
            }
            last = step.getKey();
            best = next;
        }
        List<Piece> pieces = new ArrayList<>();
        int program = best(means.firstEntry().getValue());
        double from = means.firstKey();
        double error = 0;
        for (End end : ends) {
            pieces.add(new Piece(program, from, end.at(), error));
            program = end.above();
            from = end.at();
            error = end.error();
        }
        pieces.add(new Piece(program, from, means.lastKey(), error));
        return pieces;
    }

    /** Where one program hands over to another, and to a third between them if there is one. */
    private void cross(int place, double low, int below, double high, int above, List<End> ends, int depth) {
        double width = high - low;
        double atLow = difference(place, low, below, above);
        double atHigh = difference(place, high, below, above);
        double root = atLow <= 0
                ? low
                : atHigh >= 0
                        ? high
                        : new BrentSolver(width * (held.follows(place) ? 1e-3 : 1e-6))
                                .solve(MOST_ROUNDS, x -> difference(place, x, below, above), low, high);
        double[] there = held.at(place, root);
        int third = best(there);
        if (third != below && third != above && there[third] > there[below] + NEGLIGIBLE && depth < MOST_BETWEEN) {
            cross(place, low, below, root, third, ends, depth + 1);
            cross(place, root, third, high, above, ends, depth + 1);
            return;
        }
        double slope = Math.abs(atHigh - atLow) / width;
        double error = ERRORS * held.standardError(below, above);
        ends.add(new End(root, above, error == 0 ? 0 : error / slope));
    }

    private double difference(int place, double value, int one, int other) {
        double[] means = held.at(place, value);
        return means[one] - means[other];
    }

    /** The best program; the advised one where it is as good as the best. */
    private int best(double[] means) {
        int best = advised;
        for (int c = 0; c < means.length; c++) {
            if (means[c] > means[best] + NEGLIGIBLE) {
                best = c;
            }
        }
        return best;
    }

    /** The pieces whose lead the draws can tell: first those against the advised program, then neighbours against one another. */
    private List<Piece> told(
            int place, List<Piece> pieces, NavigableMap<Double, double[]> means, double low, double high) {
        if (pieces.size() == 1 && pieces.get(0).program() == advised) {
            return pieces;
        }
        List<Piece> merged = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean leads = piece.program() == advised || leads(place, piece, advised, means, low, high);
            add(merged, leads ? piece : new Piece(advised, piece.from(), piece.to(), piece.error()));
        }
        List<Piece> told = new ArrayList<>();
        for (int p = 0; p < merged.size(); p++) {
            Piece piece = merged.get(p);
            int before = told.isEmpty() ? advised : told.get(told.size() - 1).program();
            int after = p + 1 < merged.size() ? merged.get(p + 1).program() : advised;
            if (piece.program() == advised) {
                add(told, piece);
            } else if (before != advised
                    && before != piece.program()
                    && !leads(place, piece, before, means, low, high)) {
                add(told, new Piece(before, piece.from(), piece.to(), piece.error()));
            } else if (after != advised && after != piece.program() && !leads(place, piece, after, means, low, high)) {
                add(told, new Piece(after, piece.from(), piece.to(), piece.error()));
            } else {
                add(told, piece);
            }
        }
        return told;
    }

    private static void add(List<Piece> pieces, Piece piece) {
        int last = pieces.size() - 1;
        if (last >= 0 && pieces.get(last).program() == piece.program()) {
            Piece before = pieces.get(last);
            pieces.set(last, new Piece(before.program(), before.from(), piece.to(), before.error()));
        } else {
            pieces.add(piece);
        }
    }

    /** Whether the program of a piece leads another by more than two standard errors where it leads by most. */
    private boolean leads(
            int place, Piece piece, int over, NavigableMap<Double, double[]> means, double low, double high) {
        double from = Math.max(low, piece.from());
        double to = Math.min(high, piece.to());
        if (!(from < to)) {
            from = piece.from();
            to = piece.to();
        }
        double where = (from + to) / 2;
        double most = Double.NEGATIVE_INFINITY;
        for (var step : means.subMap(from, true, to, true).entrySet()) {
            double lead = step.getValue()[piece.program()] - step.getValue()[over];
            if (lead > most) {
                most = lead;
                where = step.getKey();
            }
        }
        double lead = difference(place, where, piece.program(), over);
        return lead > ERRORS * held.standardError(piece.program(), over) + NEGLIGIBLE;
    }

    private String name(int program) {
        return model.programs().get(programs.get(program)).program().name();
    }
}
