package plumbrow.app.desk.records;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordQuestion;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.Json;
import plumbrow.app.log.StrikeEntry;
import plumbrow.app.records.RecordAnswer;
import plumbrow.app.records.RecordEntry;
import plumbrow.app.records.RecordFilter;
import plumbrow.app.records.RecordStart;
import plumbrow.app.weather.Decided;

/** Application records for programs. Bodies are JSON objects of plain values, by the keys of {@link RecordEntry}. */
@RestController
public class RecordsApi {
    private final DeskBook book;
    private final Clock clock;

    public RecordsApi(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Fault(String error, Map<String, String> faults, List<RecordQuestion> questions) {}

    private record Start(Map<String, String> boxes) {}

    @GetMapping("/api/records")
    ResponseEntity<byte[]> list(@RequestParam Map<String, String> asked) {
        Season season = Asked.season(book);
        List<KeptRecord> all = book.records();
        return json(
                HttpStatus.OK,
                Json.of(RecordFilter.of(asked, all, Optional.of(season)).in(all).stream()
                        .map(kept -> RecordAnswer.of(season, kept))
                        .toList()));
    }

    @GetMapping("/api/records/check")
    ResponseEntity<byte[]> check(@RequestParam Map<String, String> asked) {
        Season season = Asked.season(book);
        List<KeptRecord> all = book.records();
        return json(
                HttpStatus.OK,
                Json.of(RecordFilter.of(asked, all, Optional.of(season)).in(all).stream()
                        .filter(KeptRecord::counts)
                        .map(kept -> RecordCheck.of(season, kept))
                        .toList()));
    }

    /** What the load card says of a trip, by the keys of a record: to be sent back with what was done otherwise. */
    @GetMapping("/api/records/start")
    ResponseEntity<byte[]> start(@RequestParam Map<String, String> asked) {
        Season season = Asked.season(book);
        SprayTrip trip = Decided.trip(
                season,
                Asked.field(season, asked.getOrDefault(RecordEntry.FIELD, "")),
                book.choices(season.year()),
                asked.get(RecordEntry.PROGRAM),
                Decided.passNumber(asked.get(RecordEntry.PASS)),
                false);
        LocalDate today = LocalDate.now(clock.withZone(ZoneId.systemDefault()));
        return json(
                HttpStatus.OK,
                Json.of(new Start(RecordStart.of(season, trip, LoadCards.of(season, trip, null), today))));
    }

    @GetMapping("/api/records/{number:\\d+}")
    ResponseEntity<byte[]> one(@PathVariable int number) {
        return json(HttpStatus.OK, Json.of(RecordAnswer.of(Asked.season(book), kept(number))));
    }

    @PostMapping(path = "/api/records", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> write(@RequestBody byte[] body) {
        Season season = Asked.season(book);
        Map<String, String> typed = typed(body);
        RecordEntry entry = RecordEntry.read(season, typed, List.of(), clock.instant());
        if (!entry.ready()) {
            return refused(entry, "written down");
        }
        String who = typed.getOrDefault("who", typed.getOrDefault(RecordItem.APPLICATOR.key(), ""));
        return json(
                HttpStatus.CREATED,
                Json.of(RecordAnswer.of(
                        season,
                        book.record(
                                Objects.requireNonNull(entry.record()),
                                new By(who, "", By.Way.PROGRAM, null),
                                clock.instant()))));
    }

    @PostMapping(path = "/api/records/{number}/correct", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> correct(@PathVariable int number, @RequestBody byte[] body) {
        Season season = Asked.season(book);
        KeptRecord wrong = kept(number);
        Map<String, String> typed = RecordStart.of(wrong);
        typed.putAll(typed(body));
        StrikeEntry said = StrikeEntry.read(typed);
        RecordEntry entry = RecordEntry.read(season, typed, wrong.record().lines(), clock.instant());
        if (!entry.ready()) {
            return refused(entry, "corrected");
        }
        if (!said.fault().isEmpty()) {
            return fault(HttpStatus.UNPROCESSABLE_CONTENT, "The record was not corrected. " + said.fault());
        }
        return json(
                HttpStatus.OK,
                Json.of(RecordAnswer.of(
                        season,
                        book.correct(
                                number,
                                Objects.requireNonNull(entry.record()),
                                new By(said.who(), said.why(), By.Way.PROGRAM, null),
                                clock.instant()))));
    }

    @PostMapping(path = "/api/records/{number}/void", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> voided(@PathVariable int number, @RequestBody byte[] body) {
        StrikeEntry said = StrikeEntry.read(typed(body));
        kept(number);
        if (!said.fault().isEmpty()) {
            return fault(HttpStatus.UNPROCESSABLE_CONTENT, "The record was not voided. " + said.fault());
        }
        return json(
                HttpStatus.OK,
                Json.of(RecordAnswer.of(
                        Asked.season(book),
                        book.voidRecord(
                                number, new By(said.who(), said.why(), By.Way.PROGRAM, null), clock.instant()))));
    }

    private KeptRecord kept(int number) {
        return book.records().stream()
                .filter(record -> record.number() == number)
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no record " + number + "."));
    }

    private static ResponseEntity<byte[]> refused(RecordEntry entry, String what) {
        return json(
                HttpStatus.UNPROCESSABLE_CONTENT,
                Json.of(new Fault(
                        "The record was not " + what + (entry.faults().isEmpty() ? " yet; asked back: " : ". ")
                                + entry.complaint(),
                        entry.faults(),
                        entry.questions())));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<byte[]> unreadable(IllegalArgumentException fault) {
        return fault(HttpStatus.BAD_REQUEST, String.valueOf(fault.getMessage()));
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> missing(NotHereException fault) {
        return fault(HttpStatus.NOT_FOUND, String.valueOf(fault.getMessage()));
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return fault(HttpStatus.NOT_FOUND, "The book is empty: import a workbook first.");
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return fault(HttpStatus.CONFLICT, String.valueOf(fault.getMessage()));
    }

    private static Map<String, String> typed(byte[] body) {
        Map<String, String> texts = new LinkedHashMap<>();
        Json.object(new String(body, StandardCharsets.UTF_8))
                .forEach((key, value) -> texts.put(key, String.valueOf(value)));
        return texts;
    }

    private static ResponseEntity<byte[]> fault(HttpStatus status, String sentence) {
        return json(status, Json.of(new Fault(sentence, Map.of(), List.of())));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
