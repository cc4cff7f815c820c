package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.List;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;

/** The season itself, in one row. */
public final class SeasonSheet {
    public static final Column<Integer> YEAR = Column.of("year", new WholeKind(1990, 2100), "year of harvest", "2026")
            .need();
    public static final Column<LocalDate> AS_OF = Column.of(
                    "as_of",
                    new DateKind(),
                    "the day these assumptions were drawn up; advice is as of this day",
                    "2026-02-16")
            .need();
    static final Column<String> ADVISER = Column.of(
                    "adviser", TextKind.NAME, "who gives the advice, as it is printed on papers", "R. Alder")
            .need();

    public static final Sheet<Line> SHEET = Sheet.<Line>named(
                    "season",
                    "The season this workbook is for: one row.",
                    season -> List.of(new Line(season.year(), season.asOf(), season.adviser())))
            .rows(1, 1)
            .column(YEAR, Line::year)
            .column(AS_OF, Line::asOf)
            .column(ADVISER, Line::adviser)
            .build(row -> new Line(row.get(YEAR), row.get(AS_OF), row.get(ADVISER)));

    private SeasonSheet() {}

    /** The row of this sheet. */
    public record Line(int year, LocalDate asOf, String adviser) {}
}
