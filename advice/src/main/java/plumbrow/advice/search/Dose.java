package plumbrow.advice.search;

import plumbrow.advice.outlook.Law;
import plumbrow.advice.quantity.Amount;

/**
 * A product at a rate in a window.
 *
 * @param number the pass number it goes by during the search, its own in the field
 * @param injuryPct crop injury that the season's courses state for it [%]
 */
record Dose(int number, String product, Amount rate, Law injuryPct) {
    String text() {
        return product + " " + rate.text();
    }
}
