package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.science.figure.Status;

/**
 * The one list of printed sources, in {@code sources.csv}. A figure cites them by key in brackets, "data of [nagy-1987]"; a
 * person reads them in full.
 */
public final class Sources {
    static final String FILE = "sources.csv";

    private static final List<String> COLUMNS = List.of("key", "author", "year", "title", "about", "where", "status");
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(?:[.-][a-z0-9]+)*");
    private static final Pattern CITED = Pattern.compile("\\[(" + KEY + ")]");
    private static final Map<String, Source> ALL = packed();

    private Sources() {}

    /** Every source, by key. */
    public static List<Source> all() {
        return List.copyOf(ALL.values());
    }

    /** The sources that a text cites, in its order. */
    public static List<Source> in(String cited) {
        return CITED.matcher(cited).results().map(Sources::named).toList();
    }

    /** The text with each source written out: author, year, title and where it is found. */
    public static String full(String cited) {
        return written(cited, Source::full);
    }

    /** The text with each source by author and year, for a table beside which the list stands. */
    public static String brief(String cited) {
        return written(cited, Source::brief);
    }

    private static String written(String cited, Function<Source, String> words) {
        return CITED.matcher(cited).replaceAll(key -> Matcher.quoteReplacement(words.apply(named(key))));
    }

    private static Source named(MatchResult cited) {
        Source source = ALL.get(cited.group(1));
        if (source == null) {
            throw new IllegalArgumentException(FILE + " has no source " + cited.group(1));
        }
        return source;
    }

    private static Map<String, Source> packed() {
        List<Trouble> troubles = new ArrayList<>();
        Map<String, Source> sources = read(Packed.text(FILE), troubles);
        if (!troubles.isEmpty()) {
            throw new IllegalStateException(troubles.get(0).sentence());
        }
        return sources;
    }

    /** The sound rows of a text; what is wrong with the others is added to the troubles. */
    static Map<String, Source> read(String text, List<Trouble> troubles) {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (Row row : Csv.rows(FILE, text, COLUMNS, troubles)) {
            String key = row.needed("key", "a key such as nagy-1987");
            if (!KEY.matcher(key).matches() || sources.containsKey(key)) {
                row.object("key", "a key of its own, in small letters, figures, dots and hyphens");
            }
            row.needed("author", "who wrote or published it");
            if (row.text("title").isEmpty() == row.text("about").isEmpty()) {
                row.object("title", "either the title as printed or what it is about");
            }
            Status status = switch (row.text("status")) {
                case "verified" -> Status.VERIFIED;
                case "memory" -> Status.MEMORY;
                default -> {
                    row.object("status", "verified or memory");
                    yield Status.MEMORY;
                }
            };
            if (row.sound()) {
                sources.put(
                        key,
                        new Source(
                                key,
                                row.text("author"),
                                row.text("year"),
                                row.text("title"),
                                row.text("about"),
                                row.text("where"),
                                status));
            }
        }
        return sources;
    }
}
