package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumbrow.science.figure.Numbers;

/**
 * The ratings found for one question.
 *
 * @param onSusceptible rows of the crop, on plants not called resistant
 * @param onResistant rows of the crop on resistant biotypes: never mixed with the others
 * @param elsewhere rows of other crops, fallow or pots, for want of better
 */
public record Ratings(List<Rating> onSusceptible, List<Rating> onResistant, List<Rating> elsewhere) {
    private static final double SINGLE_MEAN_DOWN = 10;

    /** Whether nothing is published here on this crop: unknown, not zero. */
    public boolean unknown() {
        return onSusceptible.isEmpty() && onResistant.isEmpty();
    }

    /** Lowest control [%] that a row on susceptible plants gives; empty where none has a low end. */
    public OptionalDouble lowestPercent() {
        return onSusceptible.stream()
                .flatMapToDouble(row -> row.lowPercent().stream())
                .min();
    }

    /** Highest control [%] that a row on susceptible plants gives. */
    public OptionalDouble highestPercent() {
        return onSusceptible.stream().mapToDouble(Rating::highPercent).max();
    }

    /** "12 to 83 %, 4 ratings", or that it is unknown. */
    public String spread() {
        if (onSusceptible.isEmpty()) {
            return unknown() ? "unknown: no rating is kept, which is not a rating of zero" : "on resistant plants only";
        }
        String low =
                lowestPercent().stream().mapToObj(Ratings::whole).findFirst().orElse("no low end");
        String high = whole(highestPercent().orElseThrow());
        String percents = low.equals(high) ? high : low + " to " + high;
        return percents + " %, " + onSusceptible.size() + (onSusceptible.size() == 1 ? " rating" : " ratings");
    }

    /** What to mind when these are used. */
    public List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (!onResistant.isEmpty()) {
            cautions.add(
                    "Some rows are on resistant plants and are kept apart: suspected resistance needs its own result.");
        }
        if (unknown() && !elsewhere.isEmpty()) {
            cautions.add("Rows of other crops, fallow or pots exist; they are no rating for this crop.");
        }
        if (onSusceptible.size() == 1 && singleMean(onSusceptible.get(0))) {
            cautions.add("One mean is no range: common practice, without a source, widens it by about "
                    + (int) SINGLE_MEAN_DOWN + " points down and 5 up.");
        }
        if (onSusceptible.stream().anyMatch(row -> !row.backing().sure())) {
            cautions.add("Not every row is fully verified: read its status.");
        }
        if (onSusceptible.stream().anyMatch(row -> row.lowPercent().isEmpty())) {
            cautions.add("A row gives only the best mean, which is not to be expected.");
        }
        cautions.add("For susceptible plants at the labelled rate and size. The local guide and the label decide.");
        return cautions;
    }

    private static boolean singleMean(Rating row) {
        return row.lowPercent().isPresent() && row.lowPercent().getAsDouble() == row.highPercent();
    }

    private static String whole(double percent) {
        return Numbers.plain(percent);
    }
}
