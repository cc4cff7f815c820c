package plumbrow.app.log;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.names.Near;
import plumbrow.advice.season.Season;
import plumbrow.app.book.LogLine;

/** The lines of one field. A field that neither the season nor the log knows has no empty log: it is a slip. */
public final class LogOfField {
    private LogOfField() {}

    /** The lines of a field, or all where none is asked for; empty where nobody knows the field. */
    public static Optional<List<LogLine>> lines(List<LogLine> log, Optional<Season> season, @Nullable String field) {
        if (field == null) {
            return Optional.of(log);
        }
        return known(log, season).contains(field)
                ? Optional.of(log.stream()
                        .filter(line -> line.done().field().equals(field))
                        .toList())
                : Optional.empty();
    }

    /** "Neither the season nor the log has a field 'South Slouhg'; did you mean South Slough?" */
    public static String unknown(List<LogLine> log, Optional<Season> season, String field) {
        String near = Near.suggested(field, known(log, season));
        return "Neither the season nor the log has a field '" + field + "'" + (near.isEmpty() ? "." : near);
    }

    private static Set<String> known(List<LogLine> log, Optional<Season> season) {
        Set<String> known = new TreeSet<>();
        season.ifPresent(one -> one.fields().stream().map(Field::name).forEach(known::add));
        log.forEach(line -> known.add(line.done().field()));
        return known;
    }
}
