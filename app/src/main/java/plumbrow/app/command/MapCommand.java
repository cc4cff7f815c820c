package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.MapWords;
import plumbrow.app.json.Json;
import plumbrow.app.json.LandSummary;
import plumbrow.app.json.ProgramZones;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.map.MapImport;
import plumbrow.documents.map.MapText;
import plumbrow.documents.workbook.ground.GeoJsonFile;

/** The fields on the map: what their outlines say, what setbacks leave of them, and shapes from other programs. */
@Command(
        name = "map",
        description = "The fields on the map: acres, counties, distances, setback zones; takes in map files.")
final class MapCommand implements Runnable {
    private final Screen screen;

    MapCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do with the map: field, zones, or import FILE.");
    }

    @Command(
            name = "field",
            description = "Acres inside the outline, counties by the census map, and how far everything lies.",
            footer = {"", "Exit: 0 good, 2 bad input."})
    int field(
            @Mixin FromBook from,
            @Option(names = "--field", paramLabel = "NAME", arity = "1..*", description = "Only these fields.")
                    @Nullable
                    List<String> names,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        Season season = from.season();
        List<LandSummary> land = FromBook.fields(season, names == null ? List.of() : names).stream()
                .map(field -> LandSummary.of(season, field))
                .toList();
        screen.say(json ? Json.of(land) : MapWords.land(land));
        return Exit.GOOD;
    }

    @Command(
            name = "zones",
            description = "What the labels' setbacks leave of a field, product by product.",
            footer = {"", "The current label is the law.", "Exit: 0 good, 2 bad input."})
    int zones(
            @Mixin FromBook from,
            @Option(names = "--field", paramLabel = "NAME", required = true, description = "The field.") String name,
            @Option(names = "--program", paramLabel = "NAME", description = "Only the program of this name.") @Nullable
                    String program,
            @Option(names = "--json", description = "Answer as JSON.") boolean json,
            @Option(
                            names = "--geojson",
                            description =
                                    "Answer as GeoJSON: outline, features, zones and what may be sprayed; names one program.")
                    boolean geojson) {
        Season season = from.season();
        Field field = FromBook.fields(season, List.of(name)).get(0);
        List<Program> programs = programs(season, field, program);
        if (geojson && programs.size() != 1) {
            throw new BadInputException("Name one program for GeoJSON, with --program; the programs are "
                    + names(season.programs(name)) + ".");
        }
        Gates gates = Gates.of(season);
        List<ProgramZones> found = new ArrayList<>();
        for (Program each : programs) {
            found.add(ProgramZones.of(season, gates, field, each));
        }
        if (geojson) {
            screen.say(MapText.of(
                    field, season.ground().features(name), found.get(0).passes()));
        } else if (json) {
            screen.say(Json.of(found));
        } else {
            found.forEach(each -> screen.say(MapWords.zones(each)));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "import",
            description =
                    "Takes outlines and features out of GeoJSON, KML or a zipped shapefile into the latest season.",
            footer = {
                "",
                "A shape whose attribute kind is a stream, ditch, pond, well, sinkhole, tile inlet, dwelling, school, bee",
                "yard, sensitive crop, organic field or protected habitat is a feature; it goes to the field its attribute",
                "field names, or to all outlined fields within a quarter mile. Any other area is the outline of the field",
                "that its attribute field or name names. Where anything is wrong, the book stays as it was.",
                "Exit: 0 good, 2 bad input."
            })
    int take(
            @Parameters(paramLabel = "FILE", description = "A .geojson, .json, .kml or .zip file.") Path map,
            @Option(
                            names = "--book",
                            paramLabel = "FILE",
                            defaultValue = FromBook.DEFAULT,
                            description = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.")
                    Path file,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        List<GeoJsonFile.Feature> shapes = MapFile.read(map);
        try (Book book = Book.open(file)) {
            if (book.seasons().isEmpty()) {
                throw new BadInputException("The book " + file
                        + " holds no season yet; bring one in with: plumbrow book import WORKBOOK --book " + file);
            }
            MapImport.Result result = MapImport.through(book::change, String.valueOf(map.getFileName()), shapes);
            if (result.refused()) {
                throw new BadInputException(MapWords.refused(map, result));
            }
            screen.say(json ? Json.of(result.rows()) : MapWords.taken(map, result));
        }
        return Exit.GOOD;
    }

    private static List<Program> programs(Season season, Field field, @Nullable String program) {
        List<Program> programs = season.programs(field.name()).stream()
                .filter(candidate -> program == null || candidate.name().equals(program))
                .toList();
        if (programs.isEmpty() && program != null) {
            throw new BadInputException("There is no program '" + program + "' there; the programs are "
                    + names(season.programs(field.name())) + ".");
        }
        return programs;
    }

    private static String names(List<Program> programs) {
        return programs.stream().map(Program::name).collect(Collectors.joining(", "));
    }
}
