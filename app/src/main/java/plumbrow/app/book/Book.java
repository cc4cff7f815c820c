package plumbrow.app.book;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.course.Done;
import plumbrow.advice.season.Season;
import plumbrow.documents.confirm.ConfirmedSeason;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.LabelFile;
import plumbrow.documents.shelf.FiledPaper;

/**
 * The one file that holds an adviser's seasons and what was chosen in them. A book may be read from many threads and
 * programs at once; those who write wait for one another. What was put in comes out equal, in the same order, numbers
 * to the bit.
 *
 * <p>Every method says in a {@link BookException} of one plain sentence what it can't do; then nothing has changed.
 */
public final class Book implements AutoCloseable {
    private final Database database;

    Book(Database database) {
        this.database = database;
    }

    /** Makes a new, empty book. A file of that name must not exist. */
    public static Book create(Path newFile) {
        return new Book(SqliteFile.create(newFile));
    }

    /** Opens a book; one of an older form is brought up to date. */
    public static Book open(Path file) {
        return new Book(SqliteFile.open(file));
    }

    /** The file or address of the book. */
    public String name() {
        return database.name();
    }

    /** The harvest years in the book, earliest first. */
    public List<Integer> seasons() {
        return database.read(sql -> new SeasonRows(sql).years());
    }

    /** The season of a harvest year with what was confirmed on labels, where the book has one. */
    public Optional<Season> season(int year) {
        return database.read(sql -> new SeasonRows(sql).season(year).map(written -> confirmed(sql, written)));
    }

    /** The season of the latest harvest year with what was confirmed on labels, where the book has any. */
    public Optional<Season> latestSeason() {
        return database.read(sql -> latest(sql).map(written -> confirmed(sql, written)));
    }

    /** The latest season as it was put in, without what was confirmed on labels. */
    public Optional<Season> latestWritten() {
        return database.read(Book::latest);
    }

    private static Optional<Season> latest(JdbcOperations sql) {
        SeasonRows rows = new SeasonRows(sql);
        List<Integer> years = rows.years();
        return years.isEmpty() ? Optional.empty() : rows.season(years.get(years.size() - 1));
    }

    private static Season confirmed(JdbcOperations sql, Season written) {
        JdbcClient client = JdbcClient.create(sql);
        List<LabelDecision> decisions = new LabelDecisionRows(client).all();
        return decisions.isEmpty()
                ? written
                : ConfirmedSeason.over(written, files(new PaperRows(client).all()), decisions);
    }

    private static List<LabelFile> files(List<StoredPaper> papers) {
        return papers.stream()
                .map(stored -> new LabelFile(stored.paper(), stored.sha256()))
                .toList();
    }

    /** Writes down what a person decided about values of labels that the book keeps: all or none. */
    public void decide(List<LabelDecision> decisions) {
        database.write(sql -> {
            LabelDecisionRows rows = new LabelDecisionRows(JdbcClient.create(sql));
            decisions.forEach(rows::add);
            return decisions;
        });
    }

    /** All that was decided about labels, in order. */
    public List<LabelDecision> decisions() {
        return database.read(sql -> new LabelDecisionRows(JdbcClient.create(sql)).all());
    }

    /** As {@link #put(Season, Instant)}, where nobody says when. */
    public LogLine.Merged put(Season season) {
        return put(season, null);
    }

    /**
     * Puts a season in the place of whatever the book has for its year, whole or not at all. Choices stay, and so does the
     * log: lines of the season that are new come to it.
     *
     * @param at the moment, where it is to be written beside the lines of the log
     */
    public LogLine.Merged put(Season season, @Nullable Instant at) {
        return database.write(sql -> {
            new SeasonRows(sql).replace(season);
            return new LogRows(JdbcClient.create(sql)).merge(season, at);
        });
    }

    /**
     * Changes the latest season as it was put in, whole or not at all. What was confirmed on labels is no part of it and is
     * not written into it. Nobody else changes the book meanwhile; where the season stays equal, nothing is written.
     *
     * @param change may refuse by an exception of its own, which comes out as it is
     * @throws BookException where the book holds no season yet
     */
    public void change(UnaryOperator<Season> change) {
        AtomicReference<@Nullable RuntimeException> refusal = new AtomicReference<>();
        try {
            database.write(sql -> {
                Season written = latest(sql).orElseThrow(() -> new BookException("The book holds no season yet."));
                Season changed = asked(change, written, refusal);
                if (changed.equals(written)) {
                    return written;
                }
                new SeasonRows(sql).replace(changed);
                new LogRows(JdbcClient.create(sql)).merge(changed, null);
                return changed;
            });
        } catch (BookException fault) {
            RuntimeException own = refusal.get();
            throw own == null ? fault : own;
        }
    }

    private static Season asked(
            UnaryOperator<Season> change, Season written, AtomicReference<@Nullable RuntimeException> refusal) {
        try {
            return change.apply(written);
        } catch (RuntimeException refused) {
            refusal.set(refused);
            throw refused;
        }
    }

    /** Every line of the log, those that were struck among them, in the order of writing. */
    public List<LogLine> log() {
        return database.read(sql -> new LogRows(JdbcClient.create(sql)).all());
    }

    /** Writes a line down at the end of the log. */
    public LogLine log(Done done, Instant at) {
        return database.write(sql -> new LogRows(JdbcClient.create(sql)).add(done, at));
    }

    /** Strikes a line of the log that was wrong. It stays, and no longer counts. */
    public void strike(int number, LogLine.Strike strike) {
        database.write(sql -> {
            new LogRows(JdbcClient.create(sql)).strike(number, strike);
            return strike;
        });
    }

    /** Writes a choice down at the end of the log. Its field and course must stand in the book's season of that year. */
    public void choose(Choice choice) {
        database.write(sql -> {
            ChoiceRows rows = new ChoiceRows(JdbcClient.create(sql));
            rows.demandCourse(choice);
            rows.add(choice);
            return choice;
        });
    }

    /** What was chosen for a harvest year, in the order of choosing. */
    public List<Choice> choices(int year) {
        return database.read(sql -> new ChoiceRows(JdbcClient.create(sql)).all(year));
    }

    /**
     * Keeps a paper whole. A file that the book has already is not kept twice, whatever its name.
     *
     * @param paper what was read on it; its number is given by the book
     * @return the paper as kept, and whether it was there already
     */
    public Kept keep(FiledPaper paper, byte[] content, Instant at) {
        String sha256 = PaperRows.sha256(content);
        return database.write(sql -> {
            PaperRows rows = new PaperRows(JdbcClient.create(sql));
            boolean already = rows.withContent(sha256).isPresent();
            if (!already) {
                rows.add(paper, content, at);
            }
            return new Kept(rows.one(rows.withContent(sha256).orElseThrow()).orElseThrow(), already);
        });
    }

    /** A paper that was brought in. */
    public record Kept(StoredPaper stored, boolean already) {}

    /** Every paper, in the order in which they came. */
    public List<StoredPaper> papers() {
        return database.read(sql -> new PaperRows(JdbcClient.create(sql)).all());
    }

    /** The file of a paper, where the book has it. */
    public Optional<byte[]> paperFile(int number) {
        return database.read(sql -> new PaperRows(JdbcClient.create(sql)).content(number));
    }

    /** Writes down what somebody typed from a page. */
    public void type(List<TypedValue> values) {
        database.write(sql -> {
            PaperRows rows = new PaperRows(JdbcClient.create(sql));
            values.forEach(rows::type);
            return values;
        });
    }

    /** What was typed from a paper, in the order of typing. */
    public List<TypedValue> typed(int paper) {
        return database.read(sql -> new PaperRows(JdbcClient.create(sql)).typed(paper));
    }

    /** Copies the whole book as it stands at this moment, while others may go on using it. The file must be new. */
    public void backup(Path newFile) {
        database.copyTo(newFile);
    }

    /** What is wrong with the book, a sentence each; empty where all is well. Looks at every row of every season. */
    public List<String> check() {
        List<String> problems = new ArrayList<>(database.problems());
        for (int year : seasons()) {
            try {
                problems.addAll(database.read(sql -> {
                    SeasonRows rows = new SeasonRows(sql);
                    return rows.season(year).map(rows::lostInReading).orElse(List.of());
                }));
            } catch (BookException unreadable) {
                problems.add("Season " + year + " can't be read. " + unreadable.getMessage());
            }
        }
        try {
            log();
        } catch (BookException unreadable) {
            problems.add("The log can't be read. " + unreadable.getMessage());
        }
        problems.addAll(database.read(sql -> new PaperRows(JdbcClient.create(sql)).damaged()));
        return List.copyOf(problems);
    }

    @Override
    public void close() {
        database.close();
    }
}
