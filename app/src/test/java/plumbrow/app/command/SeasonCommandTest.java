package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.demo.DemoBook;

@SuppressWarnings("NullAway.Init")
class SeasonCommandTest {
    private static final Season SEASON = DemoBook.season();
    private static final String FIELD = "Vine Bottom";
    private static final String PROGRAM = "Before and after";

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SEASON);
    }

    @Test
    void theDaysAreToldInWordsAndDrawn() throws IOException {
        Path picture = folder.resolve("season.svg");
        String out = plumbrow("season", "--book", book, "--field", FIELD, "--program", PROGRAM, "--svg", picture)
                .good()
                .out();
        assertThat(out.replaceAll("\\s+", " "))
                .contains("Burcucumber: the first come up about", "Stillmeadow K on", "escape it", "Left at harvest")
                .contains("no check bars it", "barred,", "unknown: no hourly weather on file");
        assertThat(Files.readString(picture)).startsWith("<svg ").contains("aria-label=\"The season of");
    }

    @Test
    void jsonIsThatOfTheTrial() {
        SeasonTrial trial = new SeasonTrials(SEASON, WeighingOptions.DEFAULT)
                .whole(SEASON.field(FIELD).orElseThrow(), PROGRAM, List.of());
        String out = plumbrow("season", "--book", book, "--field", FIELD, "--program", PROGRAM, "--json")
                .good()
                .out();
        assertThat(out.strip()).isEqualTo(plumbrow.app.json.Json.of(trial).strip());
    }

    @Test
    void aFieldThatCantBeFollowedSaysWhatIsMissing() {
        assertThat(plumbrow("season", "--book", book, "--field", "South Slough").out())
                .contains("can't be followed day by day: missing is its climate");
    }

    @Test
    void badInputGetsASentence() {
        plumbrow("season", "--book", book, "--field", "Nowhere").refused("There is no field 'Nowhere'");
        plumbrow("season", "--book", book, "--field", FIELD, "--program", "none")
                .refused("has no program 'none'");
        plumbrow("season", "--book", book, "--field", FIELD, "--pass", "3", "--date", "soon")
                .refused("expected a day such as");
        plumbrow("season", "--book", book, "--field", FIELD, "--date", "2026-06-01")
                .refused("need --pass");
        plumbrow("season", "--book", book, "--field", FIELD, "--pass", "3", "--rate", "400")
                .refused("the label is the law");
    }
}
