package plumbrow.documents.workbook.sheet;

import java.util.List;
import java.util.Objects;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.Seed;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** The refuge that the bag tag or grower agreement of a trait seed asks for. */
final class RefugeColumns {
    static final Column<Double> IN_BAG = Column.of(
                    "blend_refuge_pct", Words.PERCENT, "share of seeds in the bag without the trait", "5")
            .in("%")
            .otherwise(0.0);
    static final Column<Form> FORM = Column.of(
                    "refuge_form", WordKind.of(Form.class, RefugeColumns::word), "how the refuge is kept", "in the bag")
            .blankMeans("unknown where it carries traits, none where it does not");
    static final Column<Double> REQUIRED = Column.of(
                    "refuge_required_pct", Words.PERCENT, "refuge required, as a share of all corn acres", "5")
            .in("%")
            .blankMeans("unknown");
    static final Column<Double> FARTHEST = Column.of(
                    "refuge_farthest_ft",
                    NumberKind.between(0, 100_000),
                    "how far a block may lie from the trait corn, edge to edge; 0 for in the field or adjacent",
                    "2640")
            .in("ft")
            .blankMeans("unknown");
    static final Column<Integer> ROWS = Column.of(
                    "refuge_fewest_rows", new WholeKind(1, 10_000), "narrowest strip allowed", "4")
            .in("rows")
            .blankMeans("unknown");
    static final Column<String> SOURCE = Column.of(
                    "refuge_source", TextKind.PROSE, "where the refuge rule stands", "bag tag 2026")
            .otherwise("");

    private RefugeColumns() {}

    static Sheet.Maker<Seed> addTo(Sheet.Maker<Seed> sheet) {
        return sheet.column(IN_BAG, Seed::blendRefugePct)
                .column(FORM, seed -> seed.rule().form())
                .column(REQUIRED, seed -> seed.rule().requiredPct())
                .column(FARTHEST, seed -> seed.rule().farthestFt())
                .column(ROWS, seed -> seed.rule().fewestRows())
                .column(SOURCE, seed -> seed.rule().source());
    }

    static RefugeRule rule(Row row) {
        boolean traits = !Objects.requireNonNullElse(row.find(SeedSheet.TRAITS), List.of())
                .isEmpty();
        Form form = row.find(FORM);
        return new RefugeRule(
                form != null ? form : traits ? Form.UNKNOWN : Form.NONE,
                row.find(REQUIRED),
                row.find(FARTHEST),
                row.find(ROWS),
                row.get(SOURCE));
    }

    private static String word(Form form) {
        return switch (form) {
            case NONE -> "none";
            case BLEND -> "in the bag";
            case BLOCK -> "block";
            case UNKNOWN -> "unknown";
        };
    }
}
