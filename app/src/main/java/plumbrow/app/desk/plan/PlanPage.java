package plumbrow.app.desk.plan;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import plumbrow.advice.farmplan.FarmPlanner;
import plumbrow.advice.farmplan.PlanOptions;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.json.Json;

/** The plans of all farms, made when the page is opened. */
@Controller
public class PlanPage {
    private final DeskBook book;

    public PlanPage(DeskBook book) {
        this.book = book;
    }

    @GetMapping("/plan")
    String plan(Model model) {
        model.addAttribute("year", Asked.season(book).year());
        model.addAttribute("plans", FarmPlanner.of(Asked.season(book), List.of(), PlanOptions.DEFAULT));
        return "plan";
    }

    @GetMapping("/api/plan")
    ResponseEntity<byte[]> json() {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .body(Json.of(FarmPlanner.of(Asked.season(book), List.of(), PlanOptions.DEFAULT))
                        .getBytes(StandardCharsets.UTF_8));
    }
}
