package plumbrow.documents.workbook.rule;

import plumbrow.advice.field.Boundary;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.land.TypedPlace;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.FieldSheet;

/** A field lies in the county that is written down for it, as far as the census map can tell. */
final class CountiesFit implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        for (Row row : tables.rows(FieldSheet.SHEET)) {
            Boundary boundary = row.find(FieldSheet.BOUNDARY);
            String state = row.find(FieldSheet.STATE);
            String county = row.find(FieldSheet.COUNTY);
            if (boundary != null && state != null && county != null) {
                TypedPlace place = TypedPlace.of(state, county, CountyFit.of(boundary));
                if (place.verdict().wrong()) {
                    objections.at(row, FieldSheet.COUNTY, place.says());
                }
            }
        }
    }
}
