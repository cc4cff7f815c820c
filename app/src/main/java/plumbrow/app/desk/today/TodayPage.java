package plumbrow.app.desk.today;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.season.Season;
import plumbrow.advice.today.Days;
import plumbrow.advice.today.Today;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.json.Json;
import plumbrow.app.weather.Decided;

/** What is due on a day, what is fit, what waits: for people and for programs. */
@Controller
public class TodayPage {
    private final DeskBook book;
    private final Clock clock;

    public TodayPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Fault(String error) {}

    @GetMapping("/today")
    String show(@RequestParam(defaultValue = "") String day, Model model, HttpServletResponse response) {
        Season season = Asked.season(book);
        LocalDate on = LocalDate.now(clock.withZone(ZoneId.systemDefault()));
        String fault = "";
        try {
            on = day.isBlank() ? on : read(day);
        } catch (IllegalArgumentException wrong) {
            fault = String.valueOf(wrong.getMessage());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        model.addAttribute("today", today(season, on));
        model.addAttribute("fault", fault);
        return "today";
    }

    @GetMapping("/api/today")
    ResponseEntity<byte[]> json(@RequestParam(defaultValue = "") String day) {
        Season season = Asked.season(book);
        try {
            LocalDate on = day.isBlank() ? LocalDate.now(clock.withZone(ZoneId.systemDefault())) : read(day);
            return answer(HttpStatus.OK, Json.of(today(season, on)));
        } catch (IllegalArgumentException wrong) {
            return answer(HttpStatus.UNPROCESSABLE_CONTENT, Json.of(new Fault(String.valueOf(wrong.getMessage()))));
        }
    }

    /** The day last asked for, as long as nothing of it has changed. */
    @SuppressWarnings("ReferenceEquality") // The desk hands out the same season until something in it changes.
    private Today today(Season season, LocalDate day) {
        List<Choice> choices = book.choices(season.year());
        String weather = book.weatherVersion();
        List<ApplicationRecord> records = KeptRecord.counting(book.records());
        Known last = known.get();
        if (last != null
                && last.season() == season
                && last.choices().equals(choices)
                && last.weather().equals(weather)
                && last.records().equals(records)
                && last.today().day().equals(day)) {
            return last.today();
        }
        Today today = Days.of(season, day, field -> Decided.chosen(season, field, choices), book::weather, records);
        known.set(new Known(season, choices, weather, records, today));
        return today;
    }

    private record Known(
            Season season, List<Choice> choices, String weather, List<ApplicationRecord> records, Today today) {}

    private final AtomicReference<@Nullable Known> known = new AtomicReference<>();

    private static LocalDate read(String day) {
        try {
            LocalDate read = LocalDate.parse(day.strip());
            if (read.getYear() < 1900 || read.getYear() > 2100) {
                throw new DateTimeException("year");
            }
            return read;
        } catch (DateTimeException fault) {
            throw new IllegalArgumentException("“" + (day.length() > 40 ? day.substring(0, 37) + "…" : day)
                    + "” is no day; expected one such as 2026-06-01.");
        }
    }

    private static ResponseEntity<byte[]> answer(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
