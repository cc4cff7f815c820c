package plumbrow.advice.pestpage;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When a pest comes on one field.
 *
 * @param days in their order; empty where unknown
 * @param eitherWayDays by how much a flush may be early or late [d]; 0 where nobody says
 * @param source where the days come from
 * @param figure the figure behind it
 * @param reserves what to mind
 * @param lookUp where it is unknown, what is missing and where to look; else null
 */
public record Coming(
        String field,
        List<Day> days,
        int eitherWayDays,
        String source,
        @Nullable String figure,
        List<String> reserves,
        @Nullable String lookUp) {
    /** One event; no date where it does not come by the end of September. */
    public record Day(String event, @Nullable LocalDate date) {}

    public Coming {
        days = List.copyOf(days);
        reserves = List.copyOf(reserves);
    }

    static Coming unknown(String field, @Nullable String figure, String lookUp) {
        return new Coming(field, List.of(), 0, "", figure, List.of(), lookUp);
    }
}
