package plumbrow.app.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;

/** The cells of one row on their way into a table, from left to right. Null is written where a value is unknown. */
final class Cells {
    private final String table;
    private final Distributions distributions;
    private final List<@Nullable Object> values = new ArrayList<>();

    Cells(String table, Distributions distributions) {
        this.table = table;
        this.distributions = distributions;
    }

    Object[] all() {
        return values.toArray();
    }

    Cells text(@Nullable String text) {
        return add(text);
    }

    /** Names parted by semicolons, which no name holds; empty text for none, null where nobody has looked. */
    Cells names(@Nullable List<String> names) {
        return add(names == null ? null : String.join("; ", names));
    }

    Cells whole(@Nullable Integer number) {
        return add(number);
    }

    /** A number, kept to the bit; the database knows one zero only, so −0 is kept as 0. */
    Cells real(@Nullable Double number) {
        if (number != null && !Double.isFinite(number)) {
            throw new BookException("A number for " + table.replace('_', ' ') + " is " + number
                    + "; a book keeps only numbers that can be worked with.");
        }
        return add(number != null && number == 0 ? Double.valueOf(0) : number);
    }

    Cells yes(boolean answer) {
        return add(answer ? 1 : 0);
    }

    Cells maybeYes(@Nullable Boolean answer) {
        return answer == null ? add(null) : yes(answer);
    }

    Cells date(@Nullable LocalDate date) {
        return add(date == null ? null : date.toString());
    }

    Cells word(@Nullable Enum<?> constant) {
        return add(constant == null ? null : Words.of(constant));
    }

    /** Two cells: the number and its unit. */
    Cells amount(@Nullable Amount amount) {
        return amount == null ? add(null).add(null) : real(amount.value()).word(amount.unit());
    }

    /** One cell with the number under which the distribution stands in the distribution table. */
    Cells distribution(Distribution distribution) {
        return add(distributions.number(distribution));
    }

    /** The same where there may be none. */
    Cells maybeDistribution(@Nullable Distribution distribution) {
        return distribution == null ? add(null) : distribution(distribution);
    }

    private Cells add(@Nullable Object value) {
        values.add(value);
        return this;
    }
}
