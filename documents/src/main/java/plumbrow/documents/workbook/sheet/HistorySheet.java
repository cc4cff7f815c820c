package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;

/** What the fields carried in earlier years. */
public final class HistorySheet {
    static final Column<String> FIELD =
            Column.of("field", TextKind.NAME, "the field", "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    public static final Column<Integer> YEAR = Column.of(
                    "year", new WholeKind(1950, 2100), "year of harvest, before this season's", "2025")
            .need();
    static final Column<String> CROP = Column.of(
                    "crop", TextKind.NAME, "what it carried; any crop, or fallow", "soybean")
            .need();
    static final Column<Double> YIELD = Column.of("yield_bu_ac", NumberKind.between(0, 1000), "what it brought", "58")
            .in("bu/ac")
            .blankMeans("unknown");
    static final Column<List<String>> HERBICIDE_TRAITS = Column.of(
                    "herbicide_traits",
                    new ListKind<>(TextKind.NAME, "herbicides parted by semicolons, or none"),
                    "herbicides its seed was tolerant of: what comes up of it tolerates them too",
                    "glyphosate")
            .blankMeans("unknown");

    public static final Sheet<CropYear> SHEET = Sheet.<CropYear>named(
                    "history", "What each field carried in earlier years; as many years as are known.", Season::history)
            .column(FIELD, CropYear::field)
            .column(YEAR, CropYear::year)
            .column(CROP, CropYear::crop)
            .column(YIELD, CropYear::yieldBuPerAcre)
            .column(HERBICIDE_TRAITS, CropYear::herbicideTraits)
            .once(FIELD, YEAR, CROP)
            .build(row -> new CropYear(
                    row.get(FIELD), row.get(YEAR), row.get(CROP), row.find(YIELD), row.find(HERBICIDE_TRAITS)));

    private HistorySheet() {}
}
