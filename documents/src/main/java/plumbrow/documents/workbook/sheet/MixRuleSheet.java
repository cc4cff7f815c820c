package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.shelf.MixRule;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** What labels say of others in the same tank. */
public final class MixRuleSheet {
    static final Column<String> PRODUCT = Words.product("the product whose label says so");
    public static final Column<List<String>> PARTNER = Column.of(
                    "partner",
                    new ListKind<>(TextKind.NAME, "names parted by semicolons, such as adjuvant"),
                    "the other in the tank: a product of the shelf, an active ingredient, or a kind of product such as "
                            + "adjuvant; several parted by semicolons, of which one must be in where they are required",
                    "adjuvant")
            .need();
    static final Column<MixRule.Word> WORD = Column.of(
                    "word",
                    WordKind.of(MixRule.Word.class, MixRule.Word::word),
                    "whether the label forbids it, asks for it, or allows only it and nothing else",
                    "required")
            .need()
            .called("In the same tank");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<MixRule> SHEET = Sheet.<MixRule>named(
                    "mix_rules",
                    "What a label forbids or asks for in the same tank: one row for a product and partner.",
                    season -> season.shelf().labels().mixRules())
            .optional()
            .column(PRODUCT, MixRule::product)
            .column(PARTNER, MixRule::partners)
            .column(WORD, MixRule::word)
            .column(SOURCE, MixRule::source)
            .once(PRODUCT, PARTNER)
            .check(MixRuleSheet::checkPartner)
            .build(row ->
                    new MixRule(row.get(PRODUCT), String.join("; ", row.get(PARTNER)), row.get(WORD), row.get(SOURCE)));

    private MixRuleSheet() {}

    private static void checkPartner(Row row, Objections objections) {
        String product = row.find(PRODUCT);
        List<String> partners = row.find(PARTNER);
        if (partners != null && partners.isEmpty()) {
            objections.at(
                    row,
                    PARTNER,
                    "at least one name; of a label that allows nothing in the tank, name what it forbids");
        }
        if (product != null && partners != null && partners.contains(product)) {
            objections.at(row, PARTNER, "another product than the one whose label says so");
        }
    }
}
