package plumbrow.app.desk.rows;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.rows.ChangeWords;
import plumbrow.app.rows.Changes;
import plumbrow.documents.workbook.edit.EditFaults;

/** Every change of the season: who, when, what from, what to, why; each can be taken back, and an undo too. */
@Controller
public class HistoryPage {
    private final DeskBook book;
    private final Clock clock;

    public HistoryPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * A page of changes, latest first.
     *
     * @param follows whether the book has an earlier season, so that the beginning of this one can be taken back
     * @param since only those since a day, as typed; empty for all
     * @param sinceFault what is wrong with that day; empty for nothing
     * @param trouble why a change could not be taken back; empty for nothing
     */
    public record View(
            Season season,
            Part<ChangeWords> part,
            boolean follows,
            String since,
            String sinceFault,
            String told,
            String trouble) {}

    @GetMapping("/history")
    String history(
            @RequestParam(defaultValue = "") String since,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "") String done,
            @RequestParam(defaultValue = "") String begun,
            Model model) {
        String told = done.equals("undone") ? "Taken back: those rows are as they were before." : "";
        return page(
                model,
                since,
                page,
                begun.matches("\\d{4}")
                        ? "Season " + begun + " is begun. Prices of before are marked until you confirm them."
                        : told,
                "");
    }

    @PostMapping("/history/{number}/undo")
    String undo(
            @PathVariable int number,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        try {
            book.undo(number, new By(Remembered.read(known).orElse(null), "", By.Way.UNDO, clock.instant()));
            return "redirect:/history?done=undone";
        } catch (EditFaults | BookException refused) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return page(model, "", 1, "", "Change " + number + " was not taken back. " + refused.getMessage());
        }
    }

    private String page(Model model, String since, int page, String told, String trouble) {
        Season season = book.written().orElseThrow(NoSeasonException::new);
        @Nullable LocalDate from = null;
        String fault = "";
        try {
            from = since.isBlank() ? null : LocalDate.parse(since.strip());
        } catch (DateTimeException noDay) {
            fault = "found \"" + since + "\", expected a day as 2026-03-02.";
        }
        List<SeasonChange> changes = new ArrayList<>(Changes.since(book.changes(season.year()), from));
        Collections.reverse(changes);
        Part<SeasonChange> part = Part.of(changes, page);
        model.addAttribute(
                "view",
                new View(
                        season,
                        new Part<>(
                                part.lines().stream().map(ChangeWords::of).toList(),
                                part.first(),
                                part.of(),
                                part.page(),
                                part.pages()),
                        book.seasons().get(0) < season.year(),
                        since,
                        fault,
                        told,
                        trouble));
        return "rows/history";
    }
}
