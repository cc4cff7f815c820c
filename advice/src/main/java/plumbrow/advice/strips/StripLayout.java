package plumbrow.advice.strips;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import plumbrow.science.trials.ReplicatesNeeded;

/**
 * Where each treatment goes: blocks side by side, the order in each drawn by lot.
 *
 * @param blocks for each block, from one side of the field to the other, the treatments in their order; the first treatment
 *     named is the check
 * @param seed the lot; the same gives the same order
 * @param chance of showing the gain that matters; null where gain or noise was not told
 * @param needed blocks for a chance of 80 of 100; null as above
 */
public record StripLayout(
        List<List<String>> blocks,
        long seed,
        @Nullable Double chance,
        @Nullable Long needed) {
    private static final double ALPHA = .05;
    private static final double POWER = .8;
    private static final int MOST = 100;

    /**
     * Draws the order.
     *
     * @param treatments two or more different, the check first
     * @param blocks two or more, at most 100
     * @param gainBuPerAcre the difference that matters, such as the break-even gain [bu/ac]; null where not told
     * @param stripSdBuPerAcre what strips side by side vary [bu/ac]; null where not told
     * @throws IllegalArgumentException with a sentence for the person
     */
    public static StripLayout drawn(
            List<String> treatments,
            int blocks,
            long seed,
            @Nullable Double gainBuPerAcre,
            @Nullable Double stripSdBuPerAcre) {
        if (treatments.size() < 2
                || treatments.size() > MOST
                || new HashSet<>(treatments).size() != treatments.size()) {
            throw new IllegalArgumentException("The treatments are " + String.join(", ", treatments)
                    + "; expected two to 100 that differ, the check first.");
        }
        if (blocks < 2 || blocks > MOST) {
            throw new IllegalArgumentException("There would be " + blocks
                    + " blocks; expected 2 to 100. One strip each way is a demonstration, not a trial.");
        }
        if ((gainBuPerAcre != null && !(gainBuPerAcre > 0)) || (stripSdBuPerAcre != null && !(stripSdBuPerAcre > 0))) {
            throw new IllegalArgumentException("Expected a gain that matters and a spread of strips above 0 bu/ac.");
        }
        Random lot = new Random(seed);
        List<List<String>> drawn = new ArrayList<>();
        for (int b = 0; b < blocks; b++) {
            List<String> order = new ArrayList<>(treatments);
            Collections.shuffle(order, lot);
            drawn.add(List.copyOf(order));
        }
        if (gainBuPerAcre == null || stripSdBuPerAcre == null) {
            return new StripLayout(List.copyOf(drawn), seed, null, null);
        }
        double inSds = gainBuPerAcre / (stripSdBuPerAcre * Math.sqrt(2));
        double needed = ReplicatesNeeded.exact(inSds, ALPHA, POWER);
        return new StripLayout(
                List.copyOf(drawn),
                seed,
                ReplicatesNeeded.power(inSds, blocks, ALPHA),
                Double.isFinite(needed) ? Long.valueOf((long) Math.ceil(needed - 1e-7)) : null);
    }
}
