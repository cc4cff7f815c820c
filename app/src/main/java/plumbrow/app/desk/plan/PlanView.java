package plumbrow.app.desk.plan;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;

/**
 * A page of the plans: each farm with its answer, and of a large one the fields that take another program than alone first. A
 * farm by itself has all its fields, by pages.
 *
 * @param find part of the name of a farm, grower or field that is looked for; empty for all
 * @param farm the farm that is shown by itself; empty for all
 * @param page asked for: of farms, or of the fields of one
 * @param part the plans on this page
 */
public record PlanView(int year, String find, String farm, int page, Part<FarmPlan> part) {
    /** Cautions of a farm that are shown: mostly fields that are left out, which the check lists too. */
    public static final int MOST_CAUTIONS = 20;

    /** Farms on a page, and fields of each of them where they are many. */
    private static final int FARMS = 10;

    private static final int FIELDS = 12;

    static PlanView of(int year, List<FarmPlan> plans, String find, String farm, int page) {
        Predicate<String> holds = Part.holding(find);
        return new PlanView(
                year,
                find,
                farm,
                page,
                Part.of(
                        plans.stream()
                                .filter(plan -> farm.isEmpty() || plan.farm().equals(farm))
                                .filter(plan -> !farm.isEmpty() || holds(plan, holds))
                                .toList(),
                        farm.isEmpty() ? page : 1,
                        FARMS));
    }

    private static boolean holds(FarmPlan plan, Predicate<String> holds) {
        return holds.test(plan.farm())
                || holds.test(plan.grower())
                || plan.fields().stream().anyMatch(field -> holds.test(field.field()))
                || plan.setAside().stream().anyMatch(field -> holds.test(field.field()));
    }

    /** The fields of a plan that are listed: those looked for first of all, then those that take another program than alone. */
    public Part<FarmPlan.Taken> fields(FarmPlan plan) {
        Predicate<String> holds = Part.holding(find);
        boolean named = !find.isBlank() && plan.fields().stream().anyMatch(field -> holds.test(field.field()));
        List<FarmPlan.Taken> fields = plan.fields().stream()
                .filter(field -> !named || holds.test(field.field()))
                .sorted(Comparator.comparing(
                        (FarmPlan.Taken field) -> field.program().equals(field.alone())))
                .toList();
        return farm.isEmpty()
                ? Part.of(fields, 1, fields.size() <= FIELDS + 1 || part.of() == 1 ? Part.LINES : FIELDS)
                : Part.of(fields, page);
    }

    /** The fields of a plan that are set aside for and are listed: those looked for first of all. */
    public Part<FarmPlan.SetAside> aside(FarmPlan plan) {
        Predicate<String> holds = Part.holding(find);
        boolean named = !find.isBlank() && plan.setAside().stream().anyMatch(field -> holds.test(field.field()));
        List<FarmPlan.SetAside> fields = plan.setAside().stream()
                .filter(field -> !named || holds.test(field.field()))
                .toList();
        return farm.isEmpty()
                ? Part.of(fields, 1, fields.size() <= FIELDS + 1 || part.of() == 1 ? Part.LINES : FIELDS)
                : Part.of(fields, page);
    }

    /** The address of another page of farms. */
    public String address(int page) {
        return "/plan?" + (find.isBlank() ? "" : "find=" + Shown.part(find) + "&") + "page=" + page;
    }

    /** The address of a page of one farm's fields. */
    public static String address(FarmPlan plan, int page) {
        return "/plan?farm=" + Shown.part(plan.farm()) + "&page=" + page;
    }
}
