package plumbrow.science.reference;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A duty to keep a record of pesticide applications in the United States, as a federal or state rule states it.
 *
 * @param state two letters, or "US" for federal law
 * @param role "private", "commercial", "noncommercial" or "any"
 * @param from first day on which it is in force, {@code until} the last; null for no such day
 * @param items what the record must hold, by the words of this set; empty where no duty was found
 * @param wholeList whether the whole list was seen; where it was not, a record can't be told to be complete
 * @param writeBy by when it must be written
 * @param keepYears how many years it is kept; null where not stated
 */
public record RecordDuty(
        String state,
        String role,
        Scope scope,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        List<String> items,
        boolean wholeList,
        WriteBy writeBy,
        @Nullable Integer keepYears,
        String conditions,
        Origin origin,
        Backing backing,
        int row)
        implements Entry {
    public RecordDuty {
        items = List.copyOf(items);
    }

    /** Which applications it is about. */
    public enum Scope {
        ALL("every pesticide"),
        RESTRICTED("restricted-use pesticides"),
        WPS("pesticides whose label has an agricultural-use box, where workers or handlers are employed"),
        ATRAZINE("pesticides with atrazine"),
        /** That no duty was found: not that there is none. */
        NONE("none found in the sources used");

        private final String words;

        Scope(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        static Optional<Scope> find(String text) {
            for (Scope scope : values()) {
                if (scope.name().toLowerCase(Locale.ROOT).equals(text)) {
                    return Optional.of(scope);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * By when a record must be written.
     *
     * @param kind how it is counted
     * @param number of days or hours; 0 where none are counted
     */
    public record WriteBy(Kind kind, int number) {
        /** How it is counted. */
        public enum Kind {
            /** By midnight of the day on which it ended. */
            SAME_DAY,
            /** So many days after the day of the application, which is day 0. */
            DAYS,
            /** Monday to Friday, holidays not left out. */
            BUSINESS_DAYS,
            /** Hours after the end, elapsed. */
            HOURS,
            AT_COMPLETION,
            /** The rule names no time. */
            NONE_STATED,
            /** The rule was not seen whole. */
            NOT_SEEN,
            NOT_APPLICABLE
        }

        static final String WORDS =
                "same day, N days, N business days, N hours, at completion, none stated, not seen or n/a";

        static Optional<WriteBy> read(String text) {
            if (text.matches("\\d{1,3} (days|business days|hours)")) {
                int number = Integer.parseInt(text.substring(0, text.indexOf(' ')));
                return Optional.of(new WriteBy(
                        text.endsWith("business days")
                                ? Kind.BUSINESS_DAYS
                                : text.endsWith("days") ? Kind.DAYS : Kind.HOURS,
                        number));
            }
            return switch (text) {
                case "same day" -> Optional.of(new WriteBy(Kind.SAME_DAY, 0));
                case "at completion" -> Optional.of(new WriteBy(Kind.AT_COMPLETION, 0));
                case "none stated" -> Optional.of(new WriteBy(Kind.NONE_STATED, 0));
                case "not seen" -> Optional.of(new WriteBy(Kind.NOT_SEEN, 0));
                case "n/a" -> Optional.of(new WriteBy(Kind.NOT_APPLICABLE, 0));
                default -> Optional.empty();
            };
        }

        /** "within 14 days". */
        public String words() {
            return switch (kind) {
                case SAME_DAY -> "on the day of the application";
                case DAYS -> "within " + number + " days";
                case BUSINESS_DAYS -> "within " + number + " business days";
                case HOURS -> "within " + number + " hours of the end";
                case AT_COMPLETION -> "before or on completion";
                case NONE_STATED -> "no time stated";
                case NOT_SEEN -> "time not seen in the sources used";
                case NOT_APPLICABLE -> "";
            };
        }
    }

    /** Whether it is in force on a day. */
    public boolean inForce(LocalDate day) {
        return (from == null || !day.isBefore(from)) && (until == null || !day.isAfter(until));
    }

    @Override
    public String about() {
        return state + " " + role + ", " + scope.words() + (until == null ? "" : ", until " + until);
    }

    @Override
    public String says() {
        return items.isEmpty() ? "no duty found" : String.join(" ", items);
    }
}
