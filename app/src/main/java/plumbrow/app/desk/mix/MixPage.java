package plumbrow.app.desk.mix;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
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
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.Json;
import plumbrow.app.weather.Decided;
import plumbrow.documents.binder.LoadCardPaper;

/** What goes into the tank: on the desk, on paper, and for programs. */
@Controller
public class MixPage {
    private final DeskBook book;

    public MixPage(DeskBook book) {
        this.book = book;
    }

    private record Fault(String error) {}

    /** A card and the trip it is for. */
    private record Made(SprayTrip trip, LoadCard card) {}

    @GetMapping("/fields/{name}/mix")
    String show(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(required = false) @Nullable String machine,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        Made made = null;
        String fault = "";
        try {
            made = made(season, field, program, pass, machine);
        } catch (IllegalArgumentException wrong) {
            fault = String.valueOf(wrong.getMessage());
            if (program != null || pass != null || machine != null) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            }
        }
        SprayTrip trip = made == null ? null : made.trip();
        model.addAttribute(
                "view",
                new MixView(
                        field,
                        trip == null ? List.of() : SprayTrip.of(season, field, trip.program()),
                        trip == null
                                ? List.of()
                                : trip.machines(season).stream()
                                        .map(one -> one.name())
                                        .toList(),
                        trip,
                        made == null ? null : made.card(),
                        fault));
        return "mix";
    }

    @GetMapping("/fields/{name}/mix.pdf")
    ResponseEntity<byte[]> paper(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(required = false) @Nullable String machine) {
        Season season = Asked.season(book);
        try {
            LoadCard card = made(season, Asked.field(season, name), program, pass, machine)
                    .card();
            return ResponseEntity.ok()
                    .contentType(MediaType.APPLICATION_PDF)
                    .header(
                            HttpHeaders.CONTENT_DISPOSITION,
                            ContentDisposition.attachment()
                                    .filename("load-card.pdf")
                                    .build()
                                    .toString())
                    .body(LoadCardPaper.pdf(card, season.asOf()));
        } catch (IllegalArgumentException wrong) {
            throw new NotHereException(String.valueOf(wrong.getMessage()));
        }
    }

    @GetMapping("/api/fields/{name}/mix")
    ResponseEntity<byte[]> json(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(required = false) @Nullable String machine) {
        Season season = Asked.season(book);
        try {
            return answer(
                    HttpStatus.OK,
                    Json.of(made(season, Asked.field(season, name), program, pass, machine)
                            .card()));
        } catch (IllegalArgumentException wrong) {
            return answer(HttpStatus.UNPROCESSABLE_CONTENT, Json.of(new Fault(String.valueOf(wrong.getMessage()))));
        }
    }

    private Made made(
            Season season, Field field, @Nullable String program, @Nullable String pass, @Nullable String machine) {
        SprayTrip trip =
                Decided.trip(season, field, book.choices(season.year()), program, Decided.passNumber(pass), false);
        String asked = machine == null || machine.isBlank() ? null : machine;
        if (asked != null
                && trip.machines(season).stream().noneMatch(one -> one.name().equals(asked))) {
            throw new IllegalArgumentException("There is no machine “" + asked + "” for this on " + field.farm() + ".");
        }
        return new Made(trip, LoadCards.of(season, trip, asked));
    }

    private static ResponseEntity<byte[]> answer(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
