package plumbrow.app.desk.rows;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.json.Json;
import plumbrow.app.rows.ChangeSummary;
import plumbrow.app.rows.Changes;
import plumbrow.app.rows.TableRows;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.Renaming;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeedPair;

/**
 * The tables of the season and the history of their changes for programs. Bodies are JSON objects of texts by column; the names
 * {@code _who}, {@code _why} and {@code _seen} say who changes a row, why, and which state of it he looked at.
 */
@RestController
public class RowsApi {
    private static final String WHO = "_who";
    private static final String WHY = "_why";
    private static final String SEEN = "_seen";

    private final DeskBook book;
    private final Clock clock;

    public RowsApi(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Fault(String table, int row, String column, String found, String expected, String sentence) {}

    private record Refused(String error, List<Fault> faults) {}

    @GetMapping("/api/season")
    ResponseEntity<byte[]> tables() {
        return json(HttpStatus.OK, Json.of(TableRows.tables(written())));
    }

    @GetMapping("/api/season/{table}")
    ResponseEntity<byte[]> rows(@PathVariable String table, @RequestParam(defaultValue = "") String find) {
        return json(HttpStatus.OK, Json.of(TableRows.of(written(), TableRows.sheet(table), find)));
    }

    @GetMapping("/api/season/{table}/{row}")
    ResponseEntity<byte[]> row(@PathVariable String table, @PathVariable int row) {
        return json(HttpStatus.OK, Json.of(TableRows.row(written(), TableRows.sheet(table), row)));
    }

    @PostMapping(path = "/api/season/{table}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> add(@PathVariable String table, @RequestBody byte[] body) {
        Typed typed = typed(body);
        return edit(HttpStatus.CREATED, typed, season -> TableRows.add(TableRows.sheet(table), typed.cells()));
    }

    @PostMapping(path = "/api/season/{table}/{row}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> change(@PathVariable String table, @PathVariable int row, @RequestBody byte[] body) {
        Typed typed = typed(body);
        return edit(
                HttpStatus.OK,
                typed,
                season -> TableRows.change(season, TableRows.sheet(table), row, typed.cells(), typed.seen()));
    }

    @PostMapping(path = "/api/season/{table}/{row}/remove", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> remove(@PathVariable String table, @PathVariable int row, @RequestBody byte[] body) {
        Typed typed = typed(body);
        return edit(
                HttpStatus.OK, typed, season -> TableRows.remove(season, TableRows.sheet(table), row, typed.seen()));
    }

    @GetMapping("/api/history")
    ResponseEntity<byte[]> history(@RequestParam(required = false) @Nullable String since) {
        LocalDate day;
        try {
            day = since == null ? null : LocalDate.parse(since);
        } catch (DateTimeException noDay) {
            throw new IllegalArgumentException("since: found \"" + since + "\", expected a day as 2026-03-02.", noDay);
        }
        return json(
                HttpStatus.OK,
                Json.of(Changes.since(book.changes(written().year()), day).stream()
                        .map(ChangeSummary::of)
                        .toList()));
    }

    @PostMapping(path = "/api/history/{number}/undo", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> undo(@PathVariable int number, @RequestBody byte[] body) {
        Typed typed = typed(body);
        int year = written().year();
        int made = book.undo(number, new By(typed.who(), typed.why(), By.Way.UNDO, clock.instant()));
        return change(HttpStatus.OK, year, made);
    }

    /** Adds a row to each of several tables at once, which refer to one another: texts by "table.column". */
    @PostMapping(path = "/api/season", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> addTogether(@RequestBody byte[] body) {
        Typed typed = typed(body);
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        typed.cells().forEach((key, text) -> {
            int point = key.indexOf('.');
            if (point <= 0) {
                throw new IllegalArgumentException(
                        "found \"" + key + "\", expected a table and a column, such as shelf.product.");
            }
            rows.computeIfAbsent(key.substring(0, point), none -> new LinkedHashMap<>())
                    .put(key.substring(point + 1), text);
        });
        return editAll(HttpStatus.CREATED, typed, TableRows.addAll(rows));
    }

    private ResponseEntity<byte[]> edit(HttpStatus good, Typed typed, Function<Season, RowChange> change) {
        Season season = written();
        RowChange asked = change.apply(season);
        return editAll(
                good, typed, asked.after() == null ? SeedPair.removal(season, asked) : Renaming.along(season, asked));
    }

    private ResponseEntity<byte[]> editAll(HttpStatus good, Typed typed, List<RowChange> changes) {
        By by = new By(typed.who(), typed.why(), By.Way.PROGRAM, clock.instant());
        Optional<Integer> number = book.edit(by, changes);
        return number.isEmpty()
                ? json(HttpStatus.OK, "{}")
                : change(good, written().year(), number.get());
    }

    private ResponseEntity<byte[]> change(HttpStatus status, int year, int number) {
        return json(
                status,
                Json.of(book.changes(year).stream()
                        .filter(change -> change.number() == number)
                        .findFirst()
                        .map(ChangeSummary::of)
                        .orElseThrow()));
    }

    /** What came: the cells, and who, why and beside which state. */
    private record Typed(Map<String, String> cells, String who, String why, String seen) {}

    private static Typed typed(byte[] body) {
        Map<String, String> texts = new LinkedHashMap<>();
        Json.object(new String(body, StandardCharsets.UTF_8))
                .forEach((key, value) -> texts.put(key, String.valueOf(value)));
        String who = Optional.ofNullable(texts.remove(WHO)).orElse("");
        String why = Optional.ofNullable(texts.remove(WHY)).orElse("");
        String seen = Optional.ofNullable(texts.remove(SEEN)).orElse("");
        return new Typed(texts, who, why, seen);
    }

    private Season written() {
        return book.written().orElseThrow(NoSeasonException::new);
    }

    @ExceptionHandler(EditFaults.class)
    ResponseEntity<byte[]> faults(EditFaults faults) {
        List<Fault> all = faults.places().stream()
                .map(place -> place.fault())
                .map(fault -> new Fault(
                        fault.sheet(), fault.row(), fault.column(), fault.found(), fault.expected(), fault.sentence()))
                .toList();
        return json(
                HttpStatus.UNPROCESSABLE_CONTENT,
                Json.of(new Refused("Nothing was changed. " + faults.getMessage(), all)));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<byte[]> unreadable(IllegalArgumentException fault) {
        return refused(HttpStatus.BAD_REQUEST, fault);
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return json(
                HttpStatus.NOT_FOUND,
                Json.of(new Refused("The book is empty: begin a season or import a workbook first.", List.of())));
    }

    @ExceptionHandler(MeanwhileException.class)
    ResponseEntity<byte[]> meanwhile(MeanwhileException fault) {
        return refused(HttpStatus.CONFLICT, fault);
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return refused(HttpStatus.NOT_FOUND, fault);
    }

    private static ResponseEntity<byte[]> refused(HttpStatus status, RuntimeException fault) {
        return json(status, Json.of(new Refused(String.valueOf(fault.getMessage()), List.of())));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
