package plumbrow.app.desk.build;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.rows.Remembered;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.ProgramDraft;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeasonEdit;

/** The program builder of a field. */
@Controller
public class BuildPage {
    private static final String NEW = "new";
    private static final String COPY = "copy";
    private static final String CHANGE = "change";

    private final DeskBook book;
    private final Weighings weighings;
    private final Clock clock;

    public BuildPage(DeskBook book, Weighings weighings, Clock clock) {
        this.book = book;
        this.weighings = weighings;
        this.clock = clock;
    }

    @GetMapping("/fields/{name}/build")
    String show(
            @PathVariable String name,
            @RequestParam(defaultValue = "") String program,
            @RequestParam(name = "as", defaultValue = NEW) String as,
            @RequestParam(defaultValue = "") String done,
            @RequestParam(defaultValue = "0") int change,
            Model model) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        Optional<ProgramDraft> from = ProgramDraft.of(season, field.name(), program);
        boolean first = season.programs(field.name()).isEmpty();
        boolean changing = as.equals(CHANGE) && from.isPresent();
        BuildForm form = BuildForm.of(
                from.orElse(null),
                changing ? program : "",
                first || (changing && from.map(ProgramDraft::baseline).orElse(false)));
        return page(
                season,
                field,
                form,
                from.isPresent() ? as : NEW,
                from.isPresent() ? program : "",
                Map.of(),
                told(done),
                change,
                model);
    }

    private static String told(String done) {
        return switch (done) {
            case "added" -> "The program is in the book.";
            case "changed" -> "The program is changed in the book.";
            case "removed" -> "The program is out of the book.";
            case "series" -> "The series is in the book.";
            case "fields" -> "The program is on those fields.";
            case "nothing" -> "Nothing was changed, so nothing was kept.";
            default -> "";
        };
    }

    /** What the program in the boxes would cost and do; nothing is kept. */
    @PostMapping("/fields/{name}/build/try")
    String tried(@PathVariable String name, @RequestParam Map<String, String> typed, Model model) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        BuildForm form = BuildForm.read(typed);
        Trying trying = trying(season, field, form, typed);
        model.addAttribute("trial", trying.trial());
        model.addAttribute(
                "faults",
                trying.faults().values().stream().flatMap(List::stream).toList());
        return "build/trial";
    }

    private record Trying(Optional<Trial> trial, Map<String, List<String>> faults) {}

    private Trying trying(Season season, Field field, BuildForm form, Map<String, String> typed) {
        if (form.lines().stream().allMatch(BuildForm.Line::blank)) {
            return new Trying(Optional.empty(), Map.of());
        }
        Plan plan = plan(season, field, form, typed);
        try {
            Season with = SeasonEdit.of(season, plan.changes());
            return new Trying(Optional.of(Trial.of(weighings, with, field, plan.name())), Map.of());
        } catch (EditFaults faults) {
            return new Trying(Optional.empty(), BuildView.faults(faults, plan.changes(), plan.made()));
        }
    }

    /** What the boxes would change in a season. */
    private record Plan(String name, BuildForm.Made made, List<RowChange> changes) {}

    private static Plan plan(Season season, Field field, BuildForm form, Map<String, String> typed) {
        String from = Shown.text(typed.get("program"));
        Optional<ProgramDraft> before = ProgramDraft.of(season, field.name(), from);
        boolean changing = CHANGE.equals(typed.get("as")) && before.isPresent();
        BuildForm.Made made = form.made(Choices.of(season, field), before.orElse(null));
        String name = form.named(season, field.name(), changing ? from : null);
        List<RowChange> changes = changing
                ? made.draft().instead(season, field.name(), from, name)
                : made.draft().added(field.name(), name);
        return new Plan(
                name,
                made,
                form.baseline()
                        ? Stream.concat(
                                        changes.stream(),
                                        ProgramDraft.noLongerBaseline(season, field.name(), changing ? from : "")
                                                .stream())
                                .toList()
                        : changes);
    }

    @PostMapping("/fields/{name}/build")
    String keep(
            @PathVariable String name,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        BuildForm form = BuildForm.read(typed);
        String as = Shown.text(typed.get("as"));
        String program = Shown.text(typed.get("program"));
        if (form.lines().stream().allMatch(BuildForm.Line::blank)) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(
                    season,
                    field,
                    form,
                    as,
                    program,
                    Map.of("t0.what", List.of("nothing there, expected at least one pass.")),
                    "",
                    0,
                    model);
        }
        Plan[] planned = new Plan[1];
        try {
            Optional<Integer> change = book.changeHeldKeepingChosen(by(season, known), held -> {
                demandSeen(held.written(), field, program, typed);
                planned[0] = plan(held.written(), field, form, typed);
                return SeasonEdit.of(held.written(), planned[0].changes());
            });
            return "redirect:/fields/" + Shown.part(name) + "/build?done="
                    + (change.isEmpty() ? "nothing" : as.equals(CHANGE) ? "changed" : "added") + "&change="
                    + change.orElse(0);
        } catch (EditFaults faults) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            Plan plan = planned[0];
            return page(
                    season,
                    field,
                    form,
                    as,
                    program,
                    BuildView.faults(faults, plan.changes(), plan.made()),
                    "",
                    0,
                    model);
        } catch (MeanwhileException meanwhile) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return page(
                    Asked.season(book),
                    field,
                    form,
                    as,
                    program,
                    Map.of("", List.of(String.valueOf(meanwhile.getMessage()))),
                    "",
                    0,
                    model);
        }
    }

    /** A program that is changed or copied must still be as the page showed it. */
    private static void demandSeen(Season written, Field field, String program, Map<String, String> typed) {
        if (!program.isEmpty() && !seen(written, field, program).equals(Shown.text(typed.get("seen")))) {
            throw new MeanwhileException("“" + program
                    + "” was changed in the book by somebody else since this page was opened. Nothing was kept, and what you"
                    + " typed still stands below: look at it, then keep once more.");
        }
    }

    private static String seen(Season season, Field field, String program) {
        return ProgramDraft.of(season, field.name(), program)
                .map(draft -> Integer.toHexString(draft.toString().hashCode()))
                .orElse("");
    }

    @PostMapping("/fields/{name}/build/remove")
    String remove(
            @PathVariable String name,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam(defaultValue = "") String program,
            Model model,
            HttpServletResponse response) {
        return keptAll(
                name,
                known,
                program,
                "removed",
                model,
                response,
                (season, field) -> ProgramDraft.removed(season, field.name(), program));
    }

    @PostMapping("/fields/{name}/build/series")
    String series(
            @PathVariable String name,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam(defaultValue = "") String program,
            @RequestParam(defaultValue = "-1") int trip,
            @RequestParam(defaultValue = "") String by,
            @RequestParam(defaultValue = "") String values,
            Model model,
            HttpServletResponse response) {
        return keptAll(name, known, program, "series", model, response, (season, field) -> {
            ProgramDraft from = draft(season, field, program);
            List<RowChange> changes = new ArrayList<>();
            Series.of(from, program, trip, by, values, Choices.of(season, field))
                    .forEach((wanted, draft) -> {
                        boolean there = season.programs(field.name()).stream()
                                .map(Program::name)
                                .anyMatch(other -> ProgramDraft.of(season, field.name(), other)
                                        .map(ProgramDraft::trips)
                                        .orElse(List.of())
                                        .equals(draft.trips()));
                        if (!there) {
                            changes.addAll(
                                    draft.added(field.name(), BuildForm.free(season, field.name(), null, wanted)));
                        }
                    });
            return changes;
        });
    }

    @PostMapping("/fields/{name}/build/fields")
    String fields(
            @PathVariable String name,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam MultiValueMap<String, String> asked,
            Model model,
            HttpServletResponse response) {
        String program = Shown.text(asked.getFirst("program"));
        List<String> onto = asked.getOrDefault("onto", List.of());
        return keptAll(name, known, program, "fields", model, response, (season, field) -> {
            ProgramDraft from = draft(season, field, program);
            if (onto.isEmpty()) {
                throw new IllegalArgumentException("Mark the fields that are to have this program.");
            }
            List<RowChange> changes = new ArrayList<>();
            for (String other : onto) {
                boolean first = season.programs(other).isEmpty();
                changes.addAll(from.withBaseline(first).added(other, BuildForm.free(season, other, null, program)));
            }
            return changes;
        });
    }

    private static ProgramDraft draft(Season season, Field field, String program) {
        return ProgramDraft.of(season, field.name(), program)
                .orElseThrow(() -> new IllegalArgumentException("There is no program “" + program + "” any more."));
    }

    /** What several rows are to become, made of the season as the book holds it. */
    @FunctionalInterface
    private interface Changes {
        List<RowChange> of(Season season, Field field);
    }

    private String keptAll(
            String name,
            String known,
            String program,
            String done,
            Model model,
            HttpServletResponse response,
            Changes changes) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        try {
            Optional<Integer> change = book.changeHeldKeepingChosen(
                    by(season, known), held -> SeasonEdit.of(held.written(), changes.of(held.written(), field)));
            return "redirect:/fields/" + Shown.part(name) + "/build?done=" + (change.isEmpty() ? "nothing" : done)
                    + "&change=" + change.orElse(0);
        } catch (EditFaults faults) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            List<String> sentences = faults.places().stream()
                    .map(place -> place.fault().sentence())
                    .distinct()
                    .toList();
            return again(season, field, program, sentences, model);
        } catch (BookException | IllegalArgumentException refused) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return again(Asked.season(book), field, program, List.of(String.valueOf(refused.getMessage())), model);
        }
    }

    private String again(Season season, Field field, String program, List<String> sentences, Model model) {
        BuildForm form =
                BuildForm.of(ProgramDraft.of(season, field.name(), program).orElse(null), "", false);
        return page(season, field, form, program.isEmpty() ? NEW : COPY, program, Map.of("", sentences), "", 0, model);
    }

    private By by(Season season, String known) {
        return new By(Remembered.read(known).orElse(season.adviser()), "", By.Way.DESK, clock.instant());
    }

    private String page(
            Season season,
            Field field,
            BuildForm form,
            String as,
            String program,
            Map<String, List<String>> faults,
            String told,
            int change,
            Model model) {
        @Nullable FieldAdvice advice = null;
        String gap = "";
        try {
            advice = season.programs(field.name()).isEmpty()
                    ? null
                    : weighings.field(season, field, WeighingOptions.DEFAULT);
        } catch (SeasonGapException lacking) {
            gap = String.valueOf(lacking.getMessage());
        }
        Map<String, List<String>> boxes = new LinkedHashMap<>(faults);
        List<String> other = Optional.ofNullable(boxes.remove("")).orElse(List.of());
        Map<String, String> typed = Map.of("as", as, "program", program);
        Trying trying = faults.isEmpty() && !program.isEmpty()
                ? trying(season, field, form, typed)
                : new Trying(Optional.empty(), Map.of());
        model.addAttribute(
                "view",
                new BuildView(
                        season,
                        field,
                        BuildView.rows(season, field, advice),
                        gap,
                        form.spared(),
                        as,
                        program,
                        program.isEmpty() ? "" : seen(book.written().orElse(season), field, program),
                        Choices.of(season, field),
                        boxes,
                        other,
                        told,
                        change,
                        trying.trial().orElse(null)));
        return "build/build";
    }
}
