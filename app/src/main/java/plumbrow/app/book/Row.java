package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.documents.workbook.form.Storage;

/** One row of the record, read from left to right: each question takes the next cell. */
final class Row {
    private static final Storage.Plain<FarmUnit> UNIT = Storage.word(FarmUnit.class);

    private final ResultSet cells;
    private int column;

    Row(ResultSet cells) {
        this.cells = cells;
    }

    String text() throws SQLException {
        return known(maybeText());
    }

    @Nullable
    String maybeText() throws SQLException {
        return cells.getString(++column);
    }

    double real() throws SQLException {
        return known(maybeReal());
    }

    @Nullable
    Double maybeReal() throws SQLException {
        double number = cells.getDouble(++column);
        return cells.wasNull() ? null : number;
    }

    int whole() throws SQLException {
        return known(maybeWhole());
    }

    @Nullable
    Integer maybeWhole() throws SQLException {
        int number = cells.getInt(++column);
        return cells.wasNull() ? null : number;
    }

    boolean yes() throws SQLException {
        return whole() == 1;
    }

    LocalDate date() throws SQLException {
        return known(maybeDate());
    }

    @Nullable
    LocalDate maybeDate() throws SQLException {
        String date = maybeText();
        return date == null ? null : LocalDate.parse(date);
    }

    <E extends Enum<E>> E word(Class<E> list) throws SQLException {
        return taken(Storage.word(list), text());
    }

    Amount amount() throws SQLException {
        return known(maybeAmount());
    }

    @Nullable
    Amount maybeAmount() throws SQLException {
        Double value = maybeReal();
        String unit = maybeText();
        return value == null || unit == null ? null : new Amount(value, taken(UNIT, unit));
    }

    private static <T> T taken(Storage.Plain<T> storage, String word) {
        try {
            return storage.take().apply(word);
        } catch (IllegalArgumentException unknown) {
            throw new BookException(String.valueOf(unknown.getMessage()), unknown);
        }
    }

    private <T> T known(@Nullable T value) throws SQLException {
        if (value == null) {
            throw new BookException("The book is damaged: "
                    + cells.getMetaData().getColumnName(column) + " is blank where a value must stand.");
        }
        return value;
    }
}
