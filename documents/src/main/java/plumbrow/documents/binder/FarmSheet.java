package plumbrow.documents.binder;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.fieldplan.FarmPage;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/**
 * The farm page: fields, what they come to, what is to be bought, the days by week.
 *
 * @param sheets page of each field's plan among the sheets of the packet, in the order of the rows; empty where the page stands alone
 * @param recordHead head of the book's record; empty where the season comes from no book
 */
record FarmSheet(FarmPage page, List<Integer> sheets, String recordHead) implements Sheet {
    private static final List<Double> LETTERS_PT = List.of(9.5, 8.8, 8.1, 7.4);

    @Override
    public String name() {
        return page.farm();
    }

    @Override
    public int sizes() {
        return LETTERS_PT.size();
    }

    /** A farm that no page holds is set to be read, over as many as it takes. */
    @Override
    public int sizeOver() {
        return 1;
    }

    @Override
    public String style() {
        return "farmpage";
    }

    @Override
    public void write(Html html, int size) {
        html.element("div", "foot", page.farm() + ", season " + page.year() + ", as of " + page.asOf());
        html.markup("<div style=\"font-size:" + LETTERS_PT.get(size) + "pt\">");
        html.element("h1", page.farm());
        html.element(
                "p",
                "quiet",
                (page.grower().isEmpty() ? "" : page.grower() + ". ") + "Season " + page.year() + ", as of "
                        + page.asOf() + (page.adviser().isBlank() ? "" : ", advised by " + page.adviser()) + ".");
        page.totals().forEach(total -> html.element("p", "lead", total));
        rows(html);
        weeks(html);
        purchases(html);
        html.element(
                "p",
                "caution",
                StandingCautions.WHO_DECIDES.get(0) + " " + StandingCautions.WHO_DECIDES.get(1) + " "
                        + String.join(" ", StandingCautions.WHO_TO_CALL));
        if (!recordHead.isEmpty()) {
            html.element(
                    "p",
                    "quiet",
                    "Head of the book's record: " + recordHead
                            + ". With it, plumbrow book check --head shows later whether the record up to this day is"
                            + " still the same.");
        }
        html.close("div");
    }

    private void rows(Html html) {
        html.element("h2", "Fields");
        html.table(
                "plain",
                List.of(
                        Column.words("field", 19),
                        Column.figure("area, ac", 8),
                        Column.words("crop", 9),
                        Column.words("program", 26),
                        Column.figure("cost, $", 10),
                        Column.figure("ahead of baseline, $", 11),
                        Column.words("wants", 12),
                        Column.figure("page", 5)));
        for (int i = 0; i < page.rows().size(); i++) {
            FarmPage.Row row = page.rows().get(i);
            html.open("tr")
                    .element("td", "strong", row.field())
                    .figure(Numbers.fixed(row.acres(), 1))
                    .cell(row.crop());
            if (row.program() == null) {
                html.element("td", "unknown", FieldPlan.Basis.NONE.word());
            } else {
                html.cell(row.program() + (row.basis() == FieldPlan.Basis.CHOSEN ? "" : " (not decided)"));
            }
            html.figure(usd(row.costUsd())).figure(usd(row.gainUsd())).cell(row.wants());
            html.open("td", "figure");
            if (i < sheets.size()) {
                html.markup("<a class=\"page\" title=\"the page of this field\" href=\"#" + Packet.id(sheets.get(i))
                        + "\"></a>");
            }
            html.close("td").close("tr");
        }
        html.endTable();
    }

    private static String usd(@Nullable Double usd) {
        return usd == null ? "unknown" : Numbers.fixed(usd, 0);
    }

    private void purchases(Html html) {
        html.element("h2", "To buy");
        if (page.purchases().isEmpty()) {
            html.element("p", "Nothing that is bought is left to put on.");
        } else {
            html.table(
                    "plain",
                    List.of(
                            Column.words("product", 20),
                            Column.figure("fields take", 13),
                            Column.figure("in the shed", 10),
                            Column.words("buy", 18),
                            Column.figure("price, $", 12),
                            Column.figure("cost, $", 9),
                            Column.words("mind", 18)));
            for (FarmPage.Purchase line : page.purchases()) {
                Double price = line.priceUsd();
                html.open("tr")
                        .element("td", "strong", line.product())
                        .figure(line.takes())
                        .figure(line.shed())
                        .cell(line.buy())
                        .figure(price == null ? "" : Numbers.fixed(price, 2) + "/" + line.pricedPer())
                        .figure(line.costUsd() == null ? "" : Numbers.fixed(line.costUsd(), 0))
                        .cell(line.says())
                        .close("tr");
            }
            html.endTable();
        }
        page.purchasesSay().forEach(says -> html.element("p", says));
    }

    private void weeks(Html html) {
        html.element("h2", "Days by week");
        if (page.weeks().isEmpty()) {
            html.element("p", "No work is planned that the log does not say is done.");
            return;
        }
        html.table(
                "plain",
                List.of(
                        Column.words("day", 14),
                        Column.words("work", 31),
                        Column.words("fields", 31),
                        Column.figure("ac", 8),
                        Column.words("with", 16)));
        for (FarmPage.Week week : page.weeks()) {
            html.markup("<tr class=\"week\"><td colspan=\"5\">").element("b", week.name());
            html.words(week.machines().isEmpty() ? "" : " · " + week.machines()).markup("</td></tr>");
            for (FarmPage.Job job : week.jobs()) {
                html.open("tr")
                        .cell(job.when())
                        .element("td", "strong", job.what())
                        .cell(String.join(", ", job.fields()))
                        .figure(Numbers.fixed(job.acres(), 1))
                        .cell(job.machine())
                        .close("tr");
            }
        }
        html.endTable();
    }
}
