package plumbrow.advice.tank;

import org.jspecify.annotations.Nullable;

/**
 * A limit of the hour that a state, a label's special words or the farm itself sets, beside what the sheet of terms holds.
 *
 * @param state two-letter code of the state whose rule it is; null where it is of a label or the farm's own
 * @param product the product it is for; null for every spray
 * @param least least value allowed, {@code most} most; null for no such end
 * @param source where it stands
 */
public record HourLimit(
        @Nullable String state,
        @Nullable String product,
        Measure measure,
        @Nullable Double least,
        @Nullable Double most,
        String source) {
    /** What is limited. */
    public enum Measure {
        WIND("wind", "mph"),
        AIR("air temperature", "°F"),
        DELTA_T("delta T", "°C"),
        AFTER_SUNRISE("hours after sunrise", "h"),
        BEFORE_SUNSET("hours before sunset", "h"),
        RAIN_FREE("hours without rain", "h");

        private final String word;
        private final String unit;

        Measure(String word, String unit) {
            this.word = word;
            this.unit = unit;
        }

        public String word() {
            return word;
        }

        public String unit() {
            return unit;
        }
    }
}
