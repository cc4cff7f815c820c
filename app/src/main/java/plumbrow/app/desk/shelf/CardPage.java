package plumbrow.app.desk.shelf;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.quantity.Amount;
import plumbrow.documents.binder.CardPaper;
import plumbrow.documents.card.ContainerText;
import plumbrow.documents.card.ProductCard;

/** The product card, on the screen and on paper. */
@Controller
public class CardPage {
    private final ShelfPapers papers;
    private final Clock clock;

    public CardPage(ShelfPapers papers, Clock clock) {
        this.papers = papers;
        this.clock = clock;
    }

    @GetMapping("/shelf/papers/{number}/card")
    String card(
            @PathVariable int number,
            @RequestParam(defaultValue = "") String container,
            Model model,
            HttpServletResponse response) {
        Optional<Amount> size = ContainerText.read(container);
        boolean wrong = !container.isBlank() && size.isEmpty();
        if (wrong) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        model.addAttribute("view", CardView.of(papers, number, size, container, LocalDate.now(clock)));
        return "card";
    }

    @GetMapping("/shelf/papers/{number}/card.pdf")
    ResponseEntity<byte[]> paper(@PathVariable int number, @RequestParam(defaultValue = "") String container) {
        ProductCard card = papers.card(number, ContainerText.read(container).orElse(null), LocalDate.now(clock));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("card-" + number + ".pdf")
                                .build()
                                .toString())
                .body(CardPaper.print(card));
    }
}
