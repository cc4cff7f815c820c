package plumbrow.documents.workbook.form;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.quantity.Amount;

/**
 * How a value of a row stands in a database, whatever database it is. What stands there comes back as the same value, also
 * where it lies outside the range that a cell may have today.
 */
public sealed interface Storage<T> {
    /** What a column of a table holds. */
    enum Type {
        TEXT,
        INTEGER,
        REAL
    }

    /** Text as it is. */
    Plain<String> TEXT = new Plain<>(Type.TEXT, text -> text, String.class::cast, null);

    /** A number as it is. */
    Plain<Double> NUMBER = new Plain<>(Type.REAL, number -> number, Double.class::cast, null);

    /** A whole number as it is. */
    Plain<Integer> WHOLE = new Plain<>(Type.INTEGER, number -> number, Integer.class::cast, null);

    /** 1 for yes, 0 for no. */
    Plain<Boolean> TRUTH = new Plain<>(
            Type.INTEGER, yes -> yes ? 1 : 0, number -> Integer.valueOf(1).equals(number), null);

    /** A day as 2026-05-04. */
    Plain<LocalDate> DAY =
            new Plain<>(Type.TEXT, LocalDate::toString, text -> LocalDate.parse(String.class.cast(text)), null);

    /**
     * One column.
     *
     * @param put the text, {@code Integer} or {@code Double} for a value; null for a blank
     * @param take the value of it; may refuse what no value is kept as by an {@code IllegalArgumentException}
     * @param ofBlank what a blank stands for; null where it stands for nothing known
     */
    record Plain<T>(
            Type type,
            Function<T, @Nullable Object> put,
            Function<Object, T> take,
            @Nullable T ofBlank) implements Storage<T> {}

    /** An amount: a column with the number and one of the same name and {@code _unit}. */
    record AmountAndUnit() implements Storage<Amount> {}

    /** An uncertain quantity, of which the column holds the number of its distribution in the season. */
    record Spread() implements Storage<Distribution> {}

    /** The outline of a field, point by point in rows of its own. */
    record Outline() implements Storage<Boundary> {}

    /** Where something lies, point by point in rows of its own. */
    record Place() implements Storage<Shape> {}

    /**
     * Several entries, in rows of their own or parted by semicolons in one column.
     *
     * @param entries the entries of a value; null where nobody knows them
     * @param of the value of entries, or of null where nobody knows them
     */
    record Many<T, E>(
            Plain<E> entry, Function<T, @Nullable List<E>> entries, Function<@Nullable List<E>, @Nullable T> of)
            implements Storage<T> {}

    /** One of the constants of a list, kept by its name in small letters with blanks between words. */
    static <E extends Enum<E>> Plain<E> word(Class<E> list) {
        Map<String, E> constants = new HashMap<>();
        Arrays.stream(list.getEnumConstants()).forEach(constant -> constants.put(word(constant), constant));
        return new Plain<>(
                Type.TEXT,
                Storage::word,
                word -> {
                    E constant = constants.get(word);
                    if (constant == null) {
                        throw new IllegalArgumentException("The book holds '" + word + "' where a word for "
                                + list.getSimpleName().toLowerCase(Locale.ROOT) + " should stand.");
                    }
                    return constant;
                },
                null);
    }

    /** The name of a constant in small letters with blanks between words. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
