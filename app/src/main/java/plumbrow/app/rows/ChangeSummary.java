package plumbrow.app.rows;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.SeasonChange;

/**
 * A change of the season for programs.
 *
 * @param at the moment in UTC; null where nobody said
 * @param takesBack number of the change that it takes back; null for others
 * @param takenBack whether it stands taken back
 * @param says what it did, in a sentence
 */
public record ChangeSummary(
        int change,
        @Nullable String at,
        String who,
        String why,
        String way,
        @Nullable Integer takesBack,
        boolean takenBack,
        String says,
        List<Row> rows) {

    /** A row as it was and as it became; null where it was not there. */
    public record Row(
            String table,
            @Nullable Map<String, String> before,
            @Nullable Map<String, String> after) {}

    public static ChangeSummary of(SeasonChange change) {
        return new ChangeSummary(
                change.number(),
                change.at() == null ? null : change.at().toString(),
                change.who(),
                change.why(),
                change.way().word(),
                change.takesBack(),
                change.takenBack(),
                ChangeWords.of(change).title(),
                change.rows().stream()
                        .map(row -> new Row(row.table(), row.before(), row.after()))
                        .toList());
    }
}
