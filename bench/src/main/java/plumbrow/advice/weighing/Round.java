package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * One timed round.
 *
 * @param wallNs on the clock on the wall [ns]: what a person waits, and what others on the machine stretch
 * @param processorNs of the processor, by the thread that works [ns]
 */
public record Round(long wallNs, long processorNs) {
    public static double median(List<Round> rounds, ToLongFunction<Round> time) {
        long[] sorted = rounds.stream().mapToLong(time).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2.0;
    }

    public static double lowest(List<Round> rounds, ToLongFunction<Round> time) {
        return Arrays.stream(rounds.stream().mapToLong(time).toArray()).min().orElseThrow();
    }
}
