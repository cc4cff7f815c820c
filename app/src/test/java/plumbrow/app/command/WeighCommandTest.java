package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Progress;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.advice.years.BesideOneSeason;
import plumbrow.app.SmallSeason;
import plumbrow.app.json.AdviceSummary;
import plumbrow.app.json.Json;

@SuppressWarnings("NullAway.Init")
class WeighCommandTest {
    private static final Season SEASON = SmallSeason.of(2027);

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2026), SEASON);
    }

    @Test
    void theAnswerComesFirst() {
        FieldAdvice field = Adviser.advise(SEASON, WeighingOptions.DEFAULT, Progress.SILENT)
                .fields()
                .get(0);
        String out = plumbrow("weigh", "--book", book).good().out();
        assertThat(out).startsWith("North 80: " + field.sentence().substring(0, 30));
        assertThat(out.replaceAll("\\s+", " "))
                .contains(field.sentence(), field.reason(), "▸ " + field.advised(), "2027 season as of 2027-03-02")
                .contains(field.equal().words())
                .contains(BesideOneSeason.orWhyNot(SEASON, SEASON.fields().get(0)))
                .doesNotContain("never turn");
    }

    @Test
    void jsonIsTheAdviceItselfWithWhatTheYearsSay() {
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(500).withSeed(7);
        Advice advice = Adviser.advise(SEASON, options, Progress.SILENT);
        String later = BesideOneSeason.orWhyNot(SEASON, SEASON.fields().get(0));
        var json = plumbrow("weigh", "--book", book, "--draws", 500, "--seed", 7, "--json")
                .good();
        assertThat(json.out().strip()).isEqualTo(Json.of(AdviceSummary.of(advice, Map.of("North 80", later))));
        assertThat(json.json().get("fields").get(0).get("seasons_to_come").asString())
                .isEqualTo(later)
                .isNotEmpty();
        assertThat(json.json().get("fields").get(0).get("sentence").asString())
                .isEqualTo(advice.fields().get(0).sentence());
    }

    @Test
    void threadsChangeNothing() {
        String one = plumbrow("weigh", "--book", book, "--draws", 500, "--threads", 1, "--json")
                .out();
        assertThat(plumbrow("weigh", "--book", book, "--draws", 500, "--threads", 3, "--json")
                        .out())
                .isEqualTo(one);
    }

    @Test
    void anEarlierYearCanBeAsked() {
        assertThat(plumbrow("weigh", "--book", book, "--year", 2026, "--draws", 100, "--json")
                        .json()
                        .get("year")
                        .intValue())
                .isEqualTo(2026);
        plumbrow("weigh", "--book", book, "--year", 2020).refused("has no season 2020; it holds 2026, 2027.");
    }

    @Test
    void oneFieldCanBeAsked() {
        assertThat(plumbrow("weigh", "--book", book, "--field", "North 80", "--draws", 100)
                        .good()
                        .out())
                .startsWith("North 80: ");
        plumbrow("weigh", "--book", book, "--field", "South 80")
                .refused("There is no field 'South 80' in 2027; the fields are North 80.");
    }

    @Test
    void numbersOutOfRangeAreRefused() {
        plumbrow("weigh", "--book", book, "--draws", 5).refused("draws is 5; expected 100 to 1,000,000");
        plumbrow("weigh", "--book", book, "--threads", 0).refused("threads is 0; expected 1 or more");
        plumbrow("weigh", "--book", book, "--equal", 0)
                .refused("the least gain worth telling is $0.0/ac; expected more than 0, up to 1,000");
        plumbrow("weigh", "--book", book, "--draws", "many").misused("'many'");
        plumbrow("weigh", "--book", book, "--colour", "red").misused("--colour");
    }

    @Test
    void aBookThatCannotBeUsedIsSaidSo() {
        Path missing = folder.resolve("none.book");
        plumbrow("weigh", "--book", missing).refused("There is no book " + missing);
        Path empty = SmallBook.of(folder.resolve("empty.book"));
        plumbrow("weigh", "--book", empty).refused("holds no season yet");
    }

    @Test
    void aSeasonWithoutAnAssumptionsIsSaidSo() {
        Season gap = new Season(
                2028,
                SEASON.asOf(),
                SEASON.adviser(),
                SEASON.farms(),
                SEASON.fields(),
                List.of(),
                SEASON.shelf(),
                SEASON.pests(),
                SEASON.programs(),
                List.of());
        Path other = SmallBook.of(folder.resolve("gap.book"), gap);
        plumbrow("weigh", "--book", other).refused("North 80");
    }
}
