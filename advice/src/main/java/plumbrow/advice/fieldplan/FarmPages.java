package plumbrow.advice.fieldplan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.field.Farm;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.science.figure.Numbers;

/** Puts the plans of a farm's fields together on its page. */
public final class FarmPages {
    private FarmPages() {}

    /**
     * The page of each farm that has a field among the plans, in the order of the season.
     *
     * @param plans of one grower's fields
     */
    public static List<FarmPage> of(Season season, List<FieldPlan> plans) {
        return season.farms().stream()
                .filter(farm ->
                        plans.stream().anyMatch(plan -> plan.field().farm().equals(farm.name())))
                .map(farm -> page(
                        season,
                        farm,
                        plans.stream()
                                .filter(plan -> plan.field().farm().equals(farm.name()))
                                .toList()))
                .toList();
    }

    /** The load cards of what is to go out on a field, in the order of its plan. */
    public static List<LoadCard> loadCards(Season season, FieldPlan plan) {
        Program program = program(season, plan).orElse(null);
        if (program == null) {
            return List.of();
        }
        List<Integer> open = plan.steps().stream()
                .filter(step -> step.put() != null && step.done() == null)
                .map(FieldPlan.Step::number)
                .toList();
        return SprayTrip.of(season, plan.field(), program).stream()
                .filter(trip -> open.contains(trip.number()))
                .sorted(Comparator.comparingInt(trip -> open.indexOf(trip.number())))
                .map(trip -> LoadCards.of(season, trip, null))
                .toList();
    }

    static Optional<Program> program(Season season, FieldPlan plan) {
        return season.programs(plan.field().name()).stream()
                .filter(program -> program.name().equals(plan.program()))
                .findFirst();
    }

    private static FarmPage page(Season season, Farm farm, List<FieldPlan> plans) {
        Purchases purchases = Purchases.of(season, farm, plans);
        return new FarmPage(
                season.year(),
                season.asOf(),
                season.adviser(),
                farm.name(),
                farm.grower(),
                plans.stream().map(FarmPages::row).toList(),
                totals(farm, plans),
                purchases.lines(),
                purchases.says(),
                weeks(plans));
    }

    private static FarmPage.Row row(FieldPlan plan) {
        FieldPlan.Money money = plan.money();
        return new FarmPage.Row(
                plan.field().name(),
                plan.field().acres(),
                plan.field().crop().word(),
                plan.program(),
                plan.basis(),
                money == null ? null : money.costUsd(),
                money == null ? null : money.meanGainUsdPerAcre() * plan.field().acres(),
                Stream.of(
                                counted(plan, MatterKind.BARRED, "barred thing", "barred things"),
                                counted(plan, MatterKind.LOOK_UP, "thing to look up", "things to look up"),
                                plan.basis() == FieldPlan.Basis.ADVISED ? "decide" : "")
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining(", ")));
    }

    private static String counted(FieldPlan plan, MatterKind kind, String one, String more) {
        int count = plan.first(kind).size();
        return count == 0 ? "" : count + " " + (count == 1 ? one : more);
    }

    private static List<String> totals(Farm farm, List<FieldPlan> plans) {
        double acres = plans.stream().mapToDouble(plan -> plan.field().acres()).sum();
        List<FieldPlan> weighed =
                plans.stream().filter(plan -> plan.money() != null).toList();
        double cost = weighed.stream()
                .mapToDouble(plan -> Objects.requireNonNull(plan.money()).costUsd())
                .sum();
        double gain = weighed.stream()
                .mapToDouble(plan -> Objects.requireNonNull(plan.money()).meanGainUsdPerAcre()
                        * plan.field().acres())
                .sum();
        double margin = weighed.stream()
                .mapToDouble(plan -> Objects.requireNonNull(plan.money()).meanMarginUsdPerAcre()
                        * plan.field().acres())
                .sum();
        long chosen = plans.stream()
                .filter(plan -> plan.basis() == FieldPlan.Basis.CHOSEN)
                .count();
        List<String> totals = new ArrayList<>();
        totals.add(plans.size() + (plans.size() == 1 ? " field, " : " fields, ") + Numbers.fixed(acres, 0) + " ac; "
                + chosen + " decided"
                + (chosen == plans.size() ? "." : ", of the others the program advised is shown."));
        if (!weighed.isEmpty()) {
            totals.add((farm.costShare() < 1 ? "Your share of inputs and passes " : "Inputs and passes ")
                    + Numbers.dollars(cost, 0) + "; " + Numbers.dollars(gain, 0)
                    + " ahead of the baselines on average; margin over these inputs " + Numbers.dollars(margin, 0)
                    + " on average.");
        }
        if (weighed.size() < plans.size()) {
            totals.add("Without money: "
                    + plans.stream()
                            .filter(plan -> plan.money() == null)
                            .map(plan -> plan.field().name())
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        return totals;
    }

    /** A step and its field. */
    private record Work(FieldPlan plan, FieldPlan.Step step) {}

    private static List<FarmPage.Week> weeks(List<FieldPlan> plans) {
        Map<LocalDate, List<Work>> dated = new TreeMap<>();
        List<Work> undated = new ArrayList<>();
        for (FieldPlan plan : plans) {
            for (FieldPlan.Step step : plan.steps()) {
                LocalDate day = step.date();
                if (step.done() == null) {
                    (day == null
                                    ? undated
                                    : dated.computeIfAbsent(
                                            day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
                                            first -> new ArrayList<>()))
                            .add(new Work(plan, step));
                }
            }
        }
        List<FarmPage.Week> weeks = new ArrayList<>();
        dated.forEach((monday, work) -> {
            work.sort(Comparator.comparing(
                    (Work one) -> Objects.requireNonNull(one.step().date())));
            weeks.add(new FarmPage.Week(monday, jobs(work), machines(work)));
        });
        if (!undated.isEmpty()) {
            weeks.add(new FarmPage.Week(null, jobs(undated), machines(undated)));
        }
        return weeks;
    }

    private static List<FarmPage.Job> jobs(List<Work> work) {
        Map<String, FarmPage.Job> jobs = new LinkedHashMap<>();
        for (Work one : work) {
            FieldPlan.Step step = one.step();
            String what = step.what() + (step.waitsFor().isEmpty() ? "" : ", " + step.waitsFor());
            String machine = step.machine() == null ? "" : step.machine();
            jobs.merge(
                    step.date() + "|" + what + "|" + machine,
                    new FarmPage.Job(
                            step.date(), what, List.of(one.plan().field().name()), step.acres(), machine),
                    (all, next) -> new FarmPage.Job(
                            all.day(),
                            what,
                            Stream.concat(all.fields().stream(), next.fields().stream())
                                    .toList(),
                            all.acres() + next.acres(),
                            machine));
        }
        return List.copyOf(jobs.values());
    }

    private static String machines(List<Work> work) {
        Map<String, Double> hours = new LinkedHashMap<>();
        for (Work one : work) {
            String machine = one.step().machine();
            Double takes = one.step().hours();
            if (machine != null && takes != null) {
                hours.merge(machine, takes, Double::sum);
            }
        }
        return hours.entrySet().stream()
                .map(one -> one.getKey() + " " + Numbers.fixed(one.getValue(), 1) + " h")
                .collect(Collectors.joining(", "));
    }
}
