package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.StageKind;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** How passes are meant to be put on. */
public final class SpraySheet {
    private static final NumberKind HEIGHT = NumberKind.between(0, 999);

    public static final Column<String> FIELD = Words.field("the field");
    public static final Column<String> PROGRAM = Column.of(
                    "program", TextKind.NAME, "the program of that field", "Trait, no insecticide")
            .formerly("course")
            .need();
    public static final Column<Integer> PASS = Column.of(
                    "pass", new WholeKind(1, 99), "number of the pass on the sheet passes", "2")
            .need();
    public static final Column<String> TANK = Column.of(
                    "tank", TextKind.NAME, "a word shared by the passes that go out in one tank mix", "post")
            .blankMeans("by itself");
    static final Column<Method> METHOD = planned(
            Column.of("method", WordKind.of(Method.class, Method::word), "how it is put on", "ground broadcast"));
    static final Column<Double> CARRIER =
            planned(Column.of("carrier_gal_ac", NumberKind.above(0).upTo(1_000), "carrier volume", "15")
                    .in("gal/ac"));
    static final Column<Droplets> DROPLETS = planned(Column.of(
            "droplets",
            WordKind.of(Droplets.class, Droplets::word),
            "droplet class of nozzle and pressure, from the nozzle maker's chart",
            "VC"));
    static final Column<Double> BOOM = planned(Column.of("boom_in", HEIGHT, "height of the boom over the target", "20")
            .in("in"));
    static final Column<Double> DRIFT_REDUCTION = planned(Column.of(
                    "drift_reduction_pct",
                    NumberKind.between(0, 99),
                    "drift-reduction class of the sprayer against a standard one",
                    "50")
            .in("%"));
    public static final Column<String> STAGE =
            planned(Column.of("crop_stage", new StageKind(false), "growth stage of the crop on that day", "V4"));
    static final Column<Double> CROP_HEIGHT =
            planned(Column.of("crop_height_in", HEIGHT, "height of the crop on that day", "10")
                    .in("in"));
    static final Column<Double> WEED_HEIGHT =
            planned(Column.of("weed_height_in", HEIGHT, "height of the tallest weed meant", "3")
                    .in("in"));
    static final Column<Ask> BLOOM = Words.ask("bloom", "whether the crop or weeds in it bloom on that day");
    static final Column<String> APPLICATOR = planned(Column.of("applicator", TextKind.NAME, "who applies it", "S. Lind")
            .from(PeopleSheet.SHEET, PeopleSheet.PERSON));

    /** What passes in one tank have in common, since they go out in one trip. */
    public static final List<Column<?>> OF_THE_TRIP =
            List.of(METHOD, CARRIER, DROPLETS, BOOM, DRIFT_REDUCTION, STAGE, CROP_HEIGHT, BLOOM, APPLICATOR);

    public static final Sheet<SprayPlan> SHEET = Sheet.<SprayPlan>named(
                    "sprays",
                    "How seed, spray and granule passes are to be put on: one row for a pass of a program.",
                    season -> season.work().sprayPlans())
            .optional()
            .column(FIELD, SprayPlan::field)
            .column(PROGRAM, SprayPlan::program)
            .column(PASS, SprayPlan::pass)
            .column(TANK, SprayPlan::tank)
            .column(METHOD, SprayPlan::method)
            .column(CARRIER, SprayPlan::carrierGalPerAcre)
            .column(DROPLETS, SprayPlan::droplets)
            .column(BOOM, SprayPlan::boomIn)
            .column(DRIFT_REDUCTION, SprayPlan::driftReductionPct)
            .column(STAGE, SprayPlan::cropStage)
            .column(CROP_HEIGHT, SprayPlan::cropHeightIn)
            .column(WEED_HEIGHT, SprayPlan::weedHeightIn)
            .column(BLOOM, SprayPlan::bloom)
            .column(APPLICATOR, SprayPlan::applicator)
            .once(FIELD, PROGRAM, PASS)
            .build(row -> new SprayPlan(
                    row.get(FIELD),
                    row.get(PROGRAM),
                    row.get(PASS),
                    row.find(TANK),
                    row.find(METHOD),
                    row.find(CARRIER),
                    row.find(DROPLETS),
                    row.find(BOOM),
                    row.find(DRIFT_REDUCTION),
                    row.find(STAGE),
                    row.find(CROP_HEIGHT),
                    row.find(WEED_HEIGHT),
                    row.get(BLOOM),
                    row.find(APPLICATOR)));

    private SpraySheet() {}

    private static <T> Column<T> planned(Column<T> column) {
        return column.blankMeans("not planned yet");
    }
}
