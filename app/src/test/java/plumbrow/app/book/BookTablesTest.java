package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.SeasonSheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The tables that the migrations make are those that the declarations of the season's rows ask for, column by column. */
class BookTablesTest {
    /** What a season has beside its rows, and what is written down for good. */
    private static final Set<String> NO_ROWS_OF_SEASONS = Set.of(
            "season",
            "season_seal",
            "season_change",
            "season_change_row",
            "chain_due",
            "application_record",
            "record_product",
            "record_void",
            "expectation",
            "harvest",
            "choice",
            "desk_change",
            "chain",
            "paper",
            "paper_typed",
            "paper_mend",
            "label_decision",
            "label_reading",
            "log_line",
            "log_strike",
            "log_pass",
            "weather_file",
            "weather_hour",
            "flyway_schema_history");

    @TempDir
    static Path folder;

    private static Path file = Path.of("");

    @BeforeEach
    void make() {
        file = folder.resolve("tables.book");
        if (!file.toFile().exists()) {
            Book.create(file).close();
        }
    }

    @TestFactory
    Stream<DynamicTest> aTableHasTheColumnsOfItsDeclaration() {
        return BookTables.stored().stream()
                .map(table -> DynamicTest.dynamicTest(table.name(), () -> {
                    Map<String, String> declared = new TreeMap<>(Map.of("season", "INTEGER", "position", "INTEGER"));
                    table.columns()
                            .forEach(column ->
                                    declared.put(column.name(), column.type().name()));
                    assertThat(table.columns()).hasSize(declared.size() - 2);
                    assertThat(columns(table.name())).isEqualTo(declared);
                }));
    }

    @Test
    void everyTableIsDeclared() throws SQLException {
        Set<String> tables = new HashSet<>(NO_ROWS_OF_SEASONS);
        BookTables.stored().forEach(table -> tables.add(table.name()));
        assertThat(Set.copyOf(
                        asked("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")))
                .isEqualTo(tables);
    }

    @Test
    void everySheetHasItsTable() {
        Set<String> kept = BookTables.ALL.stream()
                .map(table -> table.sheet().name())
                .collect(Collectors.toCollection(HashSet::new));
        kept.addAll(List.of(SeasonSheet.SHEET.name(), LogSheet.SHEET.name()));
        assertThat(kept).isEqualTo(Sheets.ALL.stream().map(Sheet::name).collect(Collectors.toSet()));
    }

    private static Map<String, String> columns(String table) throws SQLException {
        Map<String, String> columns = new TreeMap<>();
        for (String column : asked("SELECT name || ' ' || type FROM pragma_table_info('" + table + "')")) {
            List<String> parts = Arrays.asList(column.split(" ", -1));
            columns.put(parts.get(0), parts.get(1));
        }
        return columns;
    }

    private static List<String> asked(String question) throws SQLException {
        List<String> answers = new java.util.ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(question)) {
            while (row.next()) {
                answers.add(row.getString(1));
            }
        }
        return answers;
    }
}
