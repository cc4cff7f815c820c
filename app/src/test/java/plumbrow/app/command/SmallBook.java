package plumbrow.app.command;

import java.nio.file.Path;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;

/** A book with seasons in it, made for a test. */
final class SmallBook {
    private SmallBook() {}

    static Path of(Path file, Season... seasons) {
        try (Book book = Book.create(file)) {
            for (Season season : seasons) {
                book.put(season);
            }
        }
        return file;
    }
}
