package plumbrow.app.desk.shelf;

import jakarta.servlet.http.HttpServletResponse;
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
import plumbrow.app.book.StoredPaper;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.papers.ReadPaper;
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
            Model model) {
        model.addAttribute("view", view(number, at, page, TypingForm.EMPTY));
        return "reading";
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
        model.addAttribute("view", view(number, -1, page, form));
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

    private ReadingView view(int number, int at, int asked, TypingForm form) {
        StoredPaper stored = papers.stored(number);
        ReadPaper paper = papers.read(number);
        List<ReadingView.PlaceLine> places =
                Place.all(paper).stream().map(ReadingView.PlaceLine::of).toList();
        Optional<ReadingView.PlaceLine> looked =
                at >= 0 && at < places.size() ? Optional.of(places.get(at)) : Optional.empty();
        int page = asked > 0
                ? asked
                : looked.map(ReadingView.PlaceLine::page)
                        .filter(found -> found > 0)
                        .orElse(1);
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
                places,
                looked,
                page,
                drawn,
                trouble,
                notices(paper),
                book.typed(number),
                TypingForm.ASKED,
                form);
    }

    private static List<String> notices(ReadPaper paper) {
        if (paper instanceof ReadPaper.Sheet sheet) {
            return sheet.sheet().notices();
        }
        return paper instanceof ReadPaper.Label label ? label.label().notices() : List.of();
    }
}
