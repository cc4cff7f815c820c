package plumbrow.advice.shelf;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * One more thing that a label asks, by its kind. Every row holds.
 *
 * @param crop the crop it is for; null for every crop
 * @param value what the kind asks for: a day as "06-12", a number, names parted by semicolons, or words
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
    }

    /** How the value of a kind is written. */
    public enum Form {
        DAY("a day of the year as month and day, such as 06-12"),
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
