package plumbrow.documents.label;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.shelf.Droplets;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Route;

/**
 * What a value of a label says. Crops, timings and methods are as printed; empty is not said. Amounts per acre have units
 * such as "fl oz/ac".
 */
public sealed interface LabelContent {

    /** As a person would write it in one line. */
    String words();

    /** What the statement is about, apart from its value: two that are about the same must not differ. */
    default String about() {
        return "";
    }

    /** A name, a number or a statement, as printed. */
    record Text(String words) implements LabelContent {}

    record Day(LocalDate date) implements LabelContent {
        @Override
        public String words() {
            return date.toString();
        }
    }

    /**
     * An active ingredient.
     *
     * @param percent share by weight [%]
     */
    record Active(String name, Amount percent) implements LabelContent {
        @Override
        public String words() {
            return joined(name, percent.words());
        }

        @Override
        public String about() {
            return key(name);
        }
    }

    /**
     * How much active ingredient a product holds.
     *
     * @param ingredient empty where the sentence doesn't name it
     * @param amount [lb/gal] or [%]
     */
    record Strength(String ingredient, Amount amount, Of of) implements LabelContent {
        @Override
        public String words() {
            return joined(amount.words(), ingredient, of == Of.UNSAID ? "" : "(" + of.word() + ")");
        }

        @Override
        public String about() {
            return key(ingredient, amount.unit(), of.name());
        }
    }

    /**
     * The box that names how a product kills.
     *
     * @param number such as 9, 27 or 3A
     * @param word herbicide, insecticide or fungicide
     */
    record Group(String number, String word) implements LabelContent {
        @Override
        public String words() {
            return "group " + number + " " + word;
        }
    }

    record Gear(Task task, String item) implements LabelContent {
        @Override
        public String words() {
            return task.word() + ": " + item;
        }
    }

    record FirstAid(Route route, String text) implements LabelContent {
        @Override
        public String words() {
            return route.word() + ": " + text;
        }

        @Override
        public String about() {
            return route.name();
        }
    }

    record Use(String crop, Soil soil, Amount rate, String timing, String method) implements LabelContent {
        @Override
        public String words() {
            return joined(rate.words(), "on", crop.isEmpty() ? "?" : crop, soil.words(), timing, method);
        }
    }

    /**
     * Time that must pass.
     *
     * @param crop the crop treated; for a plant-back interval the crop planted
     * @param condition what else the label asks; empty for nothing
     */
    record Interval(String crop, Amount time, String condition) implements LabelContent {
        @Override
        public String words() {
            return joined(crop.isEmpty() ? "" : crop + ":", time.words(), condition);
        }

        @Override
        public String about() {
            return key(crop, condition);
        }
    }

    /** Something that must not be done with a treated crop, at any time. */
    record Ban(String crop, String words) implements LabelContent {
        @Override
        public String about() {
            return key(crop);
        }
    }

    /**
     * The most that may be put out.
     *
     * @param ingredient named ingredient; empty for the product or the only active
     * @param per "year", "season" or "application"
     */
    record Most(String crop, Amount amount, Of of, String ingredient, String per) implements LabelContent {
        @Override
        public String words() {
            return joined(
                    crop.isEmpty() ? "" : crop + ":",
                    amount.words(),
                    of == Of.PRODUCT ? "" : of.word(),
                    ingredient,
                    "per",
                    per);
        }

        @Override
        public String about() {
            return key(crop, of.name(), ingredient, per, of == Of.PRODUCT ? amount.unit() : "");
        }
    }

    record Count(String crop, int most, String per) implements LabelContent {
        @Override
        public String words() {
            return joined(crop.isEmpty() ? "" : crop + ":", "at most", String.valueOf(most), "per", per);
        }

        @Override
        public String about() {
            return key(crop, per);
        }
    }

    /**
     * Distance from something.
     *
     * @param feature as printed
     * @param kind what it is among the things a field lies near; null where it is none of them
     * @param downwind whether it holds only downwind
     * @param mixing whether it is for mixing and loading, not for spraying
     */
    record Distance(
            String feature, @Nullable FeatureKind kind, Amount distance, boolean downwind, boolean mixing, Way way)
            implements LabelContent {
        @Override
        public String words() {
            return joined(
                    distance.words(),
                    "from",
                    feature,
                    downwind ? "downwind" : "",
                    mixing ? "when mixing or loading" : "",
                    way.word());
        }
    }

    /** Droplet classes allowed; null for no end. */
    record Drops(@Nullable Droplets finest, @Nullable Droplets coarsest, Way way) implements LabelContent {
        @Override
        public String words() {
            return joined(
                    finest == null ? "" : "not finer than " + finest.word(),
                    coarsest == null ? "" : "not coarser than " + coarsest.word(),
                    way.word());
        }
    }

    /**
     * Growth stages between which a crop may be treated, as "V2", "R1" or a Feekes number; empty for not said.
     *
     * @param before the first stage at which it is too late
     */
    record Stage(String crop, String earliest, String latest, String before) implements LabelContent {
        @Override
        public String words() {
            return joined(
                    crop.isEmpty() ? "" : crop + ":",
                    earliest.isEmpty() ? "" : "from " + earliest,
                    latest.isEmpty() ? "" : "until " + latest,
                    before.isEmpty() ? "" : "before " + before);
        }
    }

    /** The tallest crop, or the tallest weeds in a crop. */
    record Height(String crop, Amount amount) implements LabelContent {
        @Override
        public String words() {
            return joined(crop.isEmpty() ? "" : crop + ":", amount.words());
        }

        @Override
        public String about() {
            return key(crop);
        }
    }

    /** Wind, height, carrier volume or time without rain. */
    record Measured(Amount amount, Way way) implements LabelContent {
        @Override
        public String words() {
            return joined(amount.words(), way.word());
        }
    }

    private static String joined(String... words) {
        return String.join(
                " ", Arrays.stream(words).filter(word -> !word.isEmpty()).toList());
    }

    private static String key(String... words) {
        return String.join("|", words).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d|]+", "");
    }
}
