package plumbrow.app.desk.weighing;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.field.Field;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.season.Season;
import plumbrow.advice.text.TextRule;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.KeptAssumptions;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.SeasonDiff;
import plumbrow.documents.workbook.edit.SeasonEdit;

/** The weighing of one field: the answer, what it rests on, what would change it, and the decision. */
@Controller
public class WeighingPage {
    /** Draws while a value is being typed: enough to see which way it goes. */
    private static final int ROUGH_DRAWS = 1_000;

    private final DeskBook book;
    private final Weighings weighings;
    private final Clock clock;

    public WeighingPage(DeskBook book, Weighings weighings, Clock clock) {
        this.book = book;
        this.weighings = weighings;
        this.clock = clock;
    }

    @GetMapping("/fields/{name}/weighing")
    String show(@PathVariable String name, Model model) {
        Season season = Asked.season(book);
        FieldAdvice advice = asTheSeasonSays(season, name);
        AssumptionForm form = AssumptionForm.of(advice.inputs());
        return page(model, season, advice, form, ChoiceForm.blank(advice, season.adviser()), false);
    }

    /** What to tell or look up next: for the weighing's page, which asks once it stands, or as a page of its own. */
    @GetMapping("/fields/{name}/next")
    String next(
            @PathVariable String name,
            @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace,
            Model model) {
        Season season = Asked.season(book);
        NextInputs next = weighings.next(season, Asked.field(season, name));
        model.addAttribute("next", next);
        model.addAttribute("field", name);
        model.addAttribute("places", places(next, asTheSeasonSays(season, name), inPlace));
        return inPlace ? "nextnow" : "nextpage";
    }

    /** Where each thing is told: in its box of the assumptions, among the season's rows, or on the check. */
    private static Map<String, String> places(NextInputs next, FieldAdvice advice, boolean inPlace) {
        String field = "/fields/" + Shown.part(advice.field().name());
        Map<String, String> boxes = new HashMap<>();
        AssumptionForm.of(advice.inputs())
                .lines()
                .forEach(line -> boxes.put(
                        line.input().id(),
                        (inPlace ? "" : field + "/weighing") + "#"
                                + line.boxes().get(0).id()));
        Map<String, String> places = new HashMap<>();
        for (NextInput input : next.inputs()) {
            String elsewhere = input.kind() == NextInput.Kind.LOOK_UP ? field + "/check" : "/season/shelf";
            places.put(input.input(), boxes.getOrDefault(input.input(), elsewhere));
        }
        return places;
    }

    /** The answer with the assumptions as typed. Rough while typing; the page then asks again for the full number. */
    @PostMapping("/fields/{name}/weighing")
    String weigh(
            @PathVariable String name,
            @RequestParam Map<String, String> typed,
            @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        FieldAdvice said = asTheSeasonSays(season, name);
        AssumptionForm form = AssumptionForm.read(said.inputs(), typed);
        if (!form.faults().isEmpty() && !inPlace) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        boolean rough = typed.containsKey("rough") && form.changed();
        return page(model, season, said, form, ChoiceForm.blank(said, season.adviser()), rough);
    }

    /** Keeps changed assumptions of the field in the book, with who says so and why. */
    @PostMapping("/fields/{name}/assumptions/keep")
    String keep(
            @PathVariable String name,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        FieldAdvice said = asTheSeasonSays(season, name);
        AssumptionForm form = AssumptionForm.read(said.inputs(), typed);
        String who = typed.getOrDefault("who", "").strip();
        if (!form.faults().isEmpty()
                || form.keepable().isEmpty()
                || TextRule.NAME.objection(who).isPresent()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, season, said, form, ChoiceForm.blank(said, season.adviser()), false);
        }
        LocalDate day = LocalDate.now(clock.withZone(ZoneId.systemDefault()));
        String source = (who.isEmpty() ? season.adviser() : who) + ", " + day + ", beside the answer";
        By by = new By(who, typed.getOrDefault("why", ""), By.Way.DESK, clock.instant());
        try {
            book.changeHeld(by, held -> {
                Season kept = KeptAssumptions.into(held.written(), said.field(), form.changes(), source)
                        .season();
                return SeasonEdit.of(held.written(), SeasonDiff.between(held.written(), kept));
            });
        } catch (EditFaults faults) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, season, said, form, ChoiceForm.blank(said, season.adviser()), false);
        }
        return "redirect:/fields/" + Shown.part(name) + "/weighing#answer";
    }

    /** Records a decision, or says why it can't be. */
    @PostMapping("/fields/{name}/choice")
    String choose(
            @PathVariable String name,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        FieldAdvice said = asTheSeasonSays(season, name);
        ChoiceForm choice = ChoiceForm.read(said, typed);
        if (choice.faults().isEmpty()) {
            try {
                book.choose(
                        choice.decided(season.year(), said, clock.instant()),
                        season,
                        Expectation.of(season, said, choice.program()));
                return "redirect:/fields/" + Shown.part(name) + "/weighing#choices";
            } catch (MeanwhileException changed) {
                response.setStatus(HttpStatus.CONFLICT.value());
                Season now = Asked.season(book);
                FieldAdvice anew = asTheSeasonSays(now, name);
                return page(model, now, anew, AssumptionForm.read(anew.inputs(), typed), choice.meanwhile(anew), false);
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(model, season, said, AssumptionForm.read(said.inputs(), typed), choice, false);
    }

    private FieldAdvice asTheSeasonSays(Season season, String name) {
        return weighings.field(season, Asked.field(season, name), WeighingOptions.DEFAULT);
    }

    private String page(
            Model model, Season season, FieldAdvice said, AssumptionForm form, ChoiceForm choice, boolean rough) {
        Field field = said.field();
        WeighingOptions options = WeighingOptions.DEFAULT.withChanged(form.changes());
        FieldAdvice advice = form.changed()
                ? weighings.field(season, field, rough ? options.withDraws(ROUGH_DRAWS) : options)
                : said;
        model.addAttribute(
                "view",
                new WeighingView(
                        season,
                        advice,
                        form,
                        choice,
                        WeighingView.latestFirst(book.choices(season.year()), field.name()),
                        rough));
        return "weighing";
    }
}
