package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.tank.WaterTest;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** Tests of the water that farms spray with. */
public final class WaterTestSheet {
    private static final NumberKind PPM = NumberKind.between(0, 5000);

    static final Column<String> FARM = FarmWords.farm();
    static final Column<LocalDate> TESTED = Column.of("tested", new DateKind(), "the day of the sample", "2026-02-10")
            .need();
    static final Column<Double> CALCIUM = ion("calcium_ppm", "calcium", "120");
    static final Column<Double> MAGNESIUM = ion("magnesium_ppm", "magnesium", "45");
    static final Column<Double> SODIUM = ion("sodium_ppm", "sodium", "55");
    static final Column<Double> POTASSIUM = ion("potassium_ppm", "potassium", "12");
    static final Column<Double> IRON = Words.number("iron_ppm", PPM, "ppm", "iron", "0.5");
    static final Column<Double> PH = Words.number("ph", NumberKind.between(2, 13), "", "acidity of the water", "7.6");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<WaterTest> SHEET = Sheet.<WaterTest>named(
                    "water_tests",
                    "Spray water: one row for a test. The latest of a farm counts.",
                    season -> season.work().means().tank().water())
            .optional()
            .column(FARM, WaterTest::farm)
            .column(TESTED, WaterTest::tested)
            .column(CALCIUM, WaterTest::calcium)
            .column(MAGNESIUM, WaterTest::magnesium)
            .column(SODIUM, WaterTest::sodium)
            .column(POTASSIUM, WaterTest::potassium)
            .column(IRON, WaterTest::iron)
            .column(PH, WaterTest::ph)
            .column(SOURCE, WaterTest::source)
            .once(FARM, TESTED)
            .build(row -> new WaterTest(
                    row.get(FARM),
                    row.get(TESTED),
                    row.get(CALCIUM),
                    row.get(MAGNESIUM),
                    row.get(SODIUM),
                    row.get(POTASSIUM),
                    row.find(IRON),
                    row.find(PH),
                    row.get(SOURCE)));

    private WaterTestSheet() {}

    private static Column<Double> ion(String key, String name, String example) {
        return Column.of(key, PPM, name + " in the water", example).in("ppm").need();
    }
}
