package plumbrow.app.command.said;

import java.util.List;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.advice.farmplan.FarmPlan.Buy;
import plumbrow.advice.farmplan.FarmPlan.Shared;
import plumbrow.advice.farmplan.FarmPlan.Taken;
import plumbrow.science.figure.Numbers;

/** A farm plan in text. */
public final class PlanWords {
    private PlanWords() {}

    public static String of(List<FarmPlan> plans) {
        Paper paper = new Paper();
        for (FarmPlan plan : plans) {
            add(paper, plan);
        }
        return paper.prose(
                        "Mind  ",
                        "The current label is the law. Local code and licensed practice decide; this is "
                                + "arithmetic, not a permit.")
                .text();
    }

    private static void add(Paper paper, FarmPlan plan) {
        paper.heading(plan.farm() + ", " + plan.grower() + ": " + plan.says()).gap();
        if (plan.possible()) {
            boolean spent = plan.fields().stream().anyMatch(taken -> taken.spentUsd() >= 0.5);
            TextTable fields = TextTable.empty()
                    .words("Field")
                    .words("take")
                    .numbers(spent ? "spent" : "", spent ? "$" : "")
                    .numbers(spent ? "still costs" : "cost", "$")
                    .numbers("mean margin", "$")
                    .words("alone it would take")
                    .numbers("gives up", "$");
            for (Taken taken : plan.fields()) {
                boolean other = !taken.program().equals(taken.alone());
                fields.row(
                        taken.field(),
                        taken.program(),
                        spent ? Numbers.fixed(taken.spentUsd(), 0) : "",
                        Numbers.fixed(taken.costUsd(), 0),
                        Numbers.fixed(taken.meanUsd(), 0),
                        other ? taken.alone() + (taken.aboutEqual() ? " (about equal)" : "") : "",
                        other ? Numbers.fixed(taken.givesUpUsd(), 0) : "");
            }
            paper.table(fields).gap();
            shared(paper, plan.limits());
            buys(paper, plan.buys());
        }
        plan.setAside()
                .forEach(aside -> paper.prose(
                        "Mind  ",
                        aside.says() + " It takes " + Numbers.dollars(aside.costUsd(), 0) + " at list prices."));
        plan.cautions().forEach(caution -> paper.prose("Mind  ", caution));
        paper.gap();
    }

    private static void shared(Paper paper, List<Shared> limits) {
        if (limits.isEmpty()) {
            return;
        }
        TextTable table = TextTable.empty()
                .words("Shared")
                .numbers("used", "")
                .numbers("there is", "")
                .words("")
                .words("");
        for (Shared limit : limits) {
            int digits = limit.unit().equals("h") ? 1 : 0;
            table.row(
                    limit.name(),
                    Numbers.fixed(limit.used(), digits),
                    Numbers.fixed(limit.most(), digits),
                    limit.unit(),
                    limit.says());
        }
        paper.table(table).gap();
    }

    private static void buys(Paper paper, List<Buy> buys) {
        if (buys.isEmpty()) {
            return;
        }
        TextTable table = TextTable.empty()
                .words("Product")
                .numbers("used", "")
                .numbers("from the shed", "")
                .numbers("worth", "$")
                .numbers("bought", "")
                .words("")
                .numbers("at", "$");
        for (Buy buy : buys) {
            table.row(
                    buy.product(),
                    Numbers.fixed(buy.used(), 1),
                    Numbers.fixed(buy.own(), 1),
                    buy.own() > 0 ? Numbers.fixed(buy.ownWorthUsd(), 0) : "",
                    Numbers.fixed(buy.bought(), 1),
                    buy.unit(),
                    buy.bought() > 0 ? Numbers.fixed(buy.priceUsd(), 2) : "");
        }
        paper.table(table).gap();
    }
}
