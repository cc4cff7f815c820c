package plumbrow.app.desk.shelf;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbrow.app.papers.Intake;
import plumbrow.documents.shelf.Shelves;

/** The products with their papers, and the door by which papers come in. */
@Controller
public class ShelfPage {
    private final ShelfPapers papers;
    private final Clock clock;

    public ShelfPage(ShelfPapers papers, Clock clock) {
        this.papers = papers;
        this.clock = clock;
    }

    @GetMapping("/shelf")
    String shelf(Model model) {
        return page(model, List.of());
    }

    /** Takes files in, each whole or not at all, and says what became of them. */
    @PostMapping("/shelf/papers")
    String add(
            @RequestParam(name = "papers", required = false) List<MultipartFile> files,
            Model model,
            HttpServletResponse response)
            throws IOException {
        List<Intake.Outcome> outcomes = new ArrayList<>();
        for (MultipartFile file : files == null ? List.<MultipartFile>of() : files) {
            String name = file.getOriginalFilename();
            if (name != null && !name.isBlank()) {
                outcomes.add(papers.add(file.getBytes(), name, clock.instant()));
            }
        }
        if (outcomes.isEmpty()) {
            outcomes.add(new Intake.Outcome(
                    "", null, false, "No file was chosen; expected safety sheets or labels as PDF, text or web page."));
        }
        if (outcomes.stream().allMatch(each -> each.trouble() != null)) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return page(model, outcomes);
    }

    private String page(Model model, List<Intake.Outcome> outcomes) {
        model.addAttribute("shelf", Shelves.of(papers.filed()));
        model.addAttribute("outcomes", outcomes);
        model.addAttribute("today", LocalDate.now(clock));
        return "shelf";
    }
}
