package plumbrow.bench;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;

/**
 * What a paper says in one place, written down by a person: one line of a truth file.
 *
 * @param kind name of a {@code ValueKind} or {@code LabelKind}, or SECTION
 * @param required false where the paper may be read so and need not be
 * @param alternatives ways to put it, each the fields of the value in the order of its record; a field that is left out at
 *     the end, or *, is not compared
 */
record TruthRow(String kind, boolean required, List<List<String>> alternatives) {
    private static final String ANY = "*";
    private static final double CLOSE = 1e-6;
    private static final Pattern AMOUNT = Pattern.compile("(?<sign>[<>≤≥]|about|)\\s*(?<low>-?[\\d.,]+(?:e-?\\d+)?)"
            + "(?:\\s*(?:–|\\.\\.)\\s*(?<high>-?[\\d.,]+(?:e-?\\d+)?))?(?<unit>[^@,;]*)"
            + "(?:@\\s*(?<celsius>-?[\\d.]+)\\s*°?C?)?(?:[,;]\\s*(?<hours>[\\d.]+)\\s*h)?(?:[,;]\\s*(?<method>.*))?");

    TruthRow {
        alternatives = List.copyOf(alternatives);
    }

    /**
     * Of a line "kind, tab, value, tab, note": fields are parted by " | ", alternatives of the whole by " || ", of one field by
     * " ~ ", and a kind with ? before it is not required.
     */
    static TruthRow of(String line) {
        String[] columns = line.split("\t", -1);
        if (columns.length < 2) {
            throw new IllegalArgumentException("No tab between kind and value: " + line);
        }
        boolean required = !columns[0].startsWith("?");
        List<List<String>> alternatives = new ArrayList<>();
        for (String way : columns[1].split("\\s*\\|\\|\\s*", -1)) {
            alternatives.add(List.of(way.strip().split("\\s*\\|\\s*", -1)));
        }
        return new TruthRow(required ? columns[0] : columns[0].substring(1), required, alternatives);
    }

    /** Whether a value that was read says the same. */
    boolean fits(Record content) {
        List<@Nullable Object> fields = fields(content);
        return alternatives.stream().anyMatch(way -> fits(way, fields));
    }

    String words() {
        return kind + " "
                + String.join(
                        " || ",
                        alternatives.stream()
                                .map(way -> String.join(" | ", way))
                                .toList());
    }

    private static boolean fits(List<String> way, List<@Nullable Object> fields) {
        for (int i = 0; i < way.size(); i++) {
            if (!way.get(i).equals(ANY) && (i >= fields.size() || !fits(way.get(i), fields.get(i)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(String said, @Nullable Object field) {
        if (said.contains(" ~")) {
            return Arrays.stream(said.split(" ~ ?", -1)).anyMatch(each -> fits(each, field));
        }
        if (field == null) {
            return said.isEmpty() || said.equals("-");
        }
        if (field instanceof Amount amount) {
            return fits(said, amount);
        }
        if (field instanceof Record inner) {
            List<@Nullable Object> fields = fields(inner);
            return said.isEmpty()
                    ? fields.stream()
                            .allMatch(each -> each == null || each.toString().isEmpty())
                    : plain(inner.toString()).contains(plain(said)) || fits(said, fields.get(0));
        }
        String read = field.toString();
        return plain(said).equals(plain(read));
    }

    private static boolean fits(String said, Amount read) {
        Matcher amount = AMOUNT.matcher(said.replace(",", "").replace(";", ","));
        if (!amount.matches()) {
            return false;
        }
        String high = amount.group("high");
        Amount.Qualifier sign = high != null
                ? Amount.Qualifier.RANGE
                : switch (amount.group("sign")) {
                    case "<" -> Amount.Qualifier.LESS_THAN;
                    case ">" -> Amount.Qualifier.MORE_THAN;
                    case "≤" -> Amount.Qualifier.AT_MOST;
                    case "≥" -> Amount.Qualifier.AT_LEAST;
                    case "about" -> Amount.Qualifier.ABOUT;
                    default -> Amount.Qualifier.EXACTLY;
                };
        double low = Double.parseDouble(amount.group("low"));
        String celsius = amount.group("celsius");
        String hours = amount.group("hours");
        String method = amount.group("method");
        Amount.Conditions under = read.conditions();
        return read.qualifier() == sign
                && close(read.low(), low)
                && close(read.high(), high == null ? low : Double.parseDouble(high))
                && unit(read.unit()).equals(unit(amount.group("unit")))
                && (celsius == null || (under.celsius() != null && close(under.celsius(), Double.parseDouble(celsius))))
                && (hours == null
                        ? under.hours() == null
                        : under.hours() != null && close(under.hours(), Double.parseDouble(hours)))
                && (method == null || plain(under.method()).contains(plain(method)));
    }

    private static boolean close(double one, double other) {
        return Math.abs(one - other) <= CLOSE * Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
    }

    private static String unit(String unit) {
        return unit.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d%<>]+", "");
    }

    private static List<@Nullable Object> fields(Record record) {
        List<@Nullable Object> fields = new ArrayList<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            try {
                component.getAccessor().setAccessible(true);
                fields.add(component.getAccessor().invoke(record));
            } catch (IllegalAccessException | InvocationTargetException refused) {
                throw new IllegalStateException(refused);
            }
        }
        return fields;
    }
}
