package plumbrow.documents.binder;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/** A load card on one page, in type that is read in a cab. */
record LoadCardSheet(LoadCard card) implements Sheet {
    private static final int MOST_FINDINGS = 5;
    private static final List<Double> LETTERS_PT = List.of(11.0, 10.2, 9.4, 8.6);

    @Override
    public String name() {
        return "Load card, " + card.field() + ": " + String.join(" + ", card.products());
    }

    @Override
    public int sizes() {
        return LETTERS_PT.size();
    }

    @Override
    public String style() {
        return "loadcard";
    }

    @Override
    public void write(Html html, int size) {
        html.element("div", "foot", "Load card, " + card.field() + ", “" + card.program() + "”");
        html.markup("<div style=\"font-size:" + LETTERS_PT.get(size) + "pt\">");
        html.element("h1", card.field() + ": " + String.join(" + ", card.products()));
        html.element("p", "lead", card.sentence());
        html.element("p", "facts", facts());
        stops(html);
        amounts(html);
        sides(html);
        html.element("h2", "Gear, and who stays out");
        List<String> wear = card.wear();
        Integer reentry = card.reentryHours();
        html.element(
                "p",
                "Wear: " + (wear == null ? "unknown, read every label" : String.join(", ", wear))
                        + ". Nobody goes in for "
                        + (reentry == null ? "an unknown time: read the labels" : reentry + " h after the last load")
                        + ".");
        html.element(
                "p",
                "quiet",
                String.join(" ", StandingCautions.WHO_TO_CALL.subList(0, 3)) + " The label on the jug is the law.");
        html.close("div");
    }

    private String facts() {
        return (card.date() == null ? "no day planned" : "planned " + card.date()) + " · "
                + Numbers.fixed(card.acres(), 1) + " ac"
                + (card.machine() == null ? "" : " · " + card.machine())
                + (card.carrierGpa() == null ? "" : " · " + Numbers.plain(card.carrierGpa()) + " gal/ac")
                + (card.speedMph() == null ? "" : " · " + Numbers.plain(card.speedMph()) + " mph")
                + (card.applicator() == null ? "" : " · " + card.applicator());
    }

    private void stops(Html html) {
        List<LoadCard.Finding> shown =
                card.findings().stream().limit(MOST_FINDINGS).toList();
        if (shown.isEmpty()) {
            return;
        }
        html.open("ul", "stops");
        for (LoadCard.Finding finding : shown) {
            html.open("li")
                    .element("strong", finding.weight().word())
                    .words(" " + finding.says() + (finding.source().isEmpty() ? "" : " (" + finding.source() + ")"))
                    .close("li");
        }
        int more = card.findings().size() - shown.size();
        if (more > 0) {
            html.element("li", "and " + more + " more: see the desk");
        }
        html.close("ul");
    }

    private void amounts(Html html) {
        html.element("h2", card.granules().isEmpty() ? "Into the tank, in this order" : "Granules along the row");
        if (!card.granules().isEmpty()) {
            html.list(card.granules().stream()
                    .map(rate -> rate.product() + ": " + Numbers.fixed(rate.ozPer1000Feet(), 2)
                            + " oz on 1,000 ft of row, rows " + Numbers.plain(rate.rowSpacingIn()) + " in apart")
                    .toList());
            return;
        }
        LoadCard.Loads loads = card.loads();
        html.table(
                "amounts",
                List.of(
                        Column.words("", 5),
                        Column.words("product", 33),
                        Column.words(
                                loads == null
                                        ? "full load"
                                        : "full load, " + Numbers.fixed(loads.fullGal(), 0) + " gal",
                                25),
                        Column.words(
                                loads == null
                                        ? "last load"
                                        : "last load, " + Numbers.fixed(loads.lastGal(), 0) + " gal",
                                25),
                        Column.words("whole job", 12)));
        int number = 1;
        for (LoadCard.Line line : card.lines()) {
            html.open("tr")
                    .cell(String.valueOf(number++))
                    .open("td")
                    .element("strong", line.product())
                    .words(" " + line.rate()
                            + (line.formulation() == null ? ", formulation unknown" : ", " + line.formulation()))
                    .close("td")
                    .cell(amount(line.full()))
                    .cell(amount(line.last()))
                    .cell(line.totalNeed())
                    .close("tr");
        }
        html.endTable();
        if (loads != null) {
            html.element(
                    "p",
                    "quiet",
                    "Left at the end: " + Numbers.fixed(loads.leftGal(), 1) + " gal, which covers "
                            + Numbers.fixed(loads.leftAcres(), 2) + " ac. All loads alike: " + loads.evenLoads()
                            + " of "
                            + Numbers.fixed(loads.evenAcres(), 1) + " ac.");
        }
    }

    private static String amount(LoadCard.@Nullable Measured measured) {
        return measured == null ? "–" : measured.words();
    }

    private void sides(Html html) {
        if (!card.steps().isEmpty()) {
            html.element("h2", "How to mix");
            html.open("ol");
            card.steps().forEach(step -> html.element("li", step));
            html.close("ol");
            String conditioner = card.conditioner();
            if (conditioner != null) {
                html.element("p", conditioner);
            }
            String jar = card.lines().stream()
                    .filter(line -> !line.jar().isEmpty())
                    .map(line -> line.product() + " " + line.jar())
                    .reduce((one, other) -> one + ", " + other)
                    .orElse("");
            if (!jar.isEmpty()) {
                html.element(
                        "p", "Jar test, one quart of water: " + jar + "; in this order, let it stand 15 to 30 min.");
            }
        }
        if (!card.nozzles().isEmpty() || card.catching() != null) {
            html.element("h2", "Nozzles");
            card.nozzles().stream()
                    .filter(LoadCard.NozzleChoice::fits)
                    .limit(3)
                    .forEach(choice -> html.element(
                            "p",
                            choice.nozzle() + " at " + Numbers.fixed(choice.psi(), 0) + " psi: "
                                    + (choice.droplets() == null
                                            ? ""
                                            : choice.droplets().word() + ", ") + choice.why() + "."));
            if (card.nozzles().stream().noneMatch(LoadCard.NozzleChoice::fits)) {
                html.element("p", "No nozzle on file fits; see the desk.");
            }
            LoadCard.Catch caught = card.catching();
            if (caught != null) {
                html.element(
                        "p",
                        "One nozzle: " + Numbers.fixed(caught.ozPerMinute(), 1) + " fl oz in a minute; in "
                                + Numbers.fixed(caught.seconds(), 1) + " s (" + Numbers.fixed(caught.courseFt(), 0)
                                + " ft) as many fl oz as gal/ac. Replace one that is more than 10 % off.");
            }
        }
        if (!card.limits().says().isEmpty()) {
            html.element(
                    "p",
                    "All labels together: " + String.join("; ", card.limits().says()) + ".");
        }
        if (!card.cleanOut().isEmpty()) {
            html.element("h2", "Clean the tank afterwards");
            html.list(card.cleanOut());
        }
    }
}
