package plumbrow.app.desk.log;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.program.Done;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.log.LogEntry;
import plumbrow.app.log.PassEntry;
import plumbrow.app.log.StrikeEntry;

/** The log as a page: every line, a form for the next, and a way to strike what was wrong. */
@Controller
public class LogPage {
    private final DeskBook book;
    private final Clock clock;

    public LogPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/log")
    String log(@RequestParam(defaultValue = "") String field, @RequestParam(defaultValue = "1") int page, Model model) {
        return page(model, LogView.of(Asked.season(book), book.log(), LogEntry.blank(field), page));
    }

    @PostMapping("/log")
    String write(@RequestParam Map<String, String> typed, Model model, HttpServletResponse response) {
        Season season = Asked.season(book);
        LogEntry entry = LogEntry.read(season, typed, LocalDate.now(clock.withZone(ZoneId.systemDefault())));
        Done done = entry.done();
        if (done == null) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, LogView.of(season, book.log(), entry, 1));
        }
        book.log(done, clock.instant());
        return "redirect:/log#lines";
    }

    @PostMapping("/log/{number}/pass")
    String pass(
            @PathVariable int number,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        PassEntry entry = book.log().stream()
                .filter(line -> line.number() == number)
                .findFirst()
                .map(line -> PassEntry.read(season, line.done(), typed))
                .orElse(new PassEntry("", "", null, "The log has no line " + number + "."));
        if (entry.meant() != null) {
            try {
                book.sayPass(number, entry.meant(), entry.who(), clock.instant());
                return "redirect:/log#line-" + number;
            } catch (BookException refused) {
                entry = new PassEntry(entry.planned(), entry.who(), null, String.valueOf(refused.getMessage()));
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(
                model,
                LogView.of(season, book.log(), LogEntry.blank(""), number, LogView.NOTHING)
                        .saying(entry));
    }

    @PostMapping("/log/{number}/strike")
    String strike(
            @PathVariable int number,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        StrikeEntry strike = StrikeEntry.read(typed);
        if (strike.fault().isEmpty()) {
            try {
                book.strike(number, strike.strike(clock.instant()));
                return "redirect:/log#line-" + number;
            } catch (BookException refused) {
                strike = new StrikeEntry(strike.who(), strike.why(), String.valueOf(refused.getMessage()));
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(model, LogView.of(Asked.season(book), book.log(), LogEntry.blank(""), number, strike));
    }

    private static String page(Model model, LogView view) {
        model.addAttribute("view", view);
        return "log";
    }
}
