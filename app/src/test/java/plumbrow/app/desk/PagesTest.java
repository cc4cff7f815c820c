package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.net.URI;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.AdviceSummary;
import plumbrow.app.json.Json;

/** What each page says, and what it refuses. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesTest {
    private static final String HOME = "/fields/" + Shown.part(DeskSeason.HOME);

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    private FieldAdvice advice() {
        var season = DeskSeason.of(2027);
        return Adviser.adviseField(season, season.field(DeskSeason.HOME).orElseThrow(), WeighingOptions.DEFAULT);
    }

    @Test
    void the_season_says_first_how_many_fields_have_an_answer_and_what_it_brings() {
        var page = visitor.get("/");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text())
                .contains("Of 3 fields on 130 acres, 2 have an answer; together they are expected to earn $");
        assertThat(page.text())
                .contains(
                        "beats it in "
                                + advice().odds(advice().advisedProgram()
                                        .orElseThrow()
                                        .chanceBeatsBaseline()),
                        "not decided",
                        "Nothing can be advised yet");
    }

    @Test
    void the_weighing_shows_the_numbers_of_the_adviser() {
        String page = visitor.get(HOME + "/weighing").text();
        FieldAdvice advice = advice();
        assertThat(page).contains(Shown.said(advice.sentence()), advice.reason());
        assertThat(page)
                .contains(
                        "The range over which this holds",
                        Shown.said(Objects.requireNonNull(advice.gainDoubt()).says()))
                .contains(advice.equal().words())
                .doesNotContain("never turn");
        assertThat(advice.ranges())
                .isNotEmpty()
                .allSatisfy(range -> assertThat(page).contains(Shown.said(range.says())));
        assertThat(advice.programs())
                .allSatisfy(program -> assertThat(page)
                        .contains(
                                program.name(),
                                Shown.cents(program.costUsdPerAcre()),
                                Shown.dollars(program.meanMarginUsdPerAcre()),
                                program.standing().word()));
        assertThat(page).contains("the label allows", "Stands in: " + DeskSeason.SOURCE);
    }

    @Test
    void the_field_shows_what_is_unknown_and_where_to_look_it_up() {
        var page = visitor.get(HOME);
        assertThat(page.text()).contains("unknown; look up: the last soil test", "188");
        assertThat(page.body()).contains("aria-label=\"Outline of North 80, north up\"");
    }

    @Test
    void a_name_with_signs_of_addresses_and_of_pages_is_found_and_harmless() {
        String address = "/fields/" + Shown.part(DeskSeason.AWKWARD);
        assertThat(visitor.get(address).body()).contains("<h1>Creek/Bottom; 40 % &lt;west&gt;</h1>");
        assertThat(visitor.get(address + "/weighing").status()).isEqualTo(200);
        assertThat(visitor.get("/api" + address + "/advice").status()).isEqualTo(200);
    }

    @Test
    void a_changed_assumptions_changes_the_answer_and_is_marked() {
        var page = visitor.post(HOME + "/weighing", Map.of("box 0 price", "2.10"));
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("With your changed assumptions: ");
        assertThat(page.body()).contains("value=\"2.10\"", "<p class=\"mark\" id=\"m0\">changed</p>");
        assertThat(visitor.get(HOME + "/weighing").text()).doesNotContain("With your changed assumptions");
    }

    @Test
    void what_was_typed_is_there_after_an_error_which_stands_beside_the_box_and_on_top() {
        var page = visitor.post(
                HOME + "/weighing",
                Map.of(
                        "box 0 price",
                        "cheap",
                        "box 0 pressure: corn rootworm",
                        "2",
                        "box 1 pressure: corn rootworm",
                        "1"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text())
                .contains("2 boxes can’t be read", "'cheap' is not a number")
                .contains("expected no more than the most likely value");
        assertThat(page.body()).contains("value=\"cheap\"", "<a href=\"#i0-0\">", "<span data-box=\"i0-0\">");
    }

    @Test
    void a_value_outside_its_scale_is_refused_in_words() {
        var page = visitor.post(
                HOME + "/weighing",
                Map.of(
                        "box 0 pressure: corn rootworm",
                        "",
                        "box 1 pressure: corn rootworm",
                        "9",
                        "box 2 pressure: corn rootworm",
                        ""));
        assertThat(page.text()).contains("most likely: expected 0 to 3 nodes.");
    }

    @Test
    void a_barred_program_is_refused_with_the_reason_and_nothing_is_recorded() {
        var page = visitor.post(
                HOME + "/choice",
                Map.of(
                        "program",
                        DeskSeason.BARRED,
                        "who",
                        "R. Alder",
                        "why",
                        "more helps more",
                        "box 0 price",
                        "3.33"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text())
                .contains("double the label is barred and can't be chosen", "12 lb/ac is more than", "more helps more");
        assertThat(page.body()).contains("value=\"3.33\"");
        assertThat(desk.book().choices(2027))
                .noneMatch(choice -> choice.program().equals(DeskSeason.BARRED));
    }

    @Test
    void a_program_with_an_unknown_waits_until_it_is_looked_up() {
        var page = visitor.post(
                HOME + "/choice", Map.of("program", DeskSeason.UNKNOWN, "who", "R. Alder", "why", "it pays"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("can't be chosen until this is looked up", "Plan a day");
        assertThat(desk.book().choices(2027))
                .noneMatch(choice -> choice.program().equals(DeskSeason.UNKNOWN));
    }

    @Test
    void who_and_why_are_asked_for() {
        var page = visitor.post(HOME + "/choice", Map.of("program", "half rate", "who", " ", "why", ""));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("Say who decides", "Say why");
    }

    @Test
    void a_decision_is_recorded_with_what_the_advice_said_then() {
        var page = visitor.post(
                HOME + "/choice", Map.of("program", "half rate", "who", "Q. Birch", "why", "<b>roots looked bad</b>"));
        assertThat(page.status()).isEqualTo(302);
        assertThat(visitor.get(HOME + "/weighing").body()).contains("&lt;b&gt;roots looked bad");
        var program = advice().program("half rate").orElseThrow();
        assertThat(desk.book().choices(2027)).anySatisfy(choice -> {
            assertThat(choice.who()).isEqualTo("Q. Birch");
            assertThat(choice.chanceBeatsBaseline()).isEqualTo(program.chanceBeatsBaseline());
            assertThat(choice.meanMarginUsdPerAcre()).isEqualTo(program.meanMarginUsdPerAcre());
        });
        assertThat(visitor.get("/").text()).contains("Chosen: half rate");
    }

    @Test
    void an_ingredient_is_found_and_what_is_not_verified_is_marked_in_words() {
        assertThat(visitor.get("/ingredients?q=atra").text()).contains("1 of", "CAS 1912-24-9");
        assertThat(visitor.get("/ingredients?q=zzz").text()).contains("which says nothing about it");
        var page = visitor.get("/ingredients/atrazine");
        assertThat(page.text())
                .contains(
                        "Half-life in the field", "value from memory", "None is kept under this name", "Unknown here");
        assertThat(page.body()).contains("<li class=\"doubt\">");
        assertThat(visitor.get("/ingredients/nothing").text()).contains("Nothing is kept of “nothing”");
        var json = visitor.get("/api/ingredients/1912-24-9");
        assertThat(json.status()).isEqualTo(200);
        assertThat(json.body()).contains("\"seen_at\"", "value from memory");
        assertThat(visitor.get("/api/ingredients/nothing").status()).isEqualTo(404);
    }

    @Test
    void figures_are_found_by_their_question() {
        assertThat(visitor.get("/figures?q=node%20injury").text()).contains("root", "of ");
        assertThat(visitor.get("/figures?q=zzz").text()).contains("No figure asks that");
        var jugs = visitor.get("/figures?q=How%20many%20jugs%20until%20I%20must%20report%20a%20spill%3F");
        assertThat(jugs.text()).contains("nearest first", "Does this spill reach the reportable quantity?");
        assertThat(jugs.body().indexOf("/figures/spill\""))
                .isLessThan(jugs.body().indexOf("/figures/spill-mixture"));
    }

    @Test
    void the_paper_of_a_figure_shows_what_it_was_worked_from() {
        String typed = "?cost_usd_ac=18&loss_bu_ac=14&price_usd_bu=4.40";
        var page = visitor.get("/figures/break-even-chance" + typed);
        String paper = page.body()
                .substring(page.body().indexOf("Worked from"), page.body().indexOf("<h2>Working"));
        assertThat(paper).contains("18 $/ac", "14 bu/ac", "4.40 $/bu", "<dd>1 </dd>");
    }

    @Test
    void a_figure_answers_with_its_working_and_says_what_is_missing_or_wrong() {
        String address = "/figures/partial-budget";
        assertThat(visitor.get(address + "?added_return=97500").text())
                .containsIgnoringCase("Still to fill in: cost no longer spent");
        String full = "?added_return=97500&reduced_cost=55000&reduced_return=88000&added_cost=69000";
        assertThat(visitor.get(address + full).text()).contains("−4,500", "Working");
        var wrong = visitor.get(address + full.replace("97500", "lots"));
        assertThat(wrong.text()).contains("'lots'");
        assertThat(wrong.body()).contains("<a href=\"#i0\">", "value=\"lots\"");
        assertThat(visitor.get("/api" + address + full).body()).contains("\"figure\" : \"partial-budget\"", "-4500");
    }

    @Test
    void programs_get_the_same_answer_to_the_letter() {
        assertThat(visitor.get("/api" + HOME + "/advice").body())
                .isEqualTo(Json.of(AdviceSummary.OfField.of(DeskSeason.of(2027), advice())));
        assertThat(visitor.get("/api/advice").body())
                .isEqualTo(Json.of(Adviser.advise(DeskSeason.of(2027), WeighingOptions.DEFAULT, (fields, of) -> {})));
    }

    @Test
    void programs_get_a_sentence_where_there_is_no_answer() {
        assertThat(visitor.get("/api/fields/Nowhere/advice").status()).isEqualTo(404);
        assertThat(visitor.get("/api/fields/Nowhere/advice").body())
                .contains("\"error\" : \"There is no field called “Nowhere”");
        assertThat(visitor.get("/fields/Nowhere/plan").status()).isEqualTo(404);
        assertThat(visitor.get("/api/fields/Nowhere/plan").status()).isEqualTo(404);
        assertThat(visitor.get("/api/fields/Nowhere/plan").body())
                .contains("\"error\" : \"There is no field called “Nowhere”");
        assertThat(visitor.get("/api" + HOME + "/plan").body()).contains("\"money_says\"");
        var wrong = visitor.get("/api/figures/partial-budget?added_return=lots");
        assertThat(wrong.status()).isEqualTo(400);
        assertThat(wrong.body()).contains("\"error\" : \"added_return is 'lots'; expected");
    }

    @Test
    void the_papers_are_handed_out() {
        assertThat(visitor.get("/binder").text()).contains("A file holds one grower’s money", "Birch Rent");
        for (String two : new String[] {"/binder.pdf", "/advice.xlsx"}) {
            assertThat(visitor.get(two).status()).isGreaterThanOrEqualTo(400);
            assertThat(visitor.get(two).text()).contains("holds the money of one grower", "Q. Birch");
        }
        assertThat(visitor.get("/binder.pdf?farm=Nowhere").status()).isEqualTo(404);
        assertThat(visitor.get("/binder.pdf?grower=Nobody").status()).isEqualTo(404);
        for (String one : new String[] {"farm=" + Shown.part("Birch Rent"), "field=" + Shown.part(DeskSeason.HOME)}) {
            var pdf = visitor.get("/binder.pdf?" + one);
            assertThat(pdf.status()).isEqualTo(200);
            assertThat(pdf.body()).startsWith("%PDF-");
        }
        var sheet = visitor.get("/advice.xlsx?grower=" + Shown.part("Q. Birch"));
        assertThat(sheet.status()).isEqualTo(200);
        assertThat(sheet.body()).startsWith("PK");
        assertThat(sheet.header("Content-Disposition")).contains("advice-2027.xlsx");
    }

    @Test
    void a_field_or_figure_that_is_not_there_is_named() {
        assertThat(visitor.get("/fields/Nowhere").status()).isEqualTo(404);
        assertThat(visitor.get("/fields/Nowhere").text()).contains("There is no field called “Nowhere” in 2027.");
        assertThat(visitor.get("/figures/nothing").text()).contains("There is no figure called “nothing”.");
    }

    @Test
    void a_form_of_another_page_is_not_taken() throws Exception {
        var answer = visitor.mvc()
                .perform(post(URI.create(HOME + "/choice"))
                        .param("program", "half rate")
                        .param("who", "x")
                        .param("why", "y"))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).isEqualTo(403);
        assertThat(desk.book().choices(2027)).noneMatch(choice -> choice.who().equals("x"));
    }

    @Test
    void a_page_that_calls_this_machine_by_a_name_of_its_own_is_turned_away() throws Exception {
        var answer = visitor.mvc()
                .perform(get("/").with(request -> {
                    request.setServerName("rebound.example");
                    return request;
                }))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).isEqualTo(400);
        assertThat(answer.getContentAsString()).contains("on this machine only").doesNotContain("acres");
    }

    @Test
    void pages_may_load_nothing_from_elsewhere_nor_be_framed() {
        var page = visitor.get("/");
        assertThat(page.header("Content-Security-Policy"))
                .startsWith("default-src 'self';")
                .contains("frame-ancestors 'none'");
        assertThat(page.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(page.body())
                .doesNotContain("https://")
                .doesNotContain("style=")
                .doesNotContain("onclick");
    }
}
