package plumbrow.app.desk.records;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.program.Done;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.log.StrikeEntry;
import plumbrow.app.records.RecordAnswer;
import plumbrow.app.records.RecordEntry;
import plumbrow.app.records.RecordFilter;
import plumbrow.app.records.RecordStart;
import plumbrow.app.weather.Decided;
import plumbrow.documents.binder.RecordExport;
import plumbrow.documents.binder.RecordPaper;
import plumbrow.documents.binder.RecordSheets;

/** Application records as pages: on a phone in the cab, and as a list at the desk. */
@Controller
public class RecordsPage {
    private static final StrikeEntry NOTHING = new StrikeEntry("", "", "");

    private final DeskBook book;
    private final Clock clock;

    public RecordsPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/records")
    String list(
            @RequestParam Map<String, String> asked,
            @RequestParam(defaultValue = "1") int page,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        List<KeptRecord> all = book.records();
        RecordFilter filter = RecordFilter.ANY;
        String fault = "";
        try {
            filter = RecordFilter.of(asked, all, book.season());
        } catch (IllegalArgumentException wrong) {
            fault = String.valueOf(wrong.getMessage());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        List<KeptRecord> latest = new ArrayList<>(filter.in(all));
        Collections.reverse(latest);
        Part<KeptRecord> part = Part.of(latest, page);
        List<RecordList.Line> lines = part.lines().stream()
                .map(kept -> RecordList.Line.of(season, kept))
                .toList();
        model.addAttribute(
                "view",
                new RecordList(
                        season,
                        new Part<>(lines, part.first(), part.of(), part.page(), part.pages()),
                        all,
                        filter,
                        book.head().text(),
                        fault));
        return "records";
    }

    @GetMapping("/records.{kind:csv|xlsx|pdf}")
    ResponseEntity<byte[]> file(@PathVariable String kind, @RequestParam Map<String, String> asked) {
        List<KeptRecord> all = book.records();
        try {
            RecordFilter filter = RecordFilter.of(asked, all, book.season());
            RecordExport export = new RecordExport(
                    Asked.season(book),
                    filter.in(all),
                    filter.words(),
                    book.head().text(),
                    today());
            return switch (kind) {
                case "csv" -> file("records.csv", new MediaType("text", "csv"), RecordSheets.csv(export));
                case "xlsx" ->
                    file(
                            "records.xlsx",
                            new MediaType("application", "vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
                            RecordSheets.xlsx(export));
                default -> file("records.pdf", MediaType.APPLICATION_PDF, RecordPaper.pdf(export));
            };
        } catch (IllegalArgumentException wrong) {
            throw new NotHereException(String.valueOf(wrong.getMessage()));
        }
    }

    private static ResponseEntity<byte[]> file(String name, MediaType type, byte[] content) {
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(content);
    }

    @GetMapping("/records/new")
    String begin(
            @RequestParam(defaultValue = "") String field,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            Model model) {
        Season season = Asked.season(book);
        if (field.isEmpty()) {
            return form(model, season, RecordEntry.begun(Map.of("date", today().toString())), null, NOTHING);
        }
        Field found = Asked.field(season, field);
        try {
            Map<String, String> boxes;
            if (program == null && pass == null) {
                boxes = RecordStart.of(season, found, today());
            } else {
                SprayTrip trip = Decided.trip(
                        season, found, book.choices(season.year()), program, Decided.passNumber(pass), false);
                boxes = RecordStart.of(season, trip, LoadCards.of(season, trip, null), today());
            }
            return form(model, season, RecordEntry.begun(boxes), null, NOTHING);
        } catch (IllegalArgumentException wrong) {
            throw new NotHereException(String.valueOf(wrong.getMessage()));
        }
    }

    @PostMapping("/records/new")
    String write(@RequestParam MultiValueMap<String, String> sent, Model model, HttpServletResponse response) {
        Season season = Asked.season(book);
        Map<String, String> typed = typed(sent);
        RecordEntry entry = RecordEntry.read(season, typed, List.of(), clock.instant());
        if (!entry.ready()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(model, season, entry, null, NOTHING);
        }
        KeptRecord kept = book.record(
                Objects.requireNonNull(entry.record()),
                new By(typed.get(RecordItem.APPLICATOR.key()), "", By.Way.DESK, null),
                clock.instant());
        return "redirect:/records/" + kept.number();
    }

    @GetMapping("/records/{number}")
    String one(@PathVariable int number, Model model) {
        return page(model, kept(number), NOTHING);
    }

    @GetMapping("/records/{number}/correct")
    String correct(@PathVariable int number, Model model) {
        KeptRecord wrong = kept(number);
        return form(model, Asked.season(book), RecordEntry.begun(RecordStart.of(wrong)), wrong, NOTHING);
    }

    @PostMapping("/records/{number}/correct")
    String correct(
            @PathVariable int number,
            @RequestParam MultiValueMap<String, String> sent,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Map<String, String> typed = typed(sent);
        KeptRecord wrong = kept(number);
        List<Done> lines = wrong.record().lines();
        RecordEntry entry = RecordEntry.read(season, typed, lines, clock.instant());
        StrikeEntry said = StrikeEntry.read(typed);
        if (entry.ready() && said.fault().isEmpty()) {
            try {
                KeptRecord kept = book.correct(
                        number,
                        Objects.requireNonNull(entry.record()),
                        new By(said.who(), said.why(), By.Way.DESK, null),
                        clock.instant());
                return "redirect:/records/" + kept.number();
            } catch (BookException refused) {
                said = new StrikeEntry(said.who(), said.why(), String.valueOf(refused.getMessage()));
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return form(model, season, entry, wrong, said);
    }

    @PostMapping("/records/{number}/void")
    String voided(
            @PathVariable int number,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        StrikeEntry said = StrikeEntry.read(typed);
        KeptRecord kept = kept(number);
        if (said.fault().isEmpty()) {
            try {
                book.voidRecord(number, new By(said.who(), said.why(), By.Way.DESK, null), clock.instant());
                return "redirect:/records/" + number;
            } catch (BookException refused) {
                said = new StrikeEntry(said.who(), said.why(), String.valueOf(refused.getMessage()));
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(model, kept, said);
    }

    /** What was sent, each box once; of the boxes that answer what was asked back all. */
    private static Map<String, String> typed(MultiValueMap<String, String> sent) {
        Map<String, String> typed = new LinkedHashMap<>(sent.toSingleValueMap());
        List<String> sure = sent.get(RecordEntry.SURE);
        if (sure != null) {
            typed.put(RecordEntry.SURE, String.join(" ", sure));
        }
        return typed;
    }

    private KeptRecord kept(int number) {
        return book.records().stream()
                .filter(record -> record.number() == number)
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no record " + number + "."));
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(ZoneId.systemDefault()));
    }

    private String page(Model model, KeptRecord kept, StrikeEntry said) {
        ZonedDateTime end = kept.record().end();
        ZoneId zone = end == null ? ZoneId.systemDefault() : end.getZone();
        RecordAnswer answer = RecordAnswer.of(Asked.season(book), kept);
        model.addAttribute("kept", kept);
        model.addAttribute("answer", answer);
        model.addAttribute("left", answer.reentry().left(LocalDateTime.now(clock.withZone(zone))));
        model.addAttribute("said", said);
        return "record";
    }

    private static String form(
            Model model, Season season, RecordEntry entry, @Nullable KeptRecord wrong, StrikeEntry said) {
        model.addAttribute("view", new RecordForm(season, entry, wrong, said.who(), said.why(), said.fault()));
        return "recordform";
    }
}
