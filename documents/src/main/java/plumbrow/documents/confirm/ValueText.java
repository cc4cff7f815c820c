package plumbrow.documents.confirm;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.form.Attribute;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Storage;

/**
 * A value of a row as one text, in which the record keeps what a person decided, and back. It reads and writes as the value's own
 * column does; an amount has its unit behind it.
 */
final class ValueText {
    private static final String NONE = "none";
    private static final String BETWEEN = "; ";
    /** A comma parts thousands; where it stands for a point it is no number, or 1,5 would be fifteen. */
    private static final String NUMBER = "(?:(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d*)?|\\.\\d+)";

    private static final Pattern AMOUNT = Pattern.compile("(?<value>" + NUMBER + ")\\s*(?<unit>[A-Za-z][A-Za-z. ]*)");
    private static final double LARGEST = 1e9;

    private ValueText() {}

    /** What may be typed, as the end of a sentence. */
    static String expected(Attribute<?, ?> value) {
        if (value.storage() instanceof Storage.AmountAndUnit) {
            return "an amount for an acre with its unit, such as 1.5 qt or 12 fl oz, with a point and not a comma";
        }
        return ask(value) ? "yes or no" : value.column().kind().words();
    }

    private static boolean ask(Attribute<?, ?> value) {
        return Ask.UNKNOWN.equals(value.column().fallback());
    }

    /** The text of a value; empty where it is unknown. */
    static String show(Attribute<?, ?> value, @Nullable Object known) {
        if (known == null || known == Ask.UNKNOWN) {
            return "";
        }
        if (known instanceof Amount amount) {
            return new Cell.Numeral(amount.value(), false).found() + " "
                    + amount.unit().symbol();
        }
        if (known instanceof String text) {
            return text.isEmpty() ? NONE : text;
        }
        if (known instanceof List<?> entries) {
            return entries.isEmpty()
                    ? ""
                    : Arrays.stream(cell(value, known).split(BETWEEN, -1))
                            .sorted()
                            .collect(Collectors.joining(BETWEEN));
        }
        return cell(value, known);
    }

    @SuppressWarnings("unchecked") // the column's own kind of value
    private static String cell(Attribute<?, ?> value, Object known) {
        return ((Kind<Object>) value.column().kind()).show(known).found();
    }

    /**
     * The value of a text that a person typed.
     *
     * @throws NotSoException if it isn't one, with what was expected
     */
    static Object read(Attribute<?, ?> value, String typed) {
        String text = typed.strip().replaceAll("\\s+", " ");
        Optional<?> read = text.isEmpty() ? Optional.empty() : tried(value, text);
        if (read.isEmpty() || (ask(value) && read.get() == Ask.UNKNOWN)) {
            throw new NotSoException("'" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "' is not "
                    + expected(value) + ".");
        }
        return read.get();
    }

    /**
     * The value of a text that stands in the record, also where its column would not take it any more.
     *
     * @throws NotSoException if it is none
     */
    static Object kept(Attribute<?, ?> value, String text) {
        try {
            return read(value, text);
        } catch (NotSoException outside) {
            try {
                if (value.storage() instanceof Storage.Plain<?> plain && plain.type() == Storage.Type.REAL) {
                    return Double.valueOf(text);
                } else if (value.storage() instanceof Storage.Plain<?> plain && plain.type() == Storage.Type.INTEGER) {
                    return Integer.valueOf(text);
                }
            } catch (NumberFormatException none) {
                throw outside;
            }
            throw outside;
        }
    }

    private static Optional<?> tried(Attribute<?, ?> value, String text) {
        if (value.storage() instanceof Storage.AmountAndUnit) {
            return amount(text);
        }
        if (Storage.TEXT.equals(value.storage())) {
            return Optional.of(text.equalsIgnoreCase(NONE) ? "" : text);
        }
        if (value.storage() instanceof Storage.Many<?, ?> many && Storage.TEXT.equals(many.entry())) {
            return Optional.of(Arrays.stream(text.split(";", -1))
                    .map(String::strip)
                    .filter(each -> !each.isEmpty())
                    .distinct()
                    .toList());
        }
        String plain = text.matches(NUMBER) ? text.replace(",", "") : text;
        try {
            return Optional.of(value.column().kind().read(new Cell.Written(plain)));
        } catch (Misread misread) {
            return named(value, text);
        }
    }

    /** A word by its name in full, such as very coarse for VC. */
    private static Optional<?> named(Attribute<?, ?> value, String text) {
        if (!(value.storage() instanceof Storage.Plain<?> plain)
                || value.column().kind().choices().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(plain.take().apply(text.toLowerCase(Locale.ROOT)));
        } catch (IllegalArgumentException | ClassCastException none) {
            return Optional.empty();
        }
    }

    private static Optional<Amount> amount(String text) {
        Matcher parts = AMOUNT.matcher(text.replaceAll("(?i)\\s*/\\s*ac(?:re)?s?$|\\s+per acre$", ""));
        if (!parts.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(parts.group("value").replace(",", ""));
        return FarmUnit.parse(parts.group("unit"))
                .filter(each -> each.dimension() == Dimension.VOLUME || each.dimension() == Dimension.MASS)
                .filter(each -> value <= LARGEST)
                .map(unit -> new Amount(value, unit));
    }
}
