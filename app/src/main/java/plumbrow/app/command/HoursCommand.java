package plumbrow.app.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.HoursAsked;
import plumbrow.advice.hours.Practice;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.HoursWords;
import plumbrow.app.json.HoursSummary;
import plumbrow.app.json.Json;
import plumbrow.app.weather.Decided;
import plumbrow.app.weather.WeatherIntake;
import plumbrow.app.weather.Zones;
import plumbrow.documents.WholeFile;
import plumbrow.documents.picture.HoursPicture;
import plumbrow.documents.weather.WeatherAsked;
import plumbrow.documents.weather.WeatherFile;
import plumbrow.documents.weather.WeatherRead;

/** The hours fit for spraying: of a field's trip, and the files of weather they come from. */
@Command(
        name = "hours",
        description = "Says which hours are fit for a spray, what rules the others out and whose rule it is.",
        footer = {
            "",
            "Without a subcommand: the hours of a trip; say which with --field.",
            "Exit: 0 good, 1 where no hour is fit, 2 bad input. The current label is the law."
        })
final class HoursCommand implements Callable<Integer> {
    private static final int PICTURE_PX = 1000;
    private static final int WEEK = 7;

    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", description = "The field.")
    private @Nullable String name;

    @Option(
            names = "--program",
            paramLabel = "NAME",
            description = "The program; else the chosen one, else the baseline.")
    private @Nullable String program;

    @Option(
            names = "--pass",
            paramLabel = "N",
            description = "A pass of the trip; else the first spray of the program.")
    private @Nullable Integer pass;

    @Option(names = "--from", paramLabel = "DAY", description = "First day; else the planned day.")
    private @Nullable String first;

    @Option(names = "--days", paramLabel = "N", description = "How many days, 1 to 31; else 7.")
    private int days = WEEK;

    @Option(
            names = "--window",
            paramLabel = "FROM..UNTIL",
            description = "Days within which it must be done, such as 2026-05-20..2026-06-04.")
    private @Nullable String window;

    @Option(names = "--machine", paramLabel = "NAME", description = "Which sprayer; else the farm's first.")
    private @Nullable String machine;

    @Option(
            names = "--wind",
            paramLabel = "LEAST..MOST",
            description = "Wind of good practice at the boom, mph; else 3..10.")
    private @Nullable String wind;

    @Option(names = "--svg", paramLabel = "OUT", description = "Writes the picture into this file.")
    private @Nullable Path svg;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    HoursCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        String asked = name;
        if (asked == null) {
            throw new BadInputException(
                    "Say which field, with --field; or: hours import FILE, hours files, hours forget NUMBER.");
        }
        Season season = from.season();
        Field field = FromBook.fields(season, List.of(asked)).get(0);
        HourlyWeather weather = from.weather(field)
                .orElseThrow(() -> new BadInputException("No hourly weather is on file for " + field.name() + " or "
                        + field.state() + ": " + field.county() + ", so its hours are unknown. Bring a file in with:"
                        + " plumbrow hours import FILE --place \"" + field.state() + ": " + field.county() + "\""));
        SprayTrip trip = trip(season, field);
        TripHours hours = TripHours.of(season, trip, weather, asked(trip))
                .orElseThrow(() -> new BadInputException("Where the sun stands at " + field.name()
                        + " is not known: its county is not on the map, and the weather file names no place."));
        Path file = svg;
        if (file != null) {
            String picture = HoursPicture.svg(hours, PICTURE_PX);
            WholeFile.write(file, out -> out.write(picture.getBytes(StandardCharsets.UTF_8)));
        }
        screen.say(json ? Json.of(HoursSummary.of(hours)) : HoursWords.of(hours));
        return hours.job().fit() == 0 ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private SprayTrip trip(Season season, Field field) {
        try (Book book = Book.open(from.file())) {
            return Decided.trip(season, field, book.choices(season.year()), program, pass, true);
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }

    private HoursAsked asked(SprayTrip trip) {
        LocalDate begin = first == null ? trip.date() : day("--from", first);
        if (begin == null) {
            throw new BadInputException("The pass has no planned day; name the first day with --from.");
        }
        String said = window;
        String[] ends = said == null ? new String[0] : said.split("\\.\\.", -1);
        if (said != null && ends.length != 2) {
            throw new BadInputException(
                    "--window is '" + said + "'; expected two days such as 2026-05-20..2026-06-04.");
        }
        if (machine != null && trip.field() != null) {
            machineKnown(trip);
        }
        try {
            return new HoursAsked(
                    begin,
                    begin.plusDays(Math.max(0, days - 1L)),
                    machine,
                    ends.length == 2 ? day("--window", ends[0]) : null,
                    ends.length == 2 ? day("--window", ends[1]) : null,
                    practice());
        } catch (IllegalArgumentException range) {
            throw new BadInputException(String.valueOf(range.getMessage()));
        }
    }

    private void machineKnown(SprayTrip trip) {
        List<String> known =
                trip.machines(from.season()).stream().map(one -> one.name()).toList();
        if (!known.contains(machine)) {
            throw new BadInputException("There is no sprayer '" + machine + "' on "
                    + trip.field().farm() + "; "
                    + (known.isEmpty() ? "none is on file." : "its sprayers are " + String.join(", ", known) + "."));
        }
    }

    private Practice practice() {
        String said = wind;
        if (said == null) {
            return Practice.DEFAULT;
        }
        String[] ends = said.split("\\.\\.", -1);
        try {
            Practice usual = Practice.DEFAULT;
            return new Practice(
                    Double.parseDouble(ends[0]),
                    Double.parseDouble(ends[1]),
                    usual.deltaLeastC(),
                    usual.deltaMostC(),
                    usual.afterSunriseH(),
                    usual.beforeSunsetH(),
                    usual.coolestF(),
                    usual.dewHumidityPct());
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException fault) {
            throw new BadInputException(
                    "--wind is '" + said + "'; expected two speeds such as 3..10, the lower first.");
        }
    }

    private static LocalDate day(String option, String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException fault) {
            throw new BadInputException(option + " is '" + text + "'; expected a day such as 2026-05-24.");
        }
    }

    @Command(
            name = "import",
            description = "Takes hourly weather, or days, into the book.",
            footer = {
                "",
                "Read are plain CSV, NOAA ISD-Lite, NOAA Local Climatological Data, GHCN-Daily, and the National Weather",
                "Service's hourly forecast or forecast grid saved to a file. Days go to the sheet weather_days.",
                "Exit: 0 good, 2 bad input."
            })
    int take(
            @Parameters(paramLabel = "FILE", description = "The file.") Path file,
            @Option(
                            names = "--place",
                            paramLabel = "PLACE",
                            required = true,
                            description = "A field, or a county as \"IA: Story\".")
                    String place,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = "The book.")
                    Path at,
            @Option(
                            names = "--zone",
                            paramLabel = "ZONE",
                            description = "The clock there, such as America/Chicago; else by the state.")
                    @Nullable
                    String zone,
            @Option(
                            names = "--utc-offset",
                            paramLabel = "H",
                            description = "The file's clock, hours from UTC; else standard time there.")
                    @Nullable
                    String offset,
            @Option(names = "--latitude", paramLabel = "DEG", description = "Of the station.") @Nullable
                    Double latitude,
            @Option(names = "--longitude", paramLabel = "DEG", description = "Of the station, east positive.") @Nullable
                    Double longitude,
            @Option(names = "--wind-height", paramLabel = "M", description = "Height of its wind; else 10 m.") @Nullable
                    Double windHeight,
            @Option(
                            names = "--columns",
                            paramLabel = "KEY=HEADING",
                            split = ",",
                            description = "For a plain CSV: which heading holds what, such as wind_mph=WS.")
                    @Nullable
                    Map<String, String> columns,
            @Option(names = "--source", paramLabel = "TEXT", description = "Who gave the file.") @Nullable
                    String source,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        byte[] bytes = WeatherFile.bytes(file);
        try (Book book = Book.open(at)) {
            Season season = book.latestSeason()
                    .orElseThrow(() -> new BadInputException("The book " + at + " holds no season yet."));
            WeatherAsked asked = WeatherIntake.asked(
                    season,
                    place,
                    zone(season, place, zone),
                    offset(offset),
                    latitude,
                    longitude,
                    windHeight,
                    columns,
                    source);
            WeatherIntake.Taken taken =
                    WeatherIntake.take(book, String.valueOf(file.getFileName()), bytes, asked, Instant.now());
            WeatherRead read = taken.read();
            screen.say(
                    json
                            ? Json.of(new Answer(
                                    place,
                                    read.format(),
                                    read.weather().hours().size(),
                                    read.days().size(),
                                    taken.already(),
                                    read.notes()))
                            : HoursWords.taken(read, place, taken.already()));
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
        return Exit.GOOD;
    }

    private record Answer(String place, String format, int hours, int days, boolean already, List<String> notes) {}

    private static ZoneId zone(Season season, String place, @Nullable String zone) {
        return zone == null ? Zones.of(season, place) : Zones.named(zone);
    }

    private static @Nullable ZoneOffset offset(@Nullable String hours) {
        if (hours == null) {
            return null;
        }
        try {
            return ZoneOffset.ofTotalSeconds((int) Math.round(Double.parseDouble(hours) * 3600));
        } catch (NumberFormatException | DateTimeException fault) {
            throw new BadInputException("--utc-offset is '" + hours + "'; expected hours from UTC such as -6.");
        }
    }

    @Command(name = "files", description = "The files of hourly weather in the book.")
    int files(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = "The book.")
                    Path at,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        try (Book book = Book.open(at)) {
            screen.say(json ? Json.of(book.weatherFiles()) : HoursWords.files(book.weatherFiles()));
        }
        return Exit.GOOD;
    }

    @Command(name = "forget", description = "Takes a file of hourly weather out of the book again.")
    int forget(
            @Parameters(paramLabel = "NUMBER", description = "Its number in the list of files.") int number,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = "The book.")
                    Path at) {
        try (Book book = Book.open(at)) {
            if (!book.forgetWeather(number)) {
                throw new BadInputException("There is no file of hourly weather with the number " + number + ".");
            }
        }
        screen.say("Taken out: file " + number + " and its hours.");
        return Exit.GOOD;
    }
}
