package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.Farm;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
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
                    "cost_share", Words.SHARE, "the operator's share of what inputs cost", "1")
            .in("share")
            .otherwise(1.0);

    public static final Sheet<Farm> SHEET = Sheet.<Farm>named("farms", "One row for each farm.", Season::farms)
            .rows(1, Sheet.MOST_ROWS)
            .column(FARM, Farm::name)
            .column(GROWER, Farm::grower)
            .column(CROP_SHARE, Farm::cropShare)
            .column(COST_SHARE, Farm::costShare)
            .once(FARM)
            .build(row -> new Farm(row.get(FARM), row.get(GROWER), row.get(CROP_SHARE), row.get(COST_SHARE)));

    private FarmSheet() {}
}
