package plumbrow.app.command.said;

import plumbrow.app.papers.LabelWork;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.LabelValue;
import plumbrow.documents.paper.Quote;

/** A label's values in text. */
public final class LabelValueWords {
    private static final int LONGEST = 34;

    private LabelValueWords() {}

    public static String of(LabelWork work) {
        Paper paper = new Paper()
                .heading(work.values()
                                .product()
                                .orElse("Label " + work.values().label().paper().fileName()) + ": " + work.sentence())
                .gap();
        if (work.newer().isEmpty() && work.values().product().isEmpty()) {
            paper.prose(
                    "The season's shelf has no product of this name or registration number; what is confirmed enters"
                            + " once the workbook has it.");
        }
        TextTable table = TextTable.empty()
                .words("value")
                .words("label")
                .words("workbook")
                .words("checks see")
                .numbers("page", "")
                .words("how it stands");
        for (LabelValue value : work.values().values()) {
            table.row(
                    value.value().id(),
                    value.value().clear()
                            ? shown(value, value.value().proposed())
                            : shortly(value.value().ground().words()),
                    shown(value, value.workbook()),
                    shown(value, value.inForce()),
                    value.value().quote().map(Quote::page).map(String::valueOf).orElse(""),
                    value.decision()
                                    .map(LabelValueWords::said)
                                    .orElse(value.standing().word())
                            + (value.earlier().isPresent() && value.decision().isEmpty()
                                    ? "; decided on an earlier label"
                                    : ""));
        }
        return paper.table(table)
                .gap()
                .prose("The checks see only what somebody has confirmed, or what the workbook says.")
                .text();
    }

    private static String said(LabelDecision decision) {
        return decision.words(false);
    }

    private static String shown(LabelValue value, String text) {
        return text.isEmpty() ? "unknown" : shortly(value.value().shown(text));
    }

    /** A table must fit; the desk and --json have the whole. */
    private static String shortly(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…";
    }
}
