package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.PassKind;

/**
 * A trip for which the adviser has planned a day, as one of the field's programs has it.
 *
 * @param trip counted from 0 where a program makes several trips of the kind on that day
 * @param ways in which it can be sprayed, at least one
 * @param chargeUsdPerAcre the trip, whatever is in its tank [$/ac]
 */
record Window(PassKind kind, @Nullable LocalDate date, int trip, List<Way> ways, double chargeUsdPerAcre) {
    Window {
        ways = List.copyOf(ways);
    }
}
