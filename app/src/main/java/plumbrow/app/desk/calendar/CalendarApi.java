package plumbrow.app.desk.calendar;

import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.calendar.ProgramChangeException;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.Json;

/** The season of a program for programs: its days and its numbers, with passes moved as asked. Nothing is stored. */
@RestController
public class CalendarApi {
    private final DeskBook book;
    private final Trials trials;

    public CalendarApi(DeskBook book, Trials trials) {
        this.book = book;
        this.trials = trials;
    }

    private record Fault(String error) {}

    /** {@code ?program=…&pass=3&date=2027-05-24&rate=1.5}; pass, date and rate may come several times. */
    @GetMapping("/api/fields/{name}/season")
    ResponseEntity<byte[]> season(@PathVariable String name, @RequestParam MultiValueMap<String, String> asked) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        String program = CalendarPage.program(season, field, asked.getFirst("program"));
        PassBoxes boxes = PassBoxes.read(asked);
        if (!boxes.faults().isEmpty()) {
            return json(
                    HttpStatus.BAD_REQUEST,
                    Json.of(new Fault(boxes.faults().get(0).sentence())));
        }
        return json(HttpStatus.OK, Json.of(trials.full(season).whole(field, program, boxes.changes())));
    }

    @ExceptionHandler({
        BookException.class,
        ProgramChangeException.class,
        NoSeasonException.class,
        NotHereException.class,
        SeasonGapException.class
    })
    ResponseEntity<byte[]> fault(RuntimeException fault) {
        if (fault instanceof NoSeasonException) {
            return json(
                    HttpStatus.NOT_FOUND,
                    Json.of(new Fault("The book is empty: import a workbook before asking for a season.")));
        }
        HttpStatus status = fault instanceof NotHereException
                ? HttpStatus.NOT_FOUND
                : fault instanceof BookException ? HttpStatus.SERVICE_UNAVAILABLE : HttpStatus.UNPROCESSABLE_CONTENT;
        return json(status, Json.of(new Fault(Shown.text(fault.getMessage()))));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
