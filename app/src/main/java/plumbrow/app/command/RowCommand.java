package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.command.said.RowWords;
import plumbrow.app.json.Json;
import plumbrow.app.rows.ChangeSummary;
import plumbrow.app.rows.TableRows;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.Renaming;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeedPair;
import plumbrow.documents.workbook.form.Sheet;

/** The tables of the season row by row, with the columns and the faults of the workbook. */
@Command(name = "row", description = "Lists, shows, adds, changes and removes rows of the season's tables.")
final class RowCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";
    private static final String TABLE = "The table, by the name of its sheet in the workbook.";
    private static final String ROW = "The row, as a spreadsheet counts: the first below the header is 2.";
    private static final String CELLS = "Cells as column=text; a blank text leaves the cell blank.";
    private static final String WHO = "Who changes it; else the season's adviser.";
    private static final String WHY = "Why.";

    private final Screen screen;

    RowCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException(
                "Say what to do: list [TABLE], show TABLE ROW, add TABLE column=text …, change TABLE ROW"
                        + " column=text …, or remove TABLE ROW.");
    }

    @Command(
            name = "list",
            description = "The rows of a table; without a table, every table with the number of its rows.")
    int list(
            @Parameters(paramLabel = "TABLE", arity = "0..1", description = TABLE) @Nullable String table,
            @Option(names = "--find", paramLabel = "TEXT", description = "Only rows that hold this in a cell.")
                    @Nullable
                    String find,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            Season season = written(book, file);
            if (table == null) {
                List<TableRows.TableSummary> tables = TableRows.tables(season);
                screen.say(json ? Json.of(tables) : RowWords.tables(tables));
            } else {
                TableRows rows = TableRows.of(season, TableRows.sheet(table), Objects.requireNonNullElse(find, ""));
                screen.say(json ? Json.of(rows) : RowWords.rows(rows));
            }
        }
        return Exit.GOOD;
    }

    @Command(name = "show", description = "A row with every column: what stands there, or what belongs there.")
    int show(
            @Parameters(paramLabel = "TABLE", description = TABLE) String table,
            @Parameters(paramLabel = "ROW", description = ROW) int row,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            Sheet<?> sheet = TableRows.sheet(table);
            TableRows.RowSummary shown = TableRows.row(written(book, file), sheet, row);
            screen.say(json ? Json.of(shown) : RowWords.row(sheet, shown));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "add",
            description = "Adds a row; after a +, a row of another table with it, as a seed on shelf and seeds.")
    int add(
            @Parameters(paramLabel = "TABLE", description = TABLE) String table,
            @Parameters(paramLabel = "CELL", arity = "1..*", description = CELLS) List<String> cells,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = WHO) @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = WHY) @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        return edit(file, table, who, why, json, (season, sheet) -> TableRows.addAll(together(table, cells)));
    }

    @Command(name = "change", description = "Changes cells of a row; columns that are not named stay as they are.")
    int change(
            @Parameters(paramLabel = "TABLE", description = TABLE) String table,
            @Parameters(paramLabel = "ROW", description = ROW) int row,
            @Parameters(paramLabel = "CELL", arity = "1..*", description = CELLS) List<String> cells,
            @Option(names = "--seen", paramLabel = "MARK", description = "The row's mark as it was looked at.")
                    @Nullable
                    String seen,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = WHO) @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = WHY) @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        return edit(
                file,
                table,
                who,
                why,
                json,
                (season, sheet) -> Renaming.along(
                        season,
                        TableRows.change(season, sheet, row, typed(cells), Objects.requireNonNullElse(seen, ""))));
    }

    @Command(name = "remove", description = "Removes a row, where no other refers to it.")
    int remove(
            @Parameters(paramLabel = "TABLE", description = TABLE) String table,
            @Parameters(paramLabel = "ROW", description = ROW) int row,
            @Option(names = "--seen", paramLabel = "MARK", description = "The row's mark as it was looked at.")
                    @Nullable
                    String seen,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = WHO) @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = WHY) @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        return edit(
                file,
                table,
                who,
                why,
                json,
                (season, sheet) -> SeedPair.removal(
                        season, TableRows.remove(season, sheet, row, Objects.requireNonNullElse(seen, ""))));
    }

    private int edit(
            Path file,
            String table,
            @Nullable String who,
            @Nullable String why,
            boolean json,
            BiFunction<Season, Sheet<?>, List<RowChange>> change) {
        try (Book book = Book.open(file)) {
            Sheet<?> sheet = TableRows.sheet(table);
            Season season = written(book, file);
            By by = new By(who, Objects.requireNonNullElse(why, ""), By.Way.COMMAND, Instant.now());
            Optional<Integer> number = book.edit(by, change.apply(season, sheet));
            if (number.isEmpty()) {
                screen.say(json ? "{}" : "Nothing was changed, since the row is so already.");
                return Exit.GOOD;
            }
            ChangeSummary made = book.changes(season.year()).stream()
                    .filter(one -> one.number() == number.get())
                    .findFirst()
                    .map(ChangeSummary::of)
                    .orElseThrow();
            screen.say(json ? Json.of(made) : "Change " + made.change() + ": " + made.says() + ".");
        } catch (EditFaults faults) {
            throw new BadInputException("Nothing was changed. " + faults.getMessage());
        }
        return Exit.GOOD;
    }

    private static Season written(Book book, Path file) {
        return book.latestWritten()
                .orElseThrow(() -> new BadInputException("The book " + file + " holds no season yet."));
    }

    /** Cells by table: "a=1 b=2 + seeds c=3". */
    private static Map<String, Map<String, String>> together(String first, List<String> cells) {
        Map<String, List<String>> byTable = new LinkedHashMap<>();
        String table = first;
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).equals("+") && i + 1 < cells.size()) {
                i++;
                table = cells.get(i);
            } else {
                byTable.computeIfAbsent(table, none -> new ArrayList<>()).add(cells.get(i));
            }
        }
        Map<String, Map<String, String>> typed = new LinkedHashMap<>();
        byTable.forEach((name, texts) -> typed.put(name, typed(texts)));
        return typed;
    }

    private static Map<String, String> typed(List<String> cells) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String cell : cells) {
            int equals = cell.indexOf('=');
            if (equals <= 0) {
                throw new BadInputException(
                        "Found '" + cell + "', expected a cell as column=text, such as acres=78.4.");
            }
            typed.put(cell.substring(0, equals), cell.substring(equals + 1));
        }
        return typed;
    }
}
