package plumbrow.app.desk.search;

import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import plumbrow.advice.search.Found;
import plumbrow.advice.search.Search;
import plumbrow.advice.search.SearchAnswer;
import plumbrow.advice.search.SearchOptions;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.Json;

/** Searches a field when its page is opened, and puts the best program into the season when asked to. */
@Controller
public class SearchPage {
    /** Fewer draws than the weighing, so that a page comes soon; the weighing judges what is taken. */
    private static final SearchOptions OPTIONS =
            SearchOptions.DEFAULT.withDraws(2_000).withMostWeighed(5_000);

    private final DeskBook book;

    public SearchPage(DeskBook book) {
        this.book = book;
    }

    @GetMapping("/fields/{name}/search")
    String search(@PathVariable String name, Model model) {
        Season season = Asked.season(book);
        model.addAttribute("answer", answer(season, name));
        return "search";
    }

    @PostMapping("/fields/{name}/search")
    String take(@PathVariable String name) {
        Season season = Asked.season(book);
        SearchAnswer answer = answer(season, name);
        Found best = answer.best();
        if (best == null) {
            return "redirect:/fields/" + Shown.part(name) + "/search";
        }
        book.changeHeld(held -> {
            held.demand(season, "nothing was taken into it, search again");
            return Search.with(held.written(), best);
        });
        return "redirect:/fields/" + Shown.part(name) + "/weighing";
    }

    @GetMapping("/api/fields/{name}/search")
    ResponseEntity<byte[]> json(@PathVariable String name) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .body(Json.of(answer(Asked.season(book), name)).getBytes(StandardCharsets.UTF_8));
    }

    private static SearchAnswer answer(Season season, String name) {
        return Search.of(season, Asked.field(season, name), OPTIONS);
    }
}
