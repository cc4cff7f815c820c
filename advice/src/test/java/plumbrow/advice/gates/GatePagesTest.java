package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The manual's pages of gates say what the gates say of themselves")
class GatePagesTest {
    private static final Path DOCS = Path.of("..", "docs", "gates");

    @Test
    void everyGateTellsOfItself() {
        assertThat(GatePage.all())
                .extracting(page -> page.gate().id())
                .containsExactlyInAnyOrderElementsOf(
                        Gates.all().stream().map(Gate::id).toList());
        assertThat(GatePage.all()).allSatisfy(page -> {
            assertThat(page.rule()).as(page.gate().id()).isNotEmpty();
            assertThat(page.source()).endsWith(".");
            assertThat(page.needs()).endsWith(".");
            assertThat(page.examples()).isNotEmpty().allMatch(example -> example.endsWith("."));
        });
    }

    /** With -Dplumbrow.docs=write, after a page changed, the manual is written anew. */
    @TestFactory
    Stream<DynamicTest> isThePageInTheManual() {
        return pages().entrySet().stream()
                .map(page -> DynamicTest.dynamicTest(page.getKey(), () -> upToDate(page.getKey(), page.getValue())));
    }

    @Test
    void noPageIsLeftOfAGateThatIsGone() throws IOException {
        Files.createDirectories(DOCS);
        try (Stream<Path> files = Files.list(DOCS)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> !name.equals("cases.md")))
                    .isSubsetOf(pages().keySet());
        }
    }

    private static void upToDate(String name, String text) throws IOException {
        Path file = DOCS.resolve(name);
        if (System.getProperty("plumbrow.docs", "").equals("write")) {
            Files.createDirectories(DOCS);
            Files.writeString(file, text);
        }
        assertThat(file)
                .as("docs/gates/" + name + "; run this test with -Dplumbrow.docs=write to write it")
                .exists();
        assertThat(Files.readString(file).replace("\r\n", "\n"))
                .as("docs/gates/" + name + "; run this test with -Dplumbrow.docs=write to write it anew")
                .isEqualTo(text);
    }

    private static Map<String, String> pages() {
        Map<String, String> pages = new TreeMap<>();
        GatePage.all().forEach(page -> pages.put(page.gate().id() + ".md", markdown(page)));
        pages.put("README.md", index());
        return pages;
    }

    private static String markdown(GatePage page) {
        return "# " + page.gate().id() + "\n\n*" + page.gate().question() + "* Protects "
                + page.gate().protects().words() + ".\n\n"
                + String.join("\n\n", page.rule()) + "\n\n- **Source.** " + page.source() + "\n- **Needs.** "
                + page.needs() + "\n"
                + page.examples().stream()
                        .map(example -> "- **Example.** " + example + "\n")
                        .collect(Collectors.joining())
                + "\nWhat the four words mean, and what all gates have in common: [Gates](../gates.md).\n";
    }

    private static String index() {
        StringBuilder text = new StringBuilder("""
                # Gates, one by one

                Written from the pages that the gates carry with them; the same text stands on the desk under *Check*. To write
                it anew after a page changed:

                    mvn -B test -pl advice -am -Dtest=GatePagesTest -Dsurefire.failIfNoSpecifiedTests=false -Dplumbrow.docs=write
                """);
        List<String> sections =
                GatePage.all().stream().map(GatePage::section).distinct().toList();
        for (String section : sections) {
            text.append("\n## ").append(section).append("\n\n");
            GatePage.all().stream()
                    .filter(page -> page.section().equals(section))
                    .forEach(page -> text.append("- [")
                            .append(page.gate().id())
                            .append("](")
                            .append(page.gate().id())
                            .append(".md): ")
                            .append(page.gate().question())
                            .append('\n'));
        }
        return text.toString();
    }
}
