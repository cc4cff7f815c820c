package plumbrow.advice.farmplan;

import java.util.ArrayList;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.type.context.NumberContext;
import plumbrow.advice.farmplan.FarmProblem.Good;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.FarmProblem.Place;

/**
 * A {@link FarmProblem}, with some options and tiers settled, as the library solves it. Money is
 * counted in thousands of dollars, so that numbers stay near one.
 */
final class FarmModel {
    private static final double THOUSAND = 1000;

    private final FarmProblem problem;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<List<Variable>> takes = new ArrayList<>();
    private final List<Bought> bought = new ArrayList<>();

    private record Bought(Variable own, List<Variable> tiers, List<Variable> taking) {}

    /**
     * What the library answers.
     *
     * @param found whether there is any answer
     * @param value of the objective [$]
     * @param shares of each option of each place
     * @param tiers share of each tier of each good, that of buying none the last
     * @param buyingUsd what buying brings over list prices [$]
     */
    @SuppressWarnings("ArrayRecordComponent") // Plain columns of numbers, read only.
    record Answer(
            boolean found,
            double value,
            double[][] shares,
            double[][] tiers,
            double buyingUsd,
            double[] quantities,
            double[] own) {}

    /**
     * @param cuts rows that the worst tenth of scenarios brought forth, each a set of scenarios whose mean must reach the
     *     floor
     * @param settled what has been settled so far
     */
    FarmModel(FarmProblem problem, List<int[]> cuts, Settled settled) {
        this.problem = problem;
        // The library's own tolerance of feasibility is finer than its arithmetic on such farms: some were called
        // impossible.
        model.options.feasibility = NumberContext.of(10, 6);
        places(settled);
        goods(settled);
        limits();
        money();
        cuts.forEach(this::floor);
    }

    private void places(Settled settled) {
        for (int f = 0; f < problem.places().size(); f++) {
            Place place = problem.places().get(f);
            List<Variable> own = new ArrayList<>();
            Expression one = model.newExpression("one program on " + f).level(1);
            for (int c = 0; c < place.options().size(); c++) {
                Variable take = model.newVariable("x " + f + " " + c).lower(0).upper(1);
                hold(take, settled.option(f, c));
                take.weight(beforeBuying(place.options().get(c)) / THOUSAND);
                one.set(take, 1);
                own.add(take);
            }
            takes.add(own);
        }
    }

    /** Mean margin of an option as if its goods were free: what they cost is reckoned where they are bought [$]. */
    private double beforeBuying(Option option) {
        double mean = option.mean();
        for (int g = 0; g < problem.goods().size(); g++) {
            mean += problem.goods().get(g).list() * option.goods()[g];
        }
        return mean;
    }

    private void goods(Settled settled) {
        for (int g = 0; g < problem.goods().size(); g++) {
            Good good = problem.goods().get(g);
            Expression enough = model.newExpression("enough of " + g).lower(0);
            Variable own = model.newVariable("own " + g).lower(0).upper(good.onHand() / scale(g));
            double scale = scale(g);
            own.weight(-good.list() * scale / THOUSAND);
            enough.set(own, 1);
            Expression noMore = model.newExpression("own within use of " + g).upper(0);
            noMore.set(own, 1);
            Expression oneTier = model.newExpression("one tier of " + g).level(1);
            Expression shedFirst = model.newExpression("shed first of " + g).lower(0);
            shedFirst.set(own, 1);
            List<Variable> tiers = new ArrayList<>();
            List<Variable> taking = new ArrayList<>();
            double most = Math.min(good.most(), Math.max(mostUsed(g), last(good))) / scale;
            for (int t = 0; t < good.tiers().size(); t++) {
                Variable quantity =
                        model.newVariable("q " + g + " " + t).lower(0).upper(most);
                Variable taken = model.newVariable("z " + g + " " + t).lower(0).upper(1);
                hold(taken, settled.tier(g, t));
                quantity.weight(-good.tiers().get(t).price() * scale / THOUSAND);
                model.newExpression("no more " + g + " " + t)
                        .upper(0)
                        .set(quantity, 1)
                        .set(taken, -most);
                model.newExpression("no less " + g + " " + t)
                        .lower(0)
                        .set(quantity, 1)
                        .set(taken, -good.tiers().get(t).from() / scale);
                oneTier.set(taken, 1);
                shedFirst.set(taken, -good.onHand() / scale);
                enough.set(quantity, 1);
                tiers.add(quantity);
                taking.add(taken);
            }
            // Nothing is bought before the shed is empty: either a tier is taken and all of it is used, or none is
            // taken.
            Variable none = model.newVariable("buy none of " + g).lower(0).upper(1);
            hold(none, settled.tier(g, good.tiers().size()));
            oneTier.set(none, 1);
            taking.add(none);
            final int which = g;
            eachTake((option, take) -> {
                if (option.goods()[which] != 0) {
                    enough.set(take, -option.goods()[which] / scale);
                    noMore.set(take, -option.goods()[which] / scale);
                }
            });
            bought.add(new Bought(own, tiers, taking));
        }
    }

    /** Quantities are counted in shares of the most that could be used, so that numbers stay near one. */
    private double scale(int g) {
        return Math.max(1e-6, mostUsed(g));
    }

    private static void hold(Variable variable, Settled.Word word) {
        switch (word) {
            case TAKEN -> variable.level(1);
            case LEFT -> variable.level(0);
            case OPEN -> {}
        }
    }

    private static double last(Good good) {
        return good.tiers().get(good.tiers().size() - 1).from();
    }

    private double mostUsed(int g) {
        return problem.places().stream()
                .mapToDouble(place -> place.options().stream()
                        .mapToDouble(option -> option.goods()[g])
                        .max()
                        .orElse(0))
                .sum();
    }

    private void limits() {
        for (int l = 0; l < problem.limits().size(); l++) {
            Expression limit = model.newExpression("limit " + l)
                    .upper(sign(problem.limits().get(l).most()));
            double scale = scale(problem.limits().get(l).most());
            final int which = l;
            eachTake((option, take) -> {
                if (option.uses()[which] != 0) {
                    limit.set(take, option.uses()[which] / scale);
                }
            });
        }
    }

    private static double scale(double most) {
        return most == 0 ? 1 : Math.abs(most);
    }

    private static double sign(double most) {
        return most / scale(most);
    }

    private void money() {
        if (problem.money() != null) {
            Expression money = model.newExpression("money").upper(problem.money() / THOUSAND);
            eachTake((option, take) -> {
                double paidElsewhere = option.cost();
                for (int g = 0; g < problem.goods().size(); g++) {
                    paidElsewhere -= problem.goods().get(g).list() * option.goods()[g];
                }
                money.set(take, paidElsewhere / THOUSAND);
            });
            for (int g = 0; g < bought.size(); g++) {
                for (int t = 0; t < bought.get(g).tiers().size(); t++) {
                    money.set(
                            bought.get(g).tiers().get(t),
                            problem.goods().get(g).tiers().get(t).price() * scale(g) / THOUSAND);
                }
            }
        }
    }

    /** The mean of some scenarios, with what buying brings, must reach the floor. */
    private void floor(int[] scenarios) {
        double floor = problem.floor() == null ? 0 : problem.floor();
        Expression row =
                model.newExpression("floor " + model.constraints().count()).lower(floor / THOUSAND);
        eachTake((option, take) -> {
            double sum = 0;
            for (int k : scenarios) {
                sum += option.scenarios()[k];
            }
            double mean = sum / scenarios.length;
            for (int g = 0; g < problem.goods().size(); g++) {
                mean += problem.goods().get(g).list() * option.goods()[g];
            }
            row.set(take, mean / THOUSAND);
        });
        for (int g = 0; g < bought.size(); g++) {
            Good good = problem.goods().get(g);
            row.set(bought.get(g).own(), -good.list() * scale(g) / THOUSAND);
            for (int t = 0; t < bought.get(g).tiers().size(); t++) {
                row.set(bought.get(g).tiers().get(t), -good.tiers().get(t).price() * scale(g) / THOUSAND);
            }
        }
    }

    private interface EachTake {
        void see(Option option, Variable take);
    }

    private void eachTake(EachTake seen) {
        for (int f = 0; f < takes.size(); f++) {
            for (int c = 0; c < takes.get(f).size(); c++) {
                seen.see(problem.places().get(f).options().get(c), takes.get(f).get(c));
            }
        }
    }

    Answer solve() {
        Optimisation.Result result = model.maximise();
        if (!result.getState().isFeasible()) {
            return new Answer(false, 0, new double[0][], new double[0][], 0, new double[0], new double[0]);
        }
        double[][] shares = new double[takes.size()][];
        for (int f = 0; f < takes.size(); f++) {
            shares[f] = takes.get(f).stream()
                    .mapToDouble(take -> value(result, take))
                    .toArray();
        }
        double[][] tiers = new double[bought.size()][];
        double buying = 0;
        double[] quantities = new double[bought.size()];
        double[] own = new double[bought.size()];
        for (int g = 0; g < bought.size(); g++) {
            Good good = problem.goods().get(g);
            tiers[g] = bought.get(g).taking().stream()
                    .mapToDouble(taken -> value(result, taken))
                    .toArray();
            own[g] = value(result, bought.get(g).own()) * scale(g);
            buying -= good.list() * own[g];
            for (int t = 0; t < bought.get(g).tiers().size(); t++) {
                double quantity = value(result, bought.get(g).tiers().get(t)) * scale(g);
                quantities[g] += quantity;
                buying -= good.tiers().get(t).price() * quantity;
            }
            for (int f = 0; f < shares.length; f++) {
                for (int c = 0; c < shares[f].length; c++) {
                    buying += shares[f][c]
                            * good.list()
                            * problem.places().get(f).options().get(c).goods()[g];
                }
            }
        }
        return new Answer(true, result.getValue() * THOUSAND, shares, tiers, buying, quantities, own);
    }

    private double value(Optimisation.Result result, Variable variable) {
        return result.doubleValue(model.indexOf(variable));
    }
}
