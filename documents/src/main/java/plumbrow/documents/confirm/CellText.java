package plumbrow.documents.confirm;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Texture;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.MixRule;
import plumbrow.science.figure.Numbers;

/** A kind of value on the shelf as text that comes back as the same value. */
enum CellText {
    WHOLE("a whole number, 0 or more"),
    NUMBER("a number, 0 or more"),
    RATE("an amount for an acre with its unit, such as 1.5 qt or 12 fl oz"),
    ASK("yes or no"),
    TRUTH("yes or no"),
    DAY("a day such as 2026-03-04"),
    DROPLETS("a droplet class: " + words(Droplets.values())),
    METHODS("ways of application parted by semicolons: " + words(Method.values())),
    TEXTURES("soil textures parted by semicolons"),
    THINGS("things parted by semicolons"),
    CROP("a crop: " + words(Crop.values())),
    FEATURE("what is kept away from: " + words(FeatureKind.values())),
    BASIS("ai or ae"),
    TANK_WORD("forbidden or required"),
    UNIT("gal or lb"),
    TEXT("a few words; none where the label sets no limit");

    private static final String NONE = "none";
    private static final Pattern AMOUNT =
            Pattern.compile("(?<value>\\d[\\d,]*\\.?\\d*|\\.\\d+)\\s*(?<unit>[A-Za-z][A-Za-z. ]*)");
    private static final double LARGEST = 1e9;

    private final String expected;

    CellText(String expected) {
        this.expected = expected;
    }

    /** What may be typed, as the end of a sentence. */
    String expected() {
        return expected;
    }

    static CellText of(Type type) {
        if (type instanceof ParameterizedType set) {
            Type of = set.getActualTypeArguments()[0];
            return of == Method.class ? METHODS : of == Texture.class ? TEXTURES : THINGS;
        }
        if (type == Integer.class || type == int.class) {
            return WHOLE;
        }
        if (type == Double.class || type == double.class) {
            return NUMBER;
        }
        if (type == boolean.class) {
            return TRUTH;
        }
        return of((Class<?>) type);
    }

    private static CellText of(Class<?> type) {
        return Stream.of(
                        new Pair(Amount.class, RATE),
                        new Pair(Ask.class, ASK),
                        new Pair(LocalDate.class, DAY),
                        new Pair(Droplets.class, DROPLETS),
                        new Pair(Crop.class, CROP),
                        new Pair(FeatureKind.class, FEATURE),
                        new Pair(ActiveLimit.Basis.class, BASIS),
                        new Pair(MixRule.Word.class, TANK_WORD),
                        new Pair(FarmUnit.class, UNIT),
                        new Pair(String.class, TEXT))
                .filter(pair -> pair.type == type)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no text for " + type))
                .kind;
    }

    private record Pair(Class<?> type, CellText kind) {}

    /** What stands where nobody knows. */
    @Nullable
    Object unknown() {
        return switch (this) {
            case ASK -> Ask.UNKNOWN;
            case TRUTH -> false;
            case TEXTURES -> Set.of();
            case TANK_WORD -> MixRule.Word.FORBIDDEN;
            default -> null;
        };
    }

    /** The text of a value; empty where it is unknown. */
    static String show(@Nullable Object value) {
        if (value == null || value == Ask.UNKNOWN) {
            return "";
        }
        if (value instanceof Amount amount) {
            return number(amount.value()) + " " + amount.unit().symbol();
        }
        if (value instanceof Double number) {
            return number(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Enum<?> each) {
            return word(each);
        }
        if (value instanceof Collection<?> many) {
            return many.stream()
                    .map(each -> each instanceof Enum<?> listed ? word(listed) : String.valueOf(each))
                    .sorted()
                    .collect(Collectors.joining("; "));
        }
        return value instanceof String text && text.isEmpty() ? NONE : String.valueOf(value);
    }

    /** As few digits as come back as the same number. */
    private static String number(double value) {
        String plain = Numbers.plain(value).replace(",", "");
        try {
            return Double.parseDouble(plain) == value ? plain : Double.toString(value);
        } catch (NumberFormatException other) {
            return Double.toString(value);
        }
    }

    /**
     * The value of a text.
     *
     * @throws NotSoException if it isn't one, with what was expected
     */
    Object read(String typed) {
        String text = typed.strip().replaceAll("\\s+", " ");
        Object value = text.isEmpty() ? null : tried(text);
        if (value == null) {
            throw new NotSoException(
                    "'" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "' is not " + expected + ".");
        }
        return value;
    }

    private @Nullable Object tried(String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        return switch (this) {
            case WHOLE -> text.matches("\\d{1,5}") ? Integer.valueOf(text) : null;
            case NUMBER -> positive(text);
            case RATE -> amount(text);
            case ASK -> plain.equals("yes") ? Ask.YES : plain.equals("no") ? Ask.NO : null;
            case TRUTH -> plain.equals("yes") ? Boolean.TRUE : plain.equals("no") ? Boolean.FALSE : null;
            case DAY -> day(text);
            case DROPLETS -> one(Droplets.values(), plain);
            case METHODS -> all(Method.values(), plain);
            case TEXTURES -> all(Texture.values(), plain);
            case THINGS ->
                Arrays.stream(text.split(";", -1))
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .collect(Collectors.toCollection(LinkedHashSet::new));
            case CROP -> one(Crop.values(), plain);
            case FEATURE -> one(FeatureKind.values(), plain);
            case BASIS -> one(ActiveLimit.Basis.values(), plain);
            case TANK_WORD -> one(MixRule.Word.values(), plain);
            case UNIT -> FarmUnit.parse(text).orElse(null);
            case TEXT -> plain.equals(NONE) ? "" : text;
        };
    }

    private static @Nullable Double positive(String text) {
        try {
            double value = text.matches("\\d[\\d,]*\\.?\\d*(?:E-?\\d+)?|\\.\\d+")
                    ? Double.parseDouble(text.replace(",", ""))
                    : -1;
            return value >= 0 && value <= LARGEST ? Double.valueOf(value) : null;
        } catch (NumberFormatException none) {
            return null;
        }
    }

    private static @Nullable Amount amount(String text) {
        Matcher parts = AMOUNT.matcher(text.replaceAll("(?i)\\s*/\\s*ac(?:re)?s?$|\\s+per acre$", ""));
        if (!parts.matches()) {
            return null;
        }
        Double value = positive(parts.group("value"));
        Optional<FarmUnit> unit = FarmUnit.parse(parts.group("unit"))
                .filter(each -> each.dimension() == Dimension.VOLUME || each.dimension() == Dimension.MASS);
        return value == null || unit.isEmpty() ? null : new Amount(value, unit.get());
    }

    private static @Nullable LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (java.time.DateTimeException none) {
            return null;
        }
    }

    private static <E extends Enum<E>> @Nullable E one(E[] list, String plain) {
        return Arrays.stream(list)
                .filter(each -> word(each).toLowerCase(Locale.ROOT).equals(plain)
                        || each.name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', ' ')
                                .equals(plain))
                .findFirst()
                .orElse(null);
    }

    private static <E extends Enum<E>> @Nullable Set<E> all(E[] list, String plain) {
        Set<E> found = new LinkedHashSet<>();
        for (String each : plain.split(";", -1)) {
            E one = one(list, each.strip());
            if (one == null) {
                return null;
            }
            found.add(one);
        }
        return found;
    }

    private static String words(Enum<?>[] list) {
        return Arrays.stream(list).map(CellText::word).collect(Collectors.joining(", "));
    }

    private static String word(Enum<?> each) {
        if (each instanceof Ask ask) {
            return ask.word();
        }
        if (each instanceof Droplets drops) {
            return drops.word();
        }
        if (each instanceof Method method) {
            return method.word();
        }
        if (each instanceof Texture texture) {
            return texture.word();
        }
        if (each instanceof Crop crop) {
            return crop.word();
        }
        if (each instanceof FeatureKind feature) {
            return feature.word();
        }
        if (each instanceof ActiveLimit.Basis basis) {
            return basis.word();
        }
        if (each instanceof MixRule.Word word) {
            return word.word();
        }
        return each instanceof FarmUnit unit ? unit.symbol() : each.name();
    }
}
