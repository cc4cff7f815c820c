package plumbrow.app.desk.api;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.GatePage;
import plumbrow.advice.pestpage.PestNames;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.door.TooManyException;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.desk.years.YearsForm;
import plumbrow.app.json.AdviceSummary;
import plumbrow.app.json.CheckSummary;
import plumbrow.app.json.Json;
import plumbrow.app.json.SubstanceSummary;
import plumbrow.science.Figures;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.reference.Substances;

/** The answers of the pages for programs, with a sentence under "error" where there is none. */
@RestController
public class ApiPages {
    private final DeskBook book;
    private final Weighings weighings;

    public ApiPages(DeskBook book, Weighings weighings) {
        this.book = book;
        this.weighings = weighings;
    }

    private record Fault(String error) {}

    private record Ingredient(String name, String cas, String kind) {}

    @GetMapping("/api/figures")
    ResponseEntity<byte[]> figures() {
        return json(HttpStatus.OK, Json.index(Figures.all()));
    }

    @GetMapping("/api/figures/{id}")
    ResponseEntity<byte[]> figure(@PathVariable String id, @RequestParam Map<String, String> typed) {
        return json(HttpStatus.OK, Json.of(Asked.figure(id).answer(typed)));
    }

    @GetMapping("/api/ingredients")
    ResponseEntity<byte[]> ingredients(@RequestParam(name = "q", defaultValue = "") String asked) {
        return json(
                HttpStatus.OK,
                Json.of(Substances.search(asked).stream()
                        .map(known -> new Ingredient(known.name(), known.cas(), known.kind()))
                        .toList()));
    }

    @GetMapping("/api/ingredients/{name}")
    ResponseEntity<byte[]> ingredient(@PathVariable String name) {
        return json(HttpStatus.OK, Json.of(SubstanceSummary.of(Asked.substance(name))));
    }

    @GetMapping("/api/advice")
    ResponseEntity<byte[]> advices(@RequestParam(defaultValue = "") String farm) {
        Season season = Asked.season(book);
        return json(HttpStatus.OK, Json.of(weighings.advice(season, Asked.fields(season, farm))));
    }

    @GetMapping("/api/fields/{name}/advice")
    ResponseEntity<byte[]> advice(@PathVariable String name) {
        Season season = Asked.season(book);
        FieldAdvice advice = weighings.field(season, Asked.field(season, name), WeighingOptions.DEFAULT);
        return json(HttpStatus.OK, Json.of(AdviceSummary.OfField.of(season, advice)));
    }

    @GetMapping("/api/check")
    ResponseEntity<byte[]> checks(@RequestParam(defaultValue = "") String farm) {
        Season season = Asked.season(book);
        return json(HttpStatus.OK, Json.of(CheckSummary.of(SeasonCheck.of(season, Asked.fields(season, farm)))));
    }

    @GetMapping("/api/fields/{name}/check")
    ResponseEntity<byte[]> check(@PathVariable String name, @RequestParam(required = false) @Nullable String program) {
        Season season = Asked.season(book);
        SeasonCheck check = SeasonCheck.of(season, List.of(Asked.field(season, name)));
        SeasonCheck asked = program == null ? check : check.named(program);
        if (program != null && asked.programs().isEmpty()) {
            throw new NotHereException("There is no program called “" + program + "” for “" + name + "”.");
        }
        return json(HttpStatus.OK, Json.of(CheckSummary.of(asked)));
    }

    @GetMapping("/api/pests")
    ResponseEntity<byte[]> pests() {
        return json(HttpStatus.OK, Json.of(PestNames.of(Asked.season(book))));
    }

    @GetMapping("/api/pests/{name}")
    ResponseEntity<byte[]> pest(@PathVariable String name) {
        return json(HttpStatus.OK, Json.of(Asked.pest(Asked.season(book), name)));
    }

    @GetMapping("/api/gates")
    ResponseEntity<byte[]> gates() {
        return json(
                HttpStatus.OK,
                Json.of(GatePage.all().stream().map(CheckSummary.OfGate::of).toList()));
    }

    @GetMapping("/api/gates/{id}")
    ResponseEntity<byte[]> gate(@PathVariable String id) {
        return json(HttpStatus.OK, Json.of(CheckSummary.OfGate.of(Asked.gate(id))));
    }

    @GetMapping("/api/fields/{name}/years")
    ResponseEntity<byte[]> years(@PathVariable String name, @RequestParam MultiValueMap<String, String> asked) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        YearsForm form = YearsForm.read(season, field, asked);
        return form.faults().isEmpty()
                ? json(HttpStatus.OK, Json.of(form.answer(season, field)))
                : json(
                        HttpStatus.BAD_REQUEST,
                        Json.of(new Fault(String.join(" ", form.faults().values()))));
    }

    @ExceptionHandler(FigureInputException.class)
    ResponseEntity<byte[]> input(FigureInputException fault) {
        return fault(HttpStatus.BAD_REQUEST, fault);
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> notHere(NotHereException fault) {
        return fault(HttpStatus.NOT_FOUND, fault);
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return json(
                HttpStatus.NOT_FOUND,
                Json.of(new Fault("The book is empty: import a workbook before asking for advice.")));
    }

    @ExceptionHandler({SeasonGapException.class, TooManyException.class})
    ResponseEntity<byte[]> gap(RuntimeException fault) {
        return fault(HttpStatus.UNPROCESSABLE_CONTENT, fault);
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return fault(HttpStatus.SERVICE_UNAVAILABLE, fault);
    }

    private static ResponseEntity<byte[]> fault(HttpStatus status, RuntimeException fault) {
        return json(status, Json.of(new Fault(Shown.text(fault.getMessage()))));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
