package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.TextKind;
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

    static final NumberKind PERCENT = NumberKind.between(0, 100);
    static final NumberKind SHARE = NumberKind.between(0, 1);
    static final NumberKind DOLLARS = NumberKind.between(0, 1_000_000);

    private Words() {}

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
}
