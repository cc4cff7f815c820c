package plumbrow.advice.weighing;

import java.time.LocalDate;
import java.util.List;

/** The answer for a season, field by field, in the order of the season's fields. */
public record Advice(int year, LocalDate asOf, String adviser, int draws, long seed, List<FieldAdvice> fields) {
    public Advice {
        fields = List.copyOf(fields);
    }

    /** Number of fields for which a program is advised. */
    public long fieldsAnswered() {
        return fields.stream().filter(field -> field.advised() != null).count();
    }

    /** Area of all fields [ac]. */
    public double acres() {
        return fields.stream().mapToDouble(field -> field.field().acres()).sum();
    }

    /** Mean gain of the advised programs over the baselines, all fields with an answer [$]. */
    public double advisedGainUsd() {
        return fields.stream().mapToDouble(FieldAdvice::advisedGainUsd).sum();
    }
}
