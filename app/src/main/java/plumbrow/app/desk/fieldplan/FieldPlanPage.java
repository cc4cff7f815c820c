package plumbrow.app.desk.fieldplan;

import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.FieldPlanPaper;

/** What to do on one field, in date order: on the desk, on paper, and for programs. */
@Controller
public class FieldPlanPage {
    private final DeskBook book;
    private final PlansOfFields plans;

    public FieldPlanPage(DeskBook book, PlansOfFields plans) {
        this.book = book;
        this.plans = plans;
    }

    @GetMapping("/fields/{name}/plan")
    String show(@PathVariable String name, Model model) {
        model.addAttribute("plan", plan(name));
        return "fieldplan";
    }

    @GetMapping("/fields/{name}/plan.pdf")
    ResponseEntity<byte[]> paper(@PathVariable String name) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("field-plan.pdf")
                                .build()
                                .toString())
                .body(FieldPlanPaper.pdf(plan(name)));
    }

    @GetMapping("/api/fields/{name}/plan")
    ResponseEntity<byte[]> json(@PathVariable String name) {
        try {
            return answer(HttpStatus.OK, Json.of(plan(name)));
        } catch (NotHereException none) {
            return answer(HttpStatus.NOT_FOUND, Json.of(new Fault(String.valueOf(none.getMessage()))));
        }
    }

    private record Fault(String error) {}

    private static ResponseEntity<byte[]> answer(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    private FieldPlan plan(String name) {
        Season season = Asked.season(book);
        return plans.of(season, Asked.field(season, name));
    }
}
