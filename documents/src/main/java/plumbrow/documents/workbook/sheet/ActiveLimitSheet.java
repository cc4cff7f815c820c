package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.ActiveLimit.Basis;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** How much of an active ingredient a label allows in one season from all products together. */
public final class ActiveLimitSheet {
    public static final Column<String> PRODUCT = Column.of(
                    "product", TextKind.NAME, "the product whose label says so", "Ridge 12")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    static final Column<Crop> CROP =
            Column.of("crop", Words.CROP, "the crop it says so for", "corn").need();
    public static final Column<String> INGREDIENT = Column.of(
                    "ingredient", TextKind.NAME, "active ingredient, as the actives sheet names it", "bifenthrin")
            .need();
    static final Column<Double> MOST = Column.of(
                    "season_max_lb_ac", NumberKind.above(0).upTo(100), "most in one season from all products", "0.3")
            .in("lb/ac")
            .blankMeans("unknown: the label was not read for it")
            .called("Most in a season")
            .stricter(Stricter.LESS);
    static final Column<Basis> BASIS = Column.of(
                    "basis",
                    WordKind.of(Basis.class, Basis::word),
                    "whether the pounds are of active ingredient (ai) or of its acid (ae)",
                    "ai")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<ActiveLimit> SHEET = Sheet.<ActiveLimit>named(
                    "active_limits",
                    "Season limits of active ingredients, as the labels state them.",
                    season -> season.shelf().activeLimits())
            .column(PRODUCT, ActiveLimit::product)
            .column(CROP, ActiveLimit::crop)
            .column(INGREDIENT, ActiveLimit::ingredient)
            .column(MOST, ActiveLimit::seasonMaxPounds)
            .column(BASIS, ActiveLimit::basis)
            .column(SOURCE, ActiveLimit::source)
            .once(PRODUCT, CROP, INGREDIENT)
            .build(row -> new ActiveLimit(
                    row.get(PRODUCT),
                    row.get(CROP),
                    row.get(INGREDIENT),
                    row.find(MOST),
                    row.get(BASIS),
                    row.get(SOURCE)));

    private ActiveLimitSheet() {}
}
