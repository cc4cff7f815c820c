package plumbrow.advice.farmplan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.farmplan.FarmModel.Answer;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.Settled.Word;

/**
 * Solves a {@link FarmProblem} and says how far its answer can be from the best.
 *
 * <p>On a farm with few choices by branch and bound over linear programmes that the library solves: a branch settles the
 * option or tier that its relaxation shares out most evenly, first taken, then left, and is cut where its relaxation is
 * no better than the best whole answer by a ten-millionth. (The library's own whole-number search called some small farms
 * impossible that were not.) Its gap is 0 where every branch was gone through or cut.
 *
 * <p>On a large farm the same search stops at the first answer within a thousandth of the relaxation of the whole farm, and the
 * gap is told against that relaxation, which leans on no search.
 *
 * <p>The worst tenth of the scenarios enters by rows: for the choice found, the scenarios that are its worst tenth must
 * have a mean of the floor; each such row holds for every choice that meets the floor, since no set of as many scenarios
 * has a lower mean than the worst. Rows are added until none is broken.
 *
 * <p>The same farm gives the same answer.
 */
final class FarmSolver {
    private static final int FEW = 120;
    private static final double FINE = 1e-7;
    private static final double COARSE = 0.001;
    private static final double WHOLE = 1e-6;
    private static final int MOST_PROGRAMMES = 4_000;
    private static final int MOST_PROGRAMMES_OF_MANY = 600;

    private final FarmProblem problem;
    private final List<int[]> cuts = new ArrayList<>();
    private int programmes;

    private FarmSolver(FarmProblem problem) {
        this.problem = problem;
    }

    /**
     * @param chosen option of each place; empty where the limits clash
     * @param mean of the farm [$]
     * @param bound no choice has a higher mean [$]
     * @param worstTenth mean of the worst tenth of scenarios [$]
     * @param buying what buying in tiers brings over list prices [$]
     * @param quantities bought of each good
     * @param own taken of each good from the shed
     * @param programmes linear programmes solved
     * @param rows rows that the floor took
     * @param searched whether every branch was gone through or cut
     */
    @SuppressWarnings("ArrayRecordComponent") // Plain columns of numbers, read only.
    record Solution(
            int[] chosen,
            double mean,
            double bound,
            double worstTenth,
            double buying,
            double[] quantities,
            double[] own,
            int programmes,
            int rows,
            boolean searched) {
        boolean possible() {
            return chosen.length > 0;
        }

        double gap() {
            return Math.max(0, bound - mean) / Math.max(1, Math.abs(bound));
        }
    }

    static Solution solve(FarmProblem problem) {
        return new FarmSolver(problem).solve();
    }

    private Solution solve() {
        Solution apart = problem.goods().isEmpty() ? apart() : null;
        if (apart != null) {
            return apart;
        }
        Answer root = withRows(Settled.NOTHING);
        if (!root.found()) {
            return impossible(true);
        }
        return byBranches(root);
    }

    /**
     * Each place its own best, where all of them together keep within what they share: then nothing can be better, and nothing
     * has to be searched. Null where they don't.
     */
    private @Nullable Solution apart() {
        int[] chosen = new int[problem.places().size()];
        double[] used = new double[problem.limits().size()];
        double[] scenarios = new double[problem.scenarios()];
        double mean = 0;
        double cost = 0;
        for (int f = 0; f < chosen.length; f++) {
            List<Option> options = problem.places().get(f).options();
            double[] means = options.stream().mapToDouble(Option::mean).toArray();
            chosen[f] = largest(means);
            Option best = options.get(chosen[f]);
            mean += means[chosen[f]];
            cost += best.cost();
            for (int l = 0; l < used.length; l++) {
                used[l] += best.uses()[l];
            }
            for (int k = 0; k < scenarios.length; k++) {
                scenarios[k] += best.scenarios()[k];
            }
        }
        for (int l = 0; l < used.length; l++) {
            if (used[l] > problem.limits().get(l).most()) {
                return null;
            }
        }
        double worstTenth = mean(scenarios, worst(scenarios));
        Double money = problem.money();
        Double floor = problem.floor();
        return (money != null && cost > money) || (floor != null && worstTenth < floor)
                ? null
                : new Solution(chosen, mean, mean, worstTenth, 0, new double[0], new double[0], 0, 0, true);
    }

    private Solution byBranches(Answer root) {
        double slack = FINE * Math.max(1, Math.abs(root.value()));
        boolean few = problem.choices() <= FEW;
        double near = (few ? FINE : COARSE) * Math.max(1, Math.abs(root.value()));
        int most = few ? MOST_PROGRAMMES : MOST_PROGRAMMES_OF_MANY;
        Answer best = null;
        Deque<Settled> branches = new ArrayDeque<>(List.of(Settled.NOTHING));
        while (!branches.isEmpty() && programmes < most && !within(best, root, near)) {
            Settled branch = branches.pop();
            Answer answer = withRows(branch);
            if (!answer.found() || (best != null && answer.value() <= best.value() + slack)) {
                continue;
            }
            int place = mostShared(answer.shares());
            int good = place >= 0 ? -1 : mostShared(answer.tiers());
            if (place >= 0) {
                int option = largest(answer.shares()[place]);
                branches.push(branch.withOption(place, option, Word.LEFT));
                branches.push(branch.withOption(place, option, Word.TAKEN));
            } else if (good >= 0) {
                int tier = largest(answer.tiers()[good]);
                branches.push(branch.withTier(good, tier, Word.LEFT));
                branches.push(branch.withTier(good, tier, Word.TAKEN));
            } else {
                best = answer;
            }
        }
        boolean searched = branches.isEmpty();
        if (best == null) {
            return impossible(searched);
        }
        return solution(best, searched ? best.value() : Math.max(best.value(), root.value()), searched);
    }

    private static boolean within(@Nullable Answer best, Answer root, double near) {
        return best != null && root.value() - best.value() <= near;
    }

    private Solution impossible(boolean searched) {
        return new Solution(new int[0], 0, 0, 0, 0, new double[0], new double[0], programmes, cuts.size(), searched);
    }

    /** Solves, and adds a row for the worst tenth of the answer until it meets the floor. */
    private Answer withRows(Settled settled) {
        while (true) {
            Answer answer = new FarmModel(problem, cuts, settled).solve();
            programmes++;
            int[] broken = answer.found() ? broken(answer) : null;
            if (broken == null) {
                return answer;
            }
            cuts.add(broken);
        }
    }

    private int @Nullable [] broken(Answer answer) {
        Double floor = problem.floor();
        if (floor == null) {
            return null;
        }
        double[] scenarios = scenarios(answer.shares());
        int[] worst = worst(scenarios);
        boolean met = mean(scenarios, worst) + answer.buyingUsd() >= floor - WHOLE * Math.max(1, Math.abs(floor));
        boolean again = cuts.stream().anyMatch(cut -> Arrays.equals(cut, worst));
        return met || again ? null : worst;
    }

    private double[] scenarios(double[][] shares) {
        double[] sums = new double[problem.scenarios()];
        for (int f = 0; f < shares.length; f++) {
            for (int c = 0; c < shares[f].length; c++) {
                if (shares[f][c] > 1e-12) {
                    double[] margins = problem.places().get(f).options().get(c).scenarios();
                    for (int k = 0; k < sums.length; k++) {
                        sums[k] += shares[f][c] * margins[k];
                    }
                }
            }
        }
        return sums;
    }

    private int[] worst(double[] scenarios) {
        return IntStream.range(0, scenarios.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> scenarios[k]))
                .limit(problem.worst())
                .sorted()
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static double mean(double[] scenarios, int[] some) {
        return Arrays.stream(some).mapToDouble(k -> scenarios[k]).average().orElse(0);
    }

    /** Whose largest share is smallest; −1 where all are whole. */
    private static int mostShared(double[][] shares) {
        int at = -1;
        double least = 1 - WHOLE;
        for (int i = 0; i < shares.length; i++) {
            double largest = shares[i][largest(shares[i])];
            if (largest < least) {
                least = largest;
                at = i;
            }
        }
        return at;
    }

    private static int largest(double[] shares) {
        int at = 0;
        for (int c = 1; c < shares.length; c++) {
            at = shares[c] > shares[at] ? c : at;
        }
        return at;
    }

    private Solution solution(Answer answer, double bound, boolean searched) {
        int[] chosen =
                Arrays.stream(answer.shares()).mapToInt(FarmSolver::largest).toArray();
        double[] scenarios = scenarios(answer.shares());
        return new Solution(
                chosen,
                answer.value(),
                bound,
                mean(scenarios, worst(scenarios)) + answer.buyingUsd(),
                answer.buyingUsd(),
                answer.quantities(),
                answer.own(),
                programmes,
                cuts.size(),
                searched);
    }
}
