package plumbrow.app.desk.shelf;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.papers.Intake;

/** The products with their papers, and the door by which papers come in. */
@Controller
public class ShelfPage {
    private final ShelfPapers papers;
    private final DeskBook book;
    private final Clock clock;

    public ShelfPage(ShelfPapers papers, DeskBook book, Clock clock) {
        this.papers = papers;
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/shelf")
    String shelf(Model model) {
        return page(model, List.of());
    }

    /** Takes files in, each whole or not at all: one is read at once, several are read beside, with their progress shown. */
    @PostMapping("/shelf/papers")
    String add(
            @RequestParam(name = "papers", required = false) List<MultipartFile> files,
            Model model,
            HttpServletResponse response)
            throws IOException {
        List<Incoming.Came> came = new ArrayList<>();
        int leftAlone = 0;
        for (MultipartFile file : files == null ? List.<MultipartFile>of() : files) {
            String name = file.getOriginalFilename();
            if (name == null || name.isBlank()) {
                continue;
            }
            boolean inFolder = name.contains("/") || name.contains("\\");
            if (inFolder && !Intake.readable(name)) {
                leftAlone++;
            } else {
                came.add(new Incoming.Came(name, file.getBytes()));
            }
        }
        if (came.size() > 1) {
            papers.incoming().begin(came, leftAlone, clock.instant());
            return "redirect:/shelf#came";
        }
        List<Intake.Outcome> outcomes = new ArrayList<>();
        came.forEach(one -> outcomes.add(papers.add(one.content(), one.name(), clock.instant())));
        if (outcomes.isEmpty()) {
            outcomes.add(new Intake.Outcome(
                    "",
                    null,
                    false,
                    leftAlone > 0
                            ? "That folder has no PDF, text or web page."
                            : "No file was chosen; expected safety sheets or labels as PDF, text or web page."));
        }
        if (outcomes.stream().allMatch(each -> each.trouble() != null)) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return page(model, outcomes);
    }

    /** How far the reading is; a reload is asked for once it has ended. */
    @GetMapping("/shelf/incoming")
    Object progress(Model model, @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace) {
        Optional<Incoming.State> state = papers.incoming().state();
        if (!inPlace) {
            return "redirect:/shelf";
        }
        if (state.isEmpty() || !state.get().running()) {
            return ResponseEntity.noContent()
                    .cacheControl(CacheControl.noStore())
                    .header("HX-Redirect", "/shelf")
                    .build();
        }
        model.addAttribute("state", state.get());
        return "incoming";
    }

    @PostMapping("/shelf/incoming/stop")
    String stop() {
        papers.incoming().stop();
        return "redirect:/shelf";
    }

    private String page(Model model, List<Intake.Outcome> outcomes) {
        model.addAttribute(
                "view",
                ShelfView.of(
                        papers.all(),
                        book.season().orElse(null),
                        book.decisions(),
                        outcomes,
                        papers.incoming().state(),
                        LocalDate.now(clock)));
        return "shelf";
    }
}
