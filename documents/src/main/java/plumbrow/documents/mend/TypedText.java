package plumbrow.documents.mend;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.BodyPart;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.ValueKind;

/**
 * A value of a safety sheet as a person types it, and what it says. Numbers are laid out as on a sheet and read by the same
 * reader, so that they mean what they mean on any sheet; words are taken as they stand.
 */
public final class TypedText {
    /** How a typed sheet begins: it says how its numbers are typed, since "1.117" alone may be a thousand. */
    public static final String HEAD = "SAFETY DATA SHEET\n\nNumbers are typed with a point, as in 0.5 %.\n\n";

    private static final Pattern INGREDIENT = Pattern.compile(
            "(?<name>.+?)[,;:]?\\s+(?:CAS\\s*(?:No\\.?)?:?\\s*)?(?<cas>\\d{2,7}-\\d{2}-\\d)?[,;]?\\s*(?<percent>(?:about |[<>≤≥])?\\s*\\d[\\d.,]*(?:\\s?[–-]\\s?\\d[\\d.,]*)?\\s*(?:%.*|percent)?)?");
    private static final Pattern LED = Pattern.compile("(?<lead>[^:]{1,60}):\\s*(?<rest>.+)", Pattern.DOTALL);
    private static final Pattern PHONE =
            Pattern.compile("(?<number>[+(]?\\d[\\d ()./-]{5,24}\\d)\\s*(?:\\((?<purpose>[^()]{1,80})\\))?");
    private static final Pattern CODED = Pattern.compile(
            "(?<code>[HP]\\d{3}[A-Za-z]{0,3}(?:\\s?\\+\\s?[HP]\\d{3}[A-Za-z]{0,3})*)?\\s*(?<statement>.*?)(?: \\(code not printed\\))?",
            Pattern.DOTALL);
    private static final Pattern REGISTRATION = Pattern.compile("\\d{1,6}-\\d{1,5}(?:-\\d{1,6})?");
    private static final Pattern LIMIT = Pattern.compile(
            "(?<substance>.*?)\\s*(?<rest>\\b(?:OSHA|ACGIH|NIOSH|AIHA|Cal/OSHA|UK|EU|MAK|PEL|TLV|REL|WEL|TWA|STEL|ceiling)\\b.*)");
    private static final Pattern OF = Pattern.compile("(?<of>.*?)\\s*\\[(?<substance>[^\\]]+)]\\s*", Pattern.DOTALL);

    private static final int LONGEST_OF_TRANSPORT = 60;

    private TypedText() {}

    /** How a value that was read is typed: what {@link #read} takes for the same. */
    public static String written(Content content) {
        if (content instanceof Content.Acute one) {
            return joined(
                            switch (one.route()) {
                                case SWALLOWED -> "Oral";
                                case SKIN -> "Dermal";
                                case INHALED -> "Inhalation";
                                case EYES -> "Eyes";
                                case UNSAID -> "";
                            },
                            one.measure(),
                            one.species().isEmpty() && one.sex().isEmpty()
                                    ? ""
                                    : "(" + joined(one.species(), one.sex()).replaceFirst(" (?=(?:fe)?male$)", ", ")
                                            + ")",
                            ": " + one.amount().words(),
                            of(one.substance()))
                    .replace(" : ", ": ");
        }
        if (content instanceof Content.Eco one) {
            return joined(
                            one.organism().word(),
                            one.measure(),
                            ": " + one.amount().words(),
                            of(one.substance()))
                    .replace(" : ", ": ");
        }
        return content.words();
    }

    private static String of(String substance) {
        return substance.isEmpty() ? "" : "[" + substance + "]";
    }

    private static String joined(String... words) {
        return String.join(
                " ", Arrays.stream(words).filter(word -> !word.isEmpty()).toList());
    }

    /** What a person's words say of a kind; empty where the reader makes nothing of them. */
    public static List<Content> read(ValueKind kind, String typed) {
        String text = typed.strip();
        Optional<Content> plain = plain(kind, text.replaceAll("\\s+", " "));
        if (plain.isPresent() || text.isEmpty()) {
            return plain.stream().toList();
        }
        return switch (kind) {
            case INGREDIENT -> substances(text);
            case EXPOSURE_LIMIT -> limits(text);
            default -> found(kind, text);
        };
    }

    /** The reader finds the share, and the name is as typed: a name may hold commas and numbers. */
    private static List<Content> substances(String text) {
        List<Content> found = new ArrayList<>();
        for (String part : text.split("[;\\n]", -1)) {
            Matcher cells = INGREDIENT.matcher(part.strip().replace(" (check digit does not fit)", ""));
            if (!cells.matches()) {
                found.addAll(found(ValueKind.INGREDIENT, part));
                continue;
            }
            String stand = "Substance, " + or(cells.group("cas")) + ", " + or(cells.group("percent"));
            for (Content each : found(ValueKind.INGREDIENT, stand)) {
                if (each instanceof Content.Ingredient one) {
                    found.add(new Content.Ingredient(
                            cells.group("name").replaceAll("[,;:]$", ""), one.cas(), one.casFits(), one.percent()));
                }
            }
        }
        return found;
    }

    private static List<Content> limits(String text) {
        Matcher parts = LIMIT.matcher(text.replaceAll("\\s+", " "));
        if (!parts.matches()) {
            return found(ValueKind.EXPOSURE_LIMIT, text);
        }
        return found(ValueKind.EXPOSURE_LIMIT, parts.group("rest")).stream()
                .map(each -> each instanceof Content.ExposureLimit one
                        ? (Content) new Content.ExposureLimit(
                                parts.group("substance").strip(), one.authority(), one.basis(), one.amount())
                        : each)
                .toList();
    }

    private static List<Content> found(ValueKind kind, String text) {
        try {
            String page = HEAD + section(kind, laidOut(kind, text));
            return SheetReader.read(page.getBytes(StandardCharsets.UTF_8), "typed page").all(kind).stream()
                    .map(Reading.Stated::content)
                    .toList();
        } catch (PaperTrouble none) {
            return List.of();
        }
    }

    /** The heading of a kind's section and its lines. */
    public static String section(ValueKind kind, String lines) {
        return "SECTION " + kind.home().number() + ": " + kind.home().title() + "\n" + lines + "\n\n";
    }

    /** Words that are taken as they stand. */
    private static Optional<Content> plain(ValueKind kind, String text) {
        return switch (kind) {
            case PRODUCT_NAME,
                    MAKER,
                    ADDRESS,
                    EXTINGUISHING_MEDIA,
                    FIRE_FIGHTING,
                    SPILL,
                    HANDLING,
                    STORAGE,
                    CHEMICAL_STABILITY,
                    INCOMPATIBLES,
                    DISPOSAL -> said(text);
            case REGISTRATION_NUMBER -> REGISTRATION.matcher(text).matches() ? said(text) : Optional.empty();
            case SIGNAL_WORD -> word(text, "Danger", "Warning");
            case LABEL_SIGNAL_WORD -> word(text, "DANGER", "WARNING", "CAUTION");
            case FIRST_AID ->
                led(text)
                        .flatMap(parts ->
                                route(parts.get(0)).map(route -> (Content) new Content.FirstAid(route, parts.get(1))));
            case PROTECTION ->
                led(text)
                        .flatMap(parts ->
                                part(parts.get(0)).map(part -> (Content) new Content.Protection(part, parts.get(1))));
            case EMERGENCY_PHONE -> phone(text);
            case HAZARD_STATEMENT, PRECAUTION -> coded(text);
            case SHIPPING_NAME -> Optional.of(byMode(text));
            case UN_NUMBER, TRANSPORT_CLASS, PACKING_GROUP, MARINE_POLLUTANT ->
                text.length() > LONGEST_OF_TRANSPORT ? Optional.empty() : Optional.of(byMode(text));
            case REGULATORY_LIST -> led(text).map(parts -> new Content.Listing(parts.get(0), parts.get(1)));
            default -> Optional.empty();
        };
    }

    private static Optional<Content> said(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(new Content.Text(text));
    }

    private static Optional<Content> word(String text, String... allowed) {
        return Arrays.stream(allowed)
                .filter(each -> each.equalsIgnoreCase(text))
                .<Content>map(Content.Text::new)
                .findFirst();
    }

    private static Optional<List<String>> led(String text) {
        Matcher parts = LED.matcher(text);
        return parts.matches()
                ? Optional.of(
                        List.of(parts.group("lead").strip(), parts.group("rest").strip()))
                : Optional.empty();
    }

    private static Optional<Route> route(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(Route.values())
                .filter(route -> route.word().equals(plain))
                .findFirst();
    }

    private static Optional<BodyPart> part(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(BodyPart.values())
                .filter(part -> part.word().equals(plain))
                .findFirst();
    }

    private static Optional<Content> phone(String text) {
        Matcher parts = PHONE.matcher(text);
        return parts.matches()
                ? Optional.of(new Content.Phone(or(parts.group("purpose")), parts.group("number")))
                : Optional.empty();
    }

    private static Optional<Content> coded(String text) {
        Matcher parts = CODED.matcher(text);
        if (!parts.matches() || text.isEmpty()) {
            return Optional.empty();
        }
        String code = or(parts.group("code")).replaceAll("\\s", "");
        return Optional.of(
                new Content.Statement(code, parts.group("statement").strip(), !text.endsWith("(code not printed)")));
    }

    /** "IMDG: UN3082", or what holds for every way of transport. */
    private static Content byMode(String text) {
        Matcher parts = LED.matcher(text);
        return parts.matches() && parts.group("lead").matches("(?i)DOT|IMDG|IATA|ADR|TDG")
                ? new Content.Shipping(
                        parts.group("lead").toUpperCase(Locale.ROOT),
                        parts.group("rest").strip())
                : new Content.Shipping("", text);
    }

    /** As lines of a sheet. */
    public static String laidOut(ValueKind kind, String value) {
        List<String> parts = new ArrayList<>();
        for (String part : value.split("[;\\n]", -1)) {
            if (!part.isBlank()) {
                parts.add(part.strip().replaceAll("\\s+", " "));
            }
        }
        return switch (kind) {
            case INGREDIENT -> ingredients(parts);
            case FIRST_AID, PROTECTION, HAZARD_STATEMENT -> String.join("\n", parts);
            case ACUTE_TOXICITY, ECOTOXICITY -> bySubstance(parts);
            case SIGNAL_WORD -> "Signal word: " + value;
            case REGISTRATION_NUMBER -> "EPA Reg. No.: " + value;
            default -> kind.title() + ": " + String.join("; ", parts);
        };
    }

    /** What is said of an ingredient stands under its name. */
    private static String bySubstance(List<String> parts) {
        StringJoiner lines = new StringJoiner("\n");
        for (String part : parts) {
            Matcher of = OF.matcher(part);
            lines.add(of.matches() ? of.group("substance") + "\n" + of.group("of") : part);
        }
        return lines.toString();
    }

    /** As a table whose cells stand below their headings. */
    private static String ingredients(List<String> parts) {
        int widest = parts.stream().mapToInt(String::length).max().orElse(0) + 4;
        StringJoiner table = new StringJoiner("\n");
        table.add(row(widest, "Ingredient", "CAS No.", "% by weight"));
        for (String part : parts) {
            Matcher cells = INGREDIENT.matcher(part.replace(" (check digit does not fit)", ""));
            table.add(
                    cells.matches()
                            ? row(
                                    widest,
                                    or(cells.group("name")),
                                    or(cells.group("cas")),
                                    or(cells.group("percent")).replaceAll("\\s*%.*", ""))
                            : part);
        }
        return table.toString();
    }

    private static String row(int widest, String name, String cas, String percent) {
        return name
                + " ".repeat(Math.max(4, widest - name.length()))
                + cas
                + " ".repeat(20 - Math.min(16, cas.length()))
                + percent;
    }

    private static String or(@Nullable String text) {
        return text == null ? "" : text;
    }
}
