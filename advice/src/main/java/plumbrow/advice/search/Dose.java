package plumbrow.advice.search;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.SprayPlan;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.quantity.Amount;

/**
 * A product at a rate in a window.
 *
 * @param number the pass number it goes by during the search, its own in the field
 * @param injuryPct crop injury that the season's courses state for it [%]
 * @param plan how it is sprayed, its course, pass and tank not counting; null where no course says
 */
record Dose(
        int number,
        String product,
        Amount rate,
        Law injuryPct,
        @Nullable SprayPlan plan) {
    String text() {
        return product + " " + rate.text();
    }
}
