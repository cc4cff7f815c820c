package plumbrow.advice.weighing;

import java.time.LocalDate;
import java.util.List;

/** The answer for a season, field by field, in the order of the season's fields. */
public record Advice(int year, LocalDate asOf, String adviser, int draws, long seed, List<FieldAdvice> fields) {
    public Advice {
        fields = List.copyOf(fields);
    }
}
