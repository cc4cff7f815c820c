package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.SmallSeason;

/**
 * A program that makes new books is killed (SIGKILL, where the system has it) while one of them is being made, at another size of
 * the file each time: under the book's name there is nothing then, or a whole book.
 */
class NewBookKilledTest {
    private static final int KILLS = 6;
    private static final int STEP_BYTES = 48 * 1024;

    @TempDir
    Path folder;

    @Test
    void under_the_name_of_a_new_book_is_nothing_or_a_book() throws Exception {
        int halfMade = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Path own = Files.createDirectory(folder.resolve("kill" + kill));
            int said = killed(own, kill * STEP_BYTES);
            List<Path> books = named(own, ".book");
            assertThat(books.size()).as("books that were answered with done").isGreaterThanOrEqualTo(said);
            for (Path file : books) {
                assertThat(Objects.requireNonNull(file.getFileName()).toString())
                        .doesNotStartWith(".");
                try (Book book = Book.open(file)) {
                    assertThat(book.seasons()).isEmpty();
                    assertThat(book.check()).isEmpty();
                }
            }
            halfMade += making(own).size();
            Path next = own.resolve(books.size() + ".book");
            try (Book book = Book.create(next)) {
                book.put(SmallSeason.of(2027));
                assertThat(book.check()).isEmpty();
            }
        }
        assertThat(halfMade)
                .as("at least one kill fell into the making of a book")
                .isPositive();
    }

    /** Kills the maker in its third book once that file has so many bytes; how many books it said were done. */
    private static int killed(Path own, int bytes) throws IOException, InterruptedException {
        Process maker = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        NewBookKilledTest.class.getName(),
                        own.toString())
                .redirectErrorStream(true)
                .start();
        int done = 0;
        try (BufferedReader said = maker.inputReader()) {
            for (String line = said.readLine(); line != null && done < 2; line = said.readLine()) {
                done += line.startsWith("done ") ? 1 : 0;
            }
            while (maker.isAlive()
                    && !Files.exists(own.resolve("2.book"))
                    && making(own).stream().noneMatch(file -> file.toFile().length() >= bytes)) {
                Thread.onSpinWait();
            }
            maker.toHandle().destroyForcibly();
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                done += line.startsWith("done ") ? 1 : 0;
            }
        }
        maker.waitFor();
        assertThat(done).isGreaterThanOrEqualTo(2);
        return done;
    }

    private static List<Path> making(Path own) throws IOException {
        try (Stream<Path> files = Files.list(own)) {
            return files.filter(file -> Objects.requireNonNull(file.getFileName())
                            .toString()
                            .contains(".making-"))
                    .toList();
        }
    }

    private static List<Path> named(Path own, String ending) throws IOException {
        try (Stream<Path> files = Files.list(own)) {
            return files.filter(file -> Objects.requireNonNull(file.getFileName())
                            .toString()
                            .endsWith(ending))
                    .toList();
        }
    }

    /** Makes one book after the other until it is killed. */
    public static void main(String[] arguments) {
        for (int number = 0; ; number++) {
            Book.create(Path.of(arguments[0], number + ".book")).close();
            System.out.println("done " + number);
        }
    }
}
