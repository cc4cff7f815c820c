package plumbrow.documents.workbook.sheet;

import java.util.List;
import java.util.Set;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateRange;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.StageKind;
import plumbrow.documents.workbook.form.WordKind;

/** Rates that a label sets by soil. */
public final class SoilRateSheet {
    public static final Column<String> PRODUCT = Words.product("the product");
    static final Column<Crop> CROP = Words.crop("the crop it says so for");
    static final Column<List<Texture>> TEXTURES = Column.of(
                    "textures",
                    new ListKind<>(
                            WordKind.of(Texture.class, Texture::word),
                            "soil textures parted by semicolons, such as sand; loamy sand"),
                    "soil textures this row is for",
                    "sand; loamy sand; sandy loam")
            .blankMeans("all");
    static final Column<Double> ORGANIC_FROM = Column.of(
                    "organic_matter_from_pct", Words.PERCENT, "from this organic matter on, itself included", "3")
            .in("%")
            .blankMeans("no lower end");
    static final Column<Double> ORGANIC_BELOW = Column.of(
                    "organic_matter_below_pct", Words.PERCENT, "below this organic matter, itself not included", "5")
            .in("%")
            .blankMeans("no upper end");
    static final Column<Double> PH_FROM = Column.of(
                    "ph_from", NumberKind.between(0, 14), "from this soil pH on, itself included", "6")
            .blankMeans("no lower end");
    static final Column<Double> PH_BELOW = Column.of(
                    "ph_below", NumberKind.between(0, 14), "below this soil pH, itself not included", "7.5")
            .blankMeans("no upper end");
    static final Column<Ask> ERODIBLE = Column.of(
                    "erodible",
                    Words.ASK,
                    "yes where the row is for highly erodible land only, no where for other land only",
                    "yes")
            .otherwise(Ask.UNKNOWN);
    static final Column<Double> RESIDUE_FROM = Column.of(
                    "residue_from_pct",
                    Words.PERCENT,
                    "from this share of the ground under crop residue at planting on, itself included",
                    "30")
            .in("%")
            .blankMeans("no lower end");
    static final Column<Double> RESIDUE_BELOW = Column.of(
                    "residue_below_pct", Words.PERCENT, "below this share, itself not included", "30")
            .in("%")
            .blankMeans("no upper end");
    static final Column<String> EARLIEST = Column.of(
                    "earliest_stage", new StageKind(false), "from this growth stage of the crop on", "VE")
            .blankMeans("any");
    static final Column<String> LATEST = Column.of(
                    "latest_stage", new StageKind(false), "up to this growth stage of the crop", "PRE")
            .blankMeans("any");
    static final Column<Boolean> FORBIDDEN = Column.of(
                    "forbidden", WordKind.yesNo(), "whether the label forbids the use on such soil", "no")
            .otherwise(false);
    static final Column<Double> LOW = Column.of("low_rate", Words.RATE, "lowest rate on such soil", "1.5")
            .in("rate_unit")
            .blankMeans("not stated")
            .called("Lowest rate")
            .stricter(Stricter.MORE);
    static final Column<Double> HIGH = Column.of(
                    "high_rate", Words.RATE, "highest rate on such soil; needed unless it is forbidden there", "2")
            .in("rate_unit")
            .called("Highest rate")
            .stricter(Stricter.LESS);
    public static final Column<RateUnit> RATE_UNIT =
            Column.of("rate_unit", new RateUnitKind(), "unit of the low and the high rate", "qt/ac");
    static final Column<String> SOURCE = Words.source();

    private static final RateRange RATES = new RateRange(LOW, HIGH, RATE_UNIT);

    public static final Sheet<SoilRate> SHEET = Sheet.<SoilRate>named(
                    "soil_rates",
                    "Rates that a label sets by soil, by land or by stage: one row for each. Where a use has such rows, one "
                            + "of them must fit the field.",
                    season -> season.shelf().labels().soilRates())
            .optional()
            .column(PRODUCT, SoilRate::product)
            .column(CROP, SoilRate::crop)
            .column(TEXTURES, rate -> rate.textures().isEmpty() ? null : inOrder(rate.textures()))
            .column(ORGANIC_FROM, SoilRate::organicMatterLowPct)
            .column(ORGANIC_BELOW, SoilRate::organicMatterHighPct)
            .column(PH_FROM, SoilRate::phLow)
            .column(PH_BELOW, SoilRate::phHigh)
            .column(ERODIBLE, SoilRate::erodible)
            .column(RESIDUE_FROM, SoilRate::residueLowPct)
            .column(RESIDUE_BELOW, SoilRate::residueHighPct)
            .column(EARLIEST, SoilRate::earliestStage)
            .column(LATEST, SoilRate::latestStage)
            .column(FORBIDDEN, SoilRate::forbidden)
            .rates(RATES, SoilRate::lowRate, SoilRate::highRate)
            .column(SOURCE, SoilRate::source)
            .once(
                    PRODUCT,
                    CROP,
                    TEXTURES,
                    ORGANIC_FROM,
                    ORGANIC_BELOW,
                    PH_FROM,
                    PH_BELOW,
                    ERODIBLE,
                    RESIDUE_FROM,
                    RESIDUE_BELOW,
                    EARLIEST,
                    LATEST)
            .check(SoilRateSheet::checkTextures)
            .check(SoilRateSheet::checkForbidden)
            .check(RATES)
            .check(Words.below(ORGANIC_FROM, ORGANIC_BELOW))
            .check(Words.below(PH_FROM, PH_BELOW))
            .check(Words.below(RESIDUE_FROM, RESIDUE_BELOW))
            .build(row -> new SoilRate(
                    row.get(PRODUCT),
                    row.get(CROP),
                    textures(row),
                    row.find(ORGANIC_FROM),
                    row.find(ORGANIC_BELOW),
                    row.find(PH_FROM),
                    row.find(PH_BELOW),
                    row.get(ERODIBLE),
                    row.find(RESIDUE_FROM),
                    row.find(RESIDUE_BELOW),
                    row.find(EARLIEST),
                    row.find(LATEST),
                    row.get(FORBIDDEN),
                    RATES.low(row),
                    RATES.high(row),
                    row.get(SOURCE)));

    private SoilRateSheet() {}

    private static List<Texture> inOrder(Set<Texture> textures) {
        return textures.stream().sorted().toList();
    }

    private static Set<Texture> textures(Row row) {
        List<Texture> textures = row.find(TEXTURES);
        return textures == null ? Set.of() : Set.copyOf(textures);
    }

    private static void checkTextures(Row row, Objections objections) {
        List<Texture> textures = row.find(TEXTURES);
        if (textures != null && textures.isEmpty()) {
            objections.at(row, TEXTURES, "the textures this row is for, or nothing where it is for all");
        }
    }

    private static void checkForbidden(Row row, Objections objections) {
        Boolean forbidden = row.find(FORBIDDEN);
        if (Boolean.FALSE.equals(forbidden) && row.blank(HIGH)) {
            objections.at(row, HIGH, HIGH.kind().words() + ", since the use is not forbidden on this soil");
        } else if (Boolean.TRUE.equals(forbidden)) {
            for (Column<Double> rate : List.of(LOW, HIGH)) {
                if (!row.blank(rate)) {
                    objections.at(row, rate, "nothing, since the label forbids the use on this soil");
                }
            }
        }
    }
}
