package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.years.Ahead;
import plumbrow.advice.years.YearsAhead;
import plumbrow.advice.years.YearsOptions;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.Json;

/** The page of a field over several seasons, and the same for programs. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class YearsTest {
    private static final String HOME = Shown.part(DeskSeason.HOME);

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027));
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    private static YearsAhead ahead(int seasons) {
        Season season = DeskSeason.of(2027);
        Field field = season.field(DeskSeason.HOME).orElseThrow();
        return Ahead.of(season, field, Ahead.repeated(season, field), YearsOptions.DEFAULT.withSeasons(seasons));
    }

    @Test
    void the_page_says_what_the_look_ahead_says() {
        var page = visitor.get("/fields/" + HOME + "/years?seasons=3");
        YearsAhead ahead = ahead(3);
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains(Shown.said(ahead.sentence()), "over 3 seasons", "What was taken");
        assertThat(ahead.rotations())
                .allSatisfy(one ->
                        assertThat(page.text()).contains(one.name(), Shown.dollars(one.presentValueUsdPerAcre())));
    }

    @Test
    void the_comparison_and_this_page_say_the_same_of_one_season_and_many() {
        Season season = DeskSeason.of(2027);
        Field field = season.field(DeskSeason.HOME).orElseThrow();
        YearsAhead few = Ahead.of(season, field, Ahead.repeated(season, field), YearsOptions.DEFAULT.withDraws(300));
        var beside = visitor.get("/fields/" + HOME + "/years/now");
        assertThat(beside.status()).isEqualTo(200);
        assertThat(beside.text()).contains(Shown.said(few.besideOneSeason()), "Look ahead over the years");
        YearsAhead ahead = ahead(3);
        assertThat(visitor.get("/fields/" + HOME + "/years?seasons=3").text())
                .contains(Shown.said(ahead.decides()), Shown.said(ahead.nowAndLater()));
        assertThat(visitor.get("/fields/" + HOME + "/weighing").text()).contains("look ahead over the years");
    }

    @Test
    void programs_get_the_same() {
        assertThat(visitor.get("/api/fields/" + HOME + "/years?seasons=3").text())
                .isEqualTo(Json.of(ahead(3)).replaceAll("\\s+", " ").strip());
    }

    @Test
    void bad_boxes_get_a_sentence_each() {
        var page = visitor.get("/fields/" + HOME + "/years?seasons=many&discount=99&program=Neither");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text())
                .contains(
                        "“many” is not a number of whole seasons.",
                        "The discount rate is 99; expected 0 to 50.",
                        "There is no program 'Neither'");
        var api = visitor.get("/api/fields/" + HOME + "/years?seasons=99");
        assertThat(api.status()).isEqualTo(400);
        assertThat(api.text()).contains("The number of seasons is 99; expected 1 to 20.");
    }
}
