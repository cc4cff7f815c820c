package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.pestpage.PestNames;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.PestPages;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.PestPaper;

@SuppressWarnings("NullAway.Init")
class PestCommandTest {
    private static final Season SEASON = SmallSeason.of(2027);
    private static final String NAME = "corn rootworm";

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SEASON);
    }

    private static PestPage page() {
        return PestPages.of(SEASON, NAME).orElseThrow();
    }

    @Test
    void jsonIsThePageItself() {
        assertThat(plumbrow("pest", NAME, "--book", book, "--json").good().out().strip())
                .isEqualTo(Json.of(page()));
        assertThat(plumbrow("pest", "--book", book, "--json").good().json().size())
                .isEqualTo(PestNames.of(SEASON).size());
    }

    @Test
    void textSaysWhatMattersFirstAndWhatIsUnknown() {
        String out =
                plumbrow("pest", "CORN Rootworm", "--book", book).good().out().replaceAll("\\s+", " ");
        assertThat(out)
                .startsWith("Corn rootworm, 2027 " + page().sentence())
                .contains("unknown: ", "Two passes", "Mind The current label is the law");
        assertThat(plumbrow("pest", "--book", book).good().out()).contains("waterhemp", NAME);
    }

    @Test
    void thePaperIsThatOfTheDesk() throws IOException {
        Path pdf = folder.resolve("page.pdf");
        plumbrow("pest", NAME, "--book", book, "--pdf", pdf).good();
        assertThat(Files.readAllBytes(pdf)).isEqualTo(PestPaper.print(page()));
    }

    @Test
    void whatIsNotThereIsSaidInWords() {
        plumbrow("pest", "dragon", "--book", book).refused("Nothing is kept of 'dragon'");
        plumbrow("pest", NAME, "--book", book, "--pdf", "page.txt").refused("expected one that ends in .pdf");
        plumbrow("pest", "--book", book, "--pdf", "page.pdf").refused("Say which weed or insect to print");
    }
}
