package plumbrow.app.desk.rows;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.rows.ChangeWords;

/** What a workbook would change, row by row, before it does. */
@Controller
public class ImportPage {
    private static final int MOST_LINES = 300;

    private final DeskBook book;
    private final IncomingWorkbooks waiting;
    private final Clock clock;

    public ImportPage(DeskBook book, IncomingWorkbooks waiting, Clock clock) {
        this.book = book;
        this.waiting = waiting;
        this.clock = clock;
    }

    /**
     * What would change.
     *
     * @param lines a line for each row
     * @param more rows beyond those told line by line
     * @param counts rows by table
     * @param mark stands for what would change; sent back with the agreement
     */
    public record View(
            String word,
            Season season,
            Book.Incoming coming,
            List<ChangeWords.Line> lines,
            int more,
            Map<String, Integer> counts,
            String mark,
            String told) {}

    @GetMapping("/season/import/{word}")
    String show(@PathVariable String word, Model model) {
        return page(word, model, "");
    }

    @PostMapping("/season/import/{word}")
    String agree(
            @PathVariable String word,
            @RequestParam(defaultValue = "") String mark,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        Season season = season(word);
        try {
            book.bring(
                    new By(Remembered.read(known).orElse(null), "", By.Way.WORKBOOK, clock.instant()),
                    season,
                    coming -> {
                        if (!mark(coming).equals(mark)) {
                            throw new MeanwhileException(
                                    "The book was changed since this page was made, so nothing was brought in. This is what"
                                            + " would change by now: look at it, then bring it in once more.");
                        }
                    });
            waiting.forget(word);
            return "redirect:/history";
        } catch (MeanwhileException meanwhile) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return page(word, model, String.valueOf(meanwhile.getMessage()));
        }
    }

    private Season season(String word) {
        return waiting.find(word)
                .orElseThrow(() -> new NotHereException("This workbook is no longer at hand; choose it once more."));
    }

    private String page(String word, Model model, String told) {
        Season season = season(word);
        Book.Incoming coming = book.incoming(season);
        Map<String, Integer> counts = new TreeMap<>();
        coming.rows().forEach(row -> counts.merge(row.table(), 1, Integer::sum));
        model.addAttribute(
                "view",
                new View(
                        word,
                        season,
                        coming,
                        ChangeWords.lines(
                                coming.rows().stream().limit(MOST_LINES).toList()),
                        Math.max(0, coming.rows().size() - MOST_LINES),
                        counts,
                        mark(coming),
                        told));
        return "rows/import";
    }

    private static String mark(Book.Incoming coming) {
        return Integer.toHexString(coming.rows().hashCode()) + "-"
                + coming.rows().size();
    }
}
