package plumbrow.app.desk.nextseason;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.json.Json;
import plumbrow.app.rows.BeginWords;
import plumbrow.app.rows.NextSeasonSummary;

/**
 * The seasons of the book for programs, and the beginning of the next one. The body of a beginning is a JSON object of texts:
 * {@code year}, {@code as_of}, {@code crop.FIELD} for each crop that is said, {@code dry_run}, {@code _who} and {@code _why}.
 */
@RestController
public class SeasonsApi {
    private static final String CROP = "crop.";

    private final DeskBook book;
    private final Clock clock;

    public SeasonsApi(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Held(List<Integer> seasons) {}

    private record Refused(String error) {}

    @GetMapping("/api/seasons")
    ResponseEntity<byte[]> seasons() {
        return json(HttpStatus.OK, Json.of(new Held(book.seasons())));
    }

    @PostMapping(path = "/api/seasons/next", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> begin(@RequestBody byte[] body) {
        Map<String, String> typed = new LinkedHashMap<>();
        Json.object(new String(body, StandardCharsets.UTF_8))
                .forEach((key, value) -> typed.put(key, String.valueOf(value)));
        Map<String, String> crops = new LinkedHashMap<>();
        typed.forEach((key, text) -> {
            if (key.startsWith(CROP)) {
                crops.put(key.substring(CROP.length()), text);
            }
        });
        BeginAsked asked = BeginWords.asked(
                typed.getOrDefault("year", ""),
                typed.getOrDefault("as_of", ""),
                LocalDate.now(clock.withZone(ZoneId.systemDefault())),
                crops);
        if (typed.getOrDefault("dry_run", "").equals("true")) {
            return json(HttpStatus.OK, Json.of(book.nextSeason(asked)));
        }
        By by = new By(typed.get("_who"), typed.getOrDefault("_why", ""), By.Way.PROGRAM, clock.instant());
        NextSeasonSummary begun = book.beginNext(by, asked, null);
        return json(HttpStatus.CREATED, Json.of(begun));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<byte[]> unreadable(IllegalArgumentException fault) {
        return refused(HttpStatus.UNPROCESSABLE_CONTENT, fault);
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
        return json(status, Json.of(new Refused(String.valueOf(fault.getMessage()))));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
