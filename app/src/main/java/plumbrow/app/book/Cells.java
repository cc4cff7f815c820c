package plumbrow.app.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.documents.workbook.form.Storage;

/** The cells of one row of the record on their way into a table, from left to right. Null is written where a value is unknown. */
final class Cells {
    private final String table;
    private final List<@Nullable Object> values = new ArrayList<>();

    Cells(String table) {
        this.table = table;
    }

    Object[] all() {
        return values.toArray();
    }

    Cells text(@Nullable String text) {
        return add(text);
    }

    Cells whole(@Nullable Integer number) {
        return add(number);
    }

    Cells real(@Nullable Double number) {
        return add(number);
    }

    Cells yes(boolean answer) {
        return add(answer ? 1 : 0);
    }

    Cells word(Enum<?> constant) {
        return add(Storage.word(constant));
    }

    Cells date(@Nullable LocalDate date) {
        return add(date == null ? null : date.toString());
    }

    /** Two cells: the number and its unit. */
    Cells amount(@Nullable Amount amount) {
        return amount == null ? add(null).add(null) : real(amount.value()).text(Storage.word(amount.unit()));
    }

    private Cells add(@Nullable Object value) {
        values.add(kept(table, value));
        return this;
    }

    /** A cell as it goes into a table: a number is kept to the bit; the database knows one zero only, so −0 is kept as 0. */
    static @Nullable Object kept(String table, @Nullable Object cell) {
        if (cell instanceof Double number) {
            if (!Double.isFinite(number)) {
                throw new BookException("A number for " + table.replace('_', ' ') + " is " + number
                        + "; a book keeps only numbers that can be worked with.");
            }
            return number == 0 ? Double.valueOf(0) : number;
        }
        return cell;
    }
}
