package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.Together;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** How hard insects press on each field. */
public final class InsectSheet {
    static final Column<String> FIELD =
            Column.of("field", TextKind.NAME, "the field", "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    public static final Column<String> INSECT = Column.of(
                    "insect",
                    TextKind.NAME,
                    "its name, spelled the same way wherever it stands in the workbook",
                    "western corn rootworm")
            .need();
    static final Column<Measure> MEASURE = Column.of(
                    "measure",
                    WordKind.of(Measure.class, InsectSheet::word),
                    "how pressure is counted; node injury is the scale from 0 to 3",
                    "node injury")
            .need();
    static final DistributionColumns PRESSURE = DistributionColumns.of(
                    "pressure_*",
                    NumberKind.between(0, 100_000),
                    "as measured",
                    "pressure if nothing were done and no trait worked",
                    0.2,
                    0.7,
                    1.6)
            .need();
    static final DistributionColumns LOSS = DistributionColumns.of(
                    "loss_*_pct", Words.PERCENT, "% per unit", "yield lost for each unit of pressure", 8, 15, 22)
            .need()
            .spreadWhereBlank();
    static final Column<Double> NEIGHBOUR = Column.of(
                    "neighbour_share",
                    Words.SHARE,
                    "share of an unprotected plant's loss that protected neighbours make up",
                    "0.2")
            .in("share")
            .otherwise(0.0);
    static final Column<Integer> SAMPLE_SIZE = Column.of(
                    "sample_size",
                    new WholeKind(1, 10_000),
                    "plants, roots or sample units looked at, if the field were scouted before deciding",
                    "20")
            .blankMeans("no scouting planned");
    static final Column<Double> SAMPLE_SPREAD = Column.of(
                    "sample_spread",
                    NumberKind.above(0).upTo(100_000),
                    "standard deviation from one plant or sample unit to the next",
                    "0.6")
            .in("as measured");
    static final Column<Double> SAMPLE_COST = Column.of(
                    "sample_cost_usd", Words.DOLLARS, "what scouting costs for the whole field", "120")
            .in("$");
    public static final Column<LocalDate> SCOUTED = Column.of(
                    "scouted", new DateKind(), "when the field was last looked at for this insect", "2025-08-04")
            .blankMeans("not scouted");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<InsectPressure> SHEET = Sheet.<InsectPressure>named(
                    "insects",
                    "One row for each insect that matters on a field.",
                    season -> season.pests().insects())
            .column(FIELD, InsectPressure::field)
            .column(INSECT, InsectPressure::insect)
            .column(MEASURE, InsectPressure::measure)
            .distribution(PRESSURE, InsectPressure::pressure)
            .distribution(LOSS, InsectPressure::lossPerUnitPct)
            .column(NEIGHBOUR, InsectPressure::neighbourShare)
            .column(
                    SAMPLE_SIZE,
                    insect -> insect.sample() == null ? null : insect.sample().size())
            .column(
                    SAMPLE_SPREAD,
                    insect -> insect.sample() == null ? null : insect.sample().spread())
            .column(
                    SAMPLE_COST,
                    insect -> insect.sample() == null ? null : insect.sample().costUsd())
            .column(SCOUTED, InsectPressure::scouted)
            .column(SOURCE, InsectPressure::source)
            .once(FIELD, INSECT)
            .check(Together.of(SAMPLE_SIZE, SAMPLE_SPREAD, SAMPLE_COST))
            .check(InsectSheet::checkScale)
            .build(InsectSheet::pressure);

    private InsectSheet() {}

    private static String word(Measure measure) {
        return switch (measure) {
            case NODE_INJURY -> "node injury";
            case LARVAE_PER_PLANT -> "larvae per plant";
            case INSECTS_PER_PLANT -> "insects per plant";
            case INSECTS_PER_SAMPLE -> "insects per sample";
            case LEAF_LOST -> "leaf lost";
        };
    }

    private static void checkScale(Row row, Objections objections) {
        Measure measure = row.find(MEASURE);
        for (Column<?> each : PRESSURE.columns()) {
            if (measure != null && row.find(each) instanceof Double pressure && pressure > measure.cap()) {
                objections.at(
                        row,
                        each,
                        "no more than " + (int) measure.cap() + ", the end of the " + word(measure) + " scale");
            }
        }
    }

    private static InsectPressure pressure(Row row) {
        return new InsectPressure(
                row.get(FIELD),
                row.get(INSECT),
                row.get(MEASURE),
                PRESSURE.read(row),
                LOSS.read(row),
                row.get(NEIGHBOUR),
                sample(row),
                row.find(SCOUTED),
                row.get(SOURCE));
    }

    private static @Nullable ScoutingSample sample(Row row) {
        return row.blank(SAMPLE_SIZE)
                ? null
                : new ScoutingSample(row.get(SAMPLE_SIZE), row.get(SAMPLE_SPREAD), row.get(SAMPLE_COST));
    }
}
