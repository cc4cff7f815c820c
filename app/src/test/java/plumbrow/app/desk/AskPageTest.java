package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import plumbrow.advice.ask.Question;
import plumbrow.advice.ask.Questions;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
import plumbrow.documents.workbook.WorkbookWriter;
import plumbrow.science.reference.TypicalValue;

/** The way in: three doors, questions answered at once, a field kept, a workbook dropped. */
class AskPageTest {
    private static final String INSECTICIDE = "/ask/insecticide?state=IA&trait=none&history=third";

    @Test
    void an_empty_book_opens_three_doors_and_no_terminal() {
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            String home = visitor.get("/").text();
            assertThat(home)
                    .contains("Ask one question", "Enter my season", "See the demo")
                    .doesNotContain("plumbrow book import");
            for (Question question : Questions.all()) {
                assertThat(home).contains(question.asks());
                var page = visitor.get("/ask/" + question.id());
                assertThat(page.status()).isEqualTo(200);
                assertThat(page.text()).contains("By the money", "typical, not yours", "Tell me next");
            }
        }
    }

    @Test
    void every_page_leads_to_the_doors() {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027)).weighed()) {
            Visitor visitor = new Visitor(desk);
            for (String page : new String[] {"/", "/check", "/figures", "/ask", "/log", "/shelf"}) {
                assertThat(visitor.get(page).body())
                        .contains("href=\"/ask\"", "href=\"/ask#two\"", "href=\"/ask#three\"");
            }
            assertThat(visitor.get("/ask").text()).contains("Work on season 2027");
        }
    }

    /** At most eight boxes stand open; the page says what is only typical and what was told. */
    @Test
    void at_most_eight_boxes_are_seen() {
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            for (Question question : Questions.all()) {
                String page = visitor.get("/ask/" + question.id()).body();
                String form = page.substring(
                        page.indexOf("<form id=\"ask\""), page.indexOf("</form>", page.indexOf("<form id=\"ask\"")));
                int folded = form.indexOf("<details id=\"more\"");
                String seen = folded < 0 ? form : form.substring(0, folded);
                assertThat(seen.split("class=\"askbox\"", -1).length - 1)
                        .as(question.id())
                        .isBetween(5, Question.MOST_SEEN);
            }
        }
    }

    @Test
    void what_cannot_be_read_is_said_beside_its_box_and_nothing_is_lost() {
        try (OpenDesk desk = OpenDesk.over()) {
            var page = new Visitor(desk).get("/ask/insecticide?state=IA&price=dear&injury=9&yield=201");
            assertThat(page.status()).isEqualTo(422);
            assertThat(page.text())
                    .contains("2 boxes can’t be read", "Price at harvest: found 'dear'; expected a number");
            assertThat(page.body()).contains("value=\"dear\"", "value=\"201\"", "data-box=\"b-price\"");
            assertThat(new Visitor(desk).get("/ask/none-such").status()).isEqualTo(404);
        }
    }

    /** The same answer on the page and as JSON. */
    @Test
    void the_same_as_json() {
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            var json = visitor.get("/api" + INSECTICIDE);
            assertThat(json.status()).isEqualTo(200);
            String sentence = json.body().replaceAll("(?s).*?\"sentence\" : \"(By the money[^\"]*)\".*", "$1");
            assertThat(visitor.get(INSECTICIDE).text().replace("\u2060", "")).contains(sentence);
            assertThat(visitor.get("/api/ask").body()).contains("\"question\" : \"replant\"", "a number, 0 to 3");
            var bad = visitor.get("/api/ask/insecticide?price=dear");
            assertThat(bad.status()).isEqualTo(400);
            assertThat(bad.body()).contains("\"price\" : ");
            assertThat(visitor.get("/api/ask/none-such").status()).isEqualTo(404);
            assertThat(visitor.get("/api/fields/x/next").status()).isEqualTo(404);
        }
    }

    @Test
    void a_question_is_kept_as_a_field_of_an_empty_book() {
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            Map<String, String> typed = new HashMap<>(Map.of(
                    "state",
                    "IA",
                    "trait",
                    "none",
                    "history",
                    "third",
                    "name",
                    "Church Eighty",
                    "farm",
                    "Oakridge",
                    "grower",
                    "L. Brandvold",
                    "county",
                    "Kosuth"));
            var refused = visitor.post(INSECTICIDE, "/ask/insecticide/keep", typed);
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.text()).contains("Found 'Kosuth'", "did you mean Kossuth?");
            assertThat(desk.book().season()).isEmpty();
            typed.put("county", "Kossuth");
            var kept = visitor.post(INSECTICIDE, "/ask/insecticide/keep", typed);
            assertThat(kept.header("Location")).isEqualTo("/fields/Church%20Eighty/weighing");
            Season season = desk.book().season().orElseThrow();
            assertThat(season.fields()).hasSize(1);
            assertThat(season.assumptions())
                    .allSatisfy(line ->
                            assertThat(TypicalValue.marked(line.source())).isTrue());
            assertThat(visitor.get("/fields/Church%20Eighty/weighing").status()).isEqualTo(200);
            assertThat(visitor.get("/fields/Church%20Eighty/next").text()).contains("What to tell next");
            assertThat(visitor.get("/api/fields/Church%20Eighty/next").body()).contains("\"inputs\"");
            typed.put("name", "Depot");
            assertThat(visitor.post(INSECTICIDE, "/ask/insecticide/keep", typed).status())
                    .isEqualTo(302);
            assertThat(desk.book().season().orElseThrow().fields()).hasSize(2);
            assertThat(visitor.post(INSECTICIDE, "/ask/insecticide/keep", typed).text())
                    .contains("There is a field called 'Depot'");
        }
    }

    @Test
    void a_workbook_is_dropped_on_an_empty_book(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("season.xlsx");
        Season season = DemoBook.season();
        WorkbookWriter.write(season, file);
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            assertThat(send(visitor, "notes.xlsx", new byte[] {1, 2, 3}).text()).contains("was not taken in");
            assertThat(desk.book().season()).isEmpty();
            assertThat(send(visitor, "", new byte[0]).text()).contains("No file was chosen");
            var taken = send(visitor, "season.xlsx", Files.readAllBytes(file));
            assertThat(taken.header("Location")).as(taken.text()).isEqualTo("/");
            assertThat(desk.book().season().orElseThrow().fields())
                    .hasSize(season.fields().size());
            // A second one shows what it would change before it does.
            String shown =
                    send(visitor, "season.xlsx", Files.readAllBytes(file)).header("Location");
            assertThat(shown).startsWith("/season/import/");
            assertThat(visitor.get(shown).text()).contains("Nothing: it says what the book holds");
            WorkbookWriter.write(
                    season.withAssumptions(
                            season.assumptions().subList(1, season.assumptions().size())),
                    file);
            String less = send(visitor, "season.xlsx", Files.readAllBytes(file)).header("Location");
            var page = visitor.get(less);
            assertThat(page.text()).contains("1 row would change", "assumptions: removed corn");
            assertThat(desk.book().season().orElseThrow().assumptions())
                    .hasSize(season.assumptions().size());
            assertThat(visitor.post(less, less, Map.of("mark", "another")).status())
                    .isEqualTo(409);
            assertThat(visitor.post(less, less, Map.of("mark", page.hidden("mark")))
                            .status())
                    .isEqualTo(302);
            assertThat(desk.book().season().orElseThrow().assumptions())
                    .hasSize(season.assumptions().size() - 1);
        }
    }

    /** A season without assumptions can't be weighed; typical ones stand in when asked for, marked so, and it can. */
    @Test
    void typical_values_stand_in_for_assumptions_that_are_lacking() {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027).withAssumptions(java.util.List.of()))) {
            Visitor visitor = new Visitor(desk);
            String weighing = "/fields/" + plumbrow.app.desk.shown.Shown.part(DeskSeason.HOME) + "/weighing";
            assertThat(visitor.get(weighing).body()).contains("href=\"/typical\"");
            assertThat(visitor.get("/typical").text()).contains("Price of " + DeskSeason.HOME);
            assertThat(visitor.post("/typical", "/typical", Map.of()).status()).isEqualTo(302);
            assertThat(visitor.get(weighing).status()).isEqualTo(200);
            assertThat(desk.book().season().orElseThrow().assumptions())
                    .isNotEmpty()
                    .allSatisfy(line ->
                            assertThat(TypicalValue.marked(line.source())).isTrue());
            assertThat(visitor.get("/typical").text()).contains("Every field has a price and a yield");
        }
    }

    private static Visitor.Page send(Visitor visitor, String name, byte[] content) {
        var form = visitor.get("/ask");
        String token = form.body().replaceAll("(?s).*?name=\"_csrf\" value=\"([^\"]+)\".*", "$1");
        try {
            return new Visitor.Page(visitor.mvc()
                    .perform(MockMvcRequestBuilders.multipart("/workbook")
                            .file(new MockMultipartFile("workbook", name, null, content))
                            .cookie(java.util.Objects.requireNonNull(
                                    form.response().getCookie("XSRF-TOKEN")))
                            .param("_csrf", token))
                    .andReturn()
                    .getResponse());
        } catch (Exception fault) {
            throw new AssertionError(fault);
        }
    }

    /** The demo opens as a desk of its own, and the book stays empty. */
    @Test
    void the_demo_stands_beside_the_book() {
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            var page = visitor.post("/ask", "/demo", Map.of());
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.text()).contains("The demo is open");
            assertThat(page.body()).containsPattern("href=\"http://127\\.0\\.0\\.1:\\d+/\"");
            assertThat(desk.book().season()).isEmpty();
        }
    }
}
