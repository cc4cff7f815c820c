package plumbrow.app.desk.map;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.land.Zones;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.json.CourseZones;
import plumbrow.app.json.Json;
import plumbrow.app.json.LandSummary;
import plumbrow.documents.map.MapText;

/** The map for programs: what the command map says, and shapes as GeoJSON. */
@RestController
public class MapApi {
    private static final MediaType GEO_JSON = MediaType.parseMediaType("application/geo+json");

    private final DeskBook book;

    public MapApi(DeskBook book) {
        this.book = book;
    }

    private record Fault(String error) {}

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
                Json.of(season.courses(name).stream()
                        .map(course -> CourseZones.of(season, gates, field, course))
                        .toList()));
    }

    /** Outline and features, and the zones of a course where one is named. */
    @GetMapping("/api/fields/{name}/map.geojson")
    ResponseEntity<byte[]> shapes(@PathVariable String name, @RequestParam(required = false) @Nullable String course) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        List<Zones> zones = course == null ? List.of() : Gates.of(season).zones(field, course(season, field, course));
        return answer(HttpStatus.OK, GEO_JSON, MapText.of(field, season.ground().features(name), zones));
    }

    private static Course course(Season season, Field field, String name) {
        return season.courses(field.name()).stream()
                .filter(course -> course.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotHereException(field.name() + " has no course of this name."));
    }

    @ExceptionHandler(NotHereException.class)
    ResponseEntity<byte[]> notHere(NotHereException fault) {
        return fault(HttpStatus.NOT_FOUND, String.valueOf(fault.getMessage()));
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
