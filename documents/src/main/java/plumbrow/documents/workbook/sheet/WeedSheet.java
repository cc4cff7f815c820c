package plumbrow.documents.workbook.sheet;

import plumbrow.advice.pests.WeedPressure;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** How hard weeds press on each field. */
public final class WeedSheet {
    static final Column<String> FIELD =
            Column.of("field", TextKind.NAME, "the field", "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    public static final Column<String> WEED = Column.of(
                    "weed",
                    TextKind.NAME,
                    "its name, spelled the same way wherever it stands in the workbook",
                    "waterhemp")
            .need();
    static final DistributionColumns DENSITY = DistributionColumns.of(
                    "density_*",
                    NumberKind.between(0, 100_000),
                    "density_unit",
                    "plants that would stand in the crop if nothing were done",
                    2,
                    8,
                    30)
            .need();
    static final Column<Area> DENSITY_UNIT = Column.of(
                    "density_unit", WordKind.of(Area.class, Area::word), "what the density is counted on", "plants/m2")
            .otherwise(Area.SQUARE_METRE);
    static final Column<Double> FIRST_PLANT = Column.of(
                    "first_plant_loss_pct",
                    NumberKind.between(0, 1000),
                    "yield lost for each plant per m2 while weeds are few",
                    "1.5")
            .in("% per plant/m2")
            .need();
    static final DistributionColumns LOSS = new DistributionColumns(
            Column.of(
                            "first_plant_loss_low_pct",
                            NumberKind.between(0, 1000),
                            "the same, lowest believable on this field",
                            "0.5")
                    .in("% per plant/m2")
                    .blankMeans(DistributionColumns.SPREAD),
            FIRST_PLANT,
            Column.of(
                            "first_plant_loss_high_pct",
                            NumberKind.between(0, 1000),
                            "the same, highest believable on this field",
                            "4")
                    .in("% per plant/m2")
                    .blankMeans(DistributionColumns.SPREAD));
    static final Column<Double> MOST = Column.of(
                    "most_loss_pct",
                    NumberKind.above(0).upTo(100),
                    "yield lost where weeds stand as thick as they can",
                    "60")
            .in("%")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<WeedPressure> SHEET = Sheet.<WeedPressure>named(
                    "weeds",
                    "One row for each weed that matters on a field.",
                    season -> season.pests().weeds())
            .column(FIELD, WeedPressure::field)
            .column(WEED, WeedPressure::weed)
            .distribution(DENSITY, WeedPressure::densityPerSquareMetre)
            .shown(DENSITY_UNIT, weed -> Area.SQUARE_METRE)
            .distribution(LOSS, WeedPressure::lossPerPlantPct)
            .column(MOST, WeedPressure::mostLossPct)
            .column(SOURCE, WeedPressure::source)
            .once(FIELD, WEED)
            .build(WeedSheet::pressure);

    private WeedSheet() {}

    private static WeedPressure pressure(Row row) {
        return new WeedPressure(
                row.get(FIELD),
                row.get(WEED),
                DENSITY.read(row, row.get(DENSITY_UNIT).perSquareMetre()),
                LOSS.read(row),
                row.get(MOST),
                row.get(SOURCE));
    }

    /** The area on which plants are counted; 1 ft = 0.3048 m and 1 yd = 0.9144 m exactly. */
    private enum Area {
        SQUARE_METRE("plants/m2", 1),
        SQUARE_FOOT("plants/ft2", 1 / (0.3048 * 0.3048)),
        SQUARE_YARD("plants/yd2", 1 / (0.9144 * 0.9144));

        private final String word;
        private final double perSquareMetre;

        Area(String word, double perSquareMetre) {
            this.word = word;
            this.perSquareMetre = perSquareMetre;
        }

        String word() {
            return word;
        }

        /** Plants per square metre for one plant on this area. */
        double perSquareMetre() {
            return perSquareMetre;
        }
    }
}
