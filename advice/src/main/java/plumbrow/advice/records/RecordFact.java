package plumbrow.advice.records;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;

/**
 * What a record says of one thing, as people read it: the same on screen, terminal and paper.
 *
 * @param group under which heading it stands
 */
public record RecordFact(String group, String label, String text) {
    /** What a record says, beside its products, in the order of the form. */
    public static List<RecordFact> of(ApplicationRecord record) {
        List<RecordFact> facts = new ArrayList<>();
        facts.add(new RecordFact("When", "Day", record.date().toString()));
        facts.add(new RecordFact("When", "Start", moment(record.start())));
        facts.add(new RecordFact("When", "End", moment(record.end())));
        facts.add(new RecordFact(
                "When",
                "Acres treated",
                Numbers.fixed(record.acres(), 2) + " ac, " + Numbers.fixed(record.sharePct(), 0) + " % of the field"));
        for (RecordItem item : RecordItem.values()) {
            record.item(item)
                    .ifPresent(text -> facts.add(new RecordFact(item.group().title(), label(item), text + unit(item))));
        }
        return List.copyOf(facts);
    }

    private static String unit(RecordItem item) {
        return item.form().unit().isEmpty() ? "" : " " + item.form().unit();
    }

    /** A label that can stand alone. */
    public static String label(RecordItem item) {
        return switch (item) {
            case WIND_FROM_START -> "Wind at the start from";
            case WIND_FROM_END -> "Wind at the end from";
            default -> item.label();
        };
    }

    /** "2026-05-14 14:10, America/Chicago", or that it was not written down. */
    public static String moment(@Nullable ZonedDateTime moment) {
        return moment == null
                ? "not written down"
                : RecordCheck.moment(moment.toLocalDateTime()) + ", "
                        + moment.getZone().getId();
    }

    /** "3 lb/ac; 120 lb in all". */
    public static String amounts(RecordedProduct one) {
        return Numbers.read(one.rate().value(), one.rate().unit().symbol()) + "/ac; "
                + Numbers.read(one.total().value(), one.total().unit().symbol()) + " in all";
    }

    /** What became of a record: that it counts, by which it is corrected, or that it is void, by whom and why. */
    public static String state(KeptRecord kept) {
        KeptRecord.Voided voided = kept.voided();
        return voided != null
                ? "void: " + voided.why() + " (" + voided.who() + ")"
                : kept.correctedBy() != null ? "corrected by record " + kept.correctedBy() : "counts";
    }
}
