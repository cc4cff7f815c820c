package plumbrow.app.desk.hours;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.json.HoursSummary;
import plumbrow.app.json.Json;
import plumbrow.app.weather.WeatherIntake;
import plumbrow.app.weather.Zones;
import plumbrow.documents.weather.WeatherTrouble;

/** May I spray, and when: the hours of a field's trip, for people and for programs; and weather files taken in. */
@Controller
public class HoursPage {
    private final DeskBook book;
    private final Clock clock;

    public HoursPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    private record Fault(String error) {}

    @GetMapping("/fields/{name}/hours")
    String show(
            @PathVariable String name,
            @RequestParam MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        return page(name, asked, List.of(), "", model, response);
    }

    private String page(
            String name,
            MultiValueMap<String, String> asked,
            List<String> told,
            String trouble,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        HoursQuery query = null;
        TripHours hours = null;
        String fault = trouble;
        try {
            query = HoursQuery.read(book, season, field, asked);
            hours = query.answer(book, season);
        } catch (IllegalArgumentException wrong) {
            fault = fault.isEmpty() ? String.valueOf(wrong.getMessage()) : fault;
        }
        // A field whose program sprays nothing is no fault of whoever follows a link to it.
        if (!fault.isEmpty() && (!trouble.isEmpty() || !asked.isEmpty())) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        SprayTrip trip = query == null ? null : query.trip();
        List<SprayTrip> trips = trip == null
                ? List.of()
                : SprayTrip.of(season, field, trip.program()).stream()
                        .filter(SprayTrip::sprayed)
                        .toList();
        LocalDate from = query == null ? LocalDate.now(clock) : query.asked().first();
        model.addAttribute("view", new HoursView(season, field, trips, trip, from, hours, fault, told));
        return "hours";
    }

    /** Takes a weather file in, for the field or for its county. */
    @PostMapping("/fields/{name}/hours/weather")
    String take(
            @PathVariable String name,
            @RequestParam @Nullable MultipartFile file,
            @RequestParam(defaultValue = "county") String of,
            Model model,
            HttpServletResponse response)
            throws IOException {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        String place = of.equals("field") ? field.name() : field.state() + ": " + field.county();
        List<String> told = new ArrayList<>();
        String fault = "";
        if (file == null || file.isEmpty()) {
            fault = "No file was chosen, or it is empty; expected a file of hourly weather.";
        } else {
            try {
                WeatherIntake.Taken taken = book.takeWeather(
                        String.valueOf(file.getOriginalFilename()),
                        file.getBytes(),
                        WeatherIntake.asked(season, place, Zones.of(season, place), null, null, null, null, null, null),
                        clock.instant());
                told.add(
                        taken.already()
                                ? "The book has this file already; nothing was changed."
                                : "Taken in for " + place + ": " + taken.read().format() + ".");
                told.addAll(taken.read().notes());
            } catch (WeatherTrouble | IllegalArgumentException wrong) {
                fault = String.valueOf(wrong.getMessage());
            }
        }
        return page(name, new LinkedMultiValueMap<>(), told, fault, model, response);
    }

    /** For programs: 404 where no weather is on file, 422 where what is asked can't be. */
    @GetMapping("/api/fields/{name}/hours")
    ResponseEntity<byte[]> json(@PathVariable String name, @RequestParam MultiValueMap<String, String> asked) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        try {
            TripHours hours = HoursQuery.read(book, season, field, asked).answer(book, season);
            return hours == null
                    ? json(
                            HttpStatus.NOT_FOUND,
                            Json.of(new Fault("No hourly weather is on file for " + field.name()
                                    + ", so its hours are unknown.")))
                    : json(HttpStatus.OK, Json.of(HoursSummary.of(hours)));
        } catch (IllegalArgumentException wrong) {
            return json(HttpStatus.UNPROCESSABLE_CONTENT, Json.of(new Fault(String.valueOf(wrong.getMessage()))));
        }
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
