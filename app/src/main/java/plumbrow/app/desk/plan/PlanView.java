package plumbrow.app.desk.plan;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;

/**
 * A page of the plans: each farm with its answer, and the fields of those that are shown.
 *
 * @param find part of the name of a farm or field that is looked for; empty for all
 * @param part the plans on this page
 */
public record PlanView(int year, String find, Part<FarmPlan> part) {
    /** Cautions of a farm that are shown: mostly fields that are left out, which the check lists too. */
    public static final int MOST_CAUTIONS = 20;

    static PlanView of(int year, List<FarmPlan> plans, String find, int page) {
        Predicate<String> holds = Part.holding(find);
        return new PlanView(
                year,
                find,
                Part.of(
                        plans.stream()
                                .filter(plan -> holds.test(plan.farm())
                                        || holds.test(plan.grower())
                                        || plan.fields().stream().anyMatch(field -> holds.test(field.field())))
                                .toList(),
                        page));
    }

    /** The fields of a plan that are listed: those looked for first of all, then those that take another program than alone. */
    public List<FarmPlan.Taken> fields(FarmPlan plan) {
        Predicate<String> holds = Part.holding(find);
        boolean named = !find.isBlank() && plan.fields().stream().anyMatch(field -> holds.test(field.field()));
        return plan.fields().stream()
                .filter(field -> !named || holds.test(field.field()))
                .sorted(Comparator.comparing(
                        (FarmPlan.Taken field) -> field.program().equals(field.alone())))
                .limit(Part.LINES)
                .toList();
    }

    public String address(int page) {
        return "/plan?" + (find.isBlank() ? "" : "find=" + Shown.part(find) + "&") + "page=" + page;
    }
}
