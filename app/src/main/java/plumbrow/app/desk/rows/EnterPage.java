package plumbrow.app.desk.rows;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.rows.EntryForms;
import plumbrow.app.rows.JointForm;
import plumbrow.documents.workbook.edit.EditFaults;

/** A field entered step by step: what it brings, what presses on it, seed, shelf, programs. */
@Controller
public class EnterPage {
    private static final String SOURCE = "at.source";

    private final DeskBook book;
    private final Clock clock;

    public EnterPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/fields/{name}/enter")
    String steps(
            @PathVariable String name,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam(defaultValue = "") String done,
            @RequestParam(defaultValue = "0") int change,
            Model model) {
        Season season = Asked.season(book);
        return page(
                season,
                name,
                "",
                Map.of(),
                null,
                source(season, known),
                done.isEmpty() ? "" : "It is in the book.",
                change,
                model);
    }

    @PostMapping("/fields/{name}/enter/{id}")
    String enter(
            @PathVariable String name,
            @PathVariable String id,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam Map<String, String> asked,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        JointForm form = Stream.of(
                        EntryForms.money(season, field),
                        EntryForms.insect(field),
                        EntryForms.weed(field),
                        EntryForms.seed(field),
                        EntryForms.product(field))
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no such step."));
        Map<String, String> typed = new LinkedHashMap<>(asked);
        if (Shown.text(typed.get(SOURCE)).isBlank()) {
            typed.put(SOURCE, source(season, known));
        }
        try {
            Optional<Integer> change = book.edit(
                    new By(who(season, known), "", By.Way.DESK, clock.instant()),
                    List.copyOf(form.rows(typed).values()));
            return "redirect:/fields/" + Shown.part(name) + "/enter?done=added&change=" + change.orElse(0);
        } catch (EditFaults faults) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(season, name, id, typed, faults, Shown.text(typed.get(SOURCE)), "", 0, model);
        }
    }

    private static String page(
            Season season,
            String name,
            String failed,
            Map<String, String> typed,
            @Nullable EditFaults faults,
            String source,
            String told,
            int change,
            Model model) {
        Field field = Asked.field(season, name);
        model.addAttribute("view", EnterView.of(season, field, failed, typed, faults, source, told, change));
        return "rows/enter";
    }

    private static String who(Season season, String known) {
        return Remembered.read(known).orElse(season.adviser());
    }

    /** The honest source of what somebody types without saying where it stands. */
    private String source(Season season, String known) {
        return "typed by " + who(season, known) + " on " + LocalDate.now(clock.withZone(ZoneId.systemDefault()))
                + ", no other source written down";
    }
}
