package plumbrow.app.desk.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.GatePage;
import plumbrow.advice.season.Season;
import plumbrow.app.book.LogLine;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.door.TileAddress;
import plumbrow.app.desk.map.MapSheet;
import plumbrow.app.desk.map.Tiles;

/** The check of the whole farm, of one field, and what each gate is. */
@Controller
public class CheckPage {
    private final DeskBook book;
    private final FarmChecks checks;
    private final Tiles tiles;

    public CheckPage(DeskBook book, FarmChecks checks, TileAddress tiles) {
        this.book = book;
        this.checks = checks;
        this.tiles = new Tiles(tiles);
    }

    @GetMapping("/check")
    String farm(
            @RequestParam(defaultValue = "") String standing,
            @RequestParam(defaultValue = "") String protects,
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "1") int matters,
            Model model) {
        Season season = Asked.season(book);
        model.addAttribute("view", FarmView.of(checks.of(season), Sieve.read(standing, protects), find, page, matters));
        return "check/farm";
    }

    @GetMapping("/fields/{name}/check")
    String field(
            @PathVariable String name,
            @RequestParam(defaultValue = "") String program,
            @RequestParam(defaultValue = "") String standing,
            @RequestParam(defaultValue = "") String protects,
            Model model) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        SeasonCheck check = SeasonCheck.of(season, List.of(field));
        if (check.programs().isEmpty()) {
            throw new NotHereException("No program has been entered for “" + name + "”, so there is nothing to check.");
        }
        ProgramCheck chosen = check.programs().stream()
                .filter(one -> one.program().name().equals(program))
                .findFirst()
                .orElseGet(() -> check.programs().get(0));
        List<LogLine> log = new ArrayList<>(book.log().stream()
                .filter(line -> line.done().field().equals(field.name()))
                .toList());
        Collections.reverse(log);
        MapSheet map = MapSheet.of(season, field, chosen.program().name(), tiles);
        model.addAttribute("view", new FieldView(check, field, chosen, Sieve.read(standing, protects), map, log));
        return "check/field";
    }

    @GetMapping("/gates")
    String gates(Model model) {
        model.addAttribute("pages", GatePage.all());
        return "check/gates";
    }

    @GetMapping("/gates/{id}")
    String gate(@PathVariable String id, Model model) {
        model.addAttribute("page", Asked.gate(id));
        return "check/gate";
    }
}
