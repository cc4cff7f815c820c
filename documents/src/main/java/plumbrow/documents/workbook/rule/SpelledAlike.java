package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Near;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.ActiveLimitSheet;
import plumbrow.documents.workbook.sheet.ActiveSheet;
import plumbrow.documents.workbook.sheet.ControlSheet;
import plumbrow.documents.workbook.sheet.InsectSheet;
import plumbrow.documents.workbook.sheet.TraitSheet;
import plumbrow.documents.workbook.sheet.WeedSheet;

/**
 * Names that tie knowledge to fields are spelled alike. A shelf may know pests that no field has this year; but a name
 * one slip away from one that a field has would leave the product without effect, and nobody would see why.
 */
final class SpelledAlike implements Rule {
    private static final int ONE_SLIP = 1;

    @Override
    public void check(Tables tables, Objections objections) {
        Set<String> insects =
                tables.index(InsectSheet.SHEET, InsectSheet.INSECT).keySet();
        Set<String> pests = new HashSet<>(insects);
        pests.addAll(tables.index(WeedSheet.SHEET, WeedSheet.WEED).keySet());
        alike(tables, ControlSheet.SHEET, ControlSheet.PEST, pests, objections);
        alike(tables, TraitSheet.SHEET, TraitSheet.INSECT, insects, objections);
        oneGroup(tables, objections);
        limits(tables, objections);
    }

    private static void alike(
            Tables tables, Sheet<?> sheet, Column<String> column, Set<String> pests, Objections objections) {
        for (Row row : tables.rows(sheet)) {
            String name = row.find(column);
            if (name != null && !pests.contains(name)) {
                Near.to(name, pests, ONE_SLIP)
                        .ifPresent(near -> objections.at(row, column, near + ", as the fields' rows spell it"));
            }
        }
    }

    private static void oneGroup(Tables tables, Objections objections) {
        Map<String, Row> first = tables.index(TraitSheet.SHEET, TraitSheet.TRAIT);
        for (Row row : tables.rows(TraitSheet.SHEET)) {
            Row other = first.get(String.valueOf(row.find(TraitSheet.TRAIT)));
            String group = row.find(TraitSheet.GROUP);
            String before = other == null ? null : other.find(TraitSheet.GROUP);
            if (other != null && group != null && before != null && !group.equals(before)) {
                objections.at(row, TraitSheet.GROUP, before + ", the group of this trait in row " + other.number());
            }
        }
    }

    /** A label limits an ingredient of its own product, where its ingredients are known. */
    private static void limits(Tables tables, Objections objections) {
        Map<String, Set<String>> ingredients = new HashMap<>();
        for (Row row : tables.rows(ActiveSheet.SHEET)) {
            String product = row.find(ActiveSheet.PRODUCT);
            String ingredient = row.find(ActiveSheet.INGREDIENT);
            if (product != null && ingredient != null) {
                ingredients.computeIfAbsent(product, key -> new TreeSet<>()).add(ingredient);
            }
        }
        for (Row row : tables.rows(ActiveLimitSheet.SHEET)) {
            Set<String> known = ingredients.getOrDefault(String.valueOf(row.find(ActiveLimitSheet.PRODUCT)), Set.of());
            String ingredient = row.find(ActiveLimitSheet.INGREDIENT);
            if (ingredient != null && !known.isEmpty() && !known.contains(ingredient)) {
                objections.at(
                        row,
                        ActiveLimitSheet.INGREDIENT,
                        "an ingredient of this product on the sheet actives: " + String.join(", ", known));
            }
        }
    }
}
