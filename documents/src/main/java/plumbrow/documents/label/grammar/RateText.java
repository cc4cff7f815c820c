package plumbrow.documents.label.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.Of;
import plumbrow.documents.sheet.Amount;

/**
 * An amount per acre: 32 fl oz/A, 1 1/2 to 2 pints per acre, 2.5 lb a.i. of atrazine per acre per year.
 *
 * @param amount unit such as "fl oz/ac"
 * @param of what is counted; water and adjuvants stand in {@code stuff}
 * @param stuff the words between amount and acre, or behind it after "of"
 * @param from, to the stretch of text it takes
 * @param doubt why it can't be read; empty where it can
 */
public record RateText(Amount amount, Of of, String stuff, int from, int to, String doubt) {
    private static final String ACRE =
            "(?:\\s?(?:/|per\\s)\\s?(?:(?<hundreds>1,?000|100|10)\\s?(?:sq\\.?|square)\\s?(?:ft\\b\\.?|feet\\b|foot\\b)|(?<yard>(?:sq\\.?|square)\\s?(?:yds?\\b\\.?|yards?\\b)))"
                    + "|\\s?/\\s?(?:acre|ac\\b\\.?|A\\b)|\\s?per\\s+(?:treated\\s+|broadcast\\s+)?(?:acre|ac\\b\\.?|A\\b))";
    private static final String PER_TIME =
            "(?:\\s?(?:/|per)\\s?(?:crop\\s+|growing\\s+|calendar\\s+)?(?:year|season|application))?,?";
    private static final String UNIT =
            "(?<unit>(?i:fl\\.?\\s?oz\\.?|fl(?:uid)?\\.?\\s?ounces?|ozs?\\.?|ounces?|pts?\\.?|pints?|qts?\\.?|quarts?|gals?\\.?|gallons?"
                    + "|lbs?\\.?|pounds?|grams?|g|ml))(?![\\p{L}])";
    private static final String STUFF =
            "(?<of>(?:\\s+(?!(?i:per|in|to|by|plus|and|or)\\b)[\\p{L}\\d®™*.,'’()!-]+){0,7}?)";
    private static final String ONE_NUMBER = Figure.PATTERN;
    private static final Pattern RATE = Pattern.compile("(?<![\\w.,/])" + MeasureText.QUALIFIER + "(?<n1>" + ONE_NUMBER
            + ")\\s?-?(?:(?:\\p{L}{1,6}\\.?(?:\\s\\p{L}{2,6}\\.?)?)?" + MeasureText.RANGE + "(?<n2>" + ONE_NUMBER
            + "))?\\s?-?"
            + UNIT + STUFF + PER_TIME + ACRE);

    /** "2.5 quarts (2.5 lb a.i.) per acre": the same amount again, of active. */
    private static final Pattern AGAIN =
            Pattern.compile("\\(\\s?(?:equivalent to |equal to |or |=\\s?)?(?<n1>" + ONE_NUMBER + ")(?:"
                    + MeasureText.RANGE + "(?<n2>" + ONE_NUMBER + "))?\\s?" + UNIT + "(?<of>[^)]{0,50})\\)");

    private static final Pattern ACTIVE = Pattern.compile("(?i)\\ba\\.?\\s?i\\b\\.?|active(?: ingredients?)?\\b");
    private static final Pattern ACID = Pattern.compile("(?i)\\ba\\.?\\s?e\\b\\.?|\\bacid\\b(?: equivalents?)?");
    private static final Pattern BEHIND = Pattern.compile("^\\s+of\\s+((?:[\\p{L}\\d®™-]+\\s?){1,4})");
    private static final Pattern FILLERS =
            Pattern.compile("(?i)\\b(?:of|the|total|this|product|equivalent|\\(|\\))\\b|[()®™*!]|,(?!\\d)");

    /** The same, of the product, where what is counted bears the product's name. */
    public RateText ofProduct(String name) {
        String plain = stuff.toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "");
        String called = name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "");
        boolean same = of == Of.UNSAID
                && called.length() >= 4
                && !plain.isEmpty()
                && (plain.startsWith(called) || called.startsWith(plain));
        return same ? new RateText(amount, Of.PRODUCT, "", from, to, doubt) : this;
    }

    public static Optional<RateText> first(String text) {
        return all(text).stream().findFirst();
    }

    /** "2 lb 5 oz" is one weight: in ounces, where pounds and ounces stand together. */
    private static String plainWeights(String text) {
        Matcher metric = METRIC.matcher(text);
        String own = metric.replaceAll(match -> " ".repeat(match.group().length()));
        Matcher both = POUNDS_OUNCES.matcher(own);
        return both.replaceAll(match -> {
            double ounces = 16 * Double.parseDouble(match.group(1)) + Double.parseDouble(match.group(2));
            String number = ounces == Math.rint(ounces) ? String.valueOf((long) ounces) : String.valueOf(ounces);
            int zeros = match.group().length() - number.length() - " oz".length(); // keeps every letter in its place
            return "0".repeat(Math.max(0, zeros)) + number + " oz";
        });
    }

    /** The same again for other countries: "(50 - 400 g/acre; 125 - 1000 g/ha)". */
    public static final Pattern METRIC = Pattern.compile(
            "(?i)\\((?:\\s?[\\d.,]+(?:\\s?(?:-|–|to)\\s?[\\d.,]+)?\\s?(?:k?g|m?l|lit(?:er|re)s?|grams?)\\s?(?:/|per)\\s?(?:acre|ac|A|ha|hectare)\\.?\\s?[;,]?){1,3}\\)");

    private static final Pattern POUNDS_OUNCES =
            Pattern.compile("(?<![\\w.,/])(\\d{1,3})\\s?lbs?\\.?\\s(\\d{1,2}(?:\\.\\d)?)\\s?oz\\b");

    public static List<RateText> all(String printed) {
        String text = plainWeights(printed);
        List<RateText> found = new ArrayList<>();
        Matcher rate = RATE.matcher(text);
        int from = 0;
        while (rate.find(from)) {
            from = rate.end();
            String between = rate.group("of");
            Matcher again = AGAIN.matcher(text.substring(rate.start("of"), Math.min(text.length(), rate.end() + 60)));
            boolean inside = again.find() && again.start() <= between.length() + 25;
            String plain = inside && again.start() < between.length() ? between.substring(0, again.start()) : between;
            Matcher behind = BEHIND.matcher(text.substring(rate.end()));
            String stuff = plain.isBlank() && behind.find() ? behind.group(1) : plain;
            RateText one = read(rate, stuff, rate.start(), rate.end());
            found.add(HALF_RANGE.matcher(text.substring(0, rate.start())).find() ? one.doubtful() : one);
            if (inside
                    && SIZE.matcher(again.group("of") + " ").lookingAt()
                    && !OWN_AREA.matcher(again.group("of")).find()) {
                int at = rate.start("of");
                found.add(read(again, again.group("of"), at + again.start("n1"), at + again.end()));
                from = Math.max(from, at + again.end());
            }
        }
        return found;
    }

    /** A range whose lower end is written in a way that isn't read: its upper end alone would be a wrong rate. */
    private static final Pattern HALF_RANGE = Pattern.compile(
            "(?:\\d|[½¼¾⅓⅔⅛⅜⅝⅞])\\s*(?:\\p{L}{1,8}\\.?\\s*){0,2}(?:\\([^)]{0,30}\\)\\s*)?(?:\\bto|\\bthrough|[-–—])\\s*$");

    private RateText doubtful() {
        return new RateText(amount, of, stuff, from, to, "a range stands there whose lower end can't be read");
    }

    private static String area(Matcher found) {
        String feet = found.group("hundreds");
        return feet != null ? "/" + feet.replace(",", "") + " sq ft" : found.group("yard") != null ? "/sq yd" : "/ac";
    }

    /** A rate of its own in the brackets, which is found as one. */
    private static final Pattern OWN_AREA = Pattern.compile("(?:per\\s|/)\\s?(?:acre|ac\\b|A\\b)");

    private static final Pattern SIZE = Pattern.compile("(?i)[^)]*(?:a\\.?i|a\\.?e|active|acid|product|per|/|of\\b).*");

    private static RateText read(Matcher found, String stuff, int from, int to) {
        boolean qualified = found.pattern().equals(RATE);
        String unit = unit(found.group("unit"));
        String area = qualified ? area(found) : "/ac";
        MeasureText size = MeasureText.read(
                qualified ? found.group("q") : null, found.group("n1"), found.group("n2"), unit + area, from, to);
        return new RateText(size.amount(), of(stuff, unit), named(stuff), from, to, size.doubt());
    }

    /** The one spelling of a unit; an ounce is fluid only where it says so. */
    static String unit(String printed) {
        String word = printed.toLowerCase(java.util.Locale.ROOT).replaceAll("[.\\s]", "");
        return switch (word.replaceAll("s$", "")) {
            case "floz", "flounce", "fluidounce" -> "fl oz";
            case "oz", "ounce" -> "oz";
            case "pt", "pint" -> "pt";
            case "qt", "quart" -> "qt";
            case "gal", "gallon" -> "gal";
            case "lb", "pound" -> "lb";
            case "ml" -> "mL";
            default -> "g";
        };
    }

    private static Of of(String stuff, String unit) {
        if (ACID.matcher(stuff).find()) {
            return Of.ACID;
        }
        if (ACTIVE.matcher(stuff).find()) {
            return Of.ACTIVE;
        }
        boolean weight = unit.equals("lb") || unit.equals("oz") || unit.equals("g");
        return weight && !named(stuff).isEmpty() ? Of.UNSAID : Of.PRODUCT;
    }

    /** The named stuff, without the words that every rate has. */
    private static String named(String stuff) {
        String plain = ACID.matcher(ACTIVE.matcher(stuff).replaceAll(" ")).replaceAll(" ");
        return FILLERS.matcher(plain).replaceAll(" ").replaceAll("\\s+", " ").strip();
    }

    /** A rate without its acre, in a table whose head names the unit; the head may name it alone. */
    public static Optional<RateText> bare(String cell, String head) {
        Matcher unit = Pattern.compile(UNIT + "(?<of>[^/(]{0,30}?)(?:" + ACRE + "|$|\\)|\\s*\\()")
                .matcher(head.strip());
        Matcher number = BARE.matcher(cell.strip());
        if (!number.matches()) {
            return Optional.empty();
        }
        String own = number.group("unit");
        boolean headed = unit.find();
        if (own == null && !headed) {
            return Optional.empty();
        }
        String symbol = unit(own == null ? unit.group("unit") : own);
        String stuff = own == null ? unit.group("of") : number.group("of");
        MeasureText size = MeasureText.read(
                number.group("q"),
                number.group("n1"),
                number.group("n2"),
                symbol + area(own == null ? unit : number),
                0,
                cell.length());
        return Optional.of(
                new RateText(size.amount(), of(stuff, symbol), named(stuff), 0, cell.length(), size.doubt()));
    }

    private static final Pattern BARE =
            Pattern.compile(MeasureText.QUALIFIER + "(?<n1>" + ONE_NUMBER + ")(?:" + MeasureText.RANGE + "(?<n2>"
                    + ONE_NUMBER + "))?\\s?(?:" + UNIT + "(?<of>[^/]{0,30}?)(?:" + ACRE + ")?)?[*†‡]{0,2}");
}
