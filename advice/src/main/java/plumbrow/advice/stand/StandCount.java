package plumbrow.advice.stand;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;

/**
 * A stand that was counted after it came up poorly, for the decision to keep or to replant it.
 *
 * @param field the field
 * @param planted when the crop that stands was planted
 * @param counted when it was counted; a seed pass after this day replants
 * @param plantsPerAcre plants that live and will go on living [1/ac]
 * @param gapsLossPct yield lost besides to gaps and uneven plants [% of the best yield]; null where nobody judged it
 * @param paymentUsdPerAcre what the insurance pays the operator for each acre replanted [$/ac]; null where nobody asked
 * @param source who counted and where
 */
public record StandCount(
        String field,
        LocalDate planted,
        LocalDate counted,
        Distribution plantsPerAcre,
        @Nullable Distribution gapsLossPct,
        @Nullable Double paymentUsdPerAcre,
        String source) {
    public StandCount {
        if (counted.isBefore(planted)) {
            throw new IllegalArgumentException("a stand is counted after it was planted, not on " + counted);
        }
    }
}
