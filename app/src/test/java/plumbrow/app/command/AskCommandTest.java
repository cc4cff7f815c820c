package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.ask.Questions;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;

/** Questions by command, and what to tell next of a book's fields. */
class AskCommandTest {
    @Test
    void theQuestionsAreListed() {
        String out = plumbrow("ask").good().out();
        assertThat(Questions.all()).allSatisfy(question -> assertThat(out).contains(question.id()));
        assertThat(plumbrow("ask", "--json").good().json().size())
                .isEqualTo(Questions.all().size());
    }

    @Test
    void oneIsAnsweredWithWhatWasTold() {
        String out = plumbrow("ask", "insecticide", "state=IA", "trait=none", "--as-of", "2026-03-02")
                .good()
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("By the money", "On what you’ve told (1) and typical Iowa values", "typical, not yours")
                .contains("nothing here is cleared for use yet", "Tell me next", "unknown");
        assertThat(plumbrow("ask", "insecticide", "state=IA", "--as-of", "2026-03-02", "--json")
                        .good()
                        .json()
                        .get("question")
                        .asString())
                .isEqualTo("insecticide");
    }

    @Test
    void whatIsMistypedIsAskedBack() {
        plumbrow("ask", "insectcide")
                .refused("There is no question 'insectcide'")
                .refused("did you mean insecticide?");
        plumbrow("ask", "insecticide", "prise=4").refused("Found 'prise=4'").refused("did you mean price?");
        plumbrow("ask", "insecticide", "price=dear").refused("found 'dear'; expected a number");
    }

    @Test
    void whatToTellNext(@TempDir Path folder) {
        Season season = SmallSeason.of(2027);
        Path book = SmallBook.of(folder.resolve("farm.book"), season);
        String name = season.fields().get(0).name();
        assertThat(plumbrow("next", "--book", book).good().out()).contains(name);
        assertThat(plumbrow("next", "--book", book, "--json").good().json().size())
                .isEqualTo(season.fields().size());
        plumbrow("next", "--book", book, "--field", "none such").refused("There is no field 'none such'");
    }
}
