package plumbrow.documents.workbook.form;

/** What must hold between the cells of one row. */
@FunctionalInterface
public interface RowCheck {
    void check(Row row, Objections objections);
}
