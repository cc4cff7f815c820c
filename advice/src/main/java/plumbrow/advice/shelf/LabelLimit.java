package plumbrow.advice.shelf;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * One more thing that a label or its registration says, by its kind. Every row holds.
 *
 * @param crop the crop it is for; null for every crop
 * @param value what the kind asks for: a day of the year as "06-12", a date, a number, names parted by semicolons, or words
 * @param source the page of the label
 */
public record LabelLimit(String product, @Nullable Crop crop, Kind kind, String value, String source) {

    /** A day of the year as "06-12". */
    public static Optional<MonthDay> dayOfYear(String text) {
        try {
            return Optional.of(MonthDay.parse("--" + text.strip()));
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }

    /** Stands for no day at all: a product of which no stocks may be used. */
    public static final String NONE = "none";

    /** A date as "2026-12-31". */
    public static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }

    /** A number, 0 or more. */
    public static OptionalDouble number(String text) {
        return text.strip().matches("\\d{1,9}(\\.\\d{1,6})?")
                ? OptionalDouble.of(Double.parseDouble(text.strip()))
                : OptionalDouble.empty();
    }

    /** The names of a value that parts them by semicolons. */
    public List<String> names() {
        return Arrays.stream(value.split(";"))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /** What a row asks. */
    public enum Kind {
        NOT_BEFORE("not before", Form.DAY),
        NOT_AFTER("not after", Form.DAY),
        LEAST_DAYS_AFTER_PLANTING("least days after planting", Form.NUMBER),
        MOST_DAYS_AFTER_PLANTING("most days after planting", Form.NUMBER),
        ONLY_COUNTIES("only in counties", Form.NAMES),
        ONLY_PESTS("only against", Form.NAMES),
        NOZZLES("only with nozzles", Form.NAMES),
        GROUND_WATER_FT("least feet to ground water", Form.NUMBER),
        /** The least carrier volume from the air [gal/ac]. */
        AIR_GAL_AC("least gallons an acre from the air", Form.NUMBER),
        /** The registration is cancelled; the last day on which stocks bought before may be used, or none. */
        CANCELLED("cancelled, stocks until", Form.DATE_OR_NONE),
        /** The use stands on a supplemental label; its last day. */
        SUPPLEMENTAL("supplemental label until", Form.DATE),
        /** What the label was read for and prints no maximum of. */
        NO_MAXIMUM("no maximum printed", Form.NAMES),
        /** Hours after the application within which it must be worked in. */
        WORKED_IN_H("worked in within hours", Form.NUMBER),
        /** What people wear who go in before the restricted-entry interval is over. */
        EARLY_ENTRY_WEAR("early entry wears", Form.NAMES),
        /** Workers are told by word of mouth and by signs, both. */
        SIGNS_AND_WORD("signs and word of mouth", Form.WORDS),
        CHEMIGATION("chemigation", Form.WORDS),
        HOURS("hours of day", Form.WORDS),
        INVERSION("inversion", Form.WORDS),
        DUTY("duty", Form.WORDS);

        private final String word;
        private final Form form;

        Kind(String word, Form form) {
            this.word = word;
            this.form = form;
        }

        public String word() {
            return word;
        }

        public Form form() {
            return form;
        }

        /** Whether a row answers what another question leaves unknown or barred, and so may better it. */
        public boolean answers() {
            return this == AIR_GAL_AC || this == NO_MAXIMUM || this == WORKED_IN_H || this == CHEMIGATION;
        }
    }

    /** What {@link Kind#NO_MAXIMUM} may say beside active ingredients. */
    public static final String APPLICATIONS = "applications";

    public static final String SEASON_AMOUNT = "season amount";

    /** How the value of a kind is written. */
    public enum Form {
        DAY("a day of the year as month and day, such as 06-12"),
        DATE("a date, such as 2026-12-31"),
        DATE_OR_NONE("a date, such as 2026-12-31, or none where no stocks may be used"),
        NUMBER("a number, 0 or more"),
        NAMES("names parted by semicolons"),
        WORDS("what the label says, in its words");

        private final String words;

        Form(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
