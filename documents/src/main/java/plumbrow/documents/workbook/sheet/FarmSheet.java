package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.CostShares;
import plumbrow.advice.field.Farm;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** The farms and how crop and costs are shared with a landowner. */
public final class FarmSheet {
    public static final Column<String> FARM = Column.of(
                    "farm", TextKind.NAME, "name of the farm, used once", "Home place")
            .need();
    static final Column<String> GROWER =
            Column.of("grower", TextKind.NAME, "who farms it", "L. Marsh").need();
    static final Column<Double> CROP_SHARE = Column.of(
                    "crop_share",
                    NumberKind.above(0).upTo(1),
                    "the operator's share of the crop: 1 on owned or cash-rented land, 0.5 on half shares",
                    "1")
            .in("share")
            .otherwise(1.0);
    static final Column<Double> COST_SHARE = Column.of(
                    "cost_share",
                    Words.SHARE,
                    "the operator's share of what inputs cost, where no column beside parts it by kind",
                    "1")
            .in("share")
            .otherwise(1.0);

    static final Column<Double> SEED = parted("seed_share", "seed and what is put on it", "as cost_share");
    static final Column<Double> HERBICIDE =
            parted("herbicide_share", "herbicides and the adjuvants that go with sprays", "as cost_share");
    static final Column<Double> INSECTICIDE = parted("insecticide_share", "insecticides", "as cost_share");
    static final Column<Double> FUNGICIDE = parted("fungicide_share", "fungicides", "as cost_share");
    static final Column<Double> TRIPS =
            parted("trips_share", "machine, labour and custom charges of passes", "as cost_share");
    static final Column<Double> DRYING =
            parted("drying_share", "drying, where the assumptions have it apart from handling", "as crop_share");
    static final Column<Double> HAULING = parted(
            "hauling_share",
            "handling: haul and check-off, and drying where that is not apart",
            "1, the operator's alone");

    public static final Sheet<Farm> SHEET = Sheet.<Farm>named("farms", "One row for each farm.", Season::farms)
            .rows(1, Sheet.MOST_ROWS)
            .column(FARM, Farm::name)
            .column(GROWER, Farm::grower)
            .column(CROP_SHARE, Farm::cropShare)
            .column(COST_SHARE, Farm::costShare)
            .column(SEED, farm -> farm.shares().seed())
            .column(HERBICIDE, farm -> farm.shares().herbicide())
            .column(INSECTICIDE, farm -> farm.shares().insecticide())
            .column(FUNGICIDE, farm -> farm.shares().fungicide())
            .column(TRIPS, farm -> farm.shares().trips())
            .column(DRYING, farm -> farm.shares().drying())
            .column(HAULING, farm -> farm.shares().hauling())
            .once(FARM)
            .build(row ->
                    new Farm(row.get(FARM), row.get(GROWER), row.get(CROP_SHARE), row.get(COST_SHARE), shares(row)));

    private FarmSheet() {}

    private static Column<Double> parted(String key, String what, String otherwise) {
        return Column.of(key, Words.SHARE, "the operator's share of " + what, "0.5")
                .in("share")
                .blankMeans(otherwise);
    }

    private static CostShares shares(Row row) {
        return new CostShares(
                row.find(SEED),
                row.find(HERBICIDE),
                row.find(INSECTICIDE),
                row.find(FUNGICIDE),
                row.find(TRIPS),
                row.find(DRYING),
                row.find(HAULING));
    }
}
