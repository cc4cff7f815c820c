package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.field.NextCrop;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** What is meant to grow after this season's crop, or in its place. */
public final class NextCropSheet {
    static final Column<String> FIELD = Words.field("the field");
    public static final Column<String> CROP = Column.of(
                    "crop", TextKind.NAME, "any crop, spelled as on the sheet plant_backs", "cereal rye")
            .need();
    public static final Column<LocalDate> PLANTED = Column.of(
                    "planted", new DateKind(), "the day it is to be planted", "2026-09-25")
            .blankMeans("not planned yet");
    static final Column<NextCrop.Use> USE = Column.of(
                    "use", WordKind.of(NextCrop.Use.class, NextCrop.Use::word), "why it is planted", "cover crop")
            .need();
    static final Column<Boolean> FED = Column.of("fed", WordKind.yesNo(), "whether it is grazed or fed", "no")
            .blankMeans("unknown");

    public static final Sheet<NextCrop> SHEET = Sheet.<NextCrop>named(
                    "next_crops",
                    "What follows on each field, covers it between, or replaces a crop that fails.",
                    season -> season.ground().nextCrops())
            .optional()
            .column(FIELD, NextCrop::field)
            .column(CROP, NextCrop::crop)
            .column(PLANTED, NextCrop::planted)
            .column(USE, NextCrop::use)
            .column(FED, NextCrop::fed)
            .once(FIELD, CROP, USE)
            .build(row -> new NextCrop(row.get(FIELD), row.get(CROP), row.find(PLANTED), row.get(USE), row.find(FED)));

    private NextCropSheet() {}
}
