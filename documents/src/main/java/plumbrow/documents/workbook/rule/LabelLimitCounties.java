package plumbrow.documents.workbook.rule;

import plumbrow.advice.names.Near;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.LabelLimitSheet;
import plumbrow.science.reference.Counties;

/** A county to which a label keeps a product is one that the census knows, with its state. */
final class LabelLimitCounties implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        for (Row row : tables.rows(LabelLimitSheet.SHEET)) {
            LabelLimit.Kind kind = row.find(LabelLimitSheet.KIND);
            String value = row.find(LabelLimitSheet.VALUE);
            if (kind == LabelLimit.Kind.ONLY_COUNTIES && value != null) {
                for (String entry : value.split(";", -1)) {
                    if (!entry.isBlank()) {
                        check(row, entry.strip(), objections);
                    }
                }
            }
        }
    }

    private static void check(Row row, String entry, Objections objections) {
        int colon = entry.indexOf(':');
        String state = colon < 0 ? "" : entry.substring(0, colon).strip();
        String county = entry.substring(colon + 1).strip();
        if (state.isEmpty() || county.isEmpty()) {
            objections.at(row, LabelLimitSheet.VALUE, "counties with their states, such as IA: Adams, not " + entry);
        } else if (Counties.names(state).isEmpty()) {
            objections.at(row, LabelLimitSheet.VALUE, "the postal code of a state before the colon of " + entry);
        } else if (Counties.named(state, county).isEmpty()) {
            objections.at(
                    row,
                    LabelLimitSheet.VALUE,
                    "for " + entry + " a county of " + state + " as the census spells it"
                            + Near.to(county, Counties.names(state))
                                    .map(near -> "; did you mean " + near + "?")
                                    .orElse(""));
        }
    }
}
