package plumbrow.science.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import plumbrow.science.figure.Status;

/** One row while it is read: cells by column, and what is wrong with them. */
final class Row {
    private final String file;
    private final int number;
    private final Map<String, String> cells;
    private final List<Trouble> troubles;
    private final int before;

    Row(String file, int number, Map<String, String> cells, List<Trouble> troubles) {
        this.file = file;
        this.number = number;
        this.cells = cells;
        this.troubles = troubles;
        this.before = troubles.size();
    }

    int number() {
        return number;
    }

    /** The text of a cell, which may be empty. */
    String text(String column) {
        return cells.getOrDefault(column, "");
    }

    /** The text of a cell that may not be empty. */
    String needed(String column, String expected) {
        String text = text(column);
        if (text.isEmpty()) {
            object(column, expected);
        }
        return text;
    }

    /** The cell as something; where it can't be, that is said. */
    <T> Optional<T> as(String column, Function<String, Optional<T>> reader, String expected) {
        Optional<T> value = reader.apply(text(column));
        if (value.isEmpty()) {
            object(column, expected);
        }
        return value;
    }

    /** A number within a range; empty for an empty cell. */
    OptionalDouble number(String column, double least, double most, String expected) {
        if (text(column).isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double number = Double.parseDouble(text(column));
            if (number >= least && number <= most) {
                return OptionalDouble.of(number);
            }
        } catch (NumberFormatException notANumber) {
            // said below, as for a number out of range
        }
        object(column, expected);
        return OptionalDouble.empty();
    }

    /** Source, place and status: a source is named, and what is verified was seen somewhere. */
    Optional<Backing> backing() {
        needed("source", "the source, or the words that there is none");
        Optional<Backing> backing = as("status", Backing::read, Backing.WORDS);
        boolean verified =
                backing.filter(given -> given.status() == Status.VERIFIED).isPresent();
        if (verified && text("url").isEmpty()) {
            object("url", "the place where a verified value was seen");
        }
        return backing;
    }

    Origin origin() {
        return new Origin(text("source"), text("url"));
    }

    void object(String column, String expected) {
        troubles.add(new Trouble(file, number, column, text(column), expected));
    }

    /** Whether nothing was found wrong with this row so far. */
    boolean sound() {
        return troubles.size() == before;
    }
}
