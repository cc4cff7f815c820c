package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;
import tools.jackson.databind.json.JsonMapper;

/** A field's name is refused at every door with the same words, or has all its pages. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class FieldNamesTest {
    private static final Season SEASON = DeskSeason.of(2027);
    private static final String NO_LETTER = "a name with a letter or digit in it";
    private static final String ONE_LINE = "text on one line";

    private OpenDesk desk;
    private OpenDesk roomy;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(SEASON);
        roomy = OpenDesk.over(SEASON);
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
        roomy.close();
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of(".", NO_LETTER),
                Arguments.of("..", NO_LETTER),
                Arguments.of("...", NO_LETTER),
                Arguments.of("/", NO_LETTER),
                Arguments.of("%", NO_LETTER),
                Arguments.of("\u00A0\u00A0", NO_LETTER),
                Arguments.of("x".repeat(10_000), "text of up to 80 characters, not 10000"),
                Arguments.of("East\u000080", ONE_LINE),
                Arguments.of("East\u000780", ONE_LINE),
                Arguments.of("East\u001B[2J", ONE_LINE),
                Arguments.of("East\u202E80", ONE_LINE),
                Arguments.of("East\u200F80", ONE_LINE),
                Arguments.of("East\u200E80", ONE_LINE),
                Arguments.of("East\u061C80", ONE_LINE),
                Arguments.of("East\u200B80", ONE_LINE),
                Arguments.of("\uFEFFEast", ONE_LINE),
                Arguments.of("=East", "text that does not begin with = + - or @"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void a_name_that_can_not_be_read_or_reached_is_refused_at_every_door(String name, String expected)
            throws Exception {
        Sheet<?> fields = Sheets.named("fields").orElseThrow();
        Column<?> column = fields.columns().stream()
                .filter(one -> one.key().equals("field"))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> column.kind().read(new Cell.Text(name)))
                .isInstanceOfSatisfying(
                        Misread.class, misread -> assertThat(misread.expected()).isEqualTo(expected));

        Map<String, String> row = field(name);
        Visitor.Page form = visitor.post("/season/fields/new", "/season/fields/new", row);
        assertThat(form.status()).isEqualTo(422);
        assertThat(form.text()).contains(expected);

        var answer = visitor.mvc()
                .perform(MockMvcRequestBuilders.post("/api/season/fields")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(new JsonMapper().writeValueAsString(row)))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains(expected);

        Map<String, String> kept = Map.of(
                "state",
                "IA",
                "trait",
                "none",
                "history",
                "third",
                "name",
                name,
                "farm",
                "Oakridge",
                "grower",
                "L. Brandvold",
                "county",
                "Kossuth");
        Visitor.Page asked = visitor.post("/log", "/ask/insecticide/keep", kept);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.text()).contains("Expected " + expected);

        assertThat(desk.book().written()).contains(SEASON);
    }

    @Test
    void a_name_of_blanks_only_is_none() {
        for (String blanks : List.of("   ", "\u3000", "\t")) {
            Visitor.Page form = visitor.post("/season/fields/new", "/season/fields/new", field(blanks));
            assertThat(form.status()).isEqualTo(422);
            assertThat(form.text()).contains("Field: nothing there");
        }
        assertThat(desk.book().written()).contains(SEASON);
    }

    /** Through a whole server: what a browser does with the address is part of it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a/b",
                "a\\b",
                "/a",
                "a/",
                "../a",
                "a/..",
                ".a",
                "a.",
                "50 % share",
                "%2e%2e",
                "%00 1",
                "a;b",
                "a?b#c&d=e",
                "a+b",
                "a\"b<i>'",
                "Äcker, Süd",
                "حقل ١",
                "東 80",
                "🌽 1"
            })
    void any_other_name_has_all_its_pages(String name) {
        Visitor there = new Visitor(roomy);
        assertThat(there.post("/season/fields/new", "/season/fields/new", field(name))
                        .status())
                .isEqualTo(302);
        String part = "/fields/" + Shown.part(name);
        URI field = URI.create(roomy.address() + part);
        assertThat(field.normalize()).as("no browser takes a step out of it").isEqualTo(field);
        for (String page : List.of(part + "/map", part + "/enter", part + "/build", "/api" + part + "/map")) {
            assertThat(Plain.get(roomy.address() + page)).as(page).startsWith("200 ");
        }
        assertThat(Plain.get(roomy.address() + part)).contains("it has no program");
        assertThat(roomy.book().written().orElseThrow().field(name)).isPresent();
    }

    private static Map<String, String> field(String name) {
        Map<String, String> row = new LinkedHashMap<>(SeasonTables.of(SEASON)
                .row(Sheets.named("fields").orElseThrow(), 0)
                .orElseThrow());
        row.put("field", name);
        row.remove("boundary");
        return row;
    }
}
