package plumbrow.advice.search;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;

/**
 * A product at a rate in a window.
 *
 * @param number the pass number it goes by during the search, its own in the field
 * @param injuryPct crop injury that the season's programs state for it [%]
 * @param plan how it is sprayed, its program, pass and tank not counting; null where no program says
 */
record Dose(
        int number,
        String product,
        Amount rate,
        Distribution injuryPct,
        @Nullable SprayPlan plan) {
    String text() {
        return product + " " + rate.text();
    }
}
