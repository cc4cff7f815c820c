package plumbrow.app.desk.plan;

import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.json.Json;

/** The plans of all farms, made when the page is opened. */
@Controller
public class PlanPage {
    private final DeskBook book;
    private final Plans plans;

    public PlanPage(DeskBook book, Plans plans) {
        this.book = book;
        this.plans = plans;
    }

    @GetMapping("/plan")
    String plan(
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "") String farm,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        Season season = Asked.season(book);
        Asked.farm(season, farm);
        model.addAttribute("view", PlanView.of(season.year(), plans.of(season), find, farm, page));
        return "plan";
    }

    @GetMapping("/api/plan")
    ResponseEntity<byte[]> json() {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .body(Json.of(plans.of(Asked.season(book))).getBytes(StandardCharsets.UTF_8));
    }
}
