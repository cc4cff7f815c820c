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

    Amount amount() throws SQLException {
        return new Amount(real(), UNIT.take().apply(text()));
    }

    private <T> T known(@Nullable T value) throws SQLException {
        if (value == null) {
            throw new BookException("The book is damaged: "
                    + cells.getMetaData().getColumnName(column) + " is blank where a value must stand.");
        }
        return value;
    }
}
