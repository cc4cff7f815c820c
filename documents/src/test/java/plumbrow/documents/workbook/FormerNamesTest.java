package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;

/** A workbook filled in when sheets and columns had other names is read as before. */
class FormerNamesTest {
    private static final Season SEASON = Fixture.season();

    @TempDir
    Path folder;

    @Test
    @DisplayName("The sheets courses and outlook and the column course are read as programs, assumptions and program")
    void formerNamesAreRead() throws IOException {
        Path book = old();
        assertThat(WorkbookReader.read(book)).isEqualTo(SEASON);
    }

    @Test
    @DisplayName("Both the old and the new name of one sheet are one sheet too many")
    void bothNamesAreOneTooMany() throws IOException {
        Path book = old();
        Files.copy(book.resolve("courses.csv"), book.resolve("programs.csv"));
        assertThat(catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(book)))
                .hasMessageContaining("a second sheet of this name");
    }

    private Path old() throws IOException {
        Path book = folder.resolve("old");
        WorkbookWriter.write(SEASON, book);
        rename(book, "programs", "courses");
        rename(book, "assumptions", "outlook");
        for (String sheet : new String[] {"courses", "passes", "sprays", "tillage"}) {
            Path file = book.resolve(sheet + ".csv");
            String text = Files.readString(file);
            int end = text.indexOf('\n');
            Files.writeString(file, text.substring(0, end).replace("program", "course") + text.substring(end));
        }
        return book;
    }

    private static void rename(Path book, String from, String to) throws IOException {
        Files.move(book.resolve(from + ".csv"), book.resolve(to + ".csv"));
    }
}
