package plumbrow.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.Progress;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.AdviceWords;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.json.Json;

/**
 * Goes once through what commands do, so that the launcher can keep those classes ready for the next start. Asked for
 * by the system property {@code plumbrow.warm}, never by a person.
 */
final class Warming {
    private Warming() {}

    static boolean asked() {
        return Boolean.getBoolean("plumbrow.warm");
    }

    /** Makes the book and weighs a season from it; gives the length of what it would have said. */
    static int up(Path newBook) {
        try (Book book = Book.create(newBook)) {
            book.put(DemoBook.season());
            Season season = book.latestSeason().orElseThrow();
            WeighingOptions few = WeighingOptions.DEFAULT.withDraws(100);
            Advice advice = Adviser.advise(season, few, Progress.SILENT);
            return Json.of(advice).length() + AdviceWords.of(advice, Map.of()).length();
        }
    }

    /** Opens what a person sees first: a page at once, then the season with its answer. Gives the length read. */
    static int pages(String desk) {
        return Stream.of("/", "/figures", "/api/advice", "/")
                .mapToInt(path -> page(desk + path))
                .sum();
    }

    private static int page(String address) {
        try (InputStream page = URI.create(address).toURL().openStream()) {
            return page.readAllBytes().length;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
