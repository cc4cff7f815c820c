package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** The trips over the field that make up each program. */
public final class PassSheet {
    public static final Column<String> FIELD =
            Column.of("field", TextKind.NAME, "the field", "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    public static final Column<String> PROGRAM = Column.of(
                    "program", TextKind.NAME, "the program of that field", "Trait, no insecticide")
            .formerly("course")
            .need();
    public static final Column<Integer> PASS = Column.of(
                    "pass", new WholeKind(1, 99), "its place in the program, counted from 1", "1")
            .need();
    public static final Column<PassKind> KIND = Column.of(
                    "kind", WordKind.of(PassKind.class, PassKind::word), "what is done", "seed")
            .need();
    public static final Column<LocalDate> DATE =
            Column.of("date", new DateKind(), "planned day", "2026-05-04").blankMeans("not planned yet");
    public static final Column<String> PRODUCT = Column.of(
                    "product",
                    TextKind.NAME,
                    "product of the shelf; needed for seed, spray and granule, blank for the others",
                    "Ridge 12")
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    public static final Column<Double> RATE = Column.of(
                    "rate", NumberKind.above(0).upTo(1_000_000), "how much of the product", "6")
            .in("rate_unit");
    public static final Column<RateUnit> RATE_UNIT =
            Column.of("rate_unit", new RateUnitKind(), "unit of rate, per acre or, metric, per hectare", "fl oz/ac");
    static final Column<Double> SHARE = Column.of(
                    "share_pct", NumberKind.above(0).upTo(100), "share of the field's acres it covers", "100")
            .in("%")
            .otherwise(100.0);
    static final Column<Double> CHARGE = Column.of(
                    "charge_usd_ac",
                    NumberKind.between(0, 10_000),
                    "machine, labour or custom charge for each acre covered, without the product",
                    "8.50")
            .in("$/ac")
            .otherwise(0.0);
    static final DistributionColumns INJURY = DistributionColumns.of(
                    "injury_*_pct", Words.PERCENT, "%", "yield lost because this pass hurts the crop", 0, 1, 3)
            .otherwise(0);
    static final Column<Double> DELAY = Column.of(
                    "delay_days", NumberKind.between(0, 200), "days by which it sets the crop back", "0")
            .in("days")
            .otherwise(0.0);

    public static final Sheet<Line> SHEET = Sheet.<Line>named(
                    "passes", "One row for each trip over the field, in the order they are made.", PassSheet::lines)
            .column(FIELD, Line::field)
            .column(PROGRAM, Line::program)
            .column(PASS, line -> line.pass().number())
            .column(KIND, line -> line.pass().kind())
            .column(DATE, line -> line.pass().date())
            .column(PRODUCT, line -> line.pass().product())
            .column(
                    RATE,
                    line -> line.pass().rate() == null
                            ? null
                            : line.pass().rate().value())
            .column(
                    RATE_UNIT,
                    line -> line.pass().rate() == null
                            ? null
                            : RateUnit.perAcre(line.pass().rate().unit()))
            .column(SHARE, line -> line.pass().sharePct())
            .column(CHARGE, line -> line.pass().chargeUsdPerAcre())
            .distribution(INJURY, line -> line.pass().injuryPct())
            .column(DELAY, line -> line.pass().delayDays())
            .once(FIELD, PROGRAM, PASS)
            .check(PassSheet::checkProduct)
            .build(row -> new Line(row.get(FIELD), row.get(PROGRAM), pass(row)));

    private PassSheet() {}

    /** A pass and the program it belongs to. */
    public record Line(String field, String program, Pass pass) {}

    private static List<Line> lines(Season season) {
        return season.programs().stream()
                .flatMap(program ->
                        program.passes().stream().map(pass -> new Line(program.field(), program.name(), pass)))
                .toList();
    }

    private static void checkProduct(Row row, Objections objections) {
        PassKind kind = row.find(KIND);
        if (kind == null) {
            return;
        }
        boolean wanted = kind == PassKind.SEED || kind == PassKind.SPRAY || kind == PassKind.GRANULE;
        for (Column<?> column : List.of(PRODUCT, RATE, RATE_UNIT)) {
            if (wanted && row.blank(column)) {
                objections.at(row, column, column.kind().words() + ", since this is a " + kind.word() + " pass");
            } else if (!wanted && !row.blank(column)) {
                objections.at(row, column, "nothing, since a " + kind.word() + " pass puts out no product");
            }
        }
    }

    private static Pass pass(Row row) {
        return new Pass(
                row.get(PASS),
                row.get(KIND),
                row.find(DATE),
                row.find(PRODUCT),
                rate(row),
                row.get(SHARE),
                row.get(CHARGE),
                INJURY.read(row),
                row.get(DELAY));
    }

    private static @Nullable Amount rate(Row row) {
        return row.blank(RATE) ? null : row.get(RATE_UNIT).rate(row.get(RATE));
    }
}
