package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.AlsoIn;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/** Further counties of fields that cross a county line. */
public final class AlsoInSheet {
    public static final Column<String> FIELD = Words.field("the field");
    public static final Column<String> STATE = Column.of(
                    "state", Words.STATE, "state of the further county, postal code", "IA")
            .need();
    public static final Column<String> COUNTY = Column.of(
                    "county", new CountyName(), "a further county in which a part of it lies", "Pike")
            .need();

    public static final Sheet<AlsoIn> SHEET = Sheet.<AlsoIn>named(
                    "also_in",
                    "Fields across a county line: one row for each further county. Every county judges the field.",
                    season -> season.ground().alsoIn())
            .optional()
            .column(FIELD, AlsoIn::field)
            .column(STATE, AlsoIn::state)
            .column(COUNTY, AlsoIn::county)
            .once(FIELD, STATE, COUNTY)
            .build(row -> new AlsoIn(row.get(FIELD), row.get(STATE), row.get(COUNTY)));

    private AlsoInSheet() {}
}
