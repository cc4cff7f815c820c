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
import plumbrow.advice.years.BesideOneSeason;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.shown.Shown;

/** A field over several seasons. */
@Controller
public class YearsPage {

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

    /** One sentence for the comparison's page: whether the seasons to come change which program is best. */
    @GetMapping("/fields/{name}/years/now")
    String now(@PathVariable String name, Model model) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        model.addAttribute("says", BesideOneSeason.of(season, field));
        model.addAttribute("address", "/fields/" + Shown.part(name));
        return "yearsnow";
    }
}
