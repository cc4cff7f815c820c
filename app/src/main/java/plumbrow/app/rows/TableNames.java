package plumbrow.app.rows;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/** What tables and columns are called on a page: their workbook names as words, without the unit, which stands beside the box. */
public final class TableNames {
    private static final Pattern CODE_NAME = Pattern.compile("(?<![\\w/.])[a-z]+(?:_[a-z0-9]+)+(?![\\w/])");

    private TableNames() {}

    /** "Label uses". */
    public static String of(Sheet<?> sheet) {
        return capital(sheet.name().replace('_', ' '));
    }

    /** "Carrier" for carrier_gal_ac. */
    public static String of(Column<?> column) {
        Set<String> unit = unit(column.unit());
        String[] words = column.key().split("_");
        int end = words.length;
        while (end > 1 && unit.contains(words[end - 1])) {
            end--;
        }
        // "Seeds per lb" is no name without its pound.
        end = end < words.length && words[end - 1].equals("per") ? words.length : end;
        String name = String.join(" ", Arrays.copyOf(words, end));
        return capital(
                name.equals("ph") ? "pH" : name.replaceFirst("^rei\\b", "REI").replaceFirst("^phi\\b", "PHI"));
    }

    /** A text of the workbook in which names of columns are set apart as words: "price of one of “priced per”". */
    public static String words(String text) {
        return CODE_NAME.matcher(text).replaceAll(name -> "“" + name.group().replace('_', ' ') + "”");
    }

    private static Set<String> unit(String unit) {
        Set<String> words = new HashSet<>(Arrays.stream(unit.toLowerCase(Locale.ROOT)
                        .replace("$", "usd/")
                        .replace("%", "pct")
                        .replace("°", "")
                        .split("[^a-z0-9]+"))
                .collect(Collectors.toSet()));
        words.remove("");
        return words;
    }

    private static String capital(String name) {
        return name.isEmpty() || name.startsWith("pH")
                ? name
                : Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
