package plumbrow.app.desk.rows;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import org.springframework.web.bind.annotation.ResponseBody;
import plumbrow.advice.names.KnownNames;
import plumbrow.advice.names.NameColumn;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.book.RowJson;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.Renaming;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowName;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.edit.SeedPair;
import plumbrow.documents.workbook.edit.TypedRow;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/** The tables of the season: rows are looked at, added, copied, changed and removed, each column in its box. */
@Controller
public class RowsPage {
    private final DeskBook book;
    private final Clock clock;

    public RowsPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/season")
    String tables(
            @RequestParam(defaultValue = "") String find, @RequestParam(defaultValue = "1") int page, Model model) {
        Optional<Season> season = book.written();
        if (season.isEmpty()) {
            return "redirect:/season/start";
        }
        List<SeasonChange> changes = book.changes(season.get().year());
        model.addAttribute("view", SeasonView.of(season.get(), changes, find, page));
        return "rows/season";
    }

    @GetMapping("/season/{table}")
    String table(
            @PathVariable String table,
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "") String done,
            @RequestParam(defaultValue = "0") int change,
            Model model) {
        model.addAttribute("view", TableView.of(written(), sheet(table), find, page, told(done), change));
        return "rows/table";
    }

    private static String told(String done) {
        return switch (done) {
            case "added" -> "The row is in the book.";
            case "changed" -> "The row is changed in the book.";
            case "removed" -> "The row is out of the book.";
            case "nothing" -> "Nothing was changed, so nothing was kept.";
            case "undone" -> "Taken back: those rows are as they were before.";
            default -> "";
        };
    }

    /** An empty row, filled as far as the address says; or a copy of a row. */
    @GetMapping("/season/{table}/new")
    String blank(
            @PathVariable String table,
            @RequestParam MultiValueMap<String, String> asked,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            @RequestParam(defaultValue = "0") int copy,
            Model model) {
        Season season = written();
        Sheet<?> sheet = sheet(table);
        Map<String, String> row = new LinkedHashMap<>();
        if (copy > 0) {
            row.putAll(row(season, sheet, copy));
        }
        row.putAll(typed(sheet, asked));
        return page(RowView.of(season, sheet, 0, row, null, "", "", who(season, asked, known), "", back(asked)), model);
    }

    @PostMapping("/season/{table}/new")
    String add(
            @PathVariable String table,
            @RequestParam MultiValueMap<String, String> asked,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        Season season = written();
        Sheet<?> sheet = sheet(table);
        Map<String, String> row = TypedRow.over(sheet, 0, Map.of(), typed(sheet, asked));
        return keep(season, sheet, 0, row, RowChange.add(sheet.name(), row), "", asked, known, model, response);
    }

    @GetMapping("/season/{table}/row/{number}")
    String one(
            @PathVariable String table,
            @PathVariable int number,
            @RequestParam MultiValueMap<String, String> asked,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model) {
        Season season = written();
        Sheet<?> sheet = sheet(table);
        Map<String, String> row = row(season, sheet, number);
        return page(
                RowView.of(
                        season,
                        sheet,
                        number,
                        row,
                        null,
                        RowJson.of(row),
                        "",
                        who(season, asked, known),
                        "",
                        back(asked)),
                model);
    }

    @PostMapping("/season/{table}/row/{number}")
    String change(
            @PathVariable String table,
            @PathVariable int number,
            @RequestParam MultiValueMap<String, String> asked,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        Season season = written();
        Sheet<?> sheet = sheet(table);
        Map<String, String> seen = seen(asked);
        Map<String, String> row = TypedRow.over(sheet, number, Map.of(), typed(sheet, asked));
        return keep(
                season,
                sheet,
                number,
                row,
                RowChange.change(sheet.name(), number - 2, seen, row),
                "changed",
                asked,
                known,
                model,
                response);
    }

    @PostMapping("/season/{table}/row/{number}/remove")
    String remove(
            @PathVariable String table,
            @PathVariable int number,
            @RequestParam MultiValueMap<String, String> asked,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        Season season = written();
        Sheet<?> sheet = sheet(table);
        Map<String, String> seen = seen(asked);
        return keep(
                season,
                sheet,
                number,
                seen,
                RowChange.remove(sheet.name(), number - 2, seen),
                "removed",
                asked,
                known,
                model,
                response);
    }

    /** The names that may stand in a column while something else stands in the column it depends on, a line each. */
    @GetMapping(path = "/season/{table}/names", produces = "text/plain;charset=UTF-8")
    @ResponseBody
    String names(
            @PathVariable String table, @RequestParam String column, @RequestParam(defaultValue = "") String within) {
        NameColumn names = NameColumn.find(sheet(table).name(), column);
        return names == null ? "" : String.join("\n", KnownNames.of(written(), names, within));
    }

    private String keep(
            Season season,
            Sheet<?> sheet,
            int number,
            Map<String, String> row,
            RowChange change,
            String done,
            MultiValueMap<String, String> asked,
            String known,
            Model model,
            HttpServletResponse response) {
        String why = Shown.text(asked.getFirst("by-why"));
        String who = who(season, asked, known);
        String seen = Shown.text(asked.getFirst("seen"));
        try {
            Optional<Integer> kept = book.edit(
                    new By(who, why, By.Way.DESK, clock.instant()),
                    change.after() == null ? SeedPair.removal(season, change) : Renaming.along(season, change));
            Remembered.write(response, who);
            return "redirect:" + after(sheet, kept, done.isEmpty() ? "added" : done, row, asked);
        } catch (EditFaults faults) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(RowView.of(season, sheet, number, row, faults, seen, "", who, why, back(asked)), model);
        } catch (MeanwhileException meanwhile) {
            response.setStatus(HttpStatus.CONFLICT.value());
            Season now = written();
            Map<String, String> there = now(now, sheet, change);
            return page(
                    RowView.of(
                            now,
                            sheet,
                            there == null ? number : number(now, sheet, there),
                            row,
                            null,
                            there == null ? seen : RowJson.of(there),
                            String.valueOf(meanwhile.getMessage())
                                    + " What you typed still stands below: look at it, then keep once more.",
                            who,
                            why,
                            back(asked)),
                    model);
        }
    }

    private static String after(
            Sheet<?> sheet,
            Optional<Integer> kept,
            String done,
            Map<String, String> row,
            MultiValueMap<String, String> asked) {
        String back = back(asked);
        String told = kept.isEmpty() ? "done=nothing" : "done=" + done + "&change=" + kept.get();
        if (asked.containsKey("more")) {
            StringBuilder like = new StringBuilder("/season/" + sheet.name() + "/new?" + told);
            NameColumn field = NameColumn.find(sheet.name(), "field");
            if (field != null && row.containsKey("field")) {
                like.append("&field=").append(Shown.part(row.getOrDefault("field", "")));
            }
            return like + (back.isEmpty() ? "" : "&back=" + Shown.part(back));
        }
        return back.isEmpty() ? "/season/" + sheet.name() + "?" + told : back + (back.contains("?") ? "&" : "?") + told;
    }

    /** The row by now of which the page showed an older state; null where there is none of its name. */
    private static @Nullable Map<String, String> now(Season now, Sheet<?> sheet, RowChange change) {
        Map<String, String> before = change.before();
        if (before == null) {
            return null;
        }
        List<Column<?>> key = RowName.columns(sheet);
        return SeasonTables.of(now).rows(sheet).stream()
                .filter(row -> key.stream()
                        .allMatch(column ->
                                row.getOrDefault(column.key(), "").equals(before.getOrDefault(column.key(), ""))))
                .findFirst()
                .orElse(null);
    }

    private static int number(Season season, Sheet<?> sheet, Map<String, String> row) {
        return SeasonTables.of(season).rows(sheet).indexOf(row) + 2;
    }

    private Season written() {
        return book.written().orElseThrow(NoSeasonException::new);
    }

    private static Sheet<?> sheet(String table) {
        return TypedRow.table(table)
                .orElseThrow(() -> new NotHereException(
                        TypedRow.unknownTable(table.length() > 60 ? table.substring(0, 57) + "…" : table)));
    }

    private static Map<String, String> row(Season season, Sheet<?> sheet, int number) {
        return SeasonTables.of(season)
                .row(sheet, number - 2)
                .orElseThrow(() -> new NotHereException(
                        "The table " + sheet.name() + " has no row " + number + ". It may have been removed."));
    }

    private static Map<String, String> seen(MultiValueMap<String, String> asked) {
        try {
            return RowJson.read(Shown.text(asked.getFirst("seen")));
        } catch (IllegalArgumentException none) {
            throw new MeanwhileException(
                    "The form does not say which row it was filled in beside, so nothing was changed. Open the row once"
                            + " more.");
        }
    }

    /** What stands in the boxes; several marks of one column are one list. */
    private static Map<String, String> typed(Sheet<?> sheet, MultiValueMap<String, String> asked) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Column<?> column : sheet.columns()) {
            List<String> values = asked.get(column.key());
            if (values != null) {
                List<String> filled = new ArrayList<>();
                values.stream().filter(value -> !value.isBlank()).forEach(filled::add);
                typed.put(column.key(), String.join("; ", filled));
            }
        }
        return typed;
    }

    /** Who is at the desk: as typed, else as remembered, else the season's adviser. */
    private static String who(Season season, MultiValueMap<String, String> asked, String known) {
        String who = Shown.text(asked.getFirst("by-who")).strip();
        return !who.isEmpty() ? who : Remembered.read(known).orElse(season.adviser());
    }

    private static String back(MultiValueMap<String, String> asked) {
        String back = Shown.text(asked.getFirst("back"));
        return back.matches("/(?![/\\\\]).*") && back.chars().noneMatch(c -> c < ' ') ? back : "";
    }

    private static String page(RowView view, Model model) {
        model.addAttribute("view", view);
        return "rows/row";
    }
}
