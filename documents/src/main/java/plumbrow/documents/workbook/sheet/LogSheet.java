package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.program.Done;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** What was really put on the fields. */
public final class LogSheet {
    static final Column<String> FIELD = Words.field("the field");
    public static final Column<LocalDate> DATE = Column.of(
                    "date", new DateKind(), "the day it was applied", "2026-05-04")
            .need();
    public static final Column<String> PRODUCT = Column.of(
                    "product",
                    TextKind.NAME,
                    "the product; one of the sheet shelf, unless it was put on before the season",
                    "Ridge 12")
            .need();
    static final Column<Double> RATE = Column.of("rate", RateCells.RATE, "how much of it on each acre treated", "6")
            .in("rate_unit")
            .need();
    public static final Column<RateUnit> RATE_UNIT = Column.of(
                    "rate_unit", new RateUnitKind(), "unit of rate", "fl oz/ac")
            .need();
    static final Column<Double> SHARE = Column.of(
                    "share_pct", NumberKind.above(0).upTo(100), "share of the field's acres that was treated", "100")
            .in("%")
            .otherwise(100.0);
    public static final Column<String> APPLICATOR =
            Column.of("applicator", TextKind.NAME, "who applied it", "S. Lind").blankMeans("not written down");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Done> SHEET = Sheet.<Done>named(
                    "log",
                    "What was really put on the fields: one row for a field, day and product. This season's rows count "
                            + "against season limits, earlier ones against what is repeated. The book only ever adds to it.",
                    season -> season.work().log())
            .optional()
            .column(FIELD, Done::field)
            .column(DATE, Done::date)
            .column(PRODUCT, Done::product)
            .column(RATE, done -> done.rate().value())
            .column(RATE_UNIT, done -> RateUnit.perAcre(done.rate().unit()))
            .column(SHARE, Done::sharePct)
            .column(APPLICATOR, Done::applicator)
            .column(SOURCE, Done::source)
            .build(row -> new Done(
                    row.get(FIELD),
                    row.get(DATE),
                    row.get(PRODUCT),
                    row.get(RATE_UNIT).rate(row.get(RATE)),
                    row.get(SHARE),
                    row.find(APPLICATOR),
                    row.get(SOURCE)));

    private LogSheet() {}
}
