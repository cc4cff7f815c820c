package plumbrow.documents.binder;

import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.season.Season;

/**
 * Records as they go to somebody who asks for them.
 *
 * @param season by whose labels and fields they are held to the record duties
 * @param records in the order of writing, those that no longer count among them
 * @param asked which were asked for, in words
 * @param head head of the record's chain at that moment, as {@code book check --head} takes it
 * @param day on which it was made
 */
public record RecordExport(Season season, List<KeptRecord> records, String asked, String head, LocalDate day) {
    public RecordExport {
        records = List.copyOf(records);
    }

    /** Whom to ask about it. */
    String ask() {
        return season.adviser();
    }

    /** How it can be told later that nothing was changed. */
    String anchor() {
        return "Head of the record: " + head + ". The command: plumbrow book check --head " + head
                + " says whether the book still went through it.";
    }
}
