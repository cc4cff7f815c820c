package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.RowCheck;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** What several sheets ask in the same way. */
final class Words {
    static final WordKind<Crop> CROP = WordKind.of(Crop.class, Crop::word);
    static final WordKind<Ask> ASK = WordKind.of(Ask.class, Ask::word);

    /** Postal codes of the fifty states. */
    static final WordKind<String> STATE = WordKind.of(List.of(
            ("AL AK AZ AR CA CO CT DE FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH "
                            + "OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY")
                    .split(" ")));

    private static final String NOT_READ = "unknown";

    static final NumberKind RATE = NumberKind.above(0).upTo(1_000_000);
    static final NumberKind PERCENT = NumberKind.between(0, 100);
    static final NumberKind SHARE = NumberKind.between(0, 1);
    static final NumberKind DOLLARS = NumberKind.between(0, 1_000_000);

    private Words() {}

    static Column<String> product(String meaning) {
        return Column.of("product", TextKind.NAME, meaning, "Ridge 12")
                .need()
                .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    }

    static Column<String> field(String meaning) {
        return Column.of("field", TextKind.NAME, meaning, "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    }

    static Column<Crop> crop(String meaning) {
        return Column.of("crop", CROP, meaning, "corn").need();
    }

    static Column<String> source() {
        return Column.of(
                        "source",
                        TextKind.PROSE,
                        "where the values of this row stand, so that anyone can look them up",
                        "label, page 6")
                .need();
    }

    static Column<Ask> ask(String key, String question) {
        return Column.of(key, ASK, question, "no").otherwise(Ask.UNKNOWN);
    }

    static ListKind<String> gear() {
        return new ListKind<>(TextKind.NAME, "pieces of equipment parted by semicolons, or none");
    }

    /** A number that nobody may have looked up. */
    static Column<Double> number(String key, Kind<Double> kind, String unit, String meaning, String example) {
        return Column.of(key, kind, meaning, example).in(unit).blankMeans(NOT_READ);
    }

    /** A whole number that nobody may have looked up. */
    static Column<Integer> whole(String key, int most, String unit, String meaning, String example) {
        return Column.of(key, new WholeKind(0, most), meaning, example).in(unit).blankMeans(NOT_READ);
    }

    /** One value is no more than another of the same row, where both are filled in. */
    static <T extends Comparable<? super T>> RowCheck ordered(Column<T> low, Column<T> high) {
        return ordered(low, high, "no more than");
    }

    /** As {@link #ordered(Column, Column)}, in the words that fit what is compared. */
    static <T extends Comparable<? super T>> RowCheck ordered(Column<T> low, Column<T> high, String words) {
        return (row, objections) -> {
            T from = row.find(low);
            T to = row.find(high);
            if (from != null && to != null && from.compareTo(to) > 0) {
                objections.at(row, low, words + " " + high.key() + ", which is " + row.found(high));
            }
        };
    }

    /** One number is less than another of the same row, where both are filled in. */
    static RowCheck below(Column<Double> low, Column<Double> high) {
        return (row, objections) -> {
            Double from = row.find(low);
            Double to = row.find(high);
            if (from != null && to != null && from >= to) {
                objections.at(row, low, "less than " + high.key() + ", which is " + row.found(high));
            }
        };
    }
}
