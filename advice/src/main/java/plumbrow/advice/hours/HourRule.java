package plumbrow.advice.hours;

import org.jspecify.annotations.Nullable;

/**
 * One rule for the hour of a spray, and whose it is. A rule only ever takes hours away: of several on one thing each holds.
 *
 * @param owner who sets it, in words: "label of Ironweir 4L", "Iowa", "good practice"
 * @param least least value allowed, {@code most} most; null for no such end
 * @param unread what of it has not been read; then every hour is unknown to it. Empty where it has been
 * @param source where it stands
 */
public record HourRule(
        Kind kind,
        Whose whose,
        String owner,
        @Nullable Double least,
        @Nullable Double most,
        String unread,
        String source) {
    /** What a rule looks at, with the letter that stands for it in the picture. */
    public enum Kind {
        WIND("wind", 'W'),
        INVERSION("time of inversions", 'I'),
        DARK("darkness", 'N'),
        RAIN_NOW("rain", 'R'),
        RAIN_FREE("rain too soon after", 'F'),
        DELTA_T("delta T", 'D'),
        AIR("air temperature", 'T'),
        DEW("dew on the leaves", 'L'),
        GROUND("wet ground", 'G');

        private final String word;
        private final char letter;

        Kind(String word, char letter) {
            this.word = word;
            this.letter = letter;
        }

        public String word() {
            return word;
        }

        public char letter() {
            return letter;
        }
    }

    /** Whose rules there are; the label and the state are distribution. */
    public enum Whose {
        LABEL("label"),
        STATE("state"),
        PRACTICE("good practice"),
        OWN("own rule");

        private final String word;

        Whose(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static HourRule unread(Kind kind, String owner, String unread, String source) {
        return new HourRule(kind, Whose.LABEL, owner, null, null, unread, source);
    }
}
