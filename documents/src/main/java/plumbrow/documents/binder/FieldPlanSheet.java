package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.documents.binder.Html.Column;
import plumbrow.documents.picture.FieldMapPicture;
import plumbrow.science.figure.Numbers;

/**
 * A field plan on one page. It is set smaller until it fits; in the smallest sizes what to do first is told up to a number and the rest
 * counted.
 */
record FieldPlanSheet(FieldPlan plan) implements Sheet {
    private static final List<Setting> SETTINGS = List.of(
            new Setting(10, 99, 99, 210),
            new Setting(9.2, 99, 99, 200),
            new Setting(8.4, 99, 99, 180),
            new Setting(7.8, 12, 3, 160),
            new Setting(7.2, 9, 2, 140),
            new Setting(6.8, 6, 1, 110));

    /**
     * How it is set.
     *
     * @param letterPt size of the letters [pt]
     * @param mostFirst lines of what comes first
     * @param mostDoubts lines of doubt
     * @param mapPx largest side of the map [px]
     */
    private record Setting(double letterPt, int mostFirst, int mostDoubts, int mapPx) {}

    @Override
    public String name() {
        return "Plan of " + plan.field().name();
    }

    @Override
    public int sizes() {
        return SETTINGS.size();
    }

    @Override
    public String style() {
        return "plan";
    }

    @Override
    public void write(Html html, int size) {
        Setting setting = SETTINGS.get(size);
        html.element(
                "div", "foot", "Plan of " + plan.field().name() + ", season " + plan.year() + ", as of " + plan.asOf());
        html.markup("<div style=\"font-size:" + setting.letterPt + "pt\">");
        html.element("h1", plan.field().name());
        html.element("p", "quiet", place());
        html.element("p", "lead", plan.sentence());
        if (!plan.steps().isEmpty()) {
            steps(html);
        }
        keeps(html, setting);
        list(html, "Money", plan.moneySays(), 9);
        list(html, "In doubt", plan.doubts(), setting.mostDoubts);
        first(html, setting);
        if (!plan.annex().isEmpty()) {
            html.element("p", "quiet", "Left to the annex: " + plan.annex() + ".");
        }
        html.element(
                "p",
                "caution",
                "The current label is the law: read it on the container. "
                        + String.join(" ", StandingCautions.WHO_TO_CALL.subList(0, 3)));
        html.close("div");
    }

    private String place() {
        return plan.field().farm() + (plan.grower().isEmpty() ? "" : ", " + plan.grower()) + ". "
                + Numbers.fixed(plan.field().acres(), 1) + " ac of "
                + plan.field().crop().word() + ", " + plan.field().county() + " County, "
                + plan.field().state() + ". "
                + (plan.program() == null
                        ? ""
                        : "“" + plan.program() + "”, " + plan.basis().word() + ": ")
                + plan.standing().word() + ".";
    }

    private void steps(Html html) {
        html.table(
                "steps",
                List.of(Column.words("day", 13), Column.words("what", 40), Column.words("how and who stays out", 47)));
        for (FieldPlan.Step step : plan.steps()) {
            html.open("tr").open("td").element("b", step.when());
            if (!step.waitsFor().isEmpty()) {
                html.markup("<br/>").words(step.waitsFor());
            }
            html.close("td").open("td").element("b", step.what());
            html.words(" " + Numbers.fixed(step.acres(), 1) + " ac"
                    + (step.machine() == null ? "" : ", " + step.machine()));
            for (FieldPlan.Line line : step.lines()) {
                html.markup("<br/>").words(line.product() + " ").element("b", line.rate());
            }
            if (!step.window().isEmpty()) {
                html.markup("<br/>").element("span", "quiet", capital(step.window()) + ".");
            }
            html.close("td").open("td");
            html.markup(how(step).stream()
                    .map(line -> new Html().words(capital(line) + ".").toString())
                    .collect(Collectors.joining("<br/>")));
            html.close("td").close("tr");
        }
        html.endTable();
    }

    private static List<String> how(FieldPlan.Step step) {
        FieldPlan.Put put = step.put();
        List<String> lines = new ArrayList<>();
        if (put != null) {
            if (step.done() == null) {
                lines.add(put.spray());
                lines.add(put.gear());
            }
            lines.add(put.entry());
            lines.add(put.harvest());
        }
        lines.removeIf(String::isEmpty);
        return lines;
    }

    private void keeps(Html html, Setting setting) {
        if (plan.program() == null) {
            return;
        }
        html.markup("<table class=\"ground\"><tr><td class=\"says\">");
        html.element("h2", "Distances to keep");
        List<String> lines = new ArrayList<>();
        plan.keeps().forEach(keep -> lines.add(capital(keep.words()) + "."));
        if (plan.unseen()) {
            lines.add(FieldPlan.UNSEEN);
        }
        if (lines.isEmpty()) {
            html.element("p", "No label’s distance takes any of this field.");
        } else {
            html.list(lines);
        }
        html.element("p", "quiet", FieldMapPicture.key(plan) + " A drawing is no survey: pace it off.");
        html.markup("</td><td class=\"map\">");
        FieldMapPicture.svg(plan, setting.mapPx, setting.mapPx * 0.75)
                .ifPresentOrElse(
                        svg -> html.picture(svg, FieldMapPicture.says(plan)),
                        () -> html.element("p", "quiet", "No outline is on file: draw the field on its map."));
        html.markup("</td></tr></table>");
    }

    private static void list(Html html, String head, List<String> lines, int most) {
        if (!lines.isEmpty()) {
            html.element("h2", head).list(lines.subList(0, Math.min(most, lines.size())));
        }
    }

    private void first(Html html, Setting setting) {
        if (plan.first().isEmpty()) {
            return;
        }
        html.element("h2", "First");
        int left = setting.mostFirst;
        for (MatterKind kind : MatterKind.values()) {
            List<String> lines = plan.first(kind);
            List<String> told = lines.subList(0, Math.min(left, lines.size()));
            left -= told.size();
            if (!told.isEmpty()) {
                html.element("h3", kind.words()).list(told);
            }
        }
        int more = plan.first().size() - setting.mostFirst;
        if (more > 0) {
            html.element("p", "And " + more + " more: see the desk or the annex.");
        }
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
