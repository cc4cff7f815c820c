package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.advice.years.Ahead;
import plumbrow.advice.years.LaterYears;
import plumbrow.advice.years.Rotation;
import plumbrow.advice.years.YearsAhead;
import plumbrow.advice.years.YearsOptions;
import plumbrow.app.SmallSeason;
import plumbrow.app.json.Json;

@SuppressWarnings("NullAway.Init")
class YearsCommandTest {
    private static final Season SEASON = SmallSeason.of(2027);
    private static final Field FIELD = SEASON.fields().get(0);
    private static final YearsOptions OPTIONS =
            YearsOptions.DEFAULT.withDraws(200).withSeasons(4);

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SEASON);
    }

    @Test
    void jsonIsTheLookAheadItself() {
        YearsAhead ahead = Ahead.of(SEASON, FIELD, Ahead.repeated(SEASON, FIELD), OPTIONS);
        assertThat(plumbrow("years", "--book", book, "--field", FIELD.name(), "--draws", 200, "--seasons", 4, "--json")
                        .good()
                        .out()
                        .strip())
                .isEqualTo(Json.of(ahead));
    }

    @Test
    void oneProgramShowsItsYearsAndItsWorking() {
        String program = SEASON.programs(FIELD.name()).get(0).name();
        YearsAhead ahead = Ahead.of(SEASON, FIELD, List.of(Rotation.named(SEASON, FIELD, List.of(program))), OPTIONS);
        String out = plumbrow(
                        "years",
                        "--book",
                        book,
                        "--field",
                        FIELD.name(),
                        "--program",
                        program,
                        "--draws",
                        200,
                        "--seasons",
                        4)
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .startsWith(FIELD.name() + ": " + ahead.sentence().substring(0, 20))
                .contains("2027 ", "2030 ", "How the present value comes about", "present value = ", "Mind");
    }

    @Test
    void whatIsNotThereIsSaidInWords() {
        plumbrow("years", "--book", book, "--field", "Nowhere").refused("There is no field 'Nowhere'");
        plumbrow("years", "--book", book, "--field", FIELD.name(), "--program", "Neither")
                .refused("There is no program 'Neither' on " + FIELD.name());
        plumbrow("years", "--book", book, "--field", FIELD.name(), "--seasons", 30)
                .refused("the number of seasons is 30; expected 1 to 20");
        plumbrow("weigh", "--book", book, "--years", 1).refused("the number of seasons is 1; expected 2 to 20");
    }

    @Test
    void theWeighingCountsLaterYearsWhenAsked() {
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(200).withLater(new LaterYears(5, 5));
        String asked = plumbrow(
                        "weigh", "--book", book, "--draws", 200, "--years", 5, "--field", FIELD.name(), "--json")
                .good()
                .out();
        assertThat(asked).contains("cost in later years");
        assertThat(asked)
                .contains("\"mean_margin_usd_per_acre\" : "
                        + Adviser.adviseField(SEASON, FIELD, options)
                                .programs()
                                .get(0)
                                .meanMarginUsdPerAcre());
    }
}
