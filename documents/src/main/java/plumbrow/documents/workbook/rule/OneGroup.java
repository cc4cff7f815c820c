package plumbrow.documents.workbook.rule;

import java.util.Map;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.TraitSheet;

/** A trait protein is of one group, whatever insect it is aimed at. */
final class OneGroup implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Row> first = tables.index(TraitSheet.SHEET, TraitSheet.TRAIT);
        for (Row row : tables.rows(TraitSheet.SHEET)) {
            Row other = first.get(String.valueOf(row.find(TraitSheet.TRAIT)));
            String group = row.find(TraitSheet.GROUP);
            String before = other == null ? null : other.find(TraitSheet.GROUP);
            if (other != null && group != null && before != null && !group.equals(before)) {
                objections.at(row, TraitSheet.GROUP, before + ", the group of this trait in row " + other.number());
            }
        }
    }
}
