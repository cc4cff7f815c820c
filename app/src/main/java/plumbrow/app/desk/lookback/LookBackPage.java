package plumbrow.app.desk.lookback;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.lookback.AssumptionBias;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.lookback.LookBack;
import plumbrow.advice.lookback.Scaled;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.rows.Remembered;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.lookback.HarvestEntry;

/** After harvest: yield and price are entered field by field, and what was said is held against what came. */
@Controller
public class LookBackPage {
    private final DeskBook book;
    private final Clock clock;

    public LookBackPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * The page.
     *
     * @param season the season whose harvest is entered
     * @param seasons harvest years of the book
     * @param entry as typed
     * @param programs of the field that stands in the form; empty where none does
     */
    public record View(
            Season season,
            List<Integer> seasons,
            HarvestEntry entry,
            List<String> programs,
            LookBack back,
            String told) {}

    @GetMapping("/lookback")
    String show(@RequestParam Map<String, String> asked, Model model) {
        Season season = season(asked);
        Map<String, String> typed = new LinkedHashMap<>(asked);
        typed.putIfAbsent(HarvestEntry.WHO, season.adviser());
        String told = asked.containsKey("written") ? "Written down." : asked.containsKey("kept") ? "Kept." : "";
        return page(model, season, HarvestEntry.blank(typed), told);
    }

    @PostMapping("/lookback")
    String write(@RequestParam Map<String, String> typed, Model model, HttpServletResponse response) {
        Season season = season(typed);
        HarvestEntry entry = HarvestEntry.read(season, book.decided(), typed, clock.instant());
        Harvest harvest = entry.harvest();
        if (harvest == null) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, season, entry, "");
        }
        book.harvest(harvest);
        Remembered.write(response, harvest.who());
        return "redirect:/lookback?year=" + season.year() + "&written=yes";
    }

    /** Puts what is offered into the assumptions of the latest season. */
    @PostMapping("/lookback/keep")
    String keep(
            @RequestParam String of,
            @RequestParam String crop,
            @RequestParam(defaultValue = "") String why,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known) {
        AssumptionBias bias = book.lookBack().honesty().biases().stream()
                .filter(one -> one.of().word().equals(of) && one.crop().word().equals(crop) && one.keepable())
                .findFirst()
                .orElseThrow(() -> new NotHereException("Looking back offers nothing for that any more."));
        By by = new By(Remembered.read(known).orElse(null), why, By.Way.DESK, clock.instant());
        book.changeHeld(by, held -> Scaled.by(held.written(), bias));
        return "redirect:/lookback?kept=yes";
    }

    private Season season(Map<String, String> asked) {
        String year = asked.getOrDefault("year", "");
        if (year.isEmpty()) {
            return book.season().orElseThrow(NoSeasonException::new);
        }
        return year.matches("\\d{4}")
                ? book.season(Integer.parseInt(year))
                        .orElseThrow(() -> new NotHereException("The book has no season " + year + "."))
                : book.season().orElseThrow(NoSeasonException::new);
    }

    private String page(Model model, Season season, HarvestEntry entry, String told) {
        List<String> programs = season.programs(Shown.text(entry.text(HarvestEntry.FIELD))).stream()
                .map(Program::name)
                .toList();
        model.addAttribute("view", new View(season, book.seasons(), entry, programs, book.lookBack(), told));
        return "lookback/page";
    }
}
