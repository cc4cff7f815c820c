package plumbrow.app.desk.ask;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.ask.AskAnswer;
import plumbrow.advice.ask.AskedSeason;
import plumbrow.advice.ask.Asking;
import plumbrow.advice.ask.Keeping;
import plumbrow.advice.ask.Question;
import plumbrow.advice.ask.Questions;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Shown;

/** One question at a time: an answer from typical values at once, sharper with every box. */
@Controller
public class AskPage {
    /** Draws while a value is being typed: enough to see which way it goes. */
    private static final int ROUGH_DRAWS = 1_000;

    private static final int DRAWS = 10_000;

    private final DeskBook book;
    private final Clock clock;

    public AskPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/ask")
    String doors(Model model) {
        return doors(book, model, "");
    }

    /** The three doors. */
    public static String doors(DeskBook book, Model model, String fault) {
        model.addAttribute("questions", Questions.all());
        model.addAttribute("year", book.season().map(Season::year).orElse(0));
        model.addAttribute("fault", fault);
        return "doors";
    }

    @GetMapping("/ask/{id}")
    String ask(
            @PathVariable String id,
            @RequestParam Map<String, String> typed,
            @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace,
            Model model,
            HttpServletResponse response) {
        Question question = question(id);
        boolean rough = inPlace && typed.containsKey("rough");
        AskAnswer answer = Asking.answer(question, typed, asOf(), rough ? ROUGH_DRAWS : DRAWS);
        if (!answer.faults().isEmpty() && !inPlace) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return page(question, answer, rough, Map.of(), Map.of(), model);
    }

    /** Keeps the field that was asked about in the book. */
    @PostMapping("/ask/{id}/keep")
    String keep(
            @PathVariable String id,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        Question question = question(id);
        LocalDate asOf = asOf();
        KeepForm form = KeepForm.read(typed, question, asOf);
        Map<String, String> faults = new LinkedHashMap<>(form.faults());
        if (faults.isEmpty()) {
            try {
                keep(form.keeping(), question.season(question.read(typed, asOf), asOf));
                return "redirect:/fields/" + Shown.part(form.keeping().field()) + "/weighing";
            } catch (IllegalArgumentException refused) {
                faults.put("name", Shown.text(refused.getMessage()));
            } catch (BookException refused) {
                faults.put("name", Shown.text(refused.getMessage()));
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(question, Asking.answer(question, typed, asOf, DRAWS), false, typed, faults, model);
    }

    private void keep(Keeping keeping, AskedSeason asked) {
        if (book.season().isEmpty()) {
            book.bring(keeping.alone(asked), clock.instant());
        } else {
            By by = new By(null, "kept from a question", By.Way.DESK, clock.instant());
            book.changeHeld(by, held -> keeping.into(held.written(), asked));
        }
    }

    private String page(
            Question question,
            AskAnswer answer,
            boolean rough,
            Map<String, String> keep,
            Map<String, String> keepFaults,
            Model model) {
        LocalDate asOf = asOf();
        var answers = question.read(answer.typed(), asOf);
        model.addAttribute(
                "view",
                new AskView(
                        question,
                        answer,
                        question.season(answers, asOf).season(),
                        question.typical(answers, asOf),
                        question.own(answers),
                        rough,
                        keep,
                        keepFaults));
        return "ask";
    }

    private Question question(String id) {
        List<AssumptionLine> own = book.season().map(Season::assumptions).orElse(List.of());
        return Questions.find(id)
                .map(question -> question.knowing(own))
                .orElseThrow(() -> new NotHereException("There is no question called “" + id + "”."));
    }

    /** Today; the day of the book's season where that is about another year. */
    private LocalDate asOf() {
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
        Optional<Season> season = book.season();
        return season.filter(one -> one.year() != Asking.year(today))
                .map(Season::asOf)
                .orElse(today);
    }
}
