package plumbrow.documents.mend;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.Task;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.sheet.Route;

/**
 * A value of a label as a person types it, and what it says. Sentences are laid out as on a label, under the heading where they
 * belong, and read by the same reader.
 */
public final class LabelText {
    private static final Pattern LED = Pattern.compile("(?<lead>[^:]{1,60}):\\s*(?<rest>.+)", Pattern.DOTALL);
    private static final Pattern GROUP = Pattern.compile("(?i)group\\s+(?<number>\\d{1,2}[A-Z]?)\\s+(?<word>\\p{L}+)");
    private static final Pattern REGISTRATION = Pattern.compile("\\d{1,6}-\\d{1,5}(?:-\\d{1,6})?");
    private static final Pattern HOURS =
            Pattern.compile("(?i)(?<time>\\d{1,3}(?:\\.\\d)?)\\s*(?<unit>h|hours?|d|days?)");

    private LabelText() {}

    /** What a person's words say of a kind; empty where the reader makes nothing of them. */
    public static List<LabelContent> read(LabelKind kind, String typed) {
        String text = typed.strip().replaceAll("\\s+", " ");
        if (text.isEmpty()) {
            return List.of();
        }
        Optional<LabelContent> plain = plain(kind, text);
        return plain.isPresent() ? plain.stream().toList() : found(kind, text);
    }

    private static Optional<LabelContent> plain(LabelKind kind, String text) {
        Matcher led = LED.matcher(text);
        return switch (kind) {
            case PRODUCT_NAME, ESTABLISHMENT -> Optional.of(new LabelContent.Text(text));
            case REGISTRATION ->
                REGISTRATION.matcher(text).matches() ? Optional.of(new LabelContent.Text(text)) : Optional.empty();
            case SIGNAL_WORD ->
                List.of("DANGER", "WARNING", "CAUTION").stream()
                        .filter(word -> word.equalsIgnoreCase(text))
                        .<LabelContent>map(LabelContent.Text::new)
                        .findFirst();
            case FIRST_AID ->
                led.matches()
                        ? Arrays.stream(Route.values())
                                .filter(route -> route.word().equalsIgnoreCase(led.group("lead")))
                                .<LabelContent>map(route -> new LabelContent.FirstAid(route, led.group("rest")))
                                .findFirst()
                        : Optional.empty();
            case GEAR ->
                led.matches()
                        ? Arrays.stream(Task.values())
                                .filter(task -> task.word().equalsIgnoreCase(led.group("lead")))
                                .<LabelContent>map(task -> new LabelContent.Gear(task, led.group("rest")))
                                .findFirst()
                        : Optional.empty();
            case GROUP -> {
                Matcher box = GROUP.matcher(text);
                yield box.matches()
                        ? Optional.of(new LabelContent.Group(
                                box.group("number").toUpperCase(Locale.ROOT),
                                box.group("word").toLowerCase(Locale.ROOT)))
                        : Optional.empty();
            }
            default -> Optional.empty();
        };
    }

    private static List<LabelContent> found(LabelKind kind, String text) {
        try {
            return LabelReader.read(laidOut(kind, text).getBytes(StandardCharsets.UTF_8), "typed page")
                    .all(kind)
                    .stream()
                    .map(LabelReading.Stated::content)
                    .toList();
        } catch (PaperTrouble none) {
            return List.of();
        }
    }

    private static String laidOut(LabelKind kind, String text) {
        Matcher hours = HOURS.matcher(text);
        return switch (kind) {
            case LABEL_DATE -> "Revised " + text;
            case REENTRY ->
                "AGRICULTURAL USE REQUIREMENTS\n"
                        + (hours.matches()
                                ? "The restricted-entry interval (REI) is " + hours.group("time") + " "
                                        + (hours.group("unit")
                                                        .toLowerCase(Locale.ROOT)
                                                        .startsWith("h")
                                                ? "hours."
                                                : "days.")
                                : text);
            case PLANT_BACK -> "ROTATIONAL CROPS\n" + text;
            case SETBACK, GROUND_WATER, BEES -> "ENVIRONMENTAL HAZARDS\n" + text;
            case ACTIVE, STRENGTH -> "ACTIVE INGREDIENT:\n" + text;
            case RESTRICTED_USE, CHILD_STATEMENT -> text;
            case DROPLETS, WIND, BOOM -> "SPRAY DRIFT MANAGEMENT\n" + text;
            default -> "DIRECTIONS FOR USE\n" + text;
        };
    }
}
