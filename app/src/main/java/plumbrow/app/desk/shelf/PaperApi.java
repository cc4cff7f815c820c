package plumbrow.app.desk.shelf;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.shelf.Product;
import plumbrow.app.book.Book;
import plumbrow.app.book.BookException;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.CardSummary;
import plumbrow.app.json.Json;
import plumbrow.app.json.LabelValuesSummary;
import plumbrow.app.json.PaperSummary;
import plumbrow.app.papers.LabelWork;
import plumbrow.app.papers.PaperMends;
import plumbrow.documents.card.ContainerText;
import plumbrow.documents.confirm.NotSoException;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.paper.Quote;

/** Papers for programs, with a sentence under "error" where there is none. */
@RestController
public class PaperApi {
    private final ShelfPapers papers;
    private final DeskBook book;
    private final Clock clock;

    public PaperApi(ShelfPapers papers, DeskBook book, Clock clock) {
        this.papers = papers;
        this.book = book;
        this.clock = clock;
    }

    private record Fault(String error) {}

    private record Paper(PaperSummary.OfPaper paper, PaperSummary.OfProduct product, List<Value> values) {}

    /** What a person said of a value, and what was read. */
    private record Said(String verdict, String value, String was, String who, String when, int page) {
        static Said of(Mend mend) {
            return new Said(
                    mend.verdict().word(),
                    mend.value(),
                    mend.was(),
                    mend.who(),
                    mend.when().toString(),
                    mend.page());
        }
    }

    private record Value(
            @Nullable Integer at,
            String title,
            String says,
            boolean sure,
            boolean byOcr,
            @Nullable Said putRight,
            @Nullable Integer page,
            @Nullable String words,
            List<Mark> marks) {
        static Value of(PaperMends.Line line) {
            Quote quote = line.quote();
            return new Value(
                    line.at(),
                    line.title(),
                    line.says(),
                    line.sure(),
                    line.byOcr(),
                    line.mend().map(Said::of).orElse(null),
                    quote == null ? null : quote.page(),
                    quote == null ? null : quote.words(),
                    quote == null ? List.of() : quote.marks());
        }

        static Value silent(Place place) {
            return new Value(null, place.title(), place.says(), false, false, null, null, null, List.of());
        }
    }

    private static List<Value> values(PaperMends mends) {
        return Stream.concat(
                        mends.lines().stream().map(Value::of),
                        Place.all(mends.read()).stream()
                                .filter(place -> place.quote() == null)
                                .map(Value::silent))
                .toList();
    }

    @GetMapping("/api/papers")
    ResponseEntity<byte[]> papers() {
        return json(
                HttpStatus.OK,
                Json.of(papers.all().stream().map(PaperSummary.OfPaper::of).toList()));
    }

    @GetMapping("/api/papers/{id}")
    ResponseEntity<byte[]> paper(@PathVariable int id) {
        StoredPaper stored = papers.stored(id);
        return json(
                HttpStatus.OK,
                Json.of(new Paper(
                        PaperSummary.OfPaper.of(stored),
                        PaperSummary.OfProduct.of(papers.product(id), LocalDate.now(clock)),
                        values(papers.mends(id)))));
    }

    /** Says something of a value, and answers with all as they then are. */
    @PostMapping("/api/papers/{id}/mends")
    ResponseEntity<byte[]> mend(
            @PathVariable int id,
            @RequestParam(defaultValue = "-1") int at,
            @RequestParam(defaultValue = "") String does,
            @RequestParam(defaultValue = "") String about,
            @RequestParam(defaultValue = "") String value,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "") String who) {
        PaperMends.Deed deed = PaperMends.Deed.of(does)
                .orElseThrow(() ->
                        new NotSoException("does is '" + does + "'; expected one of " + PaperMends.Deed.words() + "."));
        List<Product> products =
                book.season().map(season -> season.shelf().products()).orElse(List.of());
        papers.mend(id, held -> held.decide(at, deed, about, value, page, who, null, products, clock.instant()));
        return json(HttpStatus.OK, Json.of(values(papers.mends(id))));
    }

    @GetMapping("/api/papers/{id}/card")
    ResponseEntity<byte[]> card(@PathVariable int id, @RequestParam(defaultValue = "") String container) {
        if (!container.isBlank() && ContainerText.read(container).isEmpty()) {
            return json(
                    HttpStatus.BAD_REQUEST,
                    Json.of(new Fault("container is '" + container + "'; expected " + ContainerText.EXPECTED + ".")));
        }
        return json(
                HttpStatus.OK,
                Json.of(CardSummary.of(
                        papers.card(id, ContainerText.read(container).orElse(null), LocalDate.now(clock)))));
    }

    /** A label's values. The token that {@code POST} wants comes in a header, its cookie beside it. */
    @GetMapping("/api/papers/{id}/values")
    ResponseEntity<byte[]> values(@PathVariable int id, CsrfToken token) {
        return ResponseEntity.ok()
                .header(token.getHeaderName(), token.getToken())
                .contentType(MediaType.APPLICATION_JSON)
                .body(Json.of(LabelValuesSummary.of(papers.label(id))).getBytes(StandardCharsets.UTF_8));
    }

    /** Decides about one value, or confirms all of a row, and answers with the values as they then are. */
    @PostMapping("/api/papers/{id}/values")
    ResponseEntity<byte[]> decide(
            @PathVariable int id,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String does,
            @RequestParam(defaultValue = "") String value,
            @RequestParam(defaultValue = "") String who) {
        LabelWork.Deed deed = LabelWork.Deed.of(does)
                .orElseThrow(() ->
                        new NotSoException("does is '" + does + "'; expected one of " + LabelWork.Deed.words() + "."));
        Function<Book.Labels, LabelWork> label = papers.work(id);
        book.decide(held -> label.apply(held).decide(at, deed, value, who, null, clock.instant()));
        return json(HttpStatus.OK, Json.of(LabelValuesSummary.of(papers.label(id))));
    }

    @ExceptionHandler(NotSoException.class)
    ResponseEntity<byte[]> notSo(NotSoException fault) {
        return json(HttpStatus.BAD_REQUEST, Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> notHere(NotHereException fault) {
        return json(HttpStatus.NOT_FOUND, Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }

    @ExceptionHandler(PaperTrouble.class)
    ResponseEntity<byte[]> unreadable(PaperTrouble fault) {
        return json(HttpStatus.UNPROCESSABLE_CONTENT, Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return json(HttpStatus.SERVICE_UNAVAILABLE, Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
