package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.util.HtmlUtils;
import plumbrow.advice.names.KnownNames;
import plumbrow.advice.names.NameColumn;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.RowJson;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.rows.TableGroup;
import plumbrow.app.rows.TableNames;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** Every table of the workbook on the desk: a box for each column, the same faults, nothing lost. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RowsTest {
    /** Columns that take any words. */
    private static final List<String> FREE = List.of("source", "note", "grower", "adviser", "licence", "tank", "order");

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(DemoBook.season());
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    static List<String> tables() {
        return Sheets.ALL.stream().map(Sheet::name).toList();
    }

    @Test
    void every_table_is_in_reach_once() {
        List<Sheet<?>> grouped = new ArrayList<>();
        Arrays.stream(TableGroup.values()).forEach(group -> grouped.addAll(group.tables()));
        assertThat(grouped).containsExactlyInAnyOrderElementsOf(Sheets.ALL);
        String page = visitor.get("/season").body();
        assertThat(Sheets.ALL).allSatisfy(sheet -> assertThat(page).contains("href=\"/season/" + sheet.name() + "\""));
    }

    /** Walks the declarations: every column has its box, and what it asks for stands beside it. */
    @ParameterizedTest
    @MethodSource("tables")
    void every_column_has_its_box(String table) {
        Sheet<?> sheet = Sheets.named(table).orElseThrow();
        String page =
                HtmlUtils.htmlUnescape(visitor.get("/season/" + table + "/new").body());
        for (Column<?> column : sheet.columns()) {
            assertThat(page)
                    .as(column.key())
                    .contains("name=\"" + column.key() + "\"", TableNames.words(column.meaning()));
            assertThat(List.of("seen", "back", "more", "copy", "by-who", "by-why", "done", "change", "find", "page"))
                    .doesNotContain(column.key());
        }
    }

    /** The last row of every table goes through its form: it stays as it is, and a changed word is kept. */
    @ParameterizedTest
    @MethodSource("tables")
    void a_row_of_every_table_is_changed_through_its_form(String table) {
        Sheet<?> sheet = Sheets.named(table).orElseThrow();
        SeasonTables held = SeasonTables.of(written());
        int at = held.size(sheet) - 1;
        if (at < 0) {
            Map<String, String> example = example(sheet);
            Visitor.Page added = visitor.post("/season/" + table + "/new", "/season/" + table + "/new", example);
            assertThat(added.status()).as(added.text()).isEqualTo(302);
            assertThat(SeasonTables.of(written()).row(sheet, 0)).contains(example);
            return;
        }
        String address = "/season/" + table + "/row/" + (at + 2);
        Map<String, String> row = held.row(sheet, at).orElseThrow();
        if (table.equals("log")) {
            assertThat(post(address, row, row).status()).isEqualTo(422);
            return;
        }
        assertThat(post(address, row, row).header("Location")).contains("done=nothing");
        String words = FREE.stream().filter(row::containsKey).findFirst().orElse("");
        if (!words.isEmpty()) {
            Map<String, String> typed = new LinkedHashMap<>(row);
            typed.put(words, row.get(words) + " and more");
            Visitor.Page page = post(address, row, typed);
            assertThat(page.header("Location")).contains("done=changed");
            assertThat(SeasonTables.of(written()).row(sheet, at)).contains(typed);
            assertThat(visitor.get("/season/" + table).status()).isEqualTo(200);
        }
    }

    /** A row of the columns' own examples; names are those that the desk offers, as far as it offers any. */
    private Map<String, String> example(Sheet<?> sheet) {
        Map<String, String> row = new LinkedHashMap<>();
        for (Column<?> column : sheet.columns()) {
            if (column.required()) {
                NameColumn names = NameColumn.find(sheet.name(), column.key());
                List<String> offered = names == null
                        ? List.of()
                        : KnownNames.of(written(), names, row.getOrDefault(names.within(), ""));
                row.put(column.key(), offered.isEmpty() ? column.example() : offered.get(0));
            }
        }
        if (sheet.name().equals("hour_limits") || sheet.name().equals("label_limits")) {
            sheet.columns().forEach(column -> row.putIfAbsent(column.key(), column.example()));
            row.remove("most");
            row.replaceAll((key, text) -> key.equals("product") ? product() : text);
        }
        return row;
    }

    private String product() {
        return written().shelf().labelUses().get(0).product();
    }

    @Test
    void a_fault_stands_beside_its_box_in_the_workbook_s_words_and_nothing_typed_is_lost() {
        Sheet<?> fields = Sheets.named("fields").orElseThrow();
        Map<String, String> row = SeasonTables.of(written()).row(fields, 0).orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(row);
        typed.put("ph", "6,4");
        typed.put("farm", "Nobody’s");
        Visitor.Page page = post("/season/fields/row/2", row, typed);
        assertThat(page.status()).isEqualTo(422);
        assertThat(HtmlUtils.htmlUnescape(page.body()))
                .contains(
                        "data-box=\"box-ph\">found \"6,4\", expected a number from 3 to 11, with a point and not a comma: 6.4.")
                .contains("expected a farm of the sheet farms")
                .contains("value=\"6,4\"")
                .contains("value=\"Nobody’s\"");
        assertThat(SeasonTables.of(written()).row(fields, 0)).contains(row);
    }

    @Test
    void a_row_that_others_refer_to_does_not_go_and_says_which() {
        Sheet<?> shelf = Sheets.named("shelf").orElseThrow();
        Map<String, String> row = SeasonTables.of(written()).row(shelf, 0).orElseThrow();
        Visitor.Page page =
                visitor.post("/season/shelf/row/2", "/season/shelf/row/2/remove", Map.of("seen", RowJson.of(row)));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("Nothing was changed.", "expected a product of the sheet shelf");
        assertThat(page.body()).contains("href=\"/season/passes/row/");
    }

    @Test
    void the_second_of_two_windows_is_told_and_keeps_what_was_typed() {
        Sheet<?> farms = Sheets.named("farms").orElseThrow();
        Map<String, String> row = SeasonTables.of(written()).row(farms, 0).orElseThrow();
        Map<String, String> mine = new LinkedHashMap<>(row);
        mine.put("grower", "L. Mine");
        Map<String, String> others = new LinkedHashMap<>(row);
        others.put("grower", "L. Others");
        assertThat(post("/season/farms/row/2", row, others).status()).isEqualTo(302);
        Visitor.Page told = post("/season/farms/row/2", row, mine);
        assertThat(told.status()).isEqualTo(409);
        assertThat(told.text()).contains("grower was " + row.get("grower") + " and is L. Others");
        assertThat(told.body()).contains("value=\"L. Mine\"");
        // The page came anew beside the row as it is now: he who looks at it may keep after all.
        assertThat(post("/season/farms/row/2", RowJson.read(told.hidden("seen")), mine)
                        .status())
                .isEqualTo(302);
        assertThat(written().farms().get(0).grower()).isEqualTo("L. Mine");
    }

    @Test
    void a_change_is_taken_back_from_the_history_and_back_again() {
        Sheet<?> farms = Sheets.named("farms").orElseThrow();
        Map<String, String> row = SeasonTables.of(written()).row(farms, 1).orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(row);
        typed.put("grower", "L. New");
        post("/season/farms/row/3", row, typed);
        int change = last().number();
        assertThat(visitor.get("/history").text()).contains("grower " + row.get("grower") + " → L. New");
        assertThat(visitor.post("/history", "/history/" + change + "/undo", Map.of())
                        .status())
                .isEqualTo(302);
        assertThat(SeasonTables.of(written()).row(farms, 1)).contains(row);
        assertThat(visitor.post("/history", "/history/" + change + "/undo", Map.of())
                        .text())
                .contains("taken back already");
        visitor.post("/history", "/history/" + last().number() + "/undo", Map.of());
        assertThat(SeasonTables.of(written()).row(farms, 1)).contains(typed);
        assertThat(visitor.get("/history?since=2999-01-01").text()).contains("Nothing was changed since then");
        assertThat(visitor.get("/history?since=soon").text()).contains("expected a day as 2026-03-02");
    }

    @Test
    void names_follow_the_box_they_depend_on_and_unknown_tables_are_asked_back() {
        assertThat(visitor.get("/season/fields/names?column=county&within=IA").body())
                .contains("Adams", "Kossuth");
        assertThat(visitor.get("/season/feilds").status()).isEqualTo(404);
        assertThat(visitor.get("/season/feilds").text()).contains("did you mean fields?");
        assertThat(visitor.get("/season/fields/row/999").status()).isEqualTo(404);
    }

    @Test
    void programs_change_rows_with_the_same_faults() {
        assertThat(visitor.get("/api/season").body()).contains("\"table\" : \"fields\"");
        assertThat(visitor.get("/api/season/fields?find=Levee").body()).contains("\"name\" : \"Levee\"");
        Visitor.Page refused =
                json("/api/season/history", "{\"field\": \"Leveee\", \"year\": \"2020\", \"crop\": \"corn\"}");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("did you mean Levee?", "\"column\" : \"field\"");
        Visitor.Page stray = json("/api/season/history", "{\"feild\": \"Levee\"}");
        assertThat(stray.body()).contains("did you mean field?");
        Visitor.Page added = json(
                "/api/season/history",
                "{\"field\": \"Levee\", \"year\": \"2001\", \"crop\": \"corn\", \"_who\": \"a program\", \"_why\": \"records\"}");
        assertThat(added.status()).isEqualTo(201);
        assertThat(added.body()).contains("\"who\" : \"a program\"", "\"why\" : \"records\"", "\"way\" : \"program\"");
        Sheet<?> history = Sheets.named("history").orElseThrow();
        int row = SeasonTables.of(written()).rows(history).stream()
                        .map(cells -> cells.get("year"))
                        .toList()
                        .indexOf("2001")
                + 2;
        assertThat(json("/api/season/history/" + row, "{\"yield_bu_ac\": \"120\", \"_seen\": \"0\"}")
                        .status())
                .isEqualTo(409);
        assertThat(json("/api/season/history/" + row, "{\"yield_bu_ac\": \"120\"}")
                        .body())
                .contains("\"yield_bu_ac\" : \"120\"");
        assertThat(json("/api/season/history/" + row + "/remove", "{}").status())
                .isEqualTo(200);
        assertThat(json("/api/history/" + last().number() + "/undo", "{}").status())
                .isEqualTo(200);
        assertThat(json("/api/history/" + last().number() + "/undo", "{}").status())
                .isEqualTo(200);
        assertThat(visitor.get("/api/history?since=2026-01-01").body()).contains("\"way\" : \"redo\"");
        assertThat(visitor.get("/api/season/feilds").status()).isEqualTo(404);
    }

    /** A program is copied and changed, put into a series and onto other fields, in one step each. */
    @Test
    void the_builder_copies_puts_into_a_series_and_onto_other_fields() {
        String field = "Church Quarter";
        String address = "/fields/" + Shown.part(field) + "/build";
        Season before = written();
        var from = before.programs(field).stream()
                .filter(one -> one.passes().stream().anyMatch(pass -> pass.product() != null && pass.number() > 1))
                .findFirst()
                .orElseThrow();
        int trip = from.passes().stream()
                .filter(pass -> pass.product() != null)
                .reduce((one, next) -> next)
                .map(pass -> from.passes().indexOf(pass))
                .orElseThrow();
        String page = address + "?program=" + Shown.part(from.name()) + "&as=copy";
        assertThat(visitor.get(page).text()).contains("A program like “" + from.name() + "”");
        Visitor.Page series = visitor.post(
                page,
                address + "/series",
                Map.of("program", from.name(), "trip", String.valueOf(trip), "by", "levels"));
        assertThat(series.status()).as(series.text()).isEqualTo(302);
        assertThat(written().programs(field))
                .hasSizeGreaterThan(before.programs(field).size());
        assertThat(visitor.post("/history", "/history/" + last().number() + "/undo", Map.of())
                        .status())
                .isEqualTo(302);
        assertThat(written()).isEqualTo(before);
        String other = before.fields().stream()
                .filter(one -> one.crop() == before.field(field).orElseThrow().crop()
                        && !one.name().equals(field))
                .findFirst()
                .orElseThrow()
                .name();
        visitor.post(page, address + "/fields", Map.of("program", from.name(), "onto", other));
        assertThat(written().programs(other)).hasSize(before.programs(other).size() + 1);
        visitor.post("/history", "/history/" + last().number() + "/undo", Map.of());
        Visitor.Page none = visitor.post(page, address + "/fields", Map.of("program", from.name()));
        assertThat(none.text()).contains("Mark the fields");
        Visitor.Page rates = visitor.post(
                page,
                address + "/series",
                Map.of("program", from.name(), "trip", String.valueOf(trip), "by", "rates", "values", "many"));
        assertThat(rates.text()).contains("found \"many\", expected numbers parted by semicolons");
        assertThat(written()).isEqualTo(before);
    }

    /** A field has one baseline: where another program becomes it, the one until now no longer is. */
    @Test
    void the_baseline_moves_in_one_step() {
        String field = "Depot Eighty";
        String address = "/fields/" + Shown.part(field) + "/build";
        Season before = written();
        String other = before.programs(field).stream()
                .filter(program -> !program.baseline())
                .findFirst()
                .orElseThrow()
                .name();
        String page = address + "?program=" + Shown.part(other) + "&as=change";
        Visitor.Page form = visitor.get(page);
        Map<String, String> typed = new LinkedHashMap<>();
        Matcher boxes = Pattern.compile(
                        "name=\"(t\\d\\.from)\" value=\"([^\"]*)\"|<input id=\"t\\d-\\w+\" name=\"(t\\d\\.\\w+)\"[^>]*? value=\"([^\"]*)\"")
                .matcher(form.body());
        while (boxes.find()) {
            typed.put(
                    boxes.group(1) == null ? boxes.group(3) : boxes.group(1),
                    boxes.group(1) == null ? boxes.group(4) : boxes.group(2));
        }
        var program = before.programs(field).stream()
                .filter(one -> one.name().equals(other))
                .findFirst()
                .orElseThrow();
        for (int i = 0; i < program.passes().size(); i++) {
            String product = program.passes().get(i).product();
            typed.put(
                    "t" + i + ".what",
                    product == null ? "=" + program.passes().get(i).kind().word() : product);
            var rate = program.passes().get(i).rate();
            typed.put("t" + i + ".unit", rate == null ? "" : rate.unit().symbol() + "/ac");
        }
        typed.put("as", "change");
        typed.put("program", other);
        typed.put("name", other);
        typed.put("baseline", "yes");
        typed.put("seen", form.hidden("seen"));
        int count = desk.book().changes(before.year()).size();
        Visitor.Page kept = visitor.post(page, address, typed);
        assertThat(kept.status()).as(kept.text()).isEqualTo(302);
        assertThat(written().programs(field).stream().filter(Program::baseline).map(Program::name))
                .containsExactly(other);
        assertThat(desk.book().changes(before.year())).hasSize(count + 1);
        // What it did to the answer: the same programs, compared with another one.
        Visitor.Page effect = visitor.get("/history/" + last().number() + "/effect");
        assertThat(effect.status()).isEqualTo(200);
        assertThat(effect.text()).contains("What change " + last().number() + " did to the answer", field);
        assertThat(visitor.get("/history/99999/effect").status()).isEqualTo(404);
        visitor.post("/history", "/history/" + last().number() + "/undo", Map.of());
        assertThat(written()).isEqualTo(before);
    }

    private Visitor.Page json(String address, String body) {
        try {
            return new Visitor.Page(visitor.mvc()
                    .perform(MockMvcRequestBuilders.post(URI.create(address))
                            .contentType(MediaType.APPLICATION_JSON)
                            .content(body.getBytes(StandardCharsets.UTF_8)))
                    .andReturn()
                    .getResponse());
        } catch (Exception fault) {
            throw new AssertionError(fault);
        }
    }

    private Visitor.Page post(String address, Map<String, String> seen, Map<String, String> typed) {
        Map<String, String> form = new LinkedHashMap<>(typed);
        form.put("seen", RowJson.of(seen));
        return visitor.post(address, address, form);
    }

    private Season written() {
        return desk.book().written().orElseThrow();
    }

    private SeasonChange last() {
        List<SeasonChange> all = desk.book().changes(written().year());
        return all.get(all.size() - 1);
    }
}
