package plumbrow.app.desk.shelf;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.app.book.Book;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.papers.LabelWork;
import plumbrow.documents.confirm.LabelValue;
import plumbrow.documents.confirm.NotSoException;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.paper.Quote;

/** The values of a label, each beside the page with its words marked, to be confirmed, corrected or rejected. */
@Controller
public class ConfirmPage {
    private final ShelfPapers papers;
    private final DeskBook book;
    private final Clock clock;

    public ConfirmPage(ShelfPapers papers, DeskBook book, Clock clock) {
        this.papers = papers;
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/shelf/papers/{number}/confirm")
    String values(
            @PathVariable int number,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String who,
            @RequestParam(defaultValue = "0") int page,
            Model model) {
        LabelWork work = papers.label(number);
        model.addAttribute("view", view(work, at.isEmpty() ? first(work) : at, page, new ConfirmForm(who, "", "")));
        return "confirm";
    }

    @PostMapping("/shelf/papers/{number}/confirm")
    String decide(
            @PathVariable int number,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String does,
            @RequestParam(defaultValue = "") String value,
            @RequestParam(defaultValue = "") String who,
            @RequestParam(required = false) String saw,
            Model model,
            HttpServletResponse response) {
        Function<Book.Labels, LabelWork> label = papers.work(number);
        try {
            LabelWork.Deed deed = LabelWork.Deed.of(does)
                    .orElseThrow(() ->
                            new NotSoException("Choose what to do; expected one of " + LabelWork.Deed.words() + "."));
            book.decide(held -> label.apply(held).decide(at, deed, value, who, saw, clock.instant()));
        } catch (NotSoException wrong) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute(
                    "view",
                    view(papers.label(number), at, 0, new ConfirmForm(who, value, String.valueOf(wrong.getMessage()))));
            return "confirm";
        }
        return "redirect:/shelf/papers/" + number + "/confirm?at=" + encoded(next(papers.label(number), at)) + "&who="
                + encoded(who.strip()) + "#decide";
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String first(LabelWork work) {
        return waiting(work.values().values()).orElse("");
    }

    /** The next one that waits, from where the person is; then from the top; else where he is. */
    private static String next(LabelWork work, String at) {
        List<LabelValue> all = work.values().values();
        int here = 0;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).value().id().equals(at)) {
                here = i;
            }
        }
        return waiting(all.subList(here, all.size())).or(() -> waiting(all)).orElse(at);
    }

    private static Optional<String> waiting(List<LabelValue> values) {
        return values.stream()
                .filter(LabelValue::waits)
                .map(each -> each.value().id())
                .findFirst();
    }

    private ConfirmView view(LabelWork work, String at, int asked, ConfirmForm form) {
        int number = work.values().label().paper().number();
        Optional<LabelValue> looked = work.values().value(at);
        if (!at.isEmpty() && looked.isEmpty() && work.row(at).isEmpty()) {
            throw new NotHereException("This label has no value “" + at + "”.");
        }
        int page = asked > 0
                ? asked
                : looked.flatMap(value -> value.value().quote())
                        .map(Quote::page)
                        .orElse(1);
        if (page > Math.max(1, work.values().label().paper().pages())) {
            throw new NotHereException("That label has no page " + page + ".");
        }
        PagePicture.Drawn drawn = null;
        String trouble = "This file is a text without pages to draw: what stands there is quoted instead.";
        if (papers.drawable(number)) {
            try {
                drawn = papers.picture(number, page);
                trouble = "";
            } catch (PaperTrouble undrawn) {
                trouble = String.valueOf(undrawn.getMessage());
            }
        }
        return new ConfirmView(work, looked, page, drawn, trouble, form);
    }
}
