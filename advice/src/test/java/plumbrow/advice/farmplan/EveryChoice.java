package plumbrow.advice.farmplan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import plumbrow.advice.farmplan.FarmProblem.Good;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.FarmProblem.Tier;

/** Tries every choice of courses and tiers, and for each the best way to buy under the money there is. */
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

    /** Takes all it can from the shed, which needs least money; then buys instead where that brings most a dollar. */
    private void judge(List<Option> chosen, List<Tier> tiers) {
        double money = problem.money() == null ? Double.POSITIVE_INFINITY : problem.money();
        money -= chosen.stream().mapToDouble(Option::cost).sum();
        double value = 0;
        List<double[]> more = new ArrayList<>();
        for (int g = 0; g < tiers.size(); g++) {
            int which = g;
            Good good = problem.goods().get(g);
            double price = tiers.get(g).price();
            double used =
                    chosen.stream().mapToDouble(option -> option.goods()[which]).sum();
            double own = Math.min(good.onHand(), used);
            double bought = Math.max(used - own, tiers.get(g).from());
            if (bought > good.most() + 1e-9) {
                return;
            }
            double kept = Math.max(0, own - (used - Math.min(used, bought)));
            own -= kept; // what is bought anyway need not come out of the shed
            value += good.list() * (used - own) - price * bought;
            money += good.list() * used - price * bought;
            more.add(new double[] {good.list() - price, price, Math.min(own, good.most() - bought)});
        }
        if (money < -1e-6) {
            return;
        }
        more.sort(Comparator.comparingDouble((double[] one) -> -one[0] / one[1]));
        for (double[] one : more) {
            if (one[0] > 0) {
                double quantity = Math.max(0, Math.min(one[2], money / one[1]));
                value += quantity * one[0];
                money -= quantity * one[1];
            }
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
