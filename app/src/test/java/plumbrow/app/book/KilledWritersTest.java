package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.app.RecordsOfTest;
import plumbrow.app.SmallSeason;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeasonEdit;

/**
 * Changes whole and row by row, imports, undos, redos and lines of the log from several programs at once, which are killed in the
 * midst: whatever was answered with done is in the book and its history afterwards, once, and the history leads there and back. {@code -Dkept.operations=2000} runs as many as docs/book.md reports.
 */
class KilledWritersTest {
    private static final int WRITERS = 3;

    /** More than all records together take [lb]. */
    private static final double STOCK = 1e7;

    private static final Season FIRST = RecordsOfTest.stocked(SmallSeason.of(KilledWriters.YEAR), STOCK);

    @TempDir
    Path folder;

    @Test
    void nothingAnsweredWithDoneIsLost() throws Exception {
        int operations = Integer.getInteger("kept.operations", 60);
        Path file = folder.resolve("farm.book");
        try (Book book = Book.create(file)) {
            book.put(FIRST);
        }
        List<KilledWriters.Said> said = new KilledWriters(file, WRITERS, 7).run((operations + WRITERS - 1) / WRITERS);
        Map<String, String> state = new HashMap<>();
        Map<String, String> logged = new HashMap<>();
        Map<String, String> recorded = new HashMap<>();
        Map<String, String> written = new HashMap<>();
        for (String line : said.stream().flatMap(one -> one.lines().stream()).toList()) {
            String[] words = line.split(" ", 3);
            assertThat(words[0]).as(line).isIn("try", "done", "refused", "failed");
            switch (words[1]) {
                case "log" -> logged.put(words[2], words[0]);
                case "record", "correct" -> recorded.put(words[2], words[0]);
                case "edit", "mark", "back" -> written.put(words[1] + " " + words[2], words[0]);
                default -> state.put(words[2], words[0] + " " + words[1]);
            }
        }
        try (Book book = Book.open(file)) {
            assertThat(book.check()).isEmpty();
            records(book, recorded);
            Map<String, Long> programs = book.season(KilledWriters.YEAR).orElseThrow().programs().stream()
                    .collect(Collectors.groupingBy(Program::name, Collectors.counting()));
            state.forEach((name, last) -> {
                switch (last) {
                    case "done keep", "done import", "failed drop", "refused drop" ->
                        assertThat(programs).as(last).containsEntry(name, 1L);
                    case "try keep", "try import", "try drop" ->
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
            List<SeasonChange> changes = book.changes(KilledWriters.YEAR);
            Map<String, Long> inHistory =
                    changes.stream().collect(Collectors.groupingBy(SeasonChange::why, Collectors.counting()));
            written.forEach((why, last) -> {
                switch (last) {
                    case "done" -> assertThat(inHistory).as(last).containsEntry(why, 1L);
                    case "try" ->
                        assertThat(inHistory.getOrDefault(why, 0L)).as(why).isBetween(0L, 1L);
                    default -> assertThat(inHistory).as(last).doesNotContainKey(why);
                }
            });
            leadsThereAndBack(book, changes);
            long done = said.stream().mapToLong(KilledWriters.Said::done).sum();
            int kills = said.stream().mapToInt(KilledWriters.Said::kills).sum();
            assertThat(done).isGreaterThanOrEqualTo(operations);
            assertThat(kills).isGreaterThanOrEqualTo(WRITERS);
            System.out.println(changes.size() + " changes; " + done + " done, " + kills + " kills, of "
                    + state.values().stream().collect(Collectors.groupingBy(last -> last, Collectors.counting()))
                    + " and log "
                    + logged.values().stream().collect(Collectors.groupingBy(last -> last, Collectors.counting()))
                    + " and records "
                    + recorded.values().stream().collect(Collectors.groupingBy(last -> last, Collectors.counting()))
                    + " and rows " + counted(written));
        }
    }

    private static Map<String, Long> counted(Map<String, String> written) {
        return written.entrySet().stream()
                .collect(Collectors.groupingBy(
                        one -> one.getValue() + " " + one.getKey().split(" ", 2)[0], Collectors.counting()));
    }

    /**
     * The history is whole: its rows lead from the first season to the one in the book, and backwards to the first; and what the book
     * takes back last leads where the history says.
     */
    private static void leadsThereAndBack(Book book, List<SeasonChange> changes) {
        Season now = book.season(KilledWriters.YEAR).orElseThrow();
        Season season = FIRST;
        List<Season> states = new ArrayList<>(List.of(season));
        for (int i = 0; i < changes.size(); i++) {
            assertThat(changes.get(i).number()).isEqualTo(i + 1);
            if (!changes.get(i).rows().isEmpty()) {
                season = SeasonEdit.of(season, changes.get(i).rows());
            }
            states.add(season);
        }
        assertThat(programs(season)).isEqualTo(programs(now));
        for (int i = changes.size() - 1; i > 0; i--) {
            List<RowChange> back = new ArrayList<>(changes.get(i).rows());
            Collections.reverse(back);
            season = SeasonEdit.of(season, back.stream().map(RowChange::inverse).toList());
            assertThat(season).isEqualTo(states.get(i));
        }
        int last = changes.size();
        int undo = book.undo(last, new By("writer", "after all", By.Way.COMMAND, null));
        assertThat(programs(book.season(KilledWriters.YEAR).orElseThrow())).isEqualTo(programs(states.get(last - 1)));
        book.undo(undo, new By("writer", "and again", By.Way.COMMAND, null));
        assertThat(book.season(KilledWriters.YEAR)).contains(now);
        assertThat(book.check()).isEmpty();
    }

    /** What the writers change of a season; its log is merged in from elsewhere. */
    private static List<Program> programs(Season season) {
        return season.programs();
    }

    /** Each record that was answered with done is there once, whole, with its line of the log; and the stock is what they leave. */
    private static void records(Book book, Map<String, String> recorded) {
        List<KeptRecord> records = book.records();
        Map<String, Long> kept = records.stream()
                .collect(Collectors.groupingBy(
                        record -> record.record().items().getOrDefault(RecordItem.NOTE, ""), Collectors.counting()));
        recorded.forEach((name, last) -> {
            switch (last) {
                case "done" -> assertThat(kept).containsEntry(name, 1L);
                case "try" -> assertThat(kept.getOrDefault(name, 0L)).isBetween(0L, 1L);
                default -> assertThat(kept).doesNotContainKey(name);
            }
        });
        Set<Integer> lines = book.log().stream()
                .filter(line -> line.counts() && line.record() != null)
                .map(LogLine::number)
                .collect(Collectors.toSet());
        Set<Integer> counting = records.stream()
                .filter(KeptRecord::counts)
                .flatMap(record -> record.lines().stream())
                .collect(Collectors.toSet());
        assertThat(lines).isEqualTo(counting);
        double used = records.stream()
                .filter(KeptRecord::counts)
                .mapToDouble(record -> record.record().products().get(0).total().value())
                .sum();
        assertThat(book.season(KilledWriters.YEAR)
                        .orElseThrow()
                        .shelf()
                        .product(RecordsOfTest.PRODUCT)
                        .map(Product::onHand)
                        .map(Amount::value))
                .contains(STOCK - used);
    }
}
