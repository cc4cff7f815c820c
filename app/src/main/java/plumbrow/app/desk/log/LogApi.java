package plumbrow.app.desk.log;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import plumbrow.advice.program.Done;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.book.LogLine;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.json.Json;
import plumbrow.app.log.LogEntry;
import plumbrow.app.log.LogOfField;
import plumbrow.app.log.PassEntry;
import plumbrow.app.log.StrikeEntry;

/** The log for programs, with a sentence under "error" where a line is refused. Bodies are JSON objects of plain values. */
@RestController
public class LogApi {
    private final DeskBook book;
    private final Clock clock;

    public LogApi(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Fault(String error, Map<String, String> faults) {}

    @GetMapping("/api/log")
    ResponseEntity<byte[]> log(@RequestParam(required = false) @Nullable String field) {
        List<LogLine> log = book.log();
        Optional<Season> season = book.season();
        return LogOfField.lines(log, season, field)
                .map(lines -> json(HttpStatus.OK, Json.of(lines)))
                .orElseGet(() ->
                        fault(HttpStatus.NOT_FOUND, LogOfField.unknown(log, season, String.valueOf(field)), Map.of()));
    }

    @PostMapping(path = "/api/log/{number}/pass", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> pass(@PathVariable int number, @RequestBody byte[] body) {
        LogLine line = line(number);
        PassEntry entry = PassEntry.read(Asked.season(book), line.done(), typed(body));
        return entry.meant() == null
                ? fault(HttpStatus.UNPROCESSABLE_CONTENT, "Nothing was written down. " + entry.fault(), Map.of())
                : json(HttpStatus.OK, Json.of(book.sayPass(number, entry.meant(), entry.who(), clock.instant())));
    }

    private LogLine line(int number) {
        return book.log().stream()
                .filter(one -> one.number() == number)
                .findFirst()
                .orElseThrow(() -> new BookException("The log has no line " + number + "."));
    }

    @PostMapping(path = "/api/log", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> write(@RequestBody byte[] body) {
        LogEntry entry =
                LogEntry.read(Asked.season(book), typed(body), LocalDate.now(clock.withZone(ZoneId.systemDefault())));
        Done done = entry.done();
        return done == null
                ? fault(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "The line was not written down. " + entry.complaint(),
                        entry.faults())
                : json(HttpStatus.CREATED, Json.of(book.log(done, clock.instant())));
    }

    @PostMapping(path = "/api/log/{number}/strike", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> strike(@PathVariable int number, @RequestBody byte[] body) {
        StrikeEntry strike = StrikeEntry.read(typed(body));
        if (!strike.fault().isEmpty()) {
            return fault(HttpStatus.UNPROCESSABLE_CONTENT, "The line was not voided. " + strike.fault(), Map.of());
        }
        book.strike(number, strike.strike(clock.instant()));
        return json(
                HttpStatus.OK,
                Json.of(book.log().stream()
                        .filter(line -> line.number() == number)
                        .toList()
                        .get(0)));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<byte[]> unreadable(IllegalArgumentException fault) {
        return fault(HttpStatus.BAD_REQUEST, String.valueOf(fault.getMessage()), Map.of());
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return fault(HttpStatus.NOT_FOUND, "The book is empty: import a workbook first.", Map.of());
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return fault(HttpStatus.CONFLICT, String.valueOf(fault.getMessage()), Map.of());
    }

    private static Map<String, String> typed(byte[] body) {
        Map<String, String> texts = new LinkedHashMap<>();
        Json.object(new String(body, StandardCharsets.UTF_8))
                .forEach((key, value) -> texts.put(key, String.valueOf(value)));
        return texts;
    }

    private static ResponseEntity<byte[]> fault(HttpStatus status, String sentence, Map<String, String> faults) {
        return json(status, Json.of(new Fault(sentence, faults)));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
