package plumbrow.advice.strips;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a trial says.
 *
 * @param check the treatment that the others are held against
 * @param checkMeanBuPerAcre its mean, blocks evened out [bu/ac]
 * @param checkStrips how many strips it had
 * @param blocks number of blocks
 * @param stripSdBuPerAcre what strips of one treatment vary beyond their block [bu/ac]
 * @param cvPct the same in percent of the mean [%]
 * @param degreesOfFreedom left to judge chance by
 * @param confidence of the intervals, such as .95
 * @param compared the other treatments, in their order
 * @param doubts what speaks against taking the numbers at their word, gravest first
 */
public record StripAnswer(
        String check,
        double checkMeanBuPerAcre,
        int checkStrips,
        int blocks,
        double stripSdBuPerAcre,
        double cvPct,
        double degreesOfFreedom,
        double confidence,
        List<Compared> compared,
        List<String> doubts) {
    /**
     * A treatment beside the check.
     *
     * @param meanBuPerAcre its mean, blocks evened out [bu/ac]
     * @param gainBuPerAcre above the check, below where negative [bu/ac]
     * @param standardErrorBuPerAcre of the gain [bu/ac]
     * @param lowBuPerAcre lower end of the gain's interval [bu/ac]
     * @param highBuPerAcre its upper end [bu/ac]
     * @param p chance of a gain as far from nothing were there none, the treatment looked at alone
     * @param shown whether it differs from the check when all are held against it at once (Dunnett)
     * @param breakEvenBuPerAcre the gain that pays its cost [bu/ac]; null where cost or price was not told
     * @param chanceOfPaying that the true gain here was above that, from this trial alone
     * @param byPlace the gain with ground that changes smoothly taken out; null where places are not known or too few
     */
    public record Compared(
            String treatment,
            int strips,
            double meanBuPerAcre,
            double gainBuPerAcre,
            double standardErrorBuPerAcre,
            double lowBuPerAcre,
            double highBuPerAcre,
            double p,
            boolean shown,
            @Nullable Double breakEvenBuPerAcre,
            @Nullable Double chanceOfPaying,
            @Nullable ByPlace byPlace) {}

    /**
     * The gain by errors that go together with nearness, beside the one by blocks.
     *
     * @param chanceOfPaying as for the one by blocks
     */
    public record ByPlace(
            double gainBuPerAcre,
            double standardErrorBuPerAcre,
            @Nullable Double chanceOfPaying) {}
}
