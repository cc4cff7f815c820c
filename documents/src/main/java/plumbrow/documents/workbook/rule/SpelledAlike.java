package plumbrow.documents.workbook.rule;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Near;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.ActiveLimitSheet;
import plumbrow.documents.workbook.sheet.ActiveSheet;
import plumbrow.documents.workbook.sheet.ClimateSheet;
import plumbrow.documents.workbook.sheet.ControlSheet;
import plumbrow.documents.workbook.sheet.FieldSheet;
import plumbrow.documents.workbook.sheet.InsectSheet;
import plumbrow.documents.workbook.sheet.LikeWeedSheet;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.MixRuleSheet;
import plumbrow.documents.workbook.sheet.NextCropSheet;
import plumbrow.documents.workbook.sheet.PeopleSheet;
import plumbrow.documents.workbook.sheet.PlantBackSheet;
import plumbrow.documents.workbook.sheet.RatingSheet;
import plumbrow.documents.workbook.sheet.ResistanceSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;
import plumbrow.documents.workbook.sheet.TraitSheet;
import plumbrow.documents.workbook.sheet.WeatherDaySheet;
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
        Set<String> weeds = tables.index(WeedSheet.SHEET, WeedSheet.WEED).keySet();
        Set<String> pests = new HashSet<>(insects);
        pests.addAll(weeds);
        alike(tables, ControlSheet.SHEET, ControlSheet.PEST, pests, objections);
        alike(tables, TraitSheet.SHEET, TraitSheet.INSECT, insects, objections);
        alike(tables, ResistanceSheet.SHEET, ResistanceSheet.WEED, weeds, objections);
        alike(tables, RatingSheet.SHEET, RatingSheet.WEED, weeds, objections);
        alike(tables, LikeWeedSheet.SHEET, LikeWeedSheet.WEED, weeds, objections);
        places(tables, objections);
        labels(tables, objections);
        oneGroup(tables, objections);
        limits(tables, objections);
    }

    /** A place is a field or its county; a slip would leave the field without its weather. */
    private static void places(Tables tables, Objections objections) {
        Set<String> places = new HashSet<>();
        for (Row field : tables.rows(FieldSheet.SHEET)) {
            places.add(String.valueOf(field.find(FieldSheet.FIELD)));
            places.add(field.find(FieldSheet.STATE) + ": " + field.find(FieldSheet.COUNTY));
        }
        alike(tables, ClimateSheet.SHEET, ClimateSheet.PLACE, places, "as the sheet fields spells it", objections);
        alike(
                tables,
                WeatherDaySheet.SHEET,
                WeatherDaySheet.PLACE,
                places,
                "as the sheet fields spells it",
                objections);
    }

    /** Labels name crops, products, ingredients and people that the shelf or the fields may not have. */
    private static void labels(Tables tables, Objections objections) {
        Set<String> following =
                tables.index(NextCropSheet.SHEET, NextCropSheet.CROP).keySet();
        alike(tables, PlantBackSheet.SHEET, PlantBackSheet.NEXT_CROP, following, objections);
        Set<String> partners =
                new HashSet<>(tables.index(ShelfSheet.SHEET, ShelfSheet.PRODUCT).keySet());
        partners.addAll(tables.index(ActiveSheet.SHEET, ActiveSheet.INGREDIENT).keySet());
        partners.addAll(
                Arrays.stream(ProductKind.values()).map(ProductKind::word).toList());
        alike(tables, MixRuleSheet.SHEET, MixRuleSheet.PARTNER, partners, "as it is spelled elsewhere", objections);
        Set<String> people = tables.index(PeopleSheet.SHEET, PeopleSheet.PERSON).keySet();
        alike(tables, LogSheet.SHEET, LogSheet.APPLICATOR, people, "as the sheet people spells it", objections);
    }

    private static void alike(
            Tables tables, Sheet<?> sheet, Column<String> column, Set<String> names, Objections objections) {
        alike(tables, sheet, column, names, "as the fields' rows spell it", objections);
    }

    private static void alike(
            Tables tables, Sheet<?> sheet, Column<String> column, Set<String> names, String as, Objections objections) {
        for (Row row : tables.rows(sheet)) {
            String name = row.find(column);
            if (name != null && !names.contains(name)) {
                Near.to(name, names, ONE_SLIP).ifPresent(near -> objections.at(row, column, near + ", " + as));
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
