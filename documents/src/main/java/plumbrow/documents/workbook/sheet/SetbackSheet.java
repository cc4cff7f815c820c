package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.shelf.Setback;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.WordKind;

/** Distances that labels keep from water, dwellings and the like. */
public final class SetbackSheet {
    static final Column<String> PRODUCT = Words.product("the product");
    static final Column<FeatureKind> KIND = Column.of(
                    "kind",
                    WordKind.of(FeatureKind.class, FeatureKind::word),
                    "what the distance is kept from",
                    "stream")
            .need();
    static final Column<Double> FEET = Words.number(
                    "distance_ft",
                    NumberKind.between(0, 100_000),
                    "ft",
                    "distance kept; 0 where the label was read and asks for none",
                    "66")
            .called("Distance")
            .stricter(Stricter.MORE);
    static final Column<Boolean> DOWNWIND = Column.of(
                    "downwind_only", WordKind.yesNo(), "whether it holds only where the wind blows towards it", "no")
            .otherwise(false);
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Setback> SHEET = Sheet.<Setback>named(
                    "setbacks",
                    "Distances that a label keeps: one row for a product and what is kept away from.",
                    season -> season.shelf().labels().setbacks())
            .optional()
            .column(PRODUCT, Setback::product)
            .column(KIND, Setback::kind)
            .column(FEET, Setback::feet)
            .column(DOWNWIND, Setback::downwindOnly)
            .column(SOURCE, Setback::source)
            .once(PRODUCT, KIND, DOWNWIND)
            .build(row ->
                    new Setback(row.get(PRODUCT), row.get(KIND), row.find(FEET), row.get(DOWNWIND), row.get(SOURCE)));

    private SetbackSheet() {}
}
