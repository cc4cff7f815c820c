package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.app.ReadableText;
import plumbrow.app.demo.DemoBook;

/** Every kind of page of the demo, as a person reads it: no exponents, no digits that say nothing, no plural of one, no code names. */
class ReadablePagesTest {
    /** Pages of one kind that are read; the next hundred fields look alike. */
    private static final int OF_A_KIND = 3;

    /** Where numbers are kept as their source printed them, or a working shows all its digits. */
    private static final String AS_PRINTED =
            "script, style, code, pre, .working, ol.steps, .steps, .as-printed, input, textarea, [hidden]";

    @Test
    @DisplayName(
            "No page of the demo has an exponent, more than four digits outside a working, a plural of one, a code name or a"
                    + " source that is not written out")
    void pagesReadAsAPersonWrites() {
        Set<String> wrong = new TreeSet<>();
        try (OpenDesk desk = OpenDesk.over(DemoBook.season()).weighed()) {
            Visitor visitor = new Visitor(desk);
            Deque<String> todo = new ArrayDeque<>(List.of("/"));
            Set<String> seen = new LinkedHashSet<>(todo);
            Map<String, Integer> kinds = new HashMap<>();
            while (!todo.isEmpty()) {
                String address = todo.poll();
                if (kinds.merge(kind(address), 1, Integer::sum) > OF_A_KIND) {
                    continue;
                }
                Visitor.Page page = visitor.get(address);
                if (page.status() != 200 || !page.header("Content-Type").startsWith("text/html")) {
                    continue;
                }
                Document read = Jsoup.parse(page.body());
                for (Element link : read.select("a[href^=/]")) {
                    String to = link.attr("href").replaceAll("#.*", "");
                    if (seen.add(to)) {
                        todo.add(to);
                    }
                }
                read.select(AS_PRINTED).remove();
                faults(read).forEach(fault -> wrong.add(kind(address) + ": " + fault));
            }
            assertThat(kinds).as("kinds of page").hasSizeGreaterThan(20);
        }
        assertThat(wrong).isEmpty();
    }

    /** The page without the names in its address: "/fields/…/check". */
    private static String kind(String address) {
        String[] parts = URI.create(address).getRawPath().split("/", -1);
        StringBuilder kind = new StringBuilder();
        for (int i = 1; i < parts.length; i++) {
            kind.append('/').append(i % 2 == 0 ? "…" : parts[i]);
        }
        return kind.isEmpty() ? "/" : kind.toString();
    }

    private static Set<String> faults(Document page) {
        Set<String> faults = new LinkedHashSet<>();
        page.body().traverse((node, depth) -> {
            if (node instanceof org.jsoup.nodes.TextNode text) {
                faults.addAll(ReadableText.faults(text.text()));
            }
        });
        return faults;
    }
}
