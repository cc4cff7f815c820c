package plumbrow.advice.records;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An application record as the book keeps it. It is never changed: one that was wrong is corrected by a further record or void, with who
 * and why, and both stay.
 *
 * @param number by which others refer to it
 * @param lines numbers of its lines of the log, in the order of its products
 * @param who who wrote it down
 * @param writtenAt when
 * @param corrects number of the record that it corrects, {@code why} the reason; null where it corrects none
 * @param correctedBy number of the record that corrects it; null where none does
 * @param voided that it never was so, by whom and why; null where nobody said so
 */
public record KeptRecord(
        int number,
        ApplicationRecord record,
        List<Integer> lines,
        String who,
        Instant writtenAt,
        @Nullable Integer corrects,
        @Nullable String why,
        @Nullable Integer correctedBy,
        @Nullable Voided voided) {
    /** Says that a record was wrong altogether. */
    public record Voided(String who, String why, Instant when) {}

    public KeptRecord {
        lines = List.copyOf(lines);
    }

    /** Whether it counts: neither corrected nor void. */
    public boolean counts() {
        return correctedBy == null && voided == null;
    }

    /** The records among them that count. */
    public static List<ApplicationRecord> counting(List<KeptRecord> all) {
        return all.stream().filter(KeptRecord::counts).map(KeptRecord::record).toList();
    }
}
