package plumbrow.app.desk.shelf;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.shelf.SheetChanges;

/** Two revisions of a sheet side by side. */
@Controller
public class ComparePage {
    private final ShelfPapers papers;

    public ComparePage(ShelfPapers papers) {
        this.papers = papers;
    }

    @GetMapping("/shelf/compare")
    String compare(@RequestParam int before, @RequestParam int after, Model model) {
        model.addAttribute(
                "view",
                new View(
                        papers.stored(before).paper(),
                        papers.stored(after).paper(),
                        SheetChanges.between(papers.sheet(before), papers.sheet(after)),
                        papers.read(before),
                        papers.read(after)));
        return "compare";
    }

    /** What the page shows. */
    public record View(
            plumbrow.documents.shelf.FiledPaper before,
            plumbrow.documents.shelf.FiledPaper after,
            SheetChanges changes,
            ReadPaper old,
            ReadPaper fresh) {

        /** Where a value of the older or the newer sheet stands. */
        public String link(Reading.OnPaper reading, boolean older) {
            int of = older ? before.number() : after.number();
            return Place.of(older ? old : fresh, reading.quote())
                    .map(place -> "/shelf/papers/" + of + "?at=" + place.at() + "#picture")
                    .orElse("/shelf/papers/" + of);
        }
    }
}
