package plumbrow.app.rows;

import java.util.List;
import plumbrow.app.book.Book;

/**
 * What a workbook would change, for programs.
 *
 * @param replaces whether the book holds a season of that year
 * @param gone what was changed in the book since a workbook was last brought in and would not be as it is
 */
public record IncomingSummary(int year, boolean replaces, List<ChangeSummary.Row> rows, List<String> gone) {
    public static IncomingSummary of(int year, Book.Incoming coming) {
        return new IncomingSummary(
                year,
                coming.replaces(),
                coming.rows().stream()
                        .map(row -> new ChangeSummary.Row(row.table(), row.before(), row.after()))
                        .toList(),
                coming.gone());
    }
}
