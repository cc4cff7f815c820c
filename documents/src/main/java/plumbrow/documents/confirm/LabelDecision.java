package plumbrow.documents.confirm;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * What a person decided about one value of one label. Only ever added to a book; of several about the same value the last
 * counts.
 *
 * @param sha256 checksum of the label's file: another revision is another label
 * @param property of the row, such as "high_rate"
 * @param value what enters the shelf, as text; empty where nothing does
 * @param instead what the workbook had and the person saw when he chose; empty where it had nothing
 * @param page of the label, from 1; 0 where the value stands nowhere
 * @param words the label's very words; empty where it stands nowhere
 */
public record LabelDecision(
        String sha256,
        RowName row,
        String property,
        Verdict verdict,
        String value,
        String instead,
        int page,
        String words,
        String who,
        Instant when) {

    /** Names the value among all of the label. */
    public String id() {
        return ProposedValue.id(row, property);
    }

    /** The same about another row. */
    LabelDecision about(RowName other) {
        return new LabelDecision(sha256, other, property, verdict, value, instead, page, words, who, when);
    }

    /** The day, by the clock of Greenwich as all of the book. */
    public LocalDate day() {
        return when.atZone(ZoneOffset.UTC).toLocalDate();
    }

    /** "confirmed by R. Voss on 2026-11-25". */
    public String words(boolean withValue) {
        return verdict.word() + (withValue && verdict.enters() ? " as " + value : "") + " by " + who + " on " + day();
    }
}
