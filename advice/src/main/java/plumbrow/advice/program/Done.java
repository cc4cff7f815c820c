package plumbrow.advice.program;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;

/**
 * A line of the log: what was really put on a field. It counts against season limits together with what is planned.
 *
 * @param rate per treated acre
 * @param sharePct share of the field's acres [%]
 * @param applicator who applied it, where written down
 * @param source where this stands: log, receipt, memory
 */
public record Done(
        String field,
        LocalDate date,
        String product,
        Amount rate,
        double sharePct,
        @Nullable String applicator,
        String source) {}
