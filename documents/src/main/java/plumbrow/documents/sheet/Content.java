package plumbrow.documents.sheet;

import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What a value says. Names that the sheet leaves out are empty, amounts null. */
public sealed interface Content {

    /** As a person would write it in one line. */
    String words();

    /** Running text, a name or a code, as printed. */
    record Text(String words) implements Content {}

    record Day(LocalDate date) implements Content {
        @Override
        public String words() {
            return date.toString();
        }
    }

    record Measured(Amount amount) implements Content {
        @Override
        public String words() {
            return amount.words();
        }
    }

    /**
     * A telephone to call when something has happened.
     *
     * @param purpose what the sheet calls the number, such as "24-hour emergency"
     * @param number as printed
     */
    record Phone(String purpose, String number) implements Content {
        @Override
        public String words() {
            return number + (purpose.isEmpty() ? "" : " (" + purpose + ")");
        }
    }

    /**
     * What is in the product.
     *
     * @param cas CAS number with its hyphens; empty where none is printed
     * @param casFits whether its check digit fits; false without a number
     * @param percent share in percent by weight unless the amount's words say otherwise
     */
    record Ingredient(
            String name,
            String cas,
            boolean casFits,
            @Nullable Amount percent) implements Content {
        @Override
        public String words() {
            return name
                    + (cas.isEmpty() ? "" : ", CAS " + cas + (casFits ? "" : " (check digit does not fit)"))
                    + (percent == null ? "" : ", " + percent.words());
        }
    }

    /**
     * A hazard or a precaution.
     *
     * @param code such as H302 or P301+P312; where {@code printed} is false it follows from the official wording
     * @param statement as printed; empty where only the code is
     */
    record Statement(String code, String statement, boolean printed) implements Content {
        @Override
        public String words() {
            return (code + " " + statement).strip() + (printed || code.isEmpty() ? "" : " (code not printed)");
        }
    }

    record FirstAid(Route route, String text) implements Content {
        @Override
        public String words() {
            return route.word() + ": " + text;
        }
    }

    record Protection(BodyPart part, String text) implements Content {
        @Override
        public String words() {
            return part.word() + ": " + text;
        }
    }

    /**
     * Most that may be in the air people breathe at work.
     *
     * @param authority OSHA PEL, ACGIH TLV, NIOSH REL, …; empty where not said
     * @param basis over how long
     */
    record ExposureLimit(String substance, String authority, LimitBasis basis, Amount amount) implements Content {
        @Override
        public String words() {
            return (substance + " " + authority + " " + basis.word() + " " + amount.words()).strip();
        }
    }

    /**
     * A half-lethal dose or concentration for people's stand-ins.
     *
     * @param substance empty for the product itself
     * @param measure LD50, LC50 or ATE
     * @param species empty where not said
     * @param sex "male", "female" or empty
     */
    record Acute(String substance, Route route, String measure, String species, String sex, Amount amount)
            implements Content {
        @Override
        public String words() {
            return joined(
                    route.word(),
                    measure,
                    species,
                    sex,
                    amount.words(),
                    substance.isEmpty() ? "" : "[" + substance + "]");
        }
    }

    /**
     * Toxicity to a wild creature or plant.
     *
     * @param organism such as rainbow trout, in the words of the trade
     * @param measure LC50, EC50, LD50, NOEC, …
     */
    record Eco(String substance, Organism organism, String measure, Amount amount) implements Content {
        @Override
        public String words() {
            return joined(organism.word(), measure, amount.words(), substance.isEmpty() ? "" : "[" + substance + "]");
        }
    }

    /** Pounds that must be reported when spilled, as printed. */
    record Reportable(String substance, Amount amount) implements Content {
        @Override
        public String words() {
            return joined(amount.words(), substance.isEmpty() ? "" : "of " + substance);
        }
    }

    /**
     * A particular of transport.
     *
     * @param mode DOT, IMDG, IATA, ADR, TDG; empty where the sheet doesn't tell them apart
     * @param value UN number, class, group, yes or no, or "not regulated"
     */
    record Shipping(String mode, String value) implements Content {
        @Override
        public String words() {
            return mode.isEmpty() ? value : mode + ": " + value;
        }
    }

    /**
     * A list of distribution and what the sheet says of it.
     *
     * @param list such as SARA 313
     */
    record Listing(String list, String text) implements Content {
        @Override
        public String words() {
            return list + ": " + text;
        }
    }

    private static String joined(String... words) {
        return String.join(
                " ", Arrays.stream(words).filter(word -> !word.isEmpty()).toList());
    }
}
