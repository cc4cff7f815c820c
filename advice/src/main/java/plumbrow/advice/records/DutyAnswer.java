package plumbrow.advice.records;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one record duty asks of one record.
 *
 * @param state "US" for federal law
 * @param who whom it binds and about what: "commercial applicators, every pesticide"
 * @param rule where it stands
 * @param status how well the text used is backed
 * @param applies whether it binds this record
 * @param why why it applies, or what is missing to tell
 * @param missing what the record lacks of its list, in words; empty where it does not apply
 * @param wholeList whether the whole list of the rule was seen; else the record can't be told to be complete
 * @param writeBy by when the record must be written, in words
 * @param due the same as a moment by the clock of the field; null where none is stated or can be told
 * @param written whether it was written by then; null where not known
 * @param keepUntil day until which it must be kept; null where not stated
 * @param note what else the rule says
 */
public record DutyAnswer(
        String state,
        String who,
        String rule,
        String status,
        Applies applies,
        String why,
        List<String> missing,
        boolean wholeList,
        String writeBy,
        @Nullable LocalDateTime due,
        @Nullable Boolean written,
        @Nullable LocalDate keepUntil,
        String note) {
    public DutyAnswer {
        missing = List.copyOf(missing);
    }

    /** Whether a duty binds a record. */
    public enum Applies {
        YES("applies"),
        CANNOT_TELL("cannot tell"),
        /** No duty was found; not that there is none. */
        NONE_FOUND("none found");

        private final String word;

        Applies(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** "complete", "missing: time of start", "list not fully known; missing …": never complete where the list was not seen whole. */
    public String words() {
        if (applies == Applies.NONE_FOUND) {
            return "none found in the sources used";
        }
        String lacks = missing.isEmpty() ? "" : "missing: " + String.join(", ", missing);
        return wholeList
                ? missing.isEmpty() ? "complete" : lacks
                : "list not fully known" + (missing.isEmpty() ? "; nothing of what was seen is missing" : "; " + lacks);
    }

    /** Whether it lacks something that the rule asks for. */
    public boolean incomplete() {
        return !missing.isEmpty();
    }
}
