package plumbrow.app.desk.machine;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.ratemap.RateMaps;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.machine.MachineFile;
import plumbrow.app.weather.Decided;

/** What is asked for of a machine file, as it is typed; an {@link IllegalArgumentException} bears the sentence where it can't be. */
final class MachineAsked {
    private MachineAsked() {}

    static ResponseEntity<byte[]> file(
            DeskBook book,
            String name,
            @Nullable String program,
            @Nullable String pass,
            String cell,
            String unread,
            String edition,
            String grid,
            String as,
            List<RateMaps.DrawnZone> zones) {
        MachineFile kind = MachineFile.called(as)
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no such kind of machine file; expected task-data, shapefile or geojson."));
        MachineFile.Edition chosen = MachineFile.Edition.of(edition, grid);
        RateMap map = map(book, name, program, pass, cell, unread, zones);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(kind.contentType()))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(kind.fileName())
                                .build()
                                .toString())
                .body(kind.content(map, chosen));
    }

    static RateMap map(
            DeskBook book,
            String name,
            @Nullable String program,
            @Nullable String pass,
            String cell,
            String unread,
            List<RateMaps.DrawnZone> zones) {
        Season season = Asked.season(book);
        Field field = Asked.field(season, name);
        Program found = Decided.program(season, field, book.choices(season.year()), program);
        return RateMaps.of(season, field, found, Decided.passNumber(pass), how(cell, unread, zones));
    }

    static RateMaps.Asked how(String cell, String unread, List<RateMaps.DrawnZone> zones) {
        Double feet = feet("cell", cell);
        return new RateMaps.Asked(
                Objects.requireNonNullElse(feet, RateMaps.USUAL_CELL_FT), feet("unread", unread), zones);
    }

    private static @Nullable Double feet(String what, String typed) {
        if (typed.isBlank()) {
            return null;
        }
        try {
            return new BigDecimal(typed.strip()).doubleValue();
        } catch (NumberFormatException none) {
            throw new IllegalArgumentException("“" + (typed.length() > 40 ? typed.substring(0, 37) + "…" : typed)
                    + "” stands under " + what + "; expected feet as a number, such as 15.");
        }
    }
}
