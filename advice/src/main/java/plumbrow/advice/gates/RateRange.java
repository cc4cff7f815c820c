package plumbrow.advice.gates;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Ask;

/**
 * A planned rate held to the lowest and highest rate of a label or of a row of its table.
 *
 * @param low lowest rate per acre; null where it was not read
 * @param high highest rate per acre; null where it was not read
 * @param lessForbidden whether the label forbids less than the lowest
 * @param on what the rates are for: the crop, or the crop on a kind of soil
 */
record RateRange(
        Question gate,
        Application application,
        @Nullable Amount low,
        @Nullable Amount high,
        Ask lessForbidden,
        String on,
        String source) {
    private static final String LESS_IS_LAWFUL = "7 U.S.C. 136(ee), value from memory";

    Finding judge() {
        Amount rate = application.rate();
        if (rate == null) {
            return unknown("No rate is planned.", "Enter the rate per acre of this pass.");
        }
        if (high == null) {
            return unknown(
                    "The highest rate on " + on + " has not been read.",
                    "Look up the highest rate per application for " + on + " on the label.");
        }
        if (!rate.comparableWith(high)) {
            return notComparable(rate, high);
        }
        Amount planned = rate.in(high.unit());
        if (Rounding.above(planned.value(), high.value())) {
            return gate.barred(
                            application.subject(),
                            planned.text() + "/ac is more than the highest labelled rate, " + high.text() + "/ac.",
                            "Cut the rate to " + high.text() + "/ac or less.")
                    .against(planned.value(), high.value(), high.unit().symbol() + "/ac")
                    .standingIn(source);
        }
        return notTooLittle(planned, high);
    }

    private Finding notTooLittle(Amount planned, Amount most) {
        if (low == null) {
            return lowestUnread(planned);
        }
        if (!planned.comparableWith(low)) {
            return notComparable(planned, low);
        }
        Amount inLowUnit = planned.in(low.unit());
        return Rounding.below(inLowUnit.value(), low.value()) ? less(inLowUnit, low) : within(planned, most);
    }

    private Finding within(Amount planned, Amount most) {
        return gate.clear(
                        application.subject(),
                        planned.text() + "/ac is within the label, at most " + most.text() + "/ac.")
                .against(planned.value(), most.value(), most.unit().symbol() + "/ac")
                .standingIn(source);
    }

    private Finding less(Amount planned, Amount least) {
        String tooLittle = planned.text() + "/ac is less than the lowest labelled rate, " + least.text() + "/ac";
        Finding finding = switch (lessForbidden) {
            case YES ->
                gate.barred(
                                application.subject(),
                                tooLittle + ", and the label forbids less.",
                                "Raise the rate to " + least.text() + "/ac or more.")
                        .standingIn(source);
            case NO -> lessAllowed(tooLittle + "; the label does not forbid less.");
            case UNKNOWN ->
                unknown(
                        tooLittle + "; whether the label forbids less has not been read.",
                        "Look on the label for words that forbid less than " + least.text() + "/ac.");
        };
        return finding.against(planned.value(), least.value(), least.unit().symbol() + "/ac");
    }

    private Finding lowestUnread(Amount planned) {
        String says = planned.text() + "/ac may be less than the lowest labelled rate, which has not been read";
        return switch (lessForbidden) {
            case NO -> lessAllowed(says + "; the label does not forbid less.");
            case YES, UNKNOWN ->
                unknown(says + ".", "Look up the lowest rate for " + on + " and whether the label forbids less.");
        };
    }

    private Finding lessAllowed(String says) {
        return gate.conditional(
                        application.subject(),
                        says,
                        "Check the state's rule, the product's guarantee and resistance guidance: "
                                + "they may still ask for the full rate.")
                .standingIn(source + "; " + LESS_IS_LAWFUL);
    }

    private Finding notComparable(Amount rate, Amount limit) {
        return unknown(
                rate.text() + "/ac is " + rate.unit().dimension().words() + ", the label's " + limit.text() + "/ac is "
                        + limit.unit().dimension().words() + ".",
                "Write the rate in the label's unit.");
    }

    private Finding unknown(String says, String clears) {
        return gate.unknown(application.subject(), says, clears).standingIn(source);
    }
}
