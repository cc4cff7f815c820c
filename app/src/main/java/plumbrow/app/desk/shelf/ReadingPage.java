package plumbrow.app.desk.shelf;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.papers.PaperMends;
import plumbrow.documents.confirm.NotSoException;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.PaperTrouble;

/** What was read on a paper, value by value, beside the page with its words marked. */
@Controller
public class ReadingPage {
    private final ShelfPapers papers;
    private final DeskBook book;
    private final Clock clock;

    public ReadingPage(ShelfPapers papers, DeskBook book, Clock clock) {
        this.papers = papers;
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/shelf/papers/{number}")
    String reading(
            @PathVariable int number,
            @RequestParam(defaultValue = "-1") int at,
            @RequestParam(defaultValue = "0") int page,
            @RequestParam(defaultValue = "") String add,
            @RequestParam(defaultValue = "") String who,
            Model model) {
        model.addAttribute("view", view(number, at, page, TypingForm.EMPTY, new MendForm(who, add, "", "")));
        return "reading";
    }

    /** Writes down what somebody puts right on a paper that was read, and goes on to the next value that waits. */
    @PostMapping("/shelf/papers/{number}/mends")
    String mend(
            @PathVariable int number,
            @RequestParam(defaultValue = "-1") int at,
            @RequestParam(defaultValue = "") String does,
            @RequestParam(defaultValue = "") String about,
            @RequestParam(defaultValue = "") String value,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "") String who,
            @RequestParam(required = false) String saw,
            Model model,
            HttpServletResponse response) {
        PaperMends before = papers.mends(number);
        try {
            PaperMends.Deed deed = PaperMends.Deed.of(does)
                    .orElseThrow(() ->
                            new NotSoException("Choose what to do; expected one of " + PaperMends.Deed.words() + "."));
            papers.mend(
                    number, held -> held.decide(at, deed, about, value, page, who, saw, products(), clock.instant()));
        } catch (NotSoException wrong) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            MendForm form = new MendForm(who, about, value, String.valueOf(wrong.getMessage()));
            model.addAttribute("view", view(number, at, page, TypingForm.EMPTY, form));
            return "reading";
        }
        int next = next(papers.mends(number), at, before);
        return "redirect:/shelf/papers/" + number + "?" + (next < 0 ? "page=" + page : "at=" + next) + "&who="
                + URLEncoder.encode(who.strip(), StandardCharsets.UTF_8) + "#mend";
    }

    /** The next value that waits, from where the person is; then from the top; else where he is. */
    private static int next(PaperMends now, int at, PaperMends before) {
        List<PaperMends.Line> waiting =
                now.lines().stream().filter(PaperMends.Line::waits).toList();
        boolean waited = before.lines().stream().anyMatch(line -> line.at() == at && line.waits());
        return waited
                ? waiting.stream()
                        .filter(line -> line.at() > at)
                        .findFirst()
                        .or(() -> waiting.stream().findFirst())
                        .map(PaperMends.Line::at)
                        .orElse(at)
                : at;
    }

    private List<Product> products() {
        return book.season().map(season -> season.shelf().products()).orElse(List.of());
    }

    /** Writes down what was typed from a page without text. */
    @PostMapping("/shelf/papers/{number}/typed")
    String type(
            @PathVariable int number,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        papers.stored(number);
        TypingForm form = TypingForm.read(typed);
        if (form.fault().isEmpty()) {
            book.type(form.typed(number, page, clock.instant()));
            return "redirect:/shelf/papers/" + number + "?page=" + page + "#typed";
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        model.addAttribute("view", view(number, -1, page, form, MendForm.EMPTY));
        return "reading";
    }

    @GetMapping("/shelf/papers/{number}/pages/{page}.png")
    ResponseEntity<byte[]> picture(@PathVariable int number, @PathVariable int page) {
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_PNG)
                .cacheControl(CacheControl.noCache())
                .body(papers.picture(number, page).png());
    }

    /** The file as it came. It is handed out to be saved, never shown by the desk itself. */
    @GetMapping("/shelf/papers/{number}/file")
    ResponseEntity<byte[]> file(@PathVariable int number) {
        StoredPaper stored = papers.stored(number);
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_OCTET_STREAM)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(stored.paper().fileName(), java.nio.charset.StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(papers.file(number));
    }

    @ExceptionHandler(PaperTrouble.class)
    ResponseEntity<byte[]> undrawn(PaperTrouble trouble) {
        return ResponseEntity.status(HttpStatus.NOT_FOUND)
                .contentType(MediaType.TEXT_PLAIN)
                .body(String.valueOf(trouble.getMessage()).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private ReadingView view(int number, int at, int asked, TypingForm form, MendForm mendForm) {
        StoredPaper stored = papers.stored(number);
        PaperMends mends = papers.mends(number);
        List<PaperMends.Line> lines = mends.lines();
        Optional<PaperMends.Line> looked = at >= 0 && at < lines.size() ? Optional.of(lines.get(at)) : Optional.empty();
        int page = asked > 0
                ? asked
                : looked.map(ReadingView::page).filter(found -> found > 0).orElse(1);
        if (page > Math.max(1, stored.paper().pages())) {
            throw new NotHereException("That paper has no page " + page + ".");
        }
        PagePicture.Drawn drawn = null;
        String trouble = "This file is a text without pages to draw: what stands there is quoted instead.";
        if (papers.drawable(number)) {
            try {
                drawn = papers.picture(number, page);
                trouble = "";
            } catch (PaperTrouble undrawn) {
                trouble = String.valueOf(undrawn.getMessage());
            }
        }
        return new ReadingView(
                stored,
                mends,
                silent(mends),
                looked,
                page,
                drawn,
                trouble,
                mends.read().notices(),
                book.typed(number),
                TypingForm.ASKED,
                form,
                mendForm,
                products().stream()
                        .filter(product -> product.kind() != ProductKind.SEED)
                        .map(Product::name)
                        .toList());
    }

    /** What the paper doesn't state, as far as nobody has added it. */
    private static List<ReadingView.Silent> silent(PaperMends mends) {
        return Place.all(mends.read()).stream()
                .filter(place -> place.quote() == null
                        && mends.lines().stream().noneMatch(line -> line.title().equals(place.title())))
                .map(place -> new ReadingView.Silent(place.title(), place.says()))
                .toList();
    }
}
