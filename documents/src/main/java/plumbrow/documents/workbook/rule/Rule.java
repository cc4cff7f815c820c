package plumbrow.documents.workbook.rule;

import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Tables;

/** Something that must hold between rows or sheets. Cells that could not be read are passed over. */
@FunctionalInterface
interface Rule {
    void check(Tables tables, Objections objections);
}
