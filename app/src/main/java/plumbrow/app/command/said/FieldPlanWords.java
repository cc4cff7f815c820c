package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.documents.binder.StandingCautions;
import plumbrow.science.figure.Numbers;

/** A field plan in words. */
public final class FieldPlanWords {
    private FieldPlanWords() {}

    public static String of(FieldPlan plan) {
        Paper paper = new Paper();
        paper.heading(plan.field().name() + ": " + plan.sentence());
        paper.prose(plan.field().farm() + ", " + plan.grower() + "; "
                + Numbers.fixed(plan.field().acres(), 1) + " ac of "
                + plan.field().crop().word() + ", "
                + plan.field().county() + " County, " + plan.field().state() + ".");
        if (!plan.steps().isEmpty()) {
            paper.heading("What to do");
            plan.steps().forEach(step -> step(paper, step));
        }
        if (!plan.keeps().isEmpty() || plan.unseen()) {
            paper.heading("Distances to keep");
            plan.keeps().forEach(keep -> paper.prose("  ", keep.words()));
            if (plan.unseen()) {
                paper.prose("  ", FieldPlan.UNSEEN);
            }
        }
        list(paper, "Money", plan.moneySays());
        list(paper, "In doubt", plan.doubts());
        for (MatterKind kind : MatterKind.values()) {
            list(paper, kind.words(), plan.first(kind));
        }
        if (!plan.annex().isEmpty()) {
            paper.gap().prose("Left to the annex: " + plan.annex() + ".");
        }
        list(paper, "Call", StandingCautions.WHO_TO_CALL.subList(0, 3));
        paper.gap().prose("The current label is the law. Read it on the container before anything is mixed or put on.");
        return paper.text();
    }

    private static void list(Paper paper, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            paper.heading(heading);
            lines.forEach(line -> paper.prose("  ", line));
        }
    }

    private static void step(Paper paper, FieldPlan.Step step) {
        paper.prose(
                "  " + step.when() + "  ",
                step.what() + ", " + Numbers.fixed(step.acres(), 1) + " ac"
                        + (step.machine() == null ? "" : ", " + step.machine())
                        + (step.waitsFor().isEmpty() ? "" : "; " + step.waitsFor()));
        if (!step.lines().isEmpty()) {
            paper.prose(
                    "      ",
                    step.lines().stream()
                            .map(line -> line.product() + " " + line.rate())
                            .collect(Collectors.joining(", ")));
        }
        FieldPlan.Put put = step.put();
        List<String> more = new ArrayList<>();
        if (!step.window().isEmpty()) {
            more.add("window " + step.window());
        }
        if (put != null) {
            more.add(put.spray());
            more.add(put.gear());
            more.add(put.entry());
            more.add(put.harvest());
        }
        more.stream().filter(line -> !line.isEmpty()).forEach(line -> paper.prose("      ", line));
    }
}
