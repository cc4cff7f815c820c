package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** One row of a table, read from left to right: each question takes the next cell. */
final class Row {
    private final ResultSet cells;
    private final Distributions distributions;
    private int column;

    Row(ResultSet cells, Distributions distributions) {
        this.cells = cells;
        this.distributions = distributions;
    }

    String text() throws SQLException {
        return known(maybeText());
    }

    @Nullable
    String maybeText() throws SQLException {
        return cells.getString(++column);
    }

    /** Names parted by semicolons; null where nobody has looked. */
    @Nullable
    List<String> maybeNames() throws SQLException {
        String names = maybeText();
        return names == null ? null : names.isEmpty() ? List.of() : List.of(names.split("; ", -1));
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

    @Nullable
    Boolean maybeYes() throws SQLException {
        Integer answer = maybeWhole();
        return answer == null ? null : answer == 1;
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
        return known(maybeWord(list));
    }

    <E extends Enum<E>> @Nullable E maybeWord(Class<E> list) throws SQLException {
        String word = maybeText();
        return word == null ? null : Words.read(list, word);
    }

    Amount amount() throws SQLException {
        return known(maybeAmount());
    }

    @Nullable
    Amount maybeAmount() throws SQLException {
        Double value = maybeReal();
        FarmUnit unit = maybeWord(FarmUnit.class);
        return value == null || unit == null ? null : new Amount(value, unit);
    }

    /** An empty set where the cell says that somebody has looked; null where nobody has. */
    <T> @Nullable Set<T> looked() throws SQLException {
        return yes() ? Set.of() : null;
    }

    @Nullable
    Distribution maybeDistribution() throws SQLException {
        Integer number = maybeWhole();
        return number == null ? null : distributions.distribution(number);
    }

    Distribution distribution() throws SQLException {
        return distributions.distribution(whole());
    }

    private <T> T known(@Nullable T value) throws SQLException {
        if (value == null) {
            throw new BookException("The book is damaged: "
                    + cells.getMetaData().getColumnName(column) + " is blank where a value must stand.");
        }
        return value;
    }
}
