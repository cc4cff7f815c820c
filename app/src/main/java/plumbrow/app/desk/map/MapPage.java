package plumbrow.app.desk.map;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.TileAddress;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.map.MapImport;
import plumbrow.documents.map.MapTrouble;
import plumbrow.documents.map.Placing;
import plumbrow.documents.workbook.ground.GeoJsonFile;

/** The map of a field, the map of all fields, and the form by which shapes come in. */
@Controller
public class MapPage {
    private final DeskBook book;
    private final Tiles tiles;

    public MapPage(DeskBook book, TileAddress tiles) {
        this.book = book;
        this.tiles = new Tiles(tiles);
    }

    @GetMapping("/map")
    String farm(@RequestParam(defaultValue = "") String find, @RequestParam(defaultValue = "1") int page, Model model) {
        return overview(model, List.of(), "", find, page);
    }

    @GetMapping("/fields/{name}/map")
    String field(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String feature,
            Model model) {
        FeatureForm form = Asked.season(book).ground().features(name).stream()
                .filter(one -> one.kind().word().equals(kind) && one.name().equals(feature))
                .findFirst()
                .map(FeatureForm::of)
                .orElse(FeatureForm.EMPTY);
        return page(name, program, form, "", model);
    }

    /** Takes in what was drawn or typed; nothing typed is lost where it can't be used. */
    @PostMapping("/fields/{name}/map")
    String put(
            @PathVariable String name,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(name = "called", defaultValue = "") String called,
            @RequestParam(defaultValue = "") String form,
            @RequestParam(defaultValue = "") String places,
            @RequestParam(defaultValue = "") String feet,
            @RequestParam(defaultValue = "") String source,
            Model model,
            HttpServletResponse response) {
        FeatureForm typed = new FeatureForm(kind, called, form, places, feet, source);
        Asked.field(Asked.season(book), name);
        try {
            book.change(season -> typed.in(season, Asked.field(season, name)));
        } catch (MapTrouble fault) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(name, null, typed, Shown.text(fault.getMessage()), model);
        }
        return "redirect:/fields/" + Shown.part(name).replace("{", "%7B") + "/map";
    }

    @PostMapping("/fields/{name}/map/remove")
    String remove(@PathVariable String name, @RequestParam String kind, @RequestParam String feature) {
        Asked.field(Asked.season(book), name);
        FeatureKind.called(kind)
                .ifPresent(known -> book.change(season -> Placing.removed(season, name, known, feature)));
        return "redirect:/fields/" + Shown.part(name) + "/map";
    }

    /** Takes in a map file for the whole season, whole or not at all. */
    @PostMapping("/map")
    String take(
            @RequestParam(name = "map", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response)
            throws IOException {
        String name = file == null ? "" : Shown.text(file.getOriginalFilename());
        try {
            if (file == null || name.isBlank()) {
                throw new MapTrouble("No file was chosen; expected " + MapFile.EXPECTED + ".");
            }
            List<GeoJsonFile.Feature> shapes = MapFile.read(name, file.getBytes());
            Asked.season(book);
            MapImport.Result result = MapImport.through(book::change, name, shapes);
            if (result.refused()) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
                return overview(model, result.rows(), "Nothing of " + name + " was taken in; the book is as it was.");
            }
            return overview(model, result.rows(), "");
        } catch (MapTrouble fault) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return overview(model, List.of(), Shown.text(fault.getMessage()));
        }
    }

    private String page(String name, @Nullable String program, FeatureForm form, String fault, Model model) {
        Season season = Asked.season(book);
        model.addAttribute("map", MapSheet.of(season, Asked.field(season, name), program, tiles));
        model.addAttribute("form", form);
        model.addAttribute("fault", fault);
        return "map";
    }

    private String overview(Model model, List<MapImport.Row> rows, String fault) {
        return overview(model, rows, fault, "", 1);
    }

    /** A page of the fields, on the maps of their farms. */
    private String overview(Model model, List<MapImport.Row> rows, String fault, String find, int page) {
        Season season = Asked.season(book);
        Predicate<String> holds = Part.holding(find);
        Part<Field> part = Part.of(
                season.fields().stream()
                        .filter(field -> holds.test(field.name()) || holds.test(field.farm()))
                        .toList(),
                page);
        Season shown = season.withFields(part.lines());
        model.addAttribute(
                "farms",
                season.farms().stream()
                        .map(farm -> FarmMap.of(shown, farm))
                        .filter(map -> !map.fields().isEmpty())
                        .toList());
        model.addAttribute("all", season.fields().size());
        model.addAttribute("bare", (int) season.fields().stream()
                .filter(field -> field.boundary() == null)
                .count());
        model.addAttribute("part", part);
        model.addAttribute("find", find);
        model.addAttribute("year", season.year());
        model.addAttribute("rows", rows);
        model.addAttribute("fault", fault);
        return "maps";
    }
}
