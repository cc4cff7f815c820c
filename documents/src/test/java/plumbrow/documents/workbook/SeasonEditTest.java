package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowGoneException;
import plumbrow.documents.workbook.edit.SeasonDiff;
import plumbrow.documents.workbook.edit.SeasonEdit;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** Rows changed one by one give what a workbook with the same rows gives, with the same faults, and back again. */
class SeasonEditTest {
    private static final Season SEASON = Fixture.season();

    /** Columns that take any words. */
    private static final List<String> FREE = List.of("source", "note", "grower", "adviser", "licence", "tank");

    static List<Sheet<?>> sheets() {
        return Sheets.ALL;
    }

    /** Takes the last row of every table out, where nothing refers to it, and puts it in again; copies of it are told apart. */
    @ParameterizedTest
    @MethodSource("sheets")
    void a_row_of_every_table_is_changed_and_changed_back(Sheet<?> sheet) {
        Season season = with(sheet);
        SeasonTables tables = SeasonTables.of(season);
        int last = tables.size(sheet) - 1;
        Map<String, String> row = tables.row(sheet, last).orElseThrow();
        if (sheet.name().equals("log")) {
            Season more = SeasonEdit.of(season, List.of(RowChange.add("log", row)));
            assertThat(SeasonTables.of(more).size(sheet)).isEqualTo(last + 2);
            return;
        }
        String words = sheet.columns().stream()
                .map(Column::key)
                .filter(key -> FREE.contains(key) && row.containsKey(key))
                .findFirst()
                .orElse("");
        if (!words.isEmpty()) {
            Map<String, String> changed = new LinkedHashMap<>(row);
            changed.put(words, row.get(words) + " and more");
            Season after = SeasonEdit.of(season, List.of(RowChange.change(sheet.name(), last, row, changed)));
            assertThat(SeasonTables.of(after).row(sheet, last)).contains(changed);
            assertThat(SeasonEdit.of(after, List.of(RowChange.change(sheet.name(), last, changed, row))))
                    .isEqualTo(season);
        }
        Season same = SeasonEdit.of(season, List.of(RowChange.change(sheet.name(), last, row, row)));
        assertThat(same).isEqualTo(season);
    }

    /** A season that has rows in the table. */
    private static Season with(Sheet<?> sheet) {
        Program program = SEASON.programs().get(0);
        Map<String, String> of = Map.of("field", program.field(), "program", program.name(), "pass", "90");
        Map<String, String> tillage = new LinkedHashMap<>(of);
        tillage.putAll(Map.of("tool", "field cultivator", "depth_in", "4", "source", "invented"));
        Map<String, String> pass = new LinkedHashMap<>(of);
        pass.put("kind", "tillage");
        Season tilled =
                SeasonEdit.of(SEASON, List.of(RowChange.add("passes", pass), RowChange.add("tillage", tillage)));
        return Stream.concat(
                        Stream.of(SEASON, tilled),
                        LongStream.range(1, 40).mapToObj(seed -> new RandomSeason(seed, 4).make()))
                .filter(season -> SeasonTables.of(season).size(sheet) > 0)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void what_parts_two_seasons_leads_from_one_to_the_other_and_back(long seed) {
        Season one = new RandomSeason(seed, 4).make();
        Season other = new RandomSeason(seed + 100, 3).make();
        List<RowChange> changes = SeasonDiff.between(withoutLog(one), withoutLog(other));
        assertThat(SeasonEdit.of(withoutLog(one), changes)).isEqualTo(withoutLog(other));
        assertThat(SeasonEdit.of(withoutLog(other), inverse(changes))).isEqualTo(withoutLog(one));
    }

    private static List<RowChange> inverse(List<RowChange> changes) {
        List<RowChange> back = new ArrayList<>(changes);
        Collections.reverse(back);
        return back.stream().map(RowChange::inverse).toList();
    }

    private static Season withoutLog(Season season) {
        return season.withPrograms(
                season.programs(),
                new Work(
                        season.work().sprayPlans(),
                        season.work().crew(),
                        List.of(),
                        season.work().means(),
                        season.work().stands()));
    }

    @Test
    void the_same_words_as_the_workbook_s_stand_at_the_cell() {
        Sheet<?> fields = Sheets.named("fields").orElseThrow();
        Map<String, String> row = SeasonTables.of(SEASON).row(fields, 0).orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(row);
        typed.put("acres", "4,50");
        typed.put("farm", "Nobody's");
        EditFaults faults = catchThrowableOfType(
                EditFaults.class, () -> SeasonEdit.of(SEASON, List.of(RowChange.change("fields", 0, row, typed))));
        assertThat(faults.at(0, "acres"))
                .extracting(Fault::sentence)
                .containsExactly(
                        "fields, row 2, column acres: found \"4,50\", expected a number above 0 and up to 50000,"
                                + " with a point and not a comma: 4.50.");
        assertThat(faults.at(0, "farm"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.sentence()).contains("expected a farm of the sheet farms"));
    }

    @Test
    void a_row_that_others_refer_to_does_not_go() {
        Sheet<?> shelf = Sheets.named("shelf").orElseThrow();
        Map<String, String> row = SeasonTables.of(SEASON).row(shelf, 0).orElseThrow();
        EditFaults faults = catchThrowableOfType(
                EditFaults.class, () -> SeasonEdit.of(SEASON, List.of(RowChange.remove("shelf", 0, row))));
        assertThat(faults.elsewhere())
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.sentence()).contains(row.get("product")));
    }

    @Test
    void a_row_that_somebody_else_changed_is_told_with_what_differs() {
        Map<String, String> row = SeasonTables.of(SEASON)
                .row(Sheets.named("farms").orElseThrow(), 0)
                .orElseThrow();
        Map<String, String> seen = new LinkedHashMap<>(row);
        seen.put("grower", "Somebody else");
        assertThatThrownBy(() -> SeasonEdit.of(SEASON, List.of(RowChange.change("farms", 0, seen, row))))
                .isInstanceOf(RowGoneException.class)
                .hasMessageContaining("grower was Somebody else and is " + row.get("grower"));
        Map<String, String> gone = new LinkedHashMap<>(row);
        gone.put("farm", "Gone");
        assertThatThrownBy(() -> SeasonEdit.of(SEASON, List.of(RowChange.remove("farms", 0, gone))))
                .isInstanceOf(RowGoneException.class)
                .hasMessageContaining("farms: Gone is no longer there");
    }

    @Test
    void the_year_and_the_log_stay() {
        Map<String, String> row = SeasonTables.of(SEASON)
                .row(Sheets.named("season").orElseThrow(), 0)
                .orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(row);
        typed.put("year", "2027");
        assertThatThrownBy(() -> SeasonEdit.of(SEASON, List.of(RowChange.change("season", 0, row, typed))))
                .hasMessageContaining("the year of this season");
        Map<String, String> line = SeasonTables.of(SEASON)
                .row(Sheets.named("log").orElseThrow(), 0)
                .orElseThrow();
        assertThatThrownBy(() -> SeasonEdit.of(SEASON, List.of(RowChange.remove("log", 0, line))))
                .hasMessageContaining("the log is only added to");
    }
}
