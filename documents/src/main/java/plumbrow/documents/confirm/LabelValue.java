package plumbrow.documents.confirm;

import java.util.Optional;
import plumbrow.documents.label.LabelReading;

/**
 * A value of a label with what was decided about it and what the workbook says.
 *
 * @param workbook the workbook's value as text; empty where it has none
 * @param inForce what the checks see now, as the checks themselves find it; empty for unknown
 * @param decision the last word on it, on this very label; empty where there is none or it was taken back
 * @param earlier the last word on the same value of an earlier label of the product
 */
public record LabelValue(
        ProposedValue value,
        String workbook,
        String inForce,
        Optional<LabelDecision> decision,
        Optional<LabelDecision> earlier) {

    /** How a value stands. */
    public enum Standing {
        OPEN("open"),
        /** Both the label and the workbook have one, and they aren't the same. */
        DIFFERS("differs from the workbook"),
        /** It was confirmed, but the workbook has since got another one. */
        DIFFERS_AGAIN("the workbook was changed since"),
        DECIDED("decided"),
        /** The label, as far as it was read, doesn't speak of it. */
        NOT_FOUND("not found on the label");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Standing standing() {
        if (decision.isPresent()) {
            return settled(decision.get(), workbook) ? Standing.DECIDED : Standing.DIFFERS_AGAIN;
        }
        if (value.clear()) {
            boolean against = !workbook.isEmpty()
                    && !TwoWords.same(value.row().table(), value.property(), workbook, value.proposed());
            return against ? Standing.DIFFERS : Standing.OPEN;
        }
        return value.ground() instanceof LabelReading.NotStated ? Standing.NOT_FOUND : Standing.OPEN;
    }

    /** Whether a decision still settles the value beside what the workbook has now. */
    static boolean settled(LabelDecision last, String workbook) {
        return last.verdict().enters()
                ? ConfirmedShelf.enters(last, workbook)
                : last.verdict() != Verdict.WORKBOOK
                        || TwoWords.same(last.row().table(), last.property(), workbook, last.instead());
    }

    /** Whether somebody has to look at the page. */
    public boolean waits() {
        return switch (standing()) {
            case OPEN, DIFFERS, DIFFERS_AGAIN -> true;
            case DECIDED, NOT_FOUND -> false;
        };
    }

    /** Whether it may be confirmed together with the others of its row: what it says is clear and nothing speaks against it. */
    public boolean plain() {
        return standing() == Standing.OPEN && value.clear();
    }
}
