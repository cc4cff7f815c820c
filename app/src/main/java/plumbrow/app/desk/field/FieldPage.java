package plumbrow.app.desk.field;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;

/** One field: the answer in short, what is known of it, what presses on it, what was decided. */
@Controller
public class FieldPage {
    private final DeskBook book;
    private final Weighings weighings;

    public FieldPage(DeskBook book, Weighings weighings) {
        this.book = book;
        this.weighings = weighings;
    }

    @GetMapping("/fields/{name}")
    String field(@PathVariable String name, Model model) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        model.addAttribute(
                "sheet",
                FieldSheet.of(
                        season,
                        field,
                        weighings.field(season, field, WeighingOptions.DEFAULT),
                        book.choices(season.year())));
        return "field";
    }
}
