package plumbrow.app.desk.rows;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.rows.EntryForms;
import plumbrow.app.rows.JointForm;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.SeasonEdit;

/** An empty book gets its season, farm and first field in one short form. */
@Controller
public class StartPage {
    private final DeskBook book;
    private final Clock clock;

    public StartPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/season/start")
    String form(Model model) {
        if (book.written().isPresent()) {
            return "redirect:/season";
        }
        LocalDate today = LocalDate.now(clock.withZone(ZoneId.systemDefault()));
        Map<String, String> typed = new LinkedHashMap<>();
        // From autumn on, plans are for the next harvest.
        typed.put("season.year", String.valueOf(today.plusMonths(4).getYear()));
        typed.put("season.as_of", today.toString());
        typed.put("farms.farm", "Home farm");
        return page(model, typed, null);
    }

    @PostMapping("/season/start")
    String begin(@RequestParam Map<String, String> asked, Model model, HttpServletResponse response) {
        JointForm form = EntryForms.start();
        Map<String, String> typed = new LinkedHashMap<>(asked);
        String adviser = Shown.text(asked.get("season.adviser")).strip();
        if (Shown.text(asked.get("farms.grower")).isBlank()) {
            typed.put("farms.grower", adviser);
        }
        try {
            Season first = SeasonEdit.first(List.copyOf(form.rows(typed).values()));
            book.begin(new By(adviser, "", By.Way.DESK, clock.instant()), first);
            Remembered.write(response, adviser);
            return "redirect:/fields/" + Shown.part(first.fields().get(0).name()) + "/enter";
        } catch (EditFaults faults) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, asked, faults);
        } catch (MeanwhileException meanwhile) {
            return "redirect:/season";
        }
    }

    private static String page(Model model, Map<String, String> typed, @Nullable EditFaults faults) {
        model.addAttribute("view", JointView.of(null, EntryForms.start(), typed, faults));
        return "rows/start";
    }
}
