package plumbrow.advice.gates;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a gate says of itself: told once, beside the gates, and shown on the desk and in the manual.
 *
 * @param section the shelf it stands on, such as "Water"
 * @param rule paragraphs; one that begins with four blanks is a formula, one that begins with "1." a list
 * @param source where the rule stands
 * @param needs what has to be known, and where it stands in the book
 * @param examples each in one sentence
 */
public record GatePage(
        Gate gate, String section, List<String> rule, String source, String needs, List<String> examples) {
    private static final String FILE = "pages.txt";
    private static final Map<String, GatePage> ALL = read();

    public GatePage {
        rule = List.copyOf(rule);
        examples = List.copyOf(examples);
    }

    /** Every gate's page, section by section. */
    public static List<GatePage> all() {
        return List.copyOf(ALL.values());
    }

    /** The page of a gate by its name. */
    public static Optional<GatePage> find(String id) {
        return Optional.ofNullable(ALL.get(id));
    }

    private static Map<String, GatePage> read() {
        Map<String, GatePage> pages = new LinkedHashMap<>();
        Arrays.stream(text().split("(?m)^== ")).filter(part -> !part.isBlank()).forEach(part -> {
            GatePage page = page(part.lines().toList());
            pages.put(page.gate().id(), page);
        });
        return pages;
    }

    private static GatePage page(List<String> lines) {
        String id = lines.get(0).strip();
        Gate gate = Gates.all().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(FILE + " tells of a gate " + id));
        List<String> rule = new ArrayList<>();
        StringBuilder paragraph = new StringBuilder();
        for (String line : lines.subList(1, lines.size())) {
            if (line.matches("(section|source|needs|example): .*")) {
                continue;
            }
            if (line.isBlank() && paragraph.length() > 0) {
                rule.add(paragraph.toString());
                paragraph.setLength(0);
            } else if (!line.isBlank()) {
                paragraph.append(paragraph.length() == 0 ? "" : "\n").append(line);
            }
        }
        if (paragraph.length() > 0) {
            rule.add(paragraph.toString());
        }
        return new GatePage(
                gate,
                one(lines, "section"),
                rule,
                one(lines, "source"),
                one(lines, "needs"),
                told(lines, "example").toList());
    }

    private static String one(List<String> lines, String key) {
        return told(lines, key)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(FILE + ", " + lines.get(0) + " lacks its " + key));
    }

    private static Stream<String> told(List<String> lines, String key) {
        return lines.stream()
                .filter(line -> line.startsWith(key + ": "))
                .map(line -> line.substring(key.length() + 2).strip());
    }

    private static String text() {
        try (InputStream in = GatePage.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing from this installation");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
