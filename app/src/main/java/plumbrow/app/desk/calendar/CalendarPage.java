package plumbrow.app.desk.calendar;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.calendar.ProgramChangeException;
import plumbrow.advice.calendar.ProgramChanges;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.rows.Remembered;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.picture.SeasonPicture;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowChange;

/** The season picture of a program: its days, its passes to be moved, and the way to keep a change. */
@Controller
public class CalendarPage {
    private static final int WIDE = 1140;
    private static final int NARROW = 358;
    private static final int WIDEST = 1400;

    private final DeskBook book;
    private final Trials trials;
    private final Clock clock;

    public CalendarPage(DeskBook book, Trials trials, Clock clock) {
        this.book = book;
        this.trials = trials;
        this.clock = clock;
    }

    @GetMapping("/fields/{name}/season")
    String show(
            @PathVariable String name,
            @RequestParam MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        return page(name, asked, model, response);
    }

    /** The page with passes as typed, for those without a script; nothing is stored. */
    @PostMapping("/fields/{name}/season")
    String typed(
            @PathVariable String name,
            @RequestParam MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        return page(name, asked, model, response);
    }

    /** The answer alone: on few draws while a pass is being moved, soon on all draws when it is let go, then with lawful days anew. */
    @GetMapping("/fields/{name}/season/try")
    String tried(@PathVariable String name, @RequestParam MultiValueMap<String, String> asked, Model model) {
        boolean moving = "moving".equals(asked.getFirst("how"));
        Season season = moving ? trials.lastSeen().orElseGet(() -> Asked.season(book)) : Asked.season(book);
        Field field = Asked.field(season, name);
        String program = program(season, field, asked.getFirst("program"));
        PassBoxes boxes = PassBoxes.read(asked);
        SeasonTrials full = trials.full(season);
        try {
            SeasonTrial trial = !boxes.faults().isEmpty()
                    ? full.whole(field, program, List.of())
                    : switch (Shown.text(asked.getFirst("how"))) {
                        case "moving" -> trials.rough(season).moving(field, program, boxes.changes(), full);
                        case "soon" -> full.moving(field, program, boxes.changes(), full);
                        default -> full.whole(field, program, boxes.changes());
                    };
            return answer(season, field, trial, boxes, width(asked.getFirst("width")), model);
        } catch (ProgramChangeException fault) {
            SeasonTrial trial = full.whole(field, program, List.of());
            return answer(season, field, trial, boxes.with(fault), width(asked.getFirst("width")), model);
        }
    }

    /**
     * Writes a change into the book, or says why it can't be. It is made of the program as the book has it at that moment;
     * where that is no longer the program the page showed, nothing is written and what was typed stays in its boxes.
     */
    @PostMapping("/fields/{name}/season/keep")
    String keep(
            @PathVariable String name,
            @RequestParam MultiValueMap<String, String> asked,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        String program = program(season, field, asked.getFirst("program"));
        PassBoxes boxes = PassBoxes.read(asked);
        boolean added = "new".equals(asked.getFirst("as"));
        if (!boxes.faults().isEmpty()) {
            return page(name, asked, model, response);
        }
        String shown = added ? Shown.text(asked.getFirst("name")).strip() : program;
        Optional<Integer> made;
        try {
            made = book.changeHeld(by(season, known), held -> {
                demandSeen(held.written(), field, program, asked);
                // What a confirmed label allows holds too, though it is not written into the season.
                changed(held.season(), field, program, boxes, added, shown);
                return changed(held.written(), field, program, boxes, added, shown);
            });
        } catch (ProgramChangeException fault) {
            return again(name, program, boxes.with(fault), asked, model, response);
        } catch (MeanwhileException changed) {
            String again = again(name, program, boxes.with(changed), asked, model, response);
            response.setStatus(HttpStatus.CONFLICT.value());
            return again;
        }
        String done =
                made.isEmpty() ? "&done=nothing" : "&done=" + (added ? "added" : "changed") + "&kept=" + made.get();
        return "redirect:/fields/" + Shown.part(name) + "/season?program=" + Shown.part(shown) + done;
    }

    private static Season changed(
            Season season, Field field, String program, PassBoxes boxes, boolean added, String name) {
        ProgramChanges changes = new ProgramChanges(season, Asked.field(season, field.name()));
        return added ? changes.added(program, boxes.changes(), name) : changes.changed(program, boxes.changes());
    }

    private static void demandSeen(Season written, Field field, String program, MultiValueMap<String, String> asked) {
        ProgramSeen seen = ProgramSeen.read(Shown.text(asked.getFirst("seen")));
        ProgramSeen now = ProgramSeen.of(written, field.name(), program);
        if (!seen.equals(now)) {
            throw new MeanwhileException(
                    seen.passes().isEmpty()
                            ? "The form does not say what it was filled in beside, so nothing was kept. Look at the program"
                                    + " as it is now, then keep once more."
                            : "“" + program + "” was changed in the book by somebody else since this page was opened: "
                                    + seen.differs(now)
                                    + ". Nothing was kept, and what you typed still stands below: look"
                                    + " at it, then keep once more.");
        }
    }

    /** The page with what was typed, beside the program as it is by now. */
    private String again(
            String name,
            String program,
            PassBoxes boxes,
            MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        Season now = Asked.season(book);
        Field field = Asked.field(now, name);
        String there = now.programs(name).stream().anyMatch(one -> one.name().equals(program))
                ? program
                : program(now, field, null);
        return page(now, field, there, boxes, asked, model, response);
    }

    /** Takes a kept change out of the book, as long as its program is as it was kept and nobody chose it. */
    @PostMapping("/fields/{name}/season/undo")
    String undo(
            @PathVariable String name,
            @RequestParam(defaultValue = "") String kept,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        Optional<SeasonChange> change = change(season, field, kept);
        boolean can = change.isPresent();
        if (change.isPresent()) {
            try {
                book.undo(change.get().number(), by(season, known));
            } catch (MeanwhileException | EditFaults late) {
                can = false;
            }
        }
        String program = change.flatMap(CalendarPage::program)
                .filter(one -> Asked.season(book).programs(name).stream()
                        .map(Program::name)
                        .anyMatch(one::equals))
                .map(one -> "program=" + Shown.part(one) + "&")
                .orElse("");
        return "redirect:/fields/" + Shown.part(name) + "/season?" + program + (can ? "done=undone" : "done=late");
    }

    /** A change of a program of the field that stands. */
    private Optional<SeasonChange> change(Season season, Field field, String number) {
        return number.isEmpty()
                ? Optional.empty()
                : book.changes(season.year()).stream()
                        .filter(one -> String.valueOf(one.number()).equals(number)
                                && !one.takenBack()
                                && one.rows().stream()
                                        .allMatch(row -> cell(row, "field").equals(field.name())))
                        .findFirst();
    }

    private static Optional<String> program(SeasonChange change) {
        return change.rows().stream()
                .map(row -> cell(row, "program"))
                .filter(program -> !program.isEmpty())
                .findFirst();
    }

    private static String cell(RowChange row, String key) {
        Map<String, String> cells = row.after() == null ? row.before() : row.after();
        return cells == null ? "" : cells.getOrDefault(key, "");
    }

    private By by(Season season, String known) {
        return new By(Remembered.read(known).orElse(season.adviser()), "", By.Way.DESK, clock.instant());
    }

    private String page(String name, MultiValueMap<String, String> asked, Model model, HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        String program = program(season, field, asked.getFirst("program"));
        return page(season, field, program, PassBoxes.read(asked), asked, model, response);
    }

    private String page(
            Season season,
            Field field,
            String program,
            PassBoxes boxes,
            MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        PassBoxes read = boxes;
        SeasonTrial trial;
        try {
            trial = trials.full(season).whole(field, program, read.faults().isEmpty() ? read.changes() : List.of());
        } catch (ProgramChangeException fault) {
            read = read.with(fault);
            trial = trials.full(season).whole(field, program, List.of());
        }
        if (!read.faults().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        String undo = Shown.text(asked.getFirst("kept"));
        boolean can = change(season, field, undo).isPresent();
        model.addAttribute(
                "view",
                new CalendarView(
                        season,
                        field,
                        trial,
                        read,
                        List.of(SeasonPicture.of(trial.calendar(), WIDE), SeasonPicture.of(trial.calendar(), NARROW)),
                        asked.getOrDefault("name", List.of(program + ", moved")).get(0),
                        told(asked.getFirst("done"), program),
                        can ? undo : "",
                        ProgramSeen.of(season, field.name(), program).text()));
        return "calendar";
    }

    private String answer(Season season, Field field, SeasonTrial trial, PassBoxes boxes, int width, Model model) {
        model.addAttribute(
                "view",
                new CalendarView(
                        season,
                        field,
                        trial,
                        boxes,
                        List.of(SeasonPicture.of(trial.calendar(), width)),
                        "",
                        "",
                        "",
                        ""));
        return "calendar/answer";
    }

    private static String told(@Nullable String done, String program) {
        return switch (Shown.text(done)) {
            case "changed" -> program + " is changed in the book.";
            case "added" -> program + " is in the book as one more program.";
            case "nothing" -> "Nothing was changed, so nothing was kept.";
            case "undone" -> "Undone: the book is as it was before.";
            case "late" -> "This can’t be undone any more: the program has changed since, or somebody chose it.";
            default -> "";
        };
    }

    private static int width(@Nullable String asked) {
        try {
            return asked == null ? WIDE : Math.max(NARROW - 38, Math.min(WIDEST, Integer.parseInt(asked)));
        } catch (NumberFormatException fault) {
            return WIDE;
        }
    }

    /** The program asked for; else the baseline. */
    static String program(Season season, Field field, @Nullable String asked) {
        List<Program> programs = season.programs(field.name());
        if (asked == null || asked.isEmpty()) {
            return programs.stream()
                    .filter(Program::baseline)
                    .findFirst()
                    .map(Program::name)
                    .orElseThrow(() -> new NotHereException(
                            field.name() + " has no program yet: build one on the page Build programs of the field."));
        }
        return programs.stream()
                .map(Program::name)
                .filter(name -> name.equals(asked))
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no program called “"
                        + (asked.length() > 60 ? asked.substring(0, 57) + "…" : asked) + "” on " + field.name() + "."));
    }
}
