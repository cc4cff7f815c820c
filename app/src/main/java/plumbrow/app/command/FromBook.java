package plumbrow.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;

/** The options by which a command finds its season. */
final class FromBook {
    /** Where the book is, where nobody says otherwise. */
    static final String DEFAULT = "${env:PLUMBROW_BOOK:-plumbrow.book}";

    @Option(
            names = "--book",
            paramLabel = "FILE",
            defaultValue = DEFAULT,
            description = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.")
    private Path file = Path.of("");

    @Option(names = "--year", paramLabel = "YEAR", description = "Harvest year; else the latest season of the book.")
    private @Nullable Integer year;

    Path file() {
        return file;
    }

    Season season() {
        try (Book book = Book.open(file)) {
            Integer asked = year;
            if (asked != null) {
                return book.season(asked)
                        .orElseThrow(() -> new BadInputException(
                                "The book " + file + " has no season " + asked + "; " + held(book.seasons()) + "."));
            }
            return book.latestSeason()
                    .orElseThrow(() -> new BadInputException("The book " + file
                            + " holds no season yet; bring one in with: plumbrow book import WORKBOOK --book " + file));
        }
    }

    /** The hourly weather of a field, where any is on file. */
    Optional<HourlyWeather> weather(Field field) {
        try (Book book = Book.open(file)) {
            return book.weather(field);
        }
    }

    /** The fields named, in the order of the season; all where none is named. */
    static List<Field> fields(Season season, List<String> names) {
        for (String name : names) {
            if (season.field(name).isEmpty()) {
                throw new BadInputException("There is no field '" + name + "' in " + season.year() + "; the fields are "
                        + season.fields().stream().map(Field::name).collect(Collectors.joining(", ")) + ".");
            }
        }
        return season.fields().stream()
                .filter(field -> names.isEmpty() || names.contains(field.name()))
                .toList();
    }

    private static String held(List<Integer> years) {
        return years.isEmpty()
                ? "it holds none yet"
                : "it holds " + years.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
