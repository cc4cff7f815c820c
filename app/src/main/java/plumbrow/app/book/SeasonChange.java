package plumbrow.app.book;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.workbook.edit.RowChange;

/**
 * A change of a season as it was written down.
 *
 * @param number its number, from 1; later ones have higher ones
 * @param season harvest year
 * @param at the moment; null where nobody said
 * @param who who made it
 * @param why the reason, may be empty
 * @param way by which door it came
 * @param takesBack the change that an undo took back, or the undo that a redo took back; null for others
 * @param takenBack whether it was taken back and stands so
 * @param rows the rows as they were and as they became; none for a season that came in where there was none
 */
public record SeasonChange(
        int number,
        int season,
        @Nullable Instant at,
        String who,
        String why,
        By.Way way,
        @Nullable Integer takesBack,
        boolean takenBack,
        List<RowChange> rows) {
    public SeasonChange {
        rows = List.copyOf(rows);
    }

    /** Whether it began the season here, not out of a workbook. */
    public boolean began() {
        return rows.isEmpty() && takesBack == null && way != By.Way.WORKBOOK;
    }
}
