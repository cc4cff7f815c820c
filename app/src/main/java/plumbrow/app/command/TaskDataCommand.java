package plumbrow.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.ratemap.NoRateMapException;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.ratemap.RateMaps;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.MachineWorkWords;
import plumbrow.app.command.said.RateMapWords;
import plumbrow.app.json.Json;
import plumbrow.app.json.MachineWorkSummary;
import plumbrow.app.json.RateMapSummary;
import plumbrow.app.machine.MachineFile;
import plumbrow.app.machine.MachineRecord;
import plumbrow.app.weather.Decided;
import plumbrow.documents.WholeFile;
import plumbrow.documents.apart.ApartReader;
import plumbrow.documents.machine.RateZones;
import plumbrow.documents.machine.log.MachineWork;
import plumbrow.documents.map.MapFile;

/** Files for machines: the rates of a pass by place, written; what a machine did, read. */
@Command(
        name = "task-data",
        description = "Writes the rates of a pass for a machine, and reads what a machine wrote down of its work.")
final class TaskDataCommand implements Runnable {
    private final Screen screen;

    TaskDataCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do with task data: write OUT, or read FILE.");
    }

    @Command(
            name = "write",
            description = "Writes the file of a pass; setbacks and all outside the field are at rate zero.",
            footer = {
                "",
                "A name that ends in .zip is a zip, one that ends in .geojson GeoJSON; task data may go into a new folder.",
                "Zones are areas with the attribute rate (and unit), or gal_ac, lb_ac or seeds_ac.",
                "The current label is the law.",
                "Exit: 0 good, 1 where the pass is barred, 2 bad input; then nothing is written."
            })
    int write(
            @Mixin FromBook from,
            @Parameters(paramLabel = "OUT", description = "A .zip or .geojson file, or a folder; not there yet.")
                    Path out,
            @Option(names = "--field", paramLabel = "NAME", required = true, description = "The field.") String name,
            @Option(
                            names = "--program",
                            paramLabel = "NAME",
                            description = "The program; else the chosen one, else the baseline.")
                    @Nullable
                    String program,
            @Option(
                            names = "--pass",
                            paramLabel = "N",
                            description = "The pass; else the first that puts something on.")
                    @Nullable
                    Integer pass,
            @Option(
                            names = "--as",
                            paramLabel = "KIND",
                            description = "task-data, shapefile or geojson; else by the name of OUT.")
                    @Nullable
                    String as,
            @Option(
                            names = "--edition",
                            paramLabel = "3|4",
                            defaultValue = "4",
                            description = "Edition of task data; else 4.")
                    String edition,
            @Option(
                            names = "--grid",
                            paramLabel = "1|2",
                            defaultValue = "2",
                            description = "Grid type: 1 a zone in each cell, 2 a value in each cell; else 2.")
                    String grid,
            @Option(
                            names = "--cell",
                            paramLabel = "FT",
                            defaultValue = "15",
                            description = "Side of a cell, 3 to 5280 ft; else 15.")
                    double cellFt,
            @Option(
                            names = "--zones",
                            paramLabel = "FILE",
                            description = "Zones with rates of their own: .geojson, .kml or a zipped shapefile.")
                    @Nullable
                    Path zones,
            @Option(
                            names = "--unread",
                            paramLabel = "FT",
                            description =
                                    "Feet to keep from what the label was not read for; else such a pass has no file.")
                    @Nullable
                    Double unreadFt,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        MachineFile kind = kind(out, as);
        boolean whole = lower(out).endsWith(kind == MachineFile.GEOJSON ? ".geojson" : ".zip");
        if (!whole && kind != MachineFile.TASK_DATA) {
            throw new BadInputException("The name is '" + out + "'; expected one that ends in "
                    + (kind == MachineFile.GEOJSON ? ".geojson" : ".zip") + " for " + kind.word() + ".");
        }
        NewFile.demandFree(out);
        if (Files.isDirectory(out) && whole) {
            throw new BadInputException(out + " is a folder; give a name that is not taken.");
        }
        MachineFile.Edition chosen = edition(edition, grid);
        Season season = from.season();
        Field field = FromBook.fields(season, List.of(name)).get(0);
        RateMaps.Asked asked = new RateMaps.Asked(
                cellFt,
                unreadFt,
                zones == null ? List.of() : RateZones.read(String.valueOf(zones.getFileName()), MapFile.read(zones)));
        RateMap map;
        try {
            map = RateMaps.of(season, field, program(from, season, field, program), pass, asked);
        } catch (NoRateMapException none) {
            if (none.barred()) {
                screen.complain(String.valueOf(none.getMessage()));
                return Exit.NOT_ADVISED;
            }
            throw new BadInputException(String.valueOf(none.getMessage()));
        }
        if (whole) {
            byte[] content = kind.content(map, chosen);
            WholeFile.write(out, file -> file.write(content));
        } else {
            WholeFile.writeFolder(out, kind.files(map, chosen));
        }
        RateMapSummary summary = RateMapSummary.of(map);
        screen.say(json ? Json.of(summary) : RateMapWords.of(summary));
        return Exit.GOOD;
    }

    @Command(
            name = "read",
            description = "Says what a machine did, by the task data or the table of points that it wrote.",
            footer = {
                "",
                "Reads task data in a zip or folder, or a .csv with a line a point. With --field it says how much of that lies in the",
                "field, and what a record of it says. Headings of a table: time, latitude, longitude, area_ac or area_m2,",
                "distance_ft or _m, width_ft or _m, gal_ac, l_ha, lb_ac, kg_ha, seeds_ac or seeds_ha, product, field, task.",
                "Exit: 0 good, 2 bad input."
            })
    int read(
            @Mixin FromBook from,
            @Parameters(paramLabel = "FILE", description = "A .zip, a folder, or a .csv.") Path file,
            @Option(names = "--field", paramLabel = "NAME", description = "The field it was.") @Nullable String name,
            @Option(names = "--program", paramLabel = "NAME", description = "The program it was; else the chosen one.")
                    @Nullable
                    String program,
            @Option(names = "--pass", paramLabel = "N", description = "The pass it was: parts spray into its products.")
                    @Nullable
                    Integer pass,
            @Option(
                            names = "--columns",
                            paramLabel = "KEY=HEADING",
                            split = ",",
                            description = "Headings of another name, such as width_ft=SWATH.")
                    @Nullable
                    Map<String, String> columns,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        if (name == null && (program != null || pass != null)) {
            throw new BadInputException("Say which field it was, with --field.");
        }
        MachineWork.Log log;
        try (ApartReader reader = new ApartReader()) {
            log = reader.machineWork(file, columns == null ? Map.of() : columns);
        }
        List<MachineWorkSummary> works;
        if (name == null) {
            works = log.works().stream()
                    .map(work -> MachineWorkSummary.of(work, null))
                    .toList();
        } else {
            Season season = from.season();
            Field field = FromBook.fields(season, List.of(name)).get(0);
            SprayTrip trip = pass == null ? null : trip(from, season, field, program, pass);
            works = log.works().stream()
                    .map(work -> MachineWorkSummary.of(work, MachineRecord.of(season, field, trip, work)))
                    .toList();
        }
        screen.say(json ? Json.of(works) : MachineWorkWords.of(works));
        return Exit.GOOD;
    }

    private static SprayTrip trip(FromBook from, Season season, Field field, @Nullable String program, int pass) {
        try (Book book = Book.open(from.file())) {
            return Decided.trip(season, field, book.choices(season.year()), program, pass, false);
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }

    private static MachineFile kind(Path out, @Nullable String as) {
        if (as == null) {
            return lower(out).endsWith(".geojson") ? MachineFile.GEOJSON : MachineFile.TASK_DATA;
        }
        return MachineFile.called(as)
                .orElseThrow(() -> new BadInputException(
                        "There is no kind of machine file '" + as + "'; expected task-data, shapefile or geojson."));
    }

    private static MachineFile.Edition edition(String edition, String grid) {
        try {
            return MachineFile.Edition.of(edition, grid);
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }

    private static Program program(FromBook from, Season season, Field field, @Nullable String program) {
        try (Book book = Book.open(from.file())) {
            return Decided.program(season, field, book.choices(season.year()), program);
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }

    private static String lower(Path path) {
        return path.toString().toLowerCase(Locale.ROOT);
    }
}
