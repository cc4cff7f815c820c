package plumbrow.app.desk.nextseason;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.rows.Remembered;
import plumbrow.app.rows.BeginWords;
import plumbrow.app.rows.NextSeasonSummary;

/** Shows what the next season would take over, field by field, and begins it. */
@Controller
public class NextSeasonPage {
    private static final String CROP = "crop.";

    private final DeskBook book;
    private final Clock clock;

    public NextSeasonPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * What would begin.
     *
     * @param next null where what was typed can't begin a season
     * @param year as typed
     * @param asOf as typed
     * @param mark stands for the season it comes from; sent back with the form
     * @param trouble why it was not begun; empty for nothing
     */
    public record View(
            Season last, @Nullable NextSeasonSummary next, String year, String asOf, String mark, String trouble) {
        /** Beyond so many fields each crop has no box of its own. */
        private static final int MOST_BOXES = 400;

        /** Whether each field has a box for its crop. */
        public boolean boxes() {
            return last.fields().size() <= MOST_BOXES;
        }
    }

    @GetMapping("/season/next")
    String show(@RequestParam Map<String, String> typed, Model model, HttpServletResponse response) {
        try {
            return page(model, typed, book.nextSeason(asked(typed)), "");
        } catch (IllegalArgumentException fault) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, typed, null, String.valueOf(fault.getMessage()));
        }
    }

    @PostMapping("/season/next")
    String begin(
            @RequestParam Map<String, String> typed,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        String trouble;
        @Nullable NextSeasonSummary next = null;
        try {
            BeginAsked asked = asked(typed);
            next = book.nextSeason(asked);
            if (mark(last()).equals(typed.getOrDefault("mark", ""))) {
                By by = new By(
                        Remembered.read(known).orElse(null),
                        typed.getOrDefault("why", ""),
                        By.Way.DESK,
                        clock.instant());
                NextSeasonSummary begun = book.beginNext(by, asked, last());
                return "redirect:/history?begun=" + begun.year();
            }
            trouble = "Season " + last().year()
                    + " has changed since this page was made, so nothing was begun. This is what would come along by now: look at it,"
                    + " then begin once more.";
            response.setStatus(HttpStatus.CONFLICT.value());
        } catch (IllegalArgumentException fault) {
            trouble = String.valueOf(fault.getMessage());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        } catch (MeanwhileException meanwhile) {
            trouble = String.valueOf(meanwhile.getMessage());
            response.setStatus(HttpStatus.CONFLICT.value());
        } catch (BookException refused) {
            trouble = String.valueOf(refused.getMessage());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return page(model, typed, next, trouble);
    }

    private Season last() {
        return book.written().orElseThrow(NoSeasonException::new);
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(ZoneId.systemDefault()));
    }

    private BeginAsked asked(Map<String, String> typed) {
        Map<String, String> crops = new LinkedHashMap<>();
        typed.forEach((name, text) -> {
            if (name.startsWith(CROP)) {
                crops.put(name.substring(CROP.length()), text);
            }
        });
        return BeginWords.asked(year(typed), asOf(typed), today(), crops);
    }

    private String year(Map<String, String> typed) {
        return typed.getOrDefault("year", String.valueOf(last().year() + 1));
    }

    /** Today, where that is a day of the next season; else its first. */
    private String asOf(Map<String, String> typed) {
        LocalDate first = LocalDate.of(last().year(), 1, 1);
        LocalDate day = List.of(first, last().asOf(), today()).stream()
                .max(LocalDate::compareTo)
                .orElse(first);
        return typed.getOrDefault("as_of", day.toString());
    }

    private String page(Model model, Map<String, String> typed, @Nullable NextSeasonSummary next, String trouble) {
        Season last = last();
        model.addAttribute("view", new View(last, next, year(typed), asOf(typed), mark(last), trouble));
        model.addAttribute("why", typed.getOrDefault("why", ""));
        return "nextseason/begin";
    }

    private static String mark(Season season) {
        return Integer.toHexString(season.hashCode());
    }
}
