package plumbrow.advice.gates;

import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;

/**
 * A number of the plan held to a number on the label. A limit that was not read is unknown; a label that was read and sets
 * none has 0 for a least and {@link #FREE} for a most, and then needs no plan. Exactly at the limit is within it.
 *
 * @param planned what is planned, as a noun: "boom height"
 * @param unit unit of both
 */
record Limit(Question gate, String subject, String planned, String unit) {
    /** A most that stands for none: higher than any boom, crop, wind or air temperature. */
    static final double FREE = 999;

    Finding atMost(@Nullable Double found, @Nullable Double most) {
        if (most == null) {
            return unread("highest");
        }
        if (most >= FREE) {
            return gate.clear(subject, "The label sets no highest " + planned + ".");
        }
        String allowed = "the label allows at most " + written(most);
        if (found == null) {
            return unplanned(allowed);
        }
        String has = sentence(found, allowed);
        Finding finding = Rounding.above(found, most)
                ? gate.barred(subject, has, "Bring the " + planned + " to " + written(most) + " or less.")
                : gate.clear(subject, has);
        return finding.against(found, most, unit);
    }

    Finding atLeast(@Nullable Double found, @Nullable Double least) {
        if (least == null) {
            return unread("least");
        }
        if (least == 0) {
            return gate.clear(subject, "The label sets no least " + planned + ".");
        }
        String allowed = "the label asks for at least " + written(least);
        if (found == null) {
            return unplanned(allowed);
        }
        String has = sentence(found, allowed);
        Finding finding = Rounding.below(found, least)
                ? gate.barred(subject, has, "Bring the " + planned + " to " + written(least) + " or more.")
                : gate.clear(subject, has);
        return finding.against(found, least, unit);
    }

    private Finding unread(String end) {
        return gate.unknown(
                subject,
                "The " + end + " " + planned + " has not been read on the label.",
                "Look up the " + end + " " + planned + " on the label.");
    }

    private Finding unplanned(String allowed) {
        return gate.unknown(
                subject, "The " + planned + " is not planned; " + allowed + ".", "Plan the " + planned + ".");
    }

    private String sentence(double found, String allowed) {
        return "The " + planned + " is " + written(found) + "; " + allowed + ".";
    }

    private String written(double value) {
        return Numbers.read(value) + " " + unit;
    }
}
