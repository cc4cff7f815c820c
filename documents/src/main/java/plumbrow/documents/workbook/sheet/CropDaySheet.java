package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** When the crop of a field is up and closed, and how late its sprayer comes. */
public final class CropDaySheet {
    public static final Column<String> FIELD = Words.field("the field");
    static final Column<LocalDate> UP = reckoned("up", "day on which the crop is up", "2026-05-12");
    static final Column<LocalDate> CLOSED =
            reckoned("closed", "day on which its leaves meet between the rows", "2026-07-01");
    static final DistributionColumns LATE = DistributionColumns.of(
                    "late_*_days",
                    NumberKind.between(0, 60),
                    "days",
                    "days by which a spray after planting comes later than planned, waiting for wet ground not counted",
                    0,
                    1,
                    6)
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<CropTiming> SHEET = Sheet.<CropTiming>named(
                    "crop_days",
                    "When the crop of a field is up and closed: one row for a field.",
                    season -> season.pests().weedBook().crops())
            .optional()
            .column(FIELD, CropTiming::field)
            .column(UP, CropTiming::up)
            .column(CLOSED, CropTiming::closed)
            .distribution(LATE, CropTiming::daysLate)
            .column(SOURCE, CropTiming::source)
            .once(FIELD)
            .check(Words.ordered(UP, CLOSED, "before"))
            .build(row ->
                    new CropTiming(row.get(FIELD), row.find(UP), row.find(CLOSED), LATE.read(row), row.get(SOURCE)));

    private CropDaySheet() {}

    private static Column<LocalDate> reckoned(String key, String meaning, String example) {
        return Column.of(key, new DateKind(), meaning, example)
                .blankMeans("calculated from the day of planting by degree days; needed for wheat");
    }
}
