package plumbrow.app.desk.machine;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.ratemap.RateMaps;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.RateMapSummary;
import plumbrow.app.weather.Decided;
import plumbrow.documents.machine.RateZones;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.map.MapTrouble;

/** The file of a pass for the machine, on the desk. */
@Controller
public class MachinePage {
    private final DeskBook book;

    public MachinePage(DeskBook book) {
        this.book = book;
    }

    @GetMapping("/fields/{name}/machine")
    String show(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(defaultValue = "") String cell,
            @RequestParam(defaultValue = "") String unread,
            Model model,
            HttpServletResponse response) {
        return page(name, program, pass, cell, unread, "", model, response);
    }

    /** The same page with a sentence on what was wrong with the zones that came. */
    private String page(
            String name,
            @Nullable String program,
            @Nullable String pass,
            String cell,
            String unread,
            String wrong,
            Model model,
            HttpServletResponse response) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        boolean asked = pass != null || !cell.isBlank() || !unread.isBlank();
        Program found;
        try {
            found = Decided.program(season, field, book.choices(season.year()), program);
        } catch (IllegalArgumentException none) {
            throw new NotHereException(String.valueOf(none.getMessage()));
        }
        List<Pass> passes = RateMaps.passes(found);
        RateMapSummary map = null;
        String fault = wrong;
        Pass shown = passes.isEmpty() ? null : passes.get(0);
        try {
            Integer number = Decided.passNumber(pass);
            shown = passes.stream()
                    .filter(one -> number != null && one.number() == number)
                    .findFirst()
                    .orElse(shown);
            RateMap made = RateMaps.of(season, field, found, number, MachineAsked.how(cell, unread, List.of()));
            map = RateMapSummary.of(made);
        } catch (IllegalArgumentException no) {
            fault = fault.isEmpty() ? String.valueOf(no.getMessage()) : fault;
        }
        if (!fault.isEmpty() && (asked || !wrong.isEmpty())) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        String query = "?program=" + Shown.part(found.name())
                + (shown == null ? "" : "&pass=" + shown.number())
                + (cell.isBlank() ? "" : "&cell=" + Shown.part(cell))
                + (unread.isBlank() ? "" : "&unread=" + Shown.part(unread));
        model.addAttribute("view", new MachineView(field, found, passes, shown, map, fault, query, cell, unread));
        return "machine";
    }

    /** With zones out of a file: the file for the machine, or the page with what was wrong. */
    @PostMapping("/fields/{name}/machine")
    @Nullable
    Object zoned(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(defaultValue = "") String cell,
            @RequestParam(defaultValue = "") String unread,
            @RequestParam(defaultValue = "4") String edition,
            @RequestParam(defaultValue = "2") String grid,
            @RequestParam(defaultValue = "task-data") String as,
            @RequestParam(name = "zones", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response)
            throws IOException {
        String fileName = file == null ? "" : Shown.text(file.getOriginalFilename());
        try {
            if (file == null || fileName.isBlank()) {
                throw new MapTrouble("No file was chosen; expected " + MapFile.EXPECTED + ".");
            }
            List<RateMaps.DrawnZone> zones = RateZones.read(fileName, MapFile.read(fileName, file.getBytes()));
            return MachineAsked.file(book, name, program, pass, cell, unread, edition, grid, as, zones);
        } catch (MapTrouble | IllegalArgumentException fault) {
            return page(name, program, pass, cell, unread, String.valueOf(fault.getMessage()), model, response);
        }
    }
}
