package plumbrow.app.command.said;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.documents.binder.StandingCautions;
import plumbrow.science.figure.Numbers;

/** The load card in words. */
public final class MixWords {
    private MixWords() {}

    public static String of(LoadCard card) {
        Paper paper = new Paper();
        paper.heading(card.field() + ", " + String.join(" + ", card.products()) + ": " + card.sentence());
        card.findings()
                .forEach(finding -> paper.prose(
                        "  " + finding.weight().word() + "  ",
                        finding.says() + (finding.source().isEmpty() ? "" : " (" + finding.source() + ")")));
        if (!card.lines().isEmpty() && card.granules().isEmpty()) {
            paper.heading("Into the tank, in this order");
            TextTable table = TextTable.empty()
                    .words("product")
                    .words("rate")
                    .words("full load")
                    .words("last load")
                    .words("whole job")
                    .words("stock")
                    .words("jar, 1 qt");
            card.lines()
                    .forEach(line -> table.row(
                            line.product(),
                            line.rate(),
                            amount(line.full()),
                            amount(line.last()),
                            line.totalNeed(),
                            line.stock(),
                            line.jar()));
            paper.table(table);
        }
        LoadCard.Loads loads = card.loads();
        if (loads != null) {
            paper.gap()
                    .prose("Left at the end: " + Numbers.fixed(loads.leftGal(), 1) + " gal, which covers "
                            + Numbers.fixed(loads.leftAcres(), 2) + " ac. All loads alike: " + loads.evenLoads()
                            + " of "
                            + Numbers.fixed(loads.evenAcres(), 1) + " ac.");
        }
        String conditioner = card.conditioner();
        if (conditioner != null) {
            paper.gap().prose(conditioner);
        }
        if (!card.granules().isEmpty()) {
            paper.heading("Along the row");
            card.granules()
                    .forEach(rate -> paper.prose(
                            "  ",
                            rate.product() + ": " + Numbers.fixed(rate.ozPer1000Feet(), 2)
                                    + " oz on 1,000 ft of row, rows " + Numbers.plain(rate.rowSpacingIn())
                                    + " in apart"));
        }
        if (!card.steps().isEmpty()) {
            paper.heading("How to mix");
            int number = 1;
            for (String step : card.steps()) {
                paper.prose("  " + number++ + "  ", step);
            }
        }
        nozzles(paper, card);
        if (!card.cleanOut().isEmpty()) {
            paper.heading("Clean the tank afterwards");
            card.cleanOut().forEach(line -> paper.prose("  ", line));
        }
        List<String> wear = card.wear();
        Integer reentry = card.reentryHours();
        paper.heading("Gear, and who stays out");
        paper.prose("  ", "Wear: " + (wear == null ? "unknown, read every label" : String.join(", ", wear)) + ".");
        paper.prose(
                "  ",
                "Nobody goes in for "
                        + (reentry == null ? "an unknown time: read the labels" : reentry + " h after the last load")
                        + ".");
        paper.heading("Who to call");
        StandingCautions.WHO_TO_CALL.forEach(line -> paper.prose("  ", line));
        return paper.text();
    }

    private static void nozzles(Paper paper, LoadCard card) {
        if (card.nozzles().isEmpty() && card.limits().says().isEmpty()) {
            return;
        }
        paper.heading("Nozzles");
        if (!card.limits().says().isEmpty()) {
            paper.prose(
                    "  ",
                    "All labels together: " + String.join("; ", card.limits().says()) + ".");
        }
        card.nozzles()
                .forEach(choice -> paper.prose(
                        choice.fits() ? "  fits  " : "  no    ",
                        choice.nozzle() + ", " + Numbers.fixed(choice.psi(), 0) + " psi"
                                + (choice.droplets() == null
                                        ? ""
                                        : ", " + choice.droplets().word()) + ": " + choice.why()));
        LoadCard.Catch caught = card.catching();
        if (caught != null) {
            paper.prose(
                    "  ",
                    "Catch from one nozzle: " + Numbers.fixed(caught.ozPerMinute(), 1) + " fl oz in a minute. Over "
                            + Numbers.fixed(caught.courseFt(), 0) + " ft, " + Numbers.fixed(caught.seconds(), 1)
                            + " s, fluid ounces are gal/ac.");
        }
    }

    private static String amount(LoadCard.@Nullable Measured measured) {
        return measured == null ? "–" : measured.words();
    }
}
