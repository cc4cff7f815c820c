package plumbrow.science.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import plumbrow.science.figure.Subject;

@DisplayName("The manual's pages of figures and checks say what the code says")
class PagesTest {
    private static final Path DOCS = Path.of("..", "docs");

    /** With -Dplumbrow.docs=write, after a declaration or a check changed, the pages are written anew. */
    @TestFactory
    Stream<DynamicTest> isThePageInTheManual() {
        return pages().entrySet().stream()
                .map(page -> DynamicTest.dynamicTest(page.getKey(), () -> upToDate(page.getKey(), page.getValue())));
    }

    @Test
    @DisplayName("No page is left of a subject that is gone")
    void noPageTooMany() throws IOException {
        for (String folder : List.of("figures", "checks")) {
            if (isWriting()) {
                Files.createDirectories(DOCS.resolve(folder));
            }
            try (Stream<Path> files = Files.list(DOCS.resolve(folder))) {
                assertThat(files.map(file -> folder + "/" + file.getFileName())).isSubsetOf(pages().keySet());
            }
        }
    }

    private static void upToDate(String name, String text) throws IOException {
        Path file = DOCS.resolve(name);
        if (isWriting()) {
            Files.createDirectories(file.resolveSibling("."));
            Files.writeString(file, text);
        }
        assertThat(file)
                .as("docs/" + name + "; run this test with -Dplumbrow.docs=write to write it")
                .exists();
        assertThat(Files.readString(file).replace("\r\n", "\n"))
                .as("docs/" + name + "; run this test with -Dplumbrow.docs=write to write it anew")
                .isEqualTo(text);
    }

    private static boolean isWriting() {
        return System.getProperty("plumbrow.docs", "").equals("write");
    }

    private static Map<String, String> pages() {
        Map<String, String> pages = new TreeMap<>();
        pages.put("checks.md", ChecksPage.markdown());
        pages.put("sources.md", SourcesPage.markdown());
        pages.put("figures/README.md", SubjectPage.index());
        for (Subject subject : Subject.values()) {
            pages.put("figures/" + SubjectPage.file(subject) + ".md", SubjectPage.markdown(subject));
            pages.put("checks/" + SubjectPage.file(subject) + ".md", ChecksPage.markdown(subject));
        }
        return pages;
    }
}
