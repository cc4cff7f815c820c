package plumbrow.app.desk.shown;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/**
 * One page of a long list.
 *
 * @param lines those that are shown
 * @param first number of the first of them in the list, from 1
 * @param of lines in the list
 * @param page which page, from 1
 * @param pages how many there are, at least 1
 */
public record Part<T>(List<T> lines, int first, int of, int page, int pages) {
    /** Lines on a page. */
    public static final int LINES = 50;

    public Part {
        lines = List.copyOf(lines);
    }

    /** A page of a list; a page that isn't there gives the nearest. */
    public static <T> Part<T> of(List<T> all, int asked) {
        return of(all, asked, LINES);
    }

    /** The same with another number of lines on a page. */
    public static <T> Part<T> of(List<T> all, int asked, int lines) {
        int pages = Math.max(1, (all.size() + lines - 1) / lines);
        int page = Math.max(1, Math.min(pages, asked));
        int from = (page - 1) * lines;
        return new Part<>(all.subList(from, Math.min(all.size(), from + lines)), from + 1, all.size(), page, pages);
    }

    /** Whether a name holds what somebody looks for, whatever the size of its letters. */
    public static Predicate<String> holding(String asked) {
        String bare = asked.strip().toLowerCase(Locale.ROOT);
        return name -> name.toLowerCase(Locale.ROOT).contains(bare);
    }

    /** The fields whose name, or whose farm's or grower's, holds what somebody looks for; all where that is blank. */
    public static List<Field> found(Season season, String asked) {
        if (asked.isBlank()) {
            return season.fields();
        }
        Predicate<String> holds = holding(asked);
        Set<String> farms = season.farms().stream()
                .filter(farm -> holds.test(farm.name()) || holds.test(farm.grower()))
                .map(Farm::name)
                .collect(Collectors.toSet());
        return season.fields().stream()
                .filter(field -> farms.contains(field.farm()) || holds.test(field.name()))
                .toList();
    }

    /** "51 to 100 of 2,000". */
    public String words() {
        return Shown.number(first) + " to " + Shown.number(first + lines.size() - 1) + " of " + Shown.number(of);
    }
}
