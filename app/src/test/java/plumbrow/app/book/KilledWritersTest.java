package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.program.Program;
import plumbrow.app.SmallSeason;

/**
 * Edits, imports, undos and lines of the log from several programs at once, which are killed in the midst: whatever was answered
 * with done is in the book afterwards. {@code -Dkept.operations=2000} runs as many as docs/book.md reports.
 */
class KilledWritersTest {
    private static final int WRITERS = 3;

    @TempDir
    Path folder;

    @Test
    void nothingAnsweredWithDoneIsLost() throws Exception {
        int operations = Integer.getInteger("kept.operations", 60);
        Path file = folder.resolve("farm.book");
        try (Book book = Book.create(file)) {
            book.put(SmallSeason.of(KilledWriters.YEAR));
        }
        List<KilledWriters.Said> said = new KilledWriters(file, WRITERS, 7).run((operations + WRITERS - 1) / WRITERS);
        Map<String, String> state = new HashMap<>();
        Map<String, String> logged = new HashMap<>();
        for (String line : said.stream().flatMap(one -> one.lines().stream()).toList()) {
            String[] words = line.split(" ", 3);
            assertThat(words[0]).as(line).isIn("try", "done", "refused", "failed");
            if (words[1].equals("log")) {
                logged.put(words[2], words[0]);
            } else {
                state.put(words[2], words[0] + " " + words[1]);
            }
        }
        try (Book book = Book.open(file)) {
            assertThat(book.check()).isEmpty();
            Map<String, Long> programs = book.season(KilledWriters.YEAR).orElseThrow().programs().stream()
                    .collect(Collectors.groupingBy(Program::name, Collectors.counting()));
            state.forEach((name, last) -> {
                switch (last) {
                    case "done keep", "done import", "failed undo", "refused undo" ->
                        assertThat(programs).as(last).containsEntry(name, 1L);
                    case "try keep", "try import", "try undo" ->
                        assertThat(programs.getOrDefault(name, 0L)).as(last).isBetween(0L, 1L);
                    default -> assertThat(programs).as(last).doesNotContainKey(name);
                }
            });
            Map<String, Long> lines = book.log().stream()
                    .collect(Collectors.groupingBy(line -> line.done().source(), Collectors.counting()));
            logged.forEach((name, last) -> {
                switch (last) {
                    case "done" -> assertThat(lines).containsEntry(name, 1L);
                    case "try" -> assertThat(lines.getOrDefault(name, 0L)).isBetween(0L, 1L);
                    default -> assertThat(lines).doesNotContainKey(name);
                }
            });
            long done = said.stream().mapToLong(KilledWriters.Said::done).sum();
            int kills = said.stream().mapToInt(KilledWriters.Said::kills).sum();
            assertThat(done).isGreaterThanOrEqualTo(operations);
            assertThat(kills).isGreaterThanOrEqualTo(WRITERS);
            System.out.println(done + " done, " + kills + " kills, of "
                    + state.values().stream().collect(Collectors.groupingBy(last -> last, Collectors.counting()))
                    + " and log "
                    + logged.values().stream().collect(Collectors.groupingBy(last -> last, Collectors.counting())));
        }
    }
}
