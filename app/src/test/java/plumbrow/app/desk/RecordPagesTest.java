package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import plumbrow.app.RecordsOfTest;
import plumbrow.app.SmallSeason;
import plumbrow.app.book.Book;

/** Records over the pages and the web interface: kept, asked back, corrected, void, given out. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class RecordPagesTest {
    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(RecordsOfTest.stocked(SmallSeason.of(2026), 4_000));
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    @Test
    void loadCardFillsTheForm() {
        String form = visitor.get("/records/new?field=North%2080&program=half%20rate&pass=2")
                .body();
        assertThat(form)
                .contains("value=\"North 80\" selected")
                .contains("id=\"rec-rate_1\" name=\"rate_1\" value=\"3\"")
                .contains("id=\"rec-total_1\" name=\"total_1\" value=\"240\"")
                .contains("value=\"00000-1\"")
                .contains("inputmode=\"decimal\"")
                .contains("value=\"America/Chicago\"");
    }

    @Test
    void whatIsDoubtfulIsAskedBackNothingIsKeptUntilItIsTicked() {
        int before = records();
        Map<String, String> typed = typed(Map.of("rate_1", "9", "note", "kept in its box"));
        Visitor.Page asked = post("/records/new", typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body())
                .contains("Asked back before it is kept")
                .contains("value=\"label-rate\"")
                .contains("9 lb/ac is more than the highest labelled rate")
                .contains("kept in its box");
        assertThat(records()).isEqualTo(before);
        typed.put("sure", "all");
        assertThat(post("/records/new", typed).status()).isEqualTo(302);
        assertThat(records()).isEqualTo(before + 1);
    }

    @Test
    void faultStandsBesideItsBoxAndAbove() {
        Visitor.Page page = post("/records/new", typed(Map.of("acres", "forty")));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.body())
                .contains("href=\"#rec-acres\"")
                .contains("data-box=\"rec-acres\"")
                .contains("“forty”");
    }

    @Test
    void recordIsCorrectedAndVoidAndBothStay() {
        String made = json("/api/records", typed(Map.of("date", "2026-04-01", "sure", "all")), 201);
        String number = made.replaceAll("(?s).*?\"number\" : (\\d+).*", "$1");
        assertThat(visitor.get("/records/" + number).body())
                .contains("KEEP OUT")
                .contains("What it lacks");
        assertThat(post("/records/" + number + "/void", Map.of("who", "S. Lind"))
                        .body())
                .contains("Say why it is wrong");
        String corrected = json(
                "/api/records/" + number + "/correct",
                Map.of("acres", "41", "total_1", "", "sure", "all", "who", "S. Lind", "why", "measured"),
                200);
        assertThat(corrected).contains("\"acres\" : 41").contains("\"corrects\" : " + number);
        assertThat(visitor.get("/records/" + number).body()).contains("Does not count: corrected by record");
        assertThat(json("/api/records/" + number + "/void", Map.of("who", "X", "why", "y"), 409))
                .contains("is corrected already");
        assertThat(visitor.get("/log").body()).contains("Application record");
    }

    @Test
    void programsGetFaultsAndQuestionsByKey() {
        assertThat(json("/api/records", Map.of("field", "Nowhere"), 422)).contains("\"product_1\"");
        assertThat(json("/api/records", typed(Map.of("rate_1", "9")), 422))
                .contains("\"key\" : \"label-rate\"")
                .contains("asked back");
        assertThat(visitor.get("/api/records/999").status()).isEqualTo(404);
        assertThat(visitor.get("/api/records?from=soon").body()).contains("expected a date");
        assertThat(visitor.get("/api/records/start?field=North%2080&program=half%20rate&pass=2")
                        .body())
                .contains("\"rate_1\" : \"3\"");
        assertThat(visitor.get("/api/records/check").status()).isEqualTo(200);
    }

    @Test
    void filesAreGivenOutAndAWrongNameIsASentence() {
        for (String kind : List.of("csv", "xlsx", "pdf")) {
            assertThat(visitor.get("/records." + kind).status()).as(kind).isEqualTo(200);
        }
        json("/api/records", typed(Map.of("date", "2026-04-09", "sure", "all")), 201);
        assertThat(visitor.get("/records?field=North%208").body())
                .contains("Neither a record nor the season has the field");
        assertThat(visitor.get("/records/0").status()).isEqualTo(404);
    }

    private int records() {
        try (Book book = Book.open(desk.file())) {
            return book.records().size();
        }
    }

    /** Of the year before: the desk's clock is later than its days. */
    private static Map<String, String> typed(Map<String, String> otherwise) {
        Map<String, String> typed = new LinkedHashMap<>(RecordsOfTest.typed(Map.of("date", "2026-05-02")));
        typed.putAll(otherwise);
        return typed;
    }

    private Visitor.Page post(String path, Map<String, String> typed) {
        return visitor.post("/records/new", path, typed);
    }

    private String json(String path, Map<String, String> typed, int status) {
        StringBuilder body = new StringBuilder("{");
        typed.forEach((key, value) -> body.append(body.length() > 1 ? ", " : "")
                .append('"')
                .append(key)
                .append("\": \"")
                .append(value)
                .append('"'));
        try {
            Visitor.Page page = new Visitor.Page(visitor.mvc()
                    .perform(MockMvcRequestBuilders.post(path)
                            .contentType(MediaType.APPLICATION_JSON)
                            .content(body.append('}').toString()))
                    .andReturn()
                    .getResponse());
            assertThat(page.status()).as(page.body()).isEqualTo(status);
            return page.body();
        } catch (Exception fault) {
            throw new AssertionError(fault);
        }
    }
}
