package plumbrow.advice.farmplan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbrow.advice.farmplan.FarmProblem.Good;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.FarmProblem.Tier;

/** Tries every choice of programs and tiers, and buys what the shed does not hold. */
final class EveryChoice {
    private final FarmProblem problem;
    private double best = Double.NEGATIVE_INFINITY;

    private EveryChoice(FarmProblem problem) {
        this.problem = problem;
    }

    static EveryChoice of(FarmProblem problem) {
        EveryChoice every = new EveryChoice(problem);
        every.choose(new ArrayList<>());
        return every;
    }

    boolean possible() {
        return best > Double.NEGATIVE_INFINITY;
    }

    double best() {
        return best;
    }

    private void choose(List<Option> chosen) {
        if (chosen.size() == problem.places().size()) {
            if (withinLimits(chosen)) {
                tiers(chosen, new ArrayList<>());
            }
            return;
        }
        for (Option option : problem.places().get(chosen.size()).options()) {
            List<Option> with = new ArrayList<>(chosen);
            with.add(option);
            choose(with);
        }
    }

    private boolean withinLimits(List<Option> chosen) {
        for (int l = 0; l < problem.limits().size(); l++) {
            int which = l;
            if (chosen.stream().mapToDouble(option -> option.uses()[which]).sum()
                    > problem.limits().get(l).most() + 1e-9) {
                return false;
            }
        }
        return true;
    }

    private void tiers(List<Option> chosen, List<Tier> tiers) {
        if (tiers.size() == problem.goods().size()) {
            judge(chosen, tiers);
            return;
        }
        for (Tier tier : problem.goods().get(tiers.size()).tiers()) {
            List<Tier> with = new ArrayList<>(tiers);
            with.add(tier);
            tiers(chosen, with);
        }
    }

    /** Takes all it can from the shed, then buys what is short, or up to the step that makes all of it cheaper. */
    private void judge(List<Option> chosen, List<Tier> tiers) {
        double money = problem.money() == null ? Double.POSITIVE_INFINITY : problem.money();
        money -= chosen.stream().mapToDouble(Option::cost).sum();
        double value = 0;
        for (int g = 0; g < tiers.size(); g++) {
            int which = g;
            Good good = problem.goods().get(g);
            double used =
                    chosen.stream().mapToDouble(option -> option.goods()[which]).sum();
            double needed = Math.max(0, used - good.onHand());
            double bought = needed == 0 ? 0 : Math.max(needed, tiers.get(g).from());
            if (bought > good.most() + 1e-9) {
                return;
            }
            double paid = tiers.get(g).price() * bought;
            value += good.list() * needed - paid;
            money += good.list() * used - paid;
        }
        if (money < -1e-6) {
            return;
        }
        if (problem.floor() == null
                || worstTenth(chosen) + value >= problem.floor() - 1e-6 * Math.abs(problem.floor())) {
            best = Math.max(best, chosen.stream().mapToDouble(Option::mean).sum() + value);
        }
    }

    private double worstTenth(List<Option> chosen) {
        double[] sums = new double[problem.scenarios()];
        chosen.forEach(option -> Arrays.setAll(sums, k -> sums[k] + option.scenarios()[k]));
        Arrays.sort(sums);
        return Arrays.stream(sums, 0, problem.worst()).average().orElse(0);
    }
}
