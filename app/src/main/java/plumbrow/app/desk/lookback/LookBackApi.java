package plumbrow.app.desk.lookback;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.json.Json;
import plumbrow.app.lookback.HarvestEntry;

/** Harvests and what looking back says, for programs. */
@RestController
public class LookBackApi {
    private final DeskBook book;
    private final Clock clock;

    public LookBackApi(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Refused(String error, Map<String, String> faults) {}

    @GetMapping("/api/lookback")
    ResponseEntity<byte[]> lookBack() {
        return json(HttpStatus.OK, Json.of(book.lookBack()));
    }

    @GetMapping("/api/harvests")
    ResponseEntity<byte[]> harvests() {
        return json(HttpStatus.OK, Json.of(book.harvests()));
    }

    @PostMapping(path = "/api/harvests/{year}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> write(@PathVariable int year, @RequestBody byte[] body) {
        Season season = book.season(year).orElseThrow(() -> new BookException("The book has no season " + year + "."));
        Map<String, String> typed = new LinkedHashMap<>();
        Json.object(new String(body, StandardCharsets.UTF_8))
                .forEach((key, value) -> typed.put(key, String.valueOf(value)));
        HarvestEntry entry = HarvestEntry.read(season, book.decided(), typed, clock.instant());
        Harvest harvest = entry.harvest();
        if (harvest == null) {
            return json(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    Json.of(new Refused("Nothing was written down. " + entry.complaint(), entry.faults())));
        }
        book.harvest(harvest);
        return json(HttpStatus.CREATED, Json.of(harvest));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<byte[]> unreadable(IllegalArgumentException fault) {
        return refused(HttpStatus.BAD_REQUEST, fault);
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return refused(HttpStatus.NOT_FOUND, fault);
    }

    private static ResponseEntity<byte[]> refused(HttpStatus status, RuntimeException fault) {
        return json(status, Json.of(new Refused(String.valueOf(fault.getMessage()), Map.of())));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
