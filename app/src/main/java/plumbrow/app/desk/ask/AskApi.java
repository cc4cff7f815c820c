package plumbrow.app.desk.ask;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.ask.AskAnswer;
import plumbrow.advice.ask.Asking;
import plumbrow.advice.ask.Question;
import plumbrow.advice.ask.Questions;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.AskSummary;
import plumbrow.app.json.Json;

/** One question, and what to tell next, for programs. */
@RestController
public class AskApi {
    private final DeskBook book;
    private final Weighings weighings;
    private final Clock clock;

    public AskApi(DeskBook book, Weighings weighings, Clock clock) {
        this.book = book;
        this.weighings = weighings;
        this.clock = clock;
    }

    private record Fault(String error) {}

    private record Faults(String error, Map<String, String> boxes) {}

    @GetMapping("/api/ask")
    ResponseEntity<byte[]> questions() {
        return json(
                HttpStatus.OK,
                Json.of(Questions.all().stream().map(AskSummary::of).toList()));
    }

    @GetMapping("/api/ask/{id}")
    ResponseEntity<byte[]> ask(@PathVariable String id, @RequestParam Map<String, String> typed) {
        Question question = Questions.find(id)
                .map(one -> one.knowing(book.season().map(Season::assumptions).orElse(List.of())))
                .orElseThrow(() -> new NotHereException("There is no question called “" + id + "”."));
        AskAnswer answer = Asking.answer(
                question,
                typed,
                LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()),
                WeighingOptions.DEFAULT.draws());
        return answer.faults().isEmpty()
                ? json(HttpStatus.OK, Json.of(answer))
                : json(
                        HttpStatus.BAD_REQUEST,
                        Json.of(new Faults(String.join(" ", answer.faults().values()), answer.faults())));
    }

    @GetMapping("/api/fields/{name}/next")
    ResponseEntity<byte[]> next(@PathVariable String name) {
        Season season = Asked.season(book);
        return json(HttpStatus.OK, Json.of(weighings.next(season, Asked.field(season, name))));
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> notHere(NotHereException fault) {
        return json(HttpStatus.NOT_FOUND, Json.of(new Fault(Shown.text(fault.getMessage()))));
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return json(
                HttpStatus.NOT_FOUND,
                Json.of(new Fault("The book is empty: ask a question at /api/ask, or import a workbook.")));
    }

    @ExceptionHandler(SeasonGapException.class)
    ResponseEntity<byte[]> gap(SeasonGapException fault) {
        return json(HttpStatus.UNPROCESSABLE_CONTENT, Json.of(new Fault(Shown.text(fault.getMessage()))));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
