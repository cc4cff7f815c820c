package plumbrow.app.desk.machine;

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
import plumbrow.advice.ratemap.NoRateMapException;
import plumbrow.advice.ratemap.RateMaps;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.Json;
import plumbrow.app.json.RateMapSummary;
import plumbrow.documents.machine.RateZones;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.map.MapTrouble;

/** The file of a pass for the machine, for programs. */
@RestController
public class MachineApi {
    private final DeskBook book;

    public MachineApi(DeskBook book) {
        this.book = book;
    }

    private record Fault(String error) {}

    @GetMapping("/api/fields/{name}/rate-map")
    ResponseEntity<byte[]> summary(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(defaultValue = "") String cell,
            @RequestParam(defaultValue = "") String unread) {
        return json(
                HttpStatus.OK,
                Json.of(RateMapSummary.of(MachineAsked.map(book, name, program, pass, cell, unread, List.of()))));
    }

    /** The file as asked for: task-data, shapefile or geojson. */
    @GetMapping("/api/fields/{name}/machine-file")
    ResponseEntity<byte[]> file(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(defaultValue = "") String cell,
            @RequestParam(defaultValue = "") String unread,
            @RequestParam(defaultValue = "4") String edition,
            @RequestParam(defaultValue = "2") String grid,
            @RequestParam(defaultValue = "task-data") String as) {
        return MachineAsked.file(book, name, program, pass, cell, unread, edition, grid, as, List.of());
    }

    /** The same with zones in the body, of the kind that its content type says. */
    @PostMapping(path = "/api/fields/{name}/machine-file", consumes = MediaType.ALL_VALUE)
    ResponseEntity<byte[]> zonedFile(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable String program,
            @RequestParam(required = false) @Nullable String pass,
            @RequestParam(defaultValue = "") String cell,
            @RequestParam(defaultValue = "") String unread,
            @RequestParam(defaultValue = "4") String edition,
            @RequestParam(defaultValue = "2") String grid,
            @RequestParam(defaultValue = "task-data") String as,
            @RequestHeader(name = "Content-Type", defaultValue = "") String type,
            InputStream body)
            throws IOException {
        String ending = MapFile.ending(type.split(";", -1)[0].strip().toLowerCase(Locale.ROOT))
                .orElseThrow(
                        () -> new MapTrouble("The content type is '" + type + "'; expected " + MapFile.TYPES + "."));
        String file = "zones" + ending;
        List<RateMaps.DrawnZone> zones =
                RateZones.read(file, MapFile.read(file, body.readNBytes(MapFile.MOST_BYTES + 1)));
        return MachineAsked.file(book, name, program, pass, cell, unread, edition, grid, as, zones);
    }

    @ExceptionHandler({IllegalArgumentException.class, MapTrouble.class})
    ResponseEntity<byte[]> unusable(RuntimeException fault) {
        boolean barred = fault instanceof NoRateMapException none && none.barred();
        return json(
                barred ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT,
                Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }

    private static ResponseEntity<byte[]> json(HttpStatus status, String text) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> notHere(NotHereException fault) {
        return json(HttpStatus.NOT_FOUND, Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }

    @ExceptionHandler(NoSeasonException.class)
    ResponseEntity<byte[]> empty() {
        return json(
                HttpStatus.NOT_FOUND,
                Json.of(new Fault("The book is empty: import a workbook before asking for a machine file.")));
    }

    @ExceptionHandler(BookException.class)
    ResponseEntity<byte[]> book(BookException fault) {
        return json(HttpStatus.SERVICE_UNAVAILABLE, Json.of(new Fault(String.valueOf(fault.getMessage()))));
    }
}
