package plumbrow.documents.workbook.sheet;

import java.util.Arrays;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelLimit.Kind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** What else a label asks, kind by kind; every row holds. */
public final class LabelLimitSheet {
    static final Column<String> PRODUCT = Words.product("the product");
    static final Column<Crop> CROP =
            Column.of("crop", Words.CROP, "the crop it is for", "corn").blankMeans("every crop");
    public static final Column<Kind> KIND = Column.of(
                    "kind", WordKind.of(Kind.class, Kind::word), "what it asks", "not after")
            .need();
    public static final Column<String> VALUE = Column.of(
                    "value",
                    TextKind.PROSE,
                    "as the kind has it: a day of the year as 06-12, a date as 2026-12-31, a number (days, hours, feet, gal/ac), "
                            + "names parted by semicolons (counties as IA: Adams; what no maximum is printed of as "
                            + "applications; season amount; an ingredient), or the label's own words",
                    "06-12")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<LabelLimit> SHEET = Sheet.<LabelLimit>named(
                    "label_limits",
                    "What else a label asks: days of the year, days after planting, counties, pests, nozzles, depth to "
                            + "ground water, carrier from the air, working in, early entry, notices, hours of day, inversions, "
                            + "chemigation, any other duty; and what it does not limit, until when stocks of a cancelled "
                            + "product or a supplemental label may be used. Every row holds.",
                    season -> season.shelf().labels().limits())
            .optional()
            .column(PRODUCT, LabelLimit::product)
            .column(CROP, LabelLimit::crop)
            .column(KIND, LabelLimit::kind)
            .column(VALUE, LabelLimit::value)
            .column(SOURCE, LabelLimit::source)
            .once(PRODUCT, CROP, KIND, VALUE)
            .check(LabelLimitSheet::checkValue)
            .build(row ->
                    new LabelLimit(row.get(PRODUCT), row.find(CROP), row.get(KIND), row.get(VALUE), row.get(SOURCE)));

    private LabelLimitSheet() {}

    private static void checkValue(Row row, Objections objections) {
        Kind kind = row.find(KIND);
        String value = row.find(VALUE);
        if (kind == null || value == null) {
            return;
        }
        boolean fits = switch (kind.form()) {
            case DAY -> LabelLimit.dayOfYear(value).isPresent();
            case DATE -> LabelLimit.date(value).isPresent();
            case DATE_OR_NONE ->
                value.strip().equalsIgnoreCase(LabelLimit.NONE)
                        || LabelLimit.date(value).isPresent();
            case NUMBER -> LabelLimit.number(value).isPresent();
            case NAMES -> Arrays.stream(value.split(";", -1)).noneMatch(String::isBlank);
            case WORDS -> true;
        };
        if (!fits) {
            objections.at(row, VALUE, "for " + kind.word() + ", " + kind.form().words());
        }
    }
}
