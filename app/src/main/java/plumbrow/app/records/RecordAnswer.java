package plumbrow.app.records;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.records.Reentry;
import plumbrow.advice.season.Season;

/**
 * A record with what follows from it, for programs.
 *
 * @param start with its offset and zone, {@code end} the same; null where not written down
 * @param items by key, in the order of the form
 * @param check what the record duties of its day ask for and it lacks
 * @param reentry when the field may be entered, and what workers are told
 */
public record RecordAnswer(
        int number,
        boolean counts,
        String field,
        String date,
        @Nullable String start,
        @Nullable String end,
        double acres,
        double sharePct,
        List<RecordedProduct> products,
        Map<String, String> items,
        String writtenBy,
        String writtenAt,
        @Nullable Integer corrects,
        @Nullable String why,
        @Nullable Integer correctedBy,
        @Nullable Said voided,
        List<Integer> logLines,
        RecordCheck check,
        Reentry reentry,
        String reentrySays,
        List<String> display) {
    /** By whom and why a record is void. */
    public record Said(String who, String why, String when) {}

    public static RecordAnswer of(Season season, KeptRecord kept) {
        ApplicationRecord record = kept.record();
        Reentry reentry = Reentry.of(record);
        KeptRecord.Voided voided = kept.voided();
        return new RecordAnswer(
                kept.number(),
                kept.counts(),
                record.field(),
                record.date().toString(),
                record.start() == null ? null : record.start().toString(),
                record.end() == null ? null : record.end().toString(),
                record.acres(),
                record.sharePct(),
                record.products(),
                record.byKey(),
                kept.who(),
                kept.writtenAt().toString(),
                kept.corrects(),
                kept.why(),
                kept.correctedBy(),
                voided == null
                        ? null
                        : new Said(voided.who(), voided.why(), voided.when().toString()),
                kept.lines(),
                RecordCheck.of(season, kept),
                reentry,
                reentry.sentence(),
                reentry.display(record));
    }

    /** The moment until which nobody goes in, where it is known. */
    public @Nullable LocalDateTime allowedFrom() {
        return reentry.allowedFrom();
    }
}
