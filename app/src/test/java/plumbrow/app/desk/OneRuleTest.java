package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import plumbrow.advice.season.Season;
import plumbrow.app.book.LogLine;
import plumbrow.app.desk.shown.Shown;
import tools.jackson.databind.json.JsonMapper;

/** What the workbook's column refuses no door of the desk lets in: else what goes out could not come in again. */
class OneRuleTest {
    private static final Season SEASON = DeskSeason.of(2026);

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeEach
    void open() {
        desk = OpenDesk.over(SEASON);
        visitor = new Visitor(desk);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-x",
                "@SUM(A1)",
                "a\u001B[2Jb",
                "a\u0000b",
                "a\u009Bb",
                "a\u202Eb",
                "a\u2028b",
                "a\nb"
            })
    void no_door_lets_it_in(String words) throws Exception {
        Map<String, String> line = new LinkedHashMap<>();
        line.put("field", DeskSeason.HOME);
        line.put("date", "2026-05-01");
        line.put("product", SEASON.shelf().products().get(1).name());
        line.put("rate", "1");
        line.put("rate_unit", SEASON.shelf().products().get(1).pricedPer().symbol());
        line.put("source", "log book");
        line.put("applicator", words);
        assertThat(visitor.post("/log", "/log", line).status()).isEqualTo(422);
        line.put("applicator", "S. Lind");
        if (!words.contains("\n")) {
            line.put("source", words);
            assertThat(visitor.post("/log", "/log", line).status()).isEqualTo(422);
            assertThat(api("/api/log", line)).isEqualTo(422);
        }
        assertThat(desk.book().log()).isEmpty();
        line.put("source", "log book");
        assertThat(visitor.post("/log", "/log", line).status()).isEqualTo(302);
        assertThat(visitor.post("/log", "/log/1/strike", Map.of("who", words, "why", "wrong field"))
                        .status())
                .isEqualTo(422);
        assertThat(api("/api/log/1/strike", Map.of("who", words, "why", "wrong")))
                .isEqualTo(422);
        assertThat(desk.book().log()).allMatch(LogLine::counts);

        String map = "/fields/" + Shown.part(DeskSeason.HOME) + "/map";
        Map<String, String> well = new LinkedHashMap<>(
                Map.of("kind", "well", "called", words, "form", "point", "feet", "200", "source", "walked"));
        assertThat(visitor.post(map, map, well).status()).isEqualTo(422);
        assertThat(visitor.post(
                                "/log",
                                "/fields/" + Shown.part(DeskSeason.HOME) + "/choice",
                                Map.of(
                                        "program",
                                        SEASON.programs(DeskSeason.HOME).get(0).name(),
                                        "who",
                                        words,
                                        "why",
                                        "cheap"))
                        .status())
                .isEqualTo(422);
        assertThat(desk.book().choices(2026)).isEmpty();
        assertThat(desk.book().season().orElseThrow().ground()).isEqualTo(SEASON.ground());
    }

    /** As a program sends it: JSON, which needs no token. */
    private int api(String address, Map<String, String> values) throws Exception {
        return visitor.mvc()
                .perform(MockMvcRequestBuilders.post(address)
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(new JsonMapper().writeValueAsString(values)))
                .andReturn()
                .getResponse()
                .getStatus();
    }
}
