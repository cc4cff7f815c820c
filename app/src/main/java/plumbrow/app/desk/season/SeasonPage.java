package plumbrow.app.desk.season;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.FieldAnswer;
import plumbrow.app.desk.SeasonWeighing;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.ask.AskPage;
import plumbrow.app.desk.shown.Shown;

/** The first page: which fields have an answer, which answer, and what it is expected to bring. */
@Controller
public class SeasonPage {
    /** What a small book or an answer already there takes; beyond it a page that counts the fields comes at once. */
    private static final Duration PATIENCE = Duration.ofMillis(40);

    private final DeskBook book;
    private final Weighings weighings;
    private final Clock clock;

    public SeasonPage(DeskBook book, Weighings weighings, Clock clock) {
        this.book = book;
        this.weighings = weighings;
        this.clock = clock;
    }

    @GetMapping("/")
    String season(
            @RequestParam(defaultValue = "") String show,
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "") String grower,
            @RequestParam(defaultValue = "") String crop,
            @RequestParam(defaultValue = "") String status,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        Optional<Season> season = book.season();
        if (season.isEmpty()) {
            return AskPage.doors(book, model, "");
        }
        String exact = find.strip();
        if (!exact.isEmpty() && season.get().field(exact).isPresent()) {
            return "redirect:/fields/" + Shown.part(exact) + "/weighing";
        }
        SeasonWeighing weighing = weighings.whole(season.get());
        if (!weighing.endedWithin(PATIENCE) || !weighing.answered()) {
            model.addAttribute("weighing", weighing);
            return "waiting";
        }
        List<FieldAnswer> answers = weighing.answers();
        if (!answers.isEmpty() && answers.stream().allMatch(FieldAnswer::lacking)) {
            throw new SeasonGapException(answers.get(0).sentence());
        }
        List<Choice> choices = book.choices(season.get().year());
        LocalDate today = LocalDate.now(clock.withZone(ZoneId.systemDefault()));
        Overview.Sieve sieve = new Overview.Sieve(find, grower, crop, status);
        model.addAttribute("overview", Overview.of(season.get(), answers, choices, show, sieve, page, today));
        return "season";
    }

    /** How far the weighing is; a reload is asked for once it has ended. */
    @GetMapping("/weighing")
    Object progress(Model model, @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace) {
        Optional<Season> season = book.season();
        if (season.isEmpty() || !inPlace) {
            return "redirect:/";
        }
        SeasonWeighing weighing = weighings.whole(season.get());
        if (weighing.answered()) {
            return ResponseEntity.noContent()
                    .cacheControl(CacheControl.noStore())
                    .header("HX-Redirect", "/")
                    .build();
        }
        model.addAttribute("weighing", weighing);
        return "progress";
    }

    @PostMapping("/weighing/stop")
    String stop() {
        book.season().ifPresent(season -> weighings.whole(season).stop());
        return "redirect:/";
    }

    @PostMapping("/weighing/again")
    String again() {
        book.season().ifPresent(weighings::again);
        return "redirect:/";
    }
}
