package plumbrow.documents.workbook.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.StageKind;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;

/** In which crop a label allows a herbicide at which stage: any, or one that is tolerant of it. */
public final class ToleranceSheet {
    private static final StageKind STAGE = new StageKind(false);

    static final Column<String> PRODUCT = Words.product("the herbicide");
    public static final Column<Crop> CROP = Words.crop("the crop it is used on");
    static final Column<String> TRAIT = Column.of(
                    "trait",
                    new TraitKind(),
                    "the tolerance the seed must have, as its tag names it; none where the label asks for none at these "
                            + "stages",
                    "glyphosate")
            .need();
    public static final Column<String> EARLIEST = Column.of(
                    "earliest_stage", STAGE, "the row holds from this stage of the crop on", "VE")
            .blankMeans("from the first");
    public static final Column<String> LATEST = Column.of(
                    "latest_stage", STAGE, "the row holds up to this stage of the crop; PRE before it is up", "R2")
            .blankMeans("up to the last");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<ToleranceRule> SHEET = Sheet.<ToleranceRule>named(
                    "tolerances",
                    "In which crop a label allows a herbicide, and when: one row for a product, crop and trait. A "
                            + "herbicide that may go before any crop is up, and over the top of tolerant seed only, has two "
                            + "rows.",
                    season -> season.shelf().labels().tolerances())
            .optional()
            .column(PRODUCT, ToleranceRule::product)
            .column(CROP, ToleranceRule::crop)
            .whole(
                    TRAIT.key(),
                    Storage.TEXT,
                    ToleranceRule::trait,
                    List.of(TRAIT),
                    (rule, entry) -> entry.put(TRAIT, rule.trait() == null ? "" : rule.trait()))
            .column(EARLIEST, ToleranceRule::earliestStage)
            .column(LATEST, ToleranceRule::latestStage)
            .column(SOURCE, ToleranceRule::source)
            .once(PRODUCT, CROP, TRAIT, EARLIEST)
            .check((row, objections) -> TermsSheet.checkStages(row, CROP, EARLIEST, LATEST, objections))
            .build(row -> new ToleranceRule(
                    row.get(PRODUCT),
                    row.get(CROP),
                    row.whole(TRAIT.key(), ToleranceSheet::trait),
                    row.find(EARLIEST),
                    row.find(LATEST),
                    row.get(SOURCE)));

    private ToleranceSheet() {}

    private static @Nullable String trait(Row row) {
        String trait = row.get(TRAIT);
        return trait.isEmpty() ? null : trait;
    }

    /** The name of a trait; the word "none" is kept as empty text. */
    private record TraitKind() implements Kind<String> {
        private static final String NONE = "none";

        @Override
        public String words() {
            return "the name of a tolerance, or none";
        }

        @Override
        public String read(Cell cell) throws Misread {
            return cell.found().strip().equalsIgnoreCase(NONE) ? "" : TextKind.NAME.read(cell);
        }

        @Override
        public Cell show(String value) {
            return value.isEmpty() ? new Cell.Text(NONE) : TextKind.NAME.show(value);
        }

        @Override
        public Storage<String> storage() {
            return Storage.TEXT;
        }
    }
}
