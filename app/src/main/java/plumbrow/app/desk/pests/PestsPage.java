package plumbrow.app.desk.pests;

import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plumbrow.advice.pestpage.PestNames;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.documents.binder.PestPaper;

/** Weeds and insects: the list, a page each, the same as one printed page and for programs. */
@Controller
public class PestsPage {
    private final DeskBook book;

    public PestsPage(DeskBook book) {
        this.book = book;
    }

    @GetMapping("/pests")
    String all(Model model) {
        Season season = Asked.season(book);
        model.addAttribute("view", new PestsView(season, PestNames.of(season)));
        return "pests";
    }

    @GetMapping("/pests/{name}")
    String one(@PathVariable String name, Model model) {
        model.addAttribute("view", new PestView(page(name)));
        return "pest";
    }

    @GetMapping("/pests/{name}/page.pdf")
    ResponseEntity<byte[]> paper(@PathVariable String name) {
        PestPage page = page(name);
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(page.name().replace(' ', '-') + ".pdf", StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(PestPaper.print(page));
    }

    private PestPage page(String name) {
        return Asked.pest(Asked.season(book), name);
    }
}
