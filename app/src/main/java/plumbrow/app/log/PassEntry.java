package plumbrow.app.log;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.names.Near;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.season.Season;
import plumbrow.advice.text.TextRule;

/**
 * Which planned pass a line of the log was, as it was typed: "3 of Before and after", or "none".
 *
 * @param meant what was said; null where there is a fault
 * @param fault what keeps it from being written down; empty where nothing does
 */
public record PassEntry(
        String planned, String who, @Nullable MeantPass meant, String fault) {
    public static final String PLANNED = "planned";
    public static final String NONE = "none";

    private static final Pattern OF = Pattern.compile("(\\d{1,2}) of (.+)");

    /** A pass that a line of the log may have been. */
    public record Offered(String value, String words) {}

    /** Nothing said yet. */
    public static final PassEntry BLANK = new PassEntry("", "", null, "");

    /** Reads which pass a line was, and who says so. */
    public static PassEntry read(Season season, Done done, Map<String, String> typed) {
        String planned = typed.getOrDefault(PLANNED, "").strip();
        String who = typed.getOrDefault("who", "").strip();
        if (who.isEmpty()) {
            return new PassEntry(planned, who, null, "Say who says so.");
        }
        Optional<String> objection = TextRule.NAME.objection(who);
        if (objection.isPresent()) {
            return new PassEntry(planned, who, null, "Who says so: expected " + objection.get() + ".");
        }
        Optional<MeantPass> meant = meant(season, done.field(), done.product(), planned);
        return new PassEntry(
                planned,
                who,
                meant.orElse(null),
                meant.isPresent()
                        ? ""
                        : (planned.isEmpty() ? "Nothing there" : "Found “" + planned + "”") + "; expected "
                                + ended(expected(season, done.field(), done.product(), planned)));
    }

    private static String ended(String words) {
        return words.endsWith("?") ? words : words + ".";
    }

    /** What a text says; empty where it is no pass of the field that puts out the product. */
    static Optional<MeantPass> meant(Season season, String field, String product, String text) {
        if (text.equals(NONE)) {
            return Optional.of(MeantPass.NONE);
        }
        Matcher of = OF.matcher(text);
        return of.matches()
                        && offered(season, field, product).stream()
                                .anyMatch(one -> one.value().equals(text))
                ? Optional.of(new MeantPass(of.group(2), Integer.parseInt(of.group(1))))
                : Optional.empty();
    }

    static String expected(Season season, String field, String product, String text) {
        List<String> known =
                offered(season, field, product).stream().map(Offered::value).toList();
        return "none"
                + (known.isEmpty()
                        ? ", since no program of " + field + " puts out " + product
                        : ", or a pass that puts out " + product + ": "
                                + known.stream().limit(8).collect(Collectors.joining("; "))
                                + (text.isEmpty() ? "" : Near.suggested(text, known)));
    }

    /** The passes of a field that put out a product. */
    public static List<Offered> offered(Season season, String field, String product) {
        return season.programs(field).stream()
                .flatMap(program -> program.passes().stream()
                        .filter(pass -> product.equals(pass.product()))
                        .map(pass -> new Offered(
                                pass.number() + " of " + program.name(),
                                pass.number() + " of " + program.name()
                                        + (pass.date() == null ? "" : ", planned " + pass.date()))))
                .toList();
    }
}
