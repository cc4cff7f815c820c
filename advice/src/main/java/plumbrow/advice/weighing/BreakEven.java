package plumbrow.advice.weighing;

import org.jspecify.annotations.Nullable;

/**
 * Where an uncertain input turns the order of the two best courses that may be advised.
 *
 * @param input id of the {@link UncertainInput}
 * @param likely its mean now
 * @param plausibleLow lowest value looked at: its 1 % point
 * @param plausibleHigh highest value looked at: its 99 % point
 * @param value where the order turns; null where it never does in that range
 * @param says one sentence
 */
public record BreakEven(
        String input,
        String label,
        String unit,
        double likely,
        double plausibleLow,
        double plausibleHigh,
        @Nullable Double value,
        String says) {}
