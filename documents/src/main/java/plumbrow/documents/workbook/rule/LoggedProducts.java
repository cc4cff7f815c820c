package plumbrow.documents.workbook.rule;

import java.time.LocalDate;
import java.util.Map;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.SeasonSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;

/** What was put on for this season's crop is on its shelf, so that its label is known; earlier it need not be. */
final class LoggedProducts implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Row> shelf = tables.index(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
        for (Row season : tables.rows(SeasonSheet.SHEET)) {
            Integer year = season.find(SeasonSheet.YEAR);
            for (Row line : tables.rows(LogSheet.SHEET)) {
                String product = line.find(LogSheet.PRODUCT);
                LocalDate date = line.find(LogSheet.DATE);
                if (year != null && product != null && date != null && !shelf.containsKey(product)) {
                    if (!date.isBefore(LocalDate.of(year - 1, 7, 1))) {
                        objections.at(line, LogSheet.PRODUCT, "a product of the sheet shelf");
                    }
                }
            }
        }
    }
}
