package plumbrow.advice.records;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;

/**
 * What an application record may say beside field, day, times, acres and products. Each is declared once: form, command, JSON, book and
 * export take key, label and form from here. One that is not written down is missing, never "none".
 *
 * <p>Together they are every field that a record duty kept here asks for.
 */
public enum RecordItem {
    APPLICATOR("applicator", "Who applied", Group.WHO, Form.name()),
    ROLE("role", "Applies as", Group.WHO, Form.words(ApplicatorRole.words())),
    LICENCE("licence", "Licence or certificate number", Group.WHO, Form.name()),
    LICENCE_STATE("licence_state", "State that gave it", Group.WHO, Form.state()),
    LICENCE_CATEGORY("licence_category", "Category of the licence", Group.WHO, Form.name()),
    SUPERVISED("supervised", "Who worked under their supervision", Group.WHO, Form.name()),
    CUSTOMER("customer", "For whom it was applied", Group.WHO, Form.name()),
    CUSTOMER_ADDRESS("customer_address", "Address of the customer", Group.WHO, Form.prose()),
    STATE("state", "State", Group.WHERE, Form.state()),
    COUNTY("county", "County", Group.WHERE, Form.name()),
    PLACE("place", "Legal description or GPS place", Group.WHERE, Form.prose()),
    PART("part", "Part of the field", Group.WHERE, Form.name()),
    OUTLINE("outline", "Corners of the part: latitude, longitude; …", Group.WHERE, Form.corners()),
    CROP("crop", "Crop or site", Group.WHERE, Form.name()),
    VARIETY("variety", "Variety", Group.WHERE, Form.name()),
    STAGE("stage", "Crop stage", Group.WHERE, Form.name()),
    PESTS("pests", "Target pests", Group.WHERE, Form.prose()),
    CARRIER("carrier", "Carrier", Group.TANK, Form.name()),
    CARRIER_GPA("carrier_gpa", "Spray volume", Group.TANK, Form.number(0.01, 2_000, "gal/ac")),
    SPRAY_GAL("spray_gal", "Spray used in all", Group.TANK, Form.number(0.01, 1_000_000, "gal")),
    ADDITIONS("additions", "Adjuvants and fertilizer in the tank", Group.TANK, Form.prose()),
    MIXING_PLACE("mixing_place", "Where it was mixed and loaded", Group.TANK, Form.prose()),
    WIND_START("wind_start_mph", "Wind at the start", Group.WEATHER, Form.number(0, 100, "mph")),
    WIND_FROM_START("wind_from_start", "from", Group.WEATHER, Form.compass()),
    TEMPERATURE_START("temperature_start_f", "Air at the start", Group.WEATHER, Form.number(-40, 130, "°F")),
    HUMIDITY_START("humidity_start_pct", "Humidity at the start", Group.WEATHER, Form.number(0, 100, "%")),
    WIND_END("wind_end_mph", "Wind at the end", Group.WEATHER, Form.number(0, 100, "mph")),
    WIND_FROM_END("wind_from_end", "from", Group.WEATHER, Form.compass()),
    TEMPERATURE_END("temperature_end_f", "Air at the end", Group.WEATHER, Form.number(-40, 130, "°F")),
    HUMIDITY_END("humidity_end_pct", "Humidity at the end", Group.WEATHER, Form.number(0, 100, "%")),
    WEATHER_WHERE("weather_where", "Where and with what it was measured", Group.WEATHER, Form.prose()),
    METHOD("method", "Method", Group.GEAR, Form.words(words(Method.values()))),
    EQUIPMENT("equipment", "Sprayer or spreader", Group.GEAR, Form.name()),
    NOZZLE("nozzle", "Nozzle", Group.GEAR, Form.name()),
    DROPLETS("droplets", "Droplet class", Group.GEAR, Form.words(words(Droplets.values()))),
    PRESSURE("pressure_psi", "Pressure", Group.GEAR, Form.number(0.1, 1_000, "psi")),
    SPEED("speed_mph", "Speed", Group.GEAR, Form.number(0.1, 250, "mph")),
    BOOM("boom_in", "Boom over the target", Group.GEAR, Form.number(0, 2_000, "in")),
    DEVIATIONS("deviations", "What was done otherwise than the load card says, and why", Group.REST, Form.prose()),
    BULLETIN("bulletin", "Bulletin looked up, and its month", Group.REST, Form.prose()),
    RINSATE("rinsate", "What became of rinsate", Group.REST, Form.prose()),
    NOTE("note", "Anything else", Group.REST, Form.prose());

    /** Under which heading it is asked. */
    public enum Group {
        WHO("Who"),
        WHERE("Where and for what"),
        TANK("In the tank"),
        WEATHER("Weather, as measured"),
        GEAR("Sprayer"),
        REST("Besides");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }

        public List<RecordItem> items() {
            return Arrays.stream(RecordItem.values())
                    .filter(item -> item.group == this)
                    .toList();
        }
    }

    /**
     * What may be written.
     *
     * @param kind how it is read
     * @param words of which one must be taken; empty for free text and numbers
     * @param least lowest number, {@code most} the highest; both included
     * @param unit of a number; empty for text
     */
    public record Form(Kind kind, List<String> words, double least, double most, String unit) {
        /** The sixteen points of the compass, from which the wind blows. */
        private static final List<String> COMPASS =
                List.of("N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW calm".split(" "));

        public Form {
            words = List.copyOf(words);
        }

        static Form name() {
            return new Form(Kind.NAME, List.of(), 0, 0, "");
        }

        static Form prose() {
            return new Form(Kind.PROSE, List.of(), 0, 0, "");
        }

        static Form state() {
            return new Form(Kind.STATE, List.of(), 0, 0, "");
        }

        static Form corners() {
            return new Form(Kind.CORNERS, List.of(), 0, 0, "");
        }

        static Form compass() {
            return new Form(Kind.WORD, COMPASS, 0, 0, "");
        }

        static Form words(List<String> words) {
            return new Form(Kind.WORD, words, 0, 0, "");
        }

        static Form number(double least, double most, String unit) {
            return new Form(Kind.NUMBER, List.of(), least, most, unit);
        }
    }

    /** How an item is read. */
    public enum Kind {
        /** Up to 80 characters on one line. */
        NAME,
        /** Up to 1,000 characters. */
        PROSE,
        /** Two letters of a state. */
        STATE,
        /** One of the words. */
        WORD,
        /** A number within limits. */
        NUMBER,
        /** Corners of an outline, "41.60, -93.60; …". */
        CORNERS
    }

    private final String key;
    private final String label;
    private final Group group;

    @SuppressWarnings("ImmutableEnumChecker") // a record of fixed lists and numbers
    private final Form form;

    RecordItem(String key, String label, Group group, Form form) {
        this.key = key;
        this.label = label;
        this.group = group;
        this.form = form;
    }

    /** Name of its column, box, option and JSON key. */
    public String key() {
        return key;
    }

    public String label() {
        return label;
    }

    public Group group() {
        return group;
    }

    public Form form() {
        return form;
    }

    public static Optional<RecordItem> of(String key) {
        return Arrays.stream(values()).filter(item -> item.key.equals(key)).findFirst();
    }

    /** A number as it is kept and typed: plain digits, a point, nothing between thousands. */
    public static String digits(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private static List<String> words(Method[] methods) {
        return Stream.of(methods).map(Method::word).toList();
    }

    private static List<String> words(Droplets[] classes) {
        return Stream.of(classes).map(Droplets::word).toList();
    }
}
