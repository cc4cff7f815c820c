package plumbrow.documents.workbook.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.documents.workbook.form.CeilingKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.StageKind;
import plumbrow.documents.workbook.form.WordKind;

/** What labels ask of each use beyond its rates. A blank cell is unknown, never allowed. */
public final class TermsSheet {
    private static final CeilingKind CEILING = new CeilingKind(999);
    private static final StageKind STAGE = new StageKind(true);
    private static final WordKind<Droplets> DROPLETS = WordKind.of(Droplets.class, Droplets::word);

    static final Column<String> PRODUCT = Words.product("the product");
    public static final Column<Crop> CROP = Words.crop("the crop it is used on");
    static final Column<Integer> REENTRY = Words.whole("rei_hours", 2_000, "h", "restricted-entry interval (REI)", "12")
            .called("Restricted-entry interval (REI)")
            .stricter(Stricter.MORE);
    static final Column<Integer> BETWEEN = Words.whole(
                    "days_between",
                    400,
                    "days",
                    "least days between two applications; 0 where the label asks for none",
                    "7")
            .called("Days between applications")
            .stricter(Stricter.MORE);
    static final Column<Integer> GRAZING = Words.whole(
                    "grazing_days",
                    400,
                    "days",
                    "days before the crop is grazed or fed; 0 where the label asks for none",
                    "30")
            .called("Days before grazing")
            .stricter(Stricter.MORE);
    static final Column<Ask> FEEDING = Words.ask(
                    "feeding_forbidden", "whether the treated crop must not be grazed or fed at all")
            .called("Must not be grazed or fed");
    public static final Column<String> EARLIEST = Column.of(
                    "earliest_stage", STAGE, "earliest growth stage of the crop", "V2")
            .blankMeans("unknown")
            .called("Earliest growth stage")
            .stricter(Stricter.MORE);
    public static final Column<String> LATEST = Column.of(
                    "latest_stage", STAGE, "latest growth stage of the crop", "V8")
            .blankMeans("unknown")
            .called("Latest growth stage")
            .stricter(Stricter.LESS);
    static final Column<Double> HIGHEST_CROP = Words.number(
                    "highest_crop_in", CEILING, "in", "tallest crop it may go over", "30")
            .called("Tallest crop")
            .stricter(Stricter.LESS);
    static final Column<Double> HIGHEST_WEED = Words.number(
                    "highest_weed_in", CEILING, "in", "tallest weed it is labelled for", "4")
            .called("Tallest weed")
            .stricter(Stricter.LESS);
    static final Column<List<Method>> METHODS = Column.of(
                    "methods",
                    new ListKind<>(
                            WordKind.of(Method.class, Method::word),
                            "ways of application parted by semicolons, such as ground broadcast; band"),
                    "ways of application that the label allows: ground broadcast, band, in furrow, directed, spot, "
                            + "aerial, chemigation, on seed",
                    "ground broadcast; band")
            .blankMeans("unknown")
            .called("Ways of application")
            .stricter(Stricter.LESS);
    static final Column<Double> CARRIER = Words.number(
                    "carrier_low_gal_ac",
                    NumberKind.between(0, 1_000),
                    "gal/ac",
                    "least carrier volume from the ground; 0 where the label asks for none",
                    "15")
            .called("Least carrier volume")
            .stricter(Stricter.MORE);
    static final Column<Droplets> FINEST = Column.of(
                    "finest", DROPLETS, "finest droplet class allowed; XF where the label sets none", "C")
            .blankMeans("unknown")
            .called("Finest droplets")
            .stricter(Stricter.MORE);
    static final Column<Droplets> COARSEST = Column.of(
                    "coarsest", DROPLETS, "coarsest droplet class allowed; UC where the label sets none", "UC")
            .blankMeans("unknown")
            .called("Coarsest droplets")
            .stricter(Stricter.LESS);
    static final Column<Double> BOOM = Words.number(
                    "boom_highest_in", CEILING, "in", "highest boom over the target", "24")
            .called("Highest boom")
            .stricter(Stricter.LESS);
    static final Column<Double> WIND_LOW = Words.number(
                    "wind_lowest_mph",
                    NumberKind.between(0, 100),
                    "mph",
                    "wind below which it must not be sprayed; 0 where the label sets none",
                    "3")
            .called("Least wind")
            .stricter(Stricter.MORE);
    static final Column<Double> WIND_HIGH = Words.number(
                    "wind_highest_mph", CEILING, "mph", "wind above which it must not be sprayed", "10")
            .called("Most wind")
            .stricter(Stricter.LESS);
    static final Column<Double> WARMEST = Words.number(
                    "warmest_f", CEILING, "°F", "air temperature above which it must not be sprayed", "85")
            .called("Warmest air")
            .stricter(Stricter.LESS);
    static final Column<Double> RAIN_FREE = Words.number(
                    "rain_free_hours",
                    NumberKind.between(0, 1_000),
                    "h",
                    "hours without rain that it needs after spraying; 0 where the label asks for none",
                    "4")
            .called("Hours without rain after")
            .stricter(Stricter.MORE);
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<UseTerms> SHEET = Sheet.<UseTerms>named(
                    "terms",
                    "What each label asks beyond rates, days to harvest and season limits: one row for a product and "
                            + "crop.",
                    season -> season.shelf().labels().terms())
            .optional()
            .column(PRODUCT, UseTerms::product)
            .column(CROP, UseTerms::crop)
            .column(REENTRY, UseTerms::reentryHours)
            .column(BETWEEN, UseTerms::daysBetween)
            .column(GRAZING, UseTerms::grazingDays)
            .column(FEEDING, UseTerms::feedingForbidden)
            .column(EARLIEST, UseTerms::earliestStage)
            .column(LATEST, UseTerms::latestStage)
            .column(HIGHEST_CROP, UseTerms::highestCropIn)
            .column(HIGHEST_WEED, UseTerms::highestWeedIn)
            .column(METHODS, terms -> terms.methods() == null ? null : inOrder(terms.methods()))
            .column(CARRIER, UseTerms::carrierLowGalPerAcre)
            .column(FINEST, UseTerms::finest)
            .column(COARSEST, UseTerms::coarsest)
            .column(BOOM, UseTerms::boomHighestIn)
            .column(WIND_LOW, UseTerms::windLowestMph)
            .column(WIND_HIGH, UseTerms::windHighestMph)
            .column(WARMEST, UseTerms::warmestF)
            .column(RAIN_FREE, UseTerms::rainFreeHours)
            .column(SOURCE, UseTerms::source)
            .once(PRODUCT, CROP)
            .check(TermsSheet::checkMethods)
            .check(TermsSheet::checkStages)
            .check(Words.ordered(FINEST, COARSEST, "no coarser than"))
            .check(Words.ordered(WIND_LOW, WIND_HIGH))
            .build(TermsSheet::terms);

    private TermsSheet() {}

    private static List<Method> inOrder(Set<Method> methods) {
        return methods.stream().sorted().toList();
    }

    private static void checkMethods(Row row, Objections objections) {
        List<Method> methods = row.find(METHODS);
        if (methods != null && methods.isEmpty()) {
            objections.at(row, METHODS, "at least one way; all of them where the label leaves it open");
        }
    }

    private static void checkStages(Row row, Objections objections) {
        checkStages(row, CROP, EARLIEST, LATEST, objections);
    }

    /** Two stages of a row are stages of its crop, and the earliest no later than the latest. */
    static void checkStages(
            Row row, Column<Crop> ofCrop, Column<String> first, Column<String> last, Objections objections) {
        Crop crop = row.find(ofCrop);
        if (crop == null) {
            return;
        }
        int earliest = place(row, first, crop, objections);
        int latest = place(row, last, crop, objections);
        if (earliest >= 0 && latest >= 0 && earliest > latest) {
            objections.at(row, first, "no later than latest_stage, which is " + row.found(last));
        }
    }

    /** How many stages come before; below 0 where there is none to compare. */
    private static int place(Row row, Column<String> column, Crop crop, Objections objections) {
        String stage = row.find(column);
        if (stage == null || stage.isEmpty()) {
            return -1;
        }
        int place = GrowthStage.place(crop, stage).orElse(-1);
        if (place < 0) {
            objections.at(row, column, "a stage of " + crop.word() + ": " + GrowthStage.words(crop));
        }
        return place;
    }

    private static @Nullable Set<Method> methods(Row row) {
        List<Method> methods = row.find(METHODS);
        return methods == null ? null : methods.isEmpty() ? EnumSet.noneOf(Method.class) : EnumSet.copyOf(methods);
    }

    private static UseTerms terms(Row row) {
        return new UseTerms(
                row.get(PRODUCT),
                row.get(CROP),
                row.find(REENTRY),
                row.find(BETWEEN),
                row.find(GRAZING),
                row.get(FEEDING),
                row.find(EARLIEST),
                row.find(LATEST),
                row.find(HIGHEST_CROP),
                row.find(HIGHEST_WEED),
                methods(row),
                row.find(CARRIER),
                row.find(FINEST),
                row.find(COARSEST),
                row.find(BOOM),
                row.find(WIND_LOW),
                row.find(WIND_HIGH),
                row.find(WARMEST),
                row.find(RAIN_FREE),
                row.get(SOURCE));
    }
}
