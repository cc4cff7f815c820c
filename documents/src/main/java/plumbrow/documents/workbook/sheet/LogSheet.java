package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.documents.workbook.form.AmountColumns;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** What was really put on the fields. */
public final class LogSheet {
    public static final Column<String> FIELD = Words.field("the field");
    public static final Column<LocalDate> DATE = Column.of(
                    "date", new DateKind(), "the day it was applied", "2026-05-04")
            .need();
    public static final Column<String> PRODUCT = Column.of(
                    "product",
                    TextKind.NAME,
                    "the product; one of the sheet shelf, unless it was put on before the season",
                    "Ridge 12")
            .need();
    static final Column<Double> RATE = Column.of(
                    "rate",
                    NumberKind.atLeast(0).upTo(1_000_000),
                    "how much of it on each acre treated; 0 where scouting found too few and the pass was not made",
                    "6")
            .in("rate_unit")
            .need();
    public static final Column<RateUnit> RATE_UNIT = Column.of(
                    "rate_unit", new RateUnitKind(), "unit of rate", "fl oz/ac")
            .need();
    private static final AmountColumns<RateUnit> APPLIED = AmountColumns.rate(RATE, RATE_UNIT);
    static final Column<Double> SHARE = Column.of(
                    "share_pct", NumberKind.above(0).upTo(100), "share of the field's acres that was treated", "100")
            .in("%")
            .otherwise(100.0);
    public static final Column<String> APPLICATOR =
            Column.of("applicator", TextKind.NAME, "who applied it", "S. Lind").blankMeans("not written down");
    public static final Column<String> PROGRAM = Column.of(
                    "program",
                    TextKind.NAME,
                    "program of the field of which it was a planned pass, with its number in pass",
                    "Trait alone")
            .blankMeans("found by product, day and rate");
    public static final Column<String> PASS = Column.of(
                    "pass", TextKind.NAME, "number of that pass; none where it was none of the planned passes", "3")
            .blankMeans("found by product, day and rate");
    static final Column<String> SOURCE = Words.source();
    private static final String NONE = "none";

    public static final Sheet<Done> SHEET = Sheet.<Done>named(
                    "log",
                    "What was really put on the fields: one row for a field, day and product. This season's rows count "
                            + "against season limits, earlier ones against what is repeated. The book only ever adds to it.",
                    season -> season.work().log())
            .optional()
            .column(FIELD, Done::field)
            .column(DATE, Done::date)
            .column(PRODUCT, Done::product)
            .amount(APPLIED, Done::rate)
            .column(SHARE, Done::sharePct)
            .column(APPLICATOR, Done::applicator)
            .column(PROGRAM, done -> done.meant() == null ? null : done.meant().program())
            .column(PASS, done -> done.meant() == null ? null : pass(done.meant()))
            .column(SOURCE, Done::source)
            .check(LogSheet::checkPass)
            .build(row -> new Done(
                    row.get(FIELD),
                    row.get(DATE),
                    row.get(PRODUCT),
                    APPLIED.get(row),
                    row.get(SHARE),
                    row.find(APPLICATOR),
                    row.get(SOURCE),
                    meant(row)));

    private LogSheet() {}

    private static String pass(MeantPass meant) {
        return meant.none() ? NONE : String.valueOf(meant.pass());
    }

    private static void checkPass(Row row, Objections objections) {
        String pass = row.find(PASS);
        if (pass == null ? !row.blank(PROGRAM) && row.blank(PASS) : !pass.equals(NONE) && !number(pass)) {
            objections.at(row, PASS, "the number of the pass in its program, or none");
        } else if (pass != null && pass.equals(NONE) != row.blank(PROGRAM)) {
            objections.at(
                    row,
                    PROGRAM,
                    pass.equals(NONE)
                            ? "nothing, since it was none of the planned passes"
                            : "the program of which pass " + pass + " is meant");
        }
    }

    private static boolean number(String pass) {
        return pass.matches("[1-9][0-9]?");
    }

    private static @Nullable MeantPass meant(Row row) {
        String pass = row.find(PASS);
        return pass == null
                ? null
                : pass.equals(NONE) ? MeantPass.NONE : new MeantPass(row.get(PROGRAM), Integer.parseInt(pass));
    }
}
