package plumbrow.documents.confirm;

import java.util.Optional;
import plumbrow.documents.label.LabelReading;

/**
 * A value of a label with what was decided about it and what the workbook says.
 *
 * @param workbook the workbook's value as text; empty where it has none
 * @param decision the last word on it, on this very label; empty where there is none or it was taken back
 * @param earlier the last word on the same value of an earlier label of the product
 */
public record LabelValue(
        ProposedValue value, String workbook, Optional<LabelDecision> decision, Optional<LabelDecision> earlier) {

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
            LabelDecision last = decision.get();
            boolean changed = last.verdict().enters() && !ConfirmedShelf.enters(last, workbook);
            boolean kept = last.verdict() == Verdict.WORKBOOK && !workbook.equals(last.instead());
            return changed || kept ? Standing.DIFFERS_AGAIN : Standing.DECIDED;
        }
        if (value.clear()) {
            return workbook.isEmpty() || workbook.equals(value.proposed()) ? Standing.OPEN : Standing.DIFFERS;
        }
        return value.ground() instanceof LabelReading.NotStated ? Standing.NOT_FOUND : Standing.OPEN;
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

    /** What the gates see now; empty for unknown. */
    public String inForce() {
        return decision.filter(last -> ConfirmedShelf.enters(last, workbook))
                .map(LabelDecision::value)
                .orElse(workbook);
    }
}
