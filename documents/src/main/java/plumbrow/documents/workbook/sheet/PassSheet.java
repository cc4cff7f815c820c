package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.AmountColumns;
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
    private static final AmountColumns<RateUnit> AT = AmountColumns.rate(RATE, RATE_UNIT);
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

    /** What it waits for, where it waits for scouting. */
    public static final Column<String> SCOUT_INSECT = Column.of(
                    "scout_insect",
                    TextKind.NAME,
                    "insect that is scouted for before this pass, as in the insects sheet of the field; the pass is then made"
                            + " only from scout_threshold on",
                    "soybean aphid")
            .blankMeans("made whatever is found");

    static final Column<Double> SCOUT_THRESHOLD = Column.of(
            "scout_threshold",
            NumberKind.above(0).upTo(1_000_000),
            "count from which on the pass is made, from a published threshold or your own",
            "250");
    public static final Column<String> SCOUT_UNIT = Column.of(
                    "scout_unit", TextKind.NAME, "what is counted, where it is not the pressure itself", "aphids/plant")
            .blankMeans("the measure of the pressure");
    static final Column<Double> SCOUT_PER_PRESSURE = Column.of(
                    "scout_per_pressure",
                    NumberKind.above(0).upTo(1_000_000),
                    "how many are counted on the day of scouting for each unit of untreated pressure that comes of them",
                    "32")
            .otherwise(1.0);
    static final Column<Double> SCOUT_TIMES = Column.of(
                    "scout_within_times",
                    NumberKind.between(1, 1000),
                    "what comes of a count lies within so many times more or less in 8 of 10 cases",
                    "2")
            .otherwise(1.0);
    static final Column<Double> SCOUT_COST = Column.of(
                    "scout_usd_ac",
                    NumberKind.between(0, 10_000),
                    "what scouting costs for each acre of the field, whatever it finds",
                    "1.50")
            .in("$/ac")
            .blankMeans("what the insect's sample costs, spread over the field");

    public static final Sheet<Line> SHEET = Sheet.<Line>named(
                    "passes", "One row for each trip over the field, in the order they are made.", PassSheet::lines)
            .column(FIELD, Line::field)
            .column(PROGRAM, Line::program)
            .column(PASS, line -> line.pass().number())
            .column(KIND, line -> line.pass().kind())
            .column(DATE, line -> line.pass().date())
            .column(PRODUCT, line -> line.pass().product())
            .amount(AT, line -> line.pass().rate())
            .column(SHARE, line -> line.pass().sharePct())
            .column(CHARGE, line -> line.pass().chargeUsdPerAcre())
            .distribution(INJURY, line -> line.pass().injuryPct())
            .column(DELAY, line -> line.pass().delayDays())
            .column(SCOUT_INSECT, line -> trigger(line, ScoutingTrigger::insect))
            .column(SCOUT_THRESHOLD, line -> trigger(line, ScoutingTrigger::threshold))
            .column(SCOUT_UNIT, line -> trigger(line, ScoutingTrigger::unit))
            .column(SCOUT_PER_PRESSURE, line -> trigger(line, ScoutingTrigger::countPerPressure))
            .column(SCOUT_TIMES, line -> trigger(line, ScoutingTrigger::withinTimes))
            .column(SCOUT_COST, line -> trigger(line, ScoutingTrigger::scoutingUsdPerAcre))
            .once(FIELD, PROGRAM, PASS)
            .check(PassSheet::checkProduct)
            .check(PassSheet::checkScouting)
            .build(row -> new Line(row.get(FIELD), row.get(PROGRAM), pass(row)));

    private static final List<Column<?>> SCOUTED_WITH =
            List.of(SCOUT_THRESHOLD, SCOUT_UNIT, SCOUT_PER_PRESSURE, SCOUT_TIMES, SCOUT_COST);

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

    private static <T> @Nullable T trigger(Line line, Function<ScoutingTrigger, @Nullable T> value) {
        ScoutingTrigger trigger = line.pass().trigger();
        return trigger == null ? null : value.apply(trigger);
    }

    private static void checkScouting(Row row, Objections objections) {
        PassKind kind = row.find(KIND);
        if (row.blank(SCOUT_INSECT)) {
            for (Column<?> column : SCOUTED_WITH) {
                if (!row.blank(column)) {
                    objections.at(row, column, "nothing, since no scout_insect is named");
                }
            }
            return;
        }
        if (row.blank(SCOUT_THRESHOLD)) {
            objections.at(row, SCOUT_THRESHOLD, SCOUT_THRESHOLD.kind().words() + ", since the pass waits for scouting");
        }
        if (kind != null && kind != PassKind.SPRAY && kind != PassKind.GRANULE) {
            objections.at(
                    row,
                    SCOUT_INSECT,
                    "nothing, since a " + kind.word()
                            + " pass does not wait for scouting: put it at the spray or granule");
        }
    }

    private static @Nullable ScoutingTrigger trigger(Row row) {
        return row.blank(SCOUT_INSECT)
                ? null
                : new ScoutingTrigger(
                        row.get(SCOUT_INSECT),
                        row.get(SCOUT_THRESHOLD),
                        row.find(SCOUT_UNIT),
                        row.get(SCOUT_PER_PRESSURE),
                        row.get(SCOUT_TIMES),
                        row.find(SCOUT_COST));
    }

    private static Pass pass(Row row) {
        return new Pass(
                row.get(PASS),
                row.get(KIND),
                row.find(DATE),
                row.find(PRODUCT),
                AT.find(row),
                row.get(SHARE),
                row.get(CHARGE),
                INJURY.read(row),
                row.get(DELAY),
                trigger(row));
    }
}
