package plumbrow.documents.workbook.file;

import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Sheet;

/** Objections to sheets of a size that no season has. */
final class TooMany {
    private TooMany() {}

    static void rows(String place, Objections objections) {
        objections.at(
                place,
                Sheet.MOST_ROWS + 2,
                "",
                "more than %,d rows".formatted(Sheet.MOST_ROWS),
                "at most %,d rows under the column names".formatted(Sheet.MOST_ROWS));
    }

    static void cells(String place, Objections objections) {
        objections.at(place, 0, "", "more than %,d filled cells".formatted(Limits.CELLS), "a workbook of one season");
    }
}
