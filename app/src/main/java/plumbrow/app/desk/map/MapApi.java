package plumbrow.app.desk.map;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.land.Zones;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.Json;
import plumbrow.app.json.LandSummary;
import plumbrow.app.json.ProgramZones;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.map.MapImport;
import plumbrow.documents.map.MapText;
import plumbrow.documents.map.MapTrouble;
import plumbrow.documents.workbook.ground.GeoJsonFile;

/** The map for programs: what the command map says, and shapes as GeoJSON. */
@RestController
public class MapApi {
    private static final MediaType GEO_JSON = MediaType.parseMediaType("application/geo+json");

    private final DeskBook book;

    public MapApi(DeskBook book) {
        this.book = book;
    }

    private record Fault(String error) {}

    private record Refused(String error, List<MapImport.Row> rows) {}

    @GetMapping("/api/map")
    ResponseEntity<byte[]> all() {
        Season season = Asked.season(book);
        return answer(
                HttpStatus.OK,
                MediaType.APPLICATION_JSON,
                Json.of(season.fields().stream()
                        .map(field -> LandSummary.of(season, field))
                        .toList()));
    }

    @GetMapping("/api/fields/{name}/map")
    ResponseEntity<byte[]> field(@PathVariable String name) {
        Season season = Asked.season(book);
        return answer(
                HttpStatus.OK, MediaType.APPLICATION_JSON, Json.of(LandSummary.of(season, Asked.field(season, name))));
    }

    @GetMapping("/api/fields/{name}/zones")
    ResponseEntity<byte[]> zones(@PathVariable String name) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        Gates gates = Gates.of(season);
        return answer(
                HttpStatus.OK,
                MediaType.APPLICATION_JSON,
                Json.of(season.programs(name).stream()
                        .map(program -> ProgramZones.of(season, gates, field, program))
                        .toList()));
    }

    /**
     * Takes in a map file for the whole season, whole or not at all, and answers with what became of each shape. The kind of
     * file is said by its content type.
     *
     * @param name the file's name, noted as the source of what it brings
     */
    @PostMapping(path = "/api/map", consumes = MediaType.ALL_VALUE)
    ResponseEntity<byte[]> take(
            @RequestParam(defaultValue = "map") String name,
            @RequestHeader(name = "Content-Type", defaultValue = "") String type,
            InputStream body)
            throws IOException {
        Asked.season(book);
        String ending = MapFile.ending(type.split(";", -1)[0].strip().toLowerCase(Locale.ROOT))
                .orElseThrow(
                        () -> new MapTrouble("The content type is '" + type + "'; expected " + MapFile.TYPES + "."));
        String file = name.toLowerCase(Locale.ROOT).endsWith(ending) ? name : name + ending;
        List<GeoJsonFile.Feature> shapes = MapFile.read(file, body.readNBytes(MapFile.MOST_BYTES + 1));
        MapImport.Result result = MapImport.through(book::change, file, shapes);
        return result.refused()
                ? answer(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        MediaType.APPLICATION_JSON,
                        Json.of(new Refused(
                                "Nothing of " + file + " was taken in; the book is as it was.", result.rows())))
                : answer(HttpStatus.OK, MediaType.APPLICATION_JSON, Json.of(result.rows()));
    }

    /** Outline and features, and the zones of a program where one is named. */
    @GetMapping("/api/fields/{name}/map.geojson")
    ResponseEntity<byte[]> shapes(@PathVariable String name, @RequestParam(required = false) @Nullable String program) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        List<Zones> zones =
                program == null ? List.of() : Gates.of(season).zones(field, program(season, field, program));
        return answer(HttpStatus.OK, GEO_JSON, MapText.of(field, season.ground().features(name), zones));
    }

    private static Program program(Season season, Field field, String name) {
        return season.programs(field.name()).stream()
                .filter(program -> program.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotHereException(field.name() + " has no program of this name."));
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> notHere(NotHereException fault) {
        return fault(HttpStatus.NOT_FOUND, String.valueOf(fault.getMessage()));
    }

    @ExceptionHandler(MapTrouble.class)
    ResponseEntity<byte[]> unusable(MapTrouble fault) {
        return fault(HttpStatus.UNPROCESSABLE_CONTENT, String.valueOf(fault.getMessage()));
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return fault(HttpStatus.NOT_FOUND, "The book is empty: import a workbook before asking for its map.");
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return fault(HttpStatus.SERVICE_UNAVAILABLE, String.valueOf(fault.getMessage()));
    }

    private static ResponseEntity<byte[]> fault(HttpStatus status, String sentence) {
        return answer(status, MediaType.APPLICATION_JSON, Json.of(new Fault(sentence)));
    }

    private static ResponseEntity<byte[]> answer(HttpStatus status, MediaType type, String text) {
        return ResponseEntity.status(status).contentType(type).body(text.getBytes(StandardCharsets.UTF_8));
    }
}
