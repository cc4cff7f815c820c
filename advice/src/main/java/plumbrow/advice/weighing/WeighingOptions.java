package plumbrow.advice.weighing;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;

/**
 * How to weigh.
 *
 * @param draws number of draws of the assumptions, 100 to 1,000,000
 * @param seed from which all draws come: same season, seed and draws give the same advice to the bit
 * @param threads number of fields weighed at once, at least 1; changes the time, never the answer
 * @param changed uncertain inputs set otherwise than the season says, by the id of {@link UncertainInput}
 * @param later what a program costs in the years after it, taken off its margin; null counts this season alone
 * @param equal when programs are told as about equal
 * @param asIfLookedUp whether what nobody has looked up counts as if it had come out clear: what the money says by itself. The
 *     programs keep their standing, and what is barred stays barred
 */
public record WeighingOptions(
        int draws,
        long seed,
        int threads,
        Map<String, Distribution> changed,
        @Nullable LaterCost later,
        EqualRule equal,
        boolean asIfLookedUp) {
    /** What is used where nobody says otherwise. */
    public static final WeighingOptions DEFAULT =
            new WeighingOptions(10_000, 20_260_401L, Runtime.getRuntime().availableProcessors(), Map.of());

    /** This season alone. */
    public WeighingOptions(int draws, long seed, int threads, Map<String, Distribution> changed) {
        this(draws, seed, threads, changed, null, EqualRule.DEFAULT, false);
    }

    public WeighingOptions {
        if (draws < 100 || draws > 1_000_000) {
            throw new IllegalArgumentException("the number of draws is " + draws + "; expected 100 to 1,000,000");
        }
        if (threads < 1) {
            throw new IllegalArgumentException("the number of threads is " + threads + "; expected 1 or more");
        }
        changed = Map.copyOf(changed);
    }

    public WeighingOptions withDraws(int number) {
        return new WeighingOptions(number, seed, threads, changed, later, equal, asIfLookedUp);
    }

    public WeighingOptions withSeed(long number) {
        return new WeighingOptions(draws, number, threads, changed, later, equal, asIfLookedUp);
    }

    public WeighingOptions withThreads(int number) {
        return new WeighingOptions(draws, seed, number, changed, later, equal, asIfLookedUp);
    }

    public WeighingOptions withChanged(Map<String, Distribution> distributions) {
        return new WeighingOptions(draws, seed, threads, distributions, later, equal, asIfLookedUp);
    }

    public WeighingOptions withLater(LaterCost cost) {
        return new WeighingOptions(draws, seed, threads, changed, cost, equal, asIfLookedUp);
    }

    public WeighingOptions withEqual(EqualRule rule) {
        return new WeighingOptions(draws, seed, threads, changed, later, rule, asIfLookedUp);
    }

    /** The money by itself, as if what nobody has looked up had come out clear. */
    public WeighingOptions asIfAllLookedUp() {
        return new WeighingOptions(draws, seed, threads, changed, later, equal, true);
    }
}
