package plumbrow.advice.farmplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.farmplan.FarmPlan.Buy;
import plumbrow.advice.farmplan.FarmPlan.Shared;
import plumbrow.advice.farmplan.FarmPlan.Taken;
import plumbrow.advice.farmplan.FarmProblem.Good;
import plumbrow.advice.farmplan.FarmProblem.Limit;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.FarmSolver.Solution;
import plumbrow.advice.farmplan.SharedLimit.Kind;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.science.figure.Numbers;

/**
 * Plans the farms of a season, each by itself: the programs that bring most together under what its fields share.
 *
 * <p>Same season and options give the same plan.
 */
public final class FarmPlanner {
    private static final double CENT = 0.01;

    private final Farm farm;
    private final PlanOptions options;
    private final Map<String, Double> taken;
    private final FarmReader reader;
    private final FarmProblem problem;

    /** @param taken what plans of other farms take out of the shed already, by product; this one adds its own */
    private FarmPlanner(
            Season season,
            FieldSeasons own,
            Farm farm,
            PlanOptions options,
            Gates gates,
            DrawSource source,
            Map<String, Double> taken) {
        this.farm = farm;
        this.options = options;
        this.taken = taken;
        this.reader = new FarmReader(season, own, farm, gates, source, Map.copyOf(taken));
        this.problem = reader.read();
    }

    /**
     * A plan for each of the farms named, all of the season where none is. The shelf has one shed for all: what an earlier farm
     * of the season takes out of it is not there for a later one, whichever are asked for.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what weighing needs
     */
    public static List<FarmPlan> of(Season season, List<String> farms, PlanOptions options) {
        return of(season, farms, options, new HashMap<>());
    }

    /**
     * The same with plans known from before.
     *
     * @param known by the name of the farm; a plan holds where nothing it came out of has changed, the others are made and put here
     */
    public static List<FarmPlan> of(
            Season season, List<String> farms, PlanOptions options, Map<String, KnownPlan> known) {
        Gates gates = Gates.of(season);
        FieldSeasons own = FieldSeasons.of(season);
        DrawSource source = new DrawSource(options.scenarios(), options.seed());
        boolean stock = season.shelf().products().stream().anyMatch(product -> product.onHand() != null);
        Map<String, Double> taken = new TreeMap<>();
        List<FarmPlan> plans = new ArrayList<>();
        Map<String, List<Field>> fields = season.fields().stream().collect(Collectors.groupingBy(Field::farm));
        known.keySet().retainAll(fields.keySet());
        for (Farm farm : season.farms()) {
            List<Field> ofFarm = fields.get(farm.name());
            boolean asked = farms.isEmpty() || farms.contains(farm.name());
            if (ofFarm != null && (asked || stock)) {
                PlanOptions how = asked ? options : new PlanOptions(options.scenarios(), options.seed(), false);
                KnownPlan.From from =
                        new KnownPlan.From(farm, ofFarm.stream().map(own::of).toList(), how, Map.copyOf(taken));
                KnownPlan plan = known.get(farm.name());
                if (plan == null || !plan.from().equals(from)) {
                    FarmPlan made = new FarmPlanner(season, own, farm, how, gates, source, taken).plan();
                    plan = new KnownPlan(from, made, Map.copyOf(taken));
                    known.put(farm.name(), plan);
                }
                taken.putAll(plan.takenAfter());
                if (asked) {
                    plans.add(plan.plan());
                }
            }
        }
        return plans;
    }

    private FarmPlan plan() {
        if (problem.places().stream().noneMatch(FarmProblem.Place::counted)) {
            return impossible("No field of " + farm.name() + " has a program that may be advised.");
        }
        Solution solution = FarmSolver.solve(problem);
        Solution free = FarmSolver.solve(without(reader.shared()));
        if (!solution.possible()) {
            return impossible(
                    solution.searched()
                            ? clash()
                            : "No plan was found for " + farm.name() + " in " + solution.programmes()
                                    + " programmes. That does not prove that there is none: ease a limit and try again.");
        }
        List<Taken> taken = new ArrayList<>();
        for (int f = 0; f < solution.chosen().length; f++) {
            if (!problem.places().get(f).counted()) {
                continue;
            }
            List<Option> choices = problem.places().get(f).options();
            Option own = choices.get(solution.chosen()[f]);
            Option alone = choices.stream()
                    .max(Comparator.comparingDouble(Option::mean))
                    .orElse(own);
            double acres = reader.fields().get(f).acres();
            taken.add(new Taken(
                    problem.places().get(f).name(),
                    acres,
                    own.name(),
                    alone.name(),
                    own.cost(),
                    own.spent(),
                    own.mean(),
                    alone.mean() - own.mean(),
                    !EqualRule.DEFAULT.ahead(
                            (alone.mean() - own.mean()) / acres,
                            EqualRule.DEFAULT.leads(alone.scenarios(), own.scenarios(), acres))));
        }
        List<Shared> limits =
                reader.shared().stream().map(limit -> shared(limit, solution)).toList();
        return new FarmPlan(
                farm.name(),
                farm.grower(),
                options.scenarios(),
                taken,
                reader.aside(),
                solution.mean(),
                solution.bound(),
                solution.gap() * 100,
                solution.worstTenth(),
                free.mean(),
                limits,
                buys(solution),
                says(taken, solution, free),
                reader.cautions());
    }

    private FarmPlan impossible(String says) {
        return new FarmPlan(
                farm.name(),
                farm.grower(),
                options.scenarios(),
                List.of(),
                reader.aside(),
                0,
                0,
                0,
                0,
                0,
                List.of(),
                List.of(),
                says,
                reader.cautions());
    }

    private String says(List<Taken> taken, Solution solution, Solution free) {
        long other = taken.stream().filter(one -> one.givesUpUsd() > CENT).count();
        String bring = "The " + taken.size() + " fields of " + farm.name() + " bring "
                + Numbers.dollars(solution.mean(), 0) + " on average, "
                + Numbers.dollars(solution.worstTenth(), 0) + " on average in the worst 10 of 100 seasons. ";
        String limits = free.mean() - solution.mean() < 1
                ? "What they share holds none of them back."
                : "What they share costs " + Numbers.dollars(free.mean() - solution.mean(), 0) + ": "
                        + (other == 1 ? "one field takes" : other + " fields take") + " another program than alone.";
        String proof = solution.gap() < 1e-6
                ? " No other choice brings more."
                : " No other choice brings more than " + Numbers.fixed(solution.gap() * 100, 2) + " % more.";
        return bring + limits + proof;
    }

    /** The fewest limits that can't be kept together: each is left out once to see whether the rest still clash. */
    private String clash() {
        List<SharedLimit> kept = new ArrayList<>(reader.shared());
        for (SharedLimit limit : reader.shared()) {
            List<SharedLimit> left = new ArrayList<>(kept);
            left.remove(limit);
            List<SharedLimit> out = new ArrayList<>(reader.shared());
            out.removeAll(left);
            if (!FarmSolver.solve(without(out)).possible()) {
                kept = left;
            }
        }
        return "No choice of programs on " + farm.name() + " keeps "
                + (kept.size() == 1 ? "within " : "within all of these together: ")
                + kept.stream().map(SharedLimit::text).collect(Collectors.joining("; "))
                + ". Ease one of them, or enter programs that need less."
                + (reader.aside().isEmpty()
                        ? ""
                        : " What "
                                + reader.aside().stream()
                                        .map(FarmPlan.SetAside::field)
                                        .collect(Collectors.joining(" and "))
                                + " will likely take is counted in them.");
    }

    private Shared shared(SharedLimit limit, Solution solution) {
        double used = used(limit, solution);
        double worth = Double.NaN;
        String says = "";
        if (options.worths()) {
            worth = Math.max(0, FarmSolver.solve(eased(limit, limit.step())).mean() - solution.mean());
            worth = worth < 0.5 ? 0 : worth;
            says = worth == 0
                    ? limit.oneMore() + " would change nothing."
                    : limit.oneMore() + " is worth " + Numbers.dollars(worth, 0) + ".";
        }
        return new Shared(limit.name(), used, limit.most(), limit.unit(), worth, says);
    }

    private double used(SharedLimit limit, Solution solution) {
        return switch (limit.kind()) {
            case HOURS, REFUGE -> {
                int at = place(limit);
                double sum = 0;
                for (int f = 0; f < solution.chosen().length; f++) {
                    sum += problem.places()
                            .get(f)
                            .options()
                            .get(solution.chosen()[f])
                            .uses()[at];
                }
                yield Math.abs(sum);
            }
            case MONEY -> {
                double cash = 0;
                for (int f = 0; f < solution.chosen().length; f++) {
                    cash += problem.places()
                            .get(f)
                            .options()
                            .get(solution.chosen()[f])
                            .cost();
                }
                for (int g = 0; g < problem.goods().size(); g++) {
                    cash -= problem.goods().get(g).list() * solution.own()[g];
                }
                yield cash - solution.buying();
            }
            case FLOOR -> solution.worstTenth();
            case SUPPLY -> solution.quantities()[good(limit)];
        };
    }

    private int place(SharedLimit limit) {
        for (int l = 0; l < problem.limits().size(); l++) {
            if (problem.limits().get(l).name().equals(limit.name())) {
                return l;
            }
        }
        throw new IllegalStateException("no such limit: " + limit.name());
    }

    private int good(SharedLimit limit) {
        for (int g = 0; g < problem.goods().size(); g++) {
            if (problem.goods().get(g).name().equals(limit.name())) {
                return g;
            }
        }
        throw new IllegalStateException("no such good: " + limit.name());
    }

    private FarmProblem without(List<SharedLimit> out) {
        FarmProblem eased = problem;
        for (SharedLimit limit : out) {
            eased = eased(eased, limit, null);
        }
        return eased;
    }

    private FarmProblem eased(SharedLimit limit, double step) {
        return eased(problem, limit, step);
    }

    /** The problem with one limit eased by a step, or lifted where there is none. */
    private FarmProblem eased(FarmProblem of, SharedLimit limit, @Nullable Double step) {
        List<Limit> limits = new ArrayList<>(of.limits());
        List<Good> goods = new ArrayList<>(of.goods());
        Double money = of.money();
        Double floor = of.floor();
        switch (limit.kind()) {
            case HOURS, REFUGE -> {
                int at = place(limit);
                double most = limits.get(at).most();
                double more = step == null ? 1e9 : Math.abs(step);
                limits.set(
                        at,
                        new Limit(
                                limit.name(),
                                limit.kind() == Kind.REFUGE && step != null ? Math.min(0, most + more) : most + more));
            }
            case MONEY -> money = step == null || money == null ? null : money + step;
            case FLOOR -> floor = step == null || floor == null ? null : floor + step;
            case SUPPLY -> {
                int at = good(limit);
                Good good = goods.get(at);
                goods.set(
                        at,
                        new Good(
                                good.name(),
                                good.list(),
                                good.onHand(),
                                step == null ? 1e7 : good.most() + step,
                                good.tiers()));
            }
        }
        return new FarmProblem(of.places(), limits, goods, money, floor);
    }

    private List<Buy> buys(Solution solution) {
        List<Buy> buys = new ArrayList<>();
        for (int g = 0; g < problem.goods().size(); g++) {
            Good good = problem.goods().get(g);
            double used = 0;
            for (int f = 0; f < solution.chosen().length; f++) {
                used += problem.places()
                        .get(f)
                        .options()
                        .get(solution.chosen()[f])
                        .goods()[g];
            }
            double bought = solution.quantities()[g];
            double price = good.tiers().stream()
                    .filter(tier -> tier.from() <= bought + 1e-6)
                    .mapToDouble(FarmProblem.Tier::price)
                    .min()
                    .orElse(good.list());
            taken.merge(good.name(), solution.own()[g], Double::sum);
            if (used > 1e-6 || bought > 1e-6) {
                buys.add(new Buy(
                        good.name(),
                        used,
                        solution.own()[g],
                        solution.own()[g] * good.list(),
                        bought,
                        reader.products().get(g).pricedPer().symbol(),
                        bought > 1e-6 ? price : 0));
            }
        }
        return buys;
    }
}
