package plumbrow.app.desk.years;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.years.Ahead;
import plumbrow.advice.years.YearsAhead;
import plumbrow.advice.years.YearsOptions;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.shown.Shown;

/** A field over several seasons. */
@Controller
public class YearsPage {
    private static final int FEW_DRAWS = 300;

    private final DeskBook book;

    public YearsPage(DeskBook book) {
        this.book = book;
    }

    @GetMapping("/fields/{name}/years")
    String show(
            @PathVariable String name,
            @RequestParam MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        YearsForm form = YearsForm.read(season, field, asked);
        if (!form.faults().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        model.addAttribute("view", new YearsView(season, form.answer(season, field), form));
        return "years";
    }

    /**
     * One sentence for the comparison's page: whether the seasons to come change which program is best. On few draws, the same for
     * all programs; two that are about equal are told so.
     */
    @GetMapping("/fields/{name}/years/now")
    String now(@PathVariable String name, Model model) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        YearsAhead ahead =
                Ahead.of(season, field, Ahead.repeated(season, field), YearsOptions.DEFAULT.withDraws(FEW_DRAWS));
        model.addAttribute("says", ahead.besideOneSeason());
        model.addAttribute("address", "/fields/" + Shown.part(name));
        return "yearsnow";
    }
}
