package plumbrow.documents.workbook.form;

import java.util.List;

/** The values of all sheets of one season, wherever they were read. */
public interface SheetValues {
    /** The values of a sheet, in order; none where nothing of it is known. */
    <R> List<R> values(Sheet<R> sheet);
}
