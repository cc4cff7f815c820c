package plumbrow.app.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.JdbcTransactionObjectSupport;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.DefaultTransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;

/**
 * A book in one SQLite file. Each transaction opens the file and closes it again: between transactions the file is
 * whole by itself and may be copied like any other. Readers see the state of one moment and hold nobody up; writers
 * take the write lock at once and wait for one another.
 */
final class SqliteFile implements Database {
    /** How long to wait for another writer before giving up. */
    static final Duration PATIENCE = Duration.ofSeconds(5);

    /** Reads "Plum"; the first migration writes it into the file. */
    static final int APPLICATION_ID = 0x506C756D;

    /** The checksum of the form stands with those of the seasons, as of the year 0. */
    private static final String SEALED = "SELECT sha256 FROM season_seal WHERE season = 0";

    private static final byte[] FIRST_BYTES = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private final Path file;
    private final SQLiteDataSource reading;
    private final SQLiteDataSource writing;

    /** Reads without making the files that go beside one in use: for a disk that takes nothing. */
    private final SQLiteDataSource untouched;

    private final ReentrantLock oneWriter = new ReentrantLock(true);

    private SqliteFile(Path file, Duration patience) {
        this.file = file;
        this.reading = new SQLiteDataSource(settings(patience, TransactionMode.DEFERRED));
        this.untouched = new SQLiteDataSource(untouchedSettings(patience));
        this.writing = new SQLiteDataSource(writerSettings(patience));
        reading.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        writing.setUrl(reading.getUrl());
        untouched.setUrl("jdbc:sqlite:" + file.toAbsolutePath().toUri() + "?immutable=1");
    }

    /** Made beside its place and put there when it is whole: whoever stops it meanwhile leaves no book that is none. */
    static SqliteFile create(Path newFile) {
        made(newFile, making -> {
            SqliteFile book = new SqliteFile(making, PATIENCE);
            book.told(() -> {
                Schema.bringUpToDate(book.reading, "sqlite");
                return making;
            });
            book.begin();
        });
        return new SqliteFile(newFile, PATIENCE);
    }

    static SqliteFile open(Path file) {
        return open(file, PATIENCE);
    }

    static SqliteFile open(Path file, Duration patience) {
        demandBook(file);
        SqliteFile book = new SqliteFile(file, patience);
        int version = book.read(sql -> {
            Integer id = sql.queryForObject("PRAGMA application_id", Integer.class);
            if (id == null || id != APPLICATION_ID) {
                throw new BookException(file + " is not a book; it is a database of another program.");
            }
            return Schema.version(sql);
        });
        if (version > Schema.VERSION) {
            throw new BookException("The book " + file + " was written by a newer Plumbrow (form " + version
                    + "; this one knows up to " + Schema.VERSION + "); open it with the newer one.");
        }
        if (version < Schema.VERSION) {
            book.told(() -> {
                Schema.bringUpToDate(book.reading, "sqlite");
                return version;
            });
            book.write(sql -> {
                SeasonRows seasons = new SeasonRows(sql);
                seasons.years().forEach(seasons::seal);
                sealForm(sql);
                return version;
            });
        }
        book.begin();
        return book;
    }

    /** Links what an older book holds, as it is found. */
    private void begin() {
        if (read(sql -> new ChainRows(JdbcClient.create(sql)).due())) {
            write(sql -> {
                ChainRows chain = new ChainRows(JdbcClient.create(sql));
                chain.begin(Instant.now());
                sealForm(sql);
                return chain;
            });
        }
    }

    /** Takes the tables, indexes and triggers, as they are, for what the migrations made. */
    private static void sealForm(JdbcOperations sql) {
        sql.update("DELETE FROM season_seal WHERE season = 0");
        sql.update("INSERT INTO season_seal (season, part, sha256) VALUES (0, 'form', ?)", form(sql));
    }

    private static String form(JdbcOperations sql) {
        String text = String.join(
                "\n",
                sql.queryForList("SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY name", String.class));
        return PaperRows.sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String name() {
        return file.toString();
    }

    @Override
    public <T> T read(Function<JdbcOperations, T> questions) {
        try {
            return transaction(reading, questions);
        } catch (BookException fault) {
            if (SqliteFaults.ofTheDisk(fault)) {
                return readUntouched(questions, fault);
            }
            throw fault;
        }
    }

    /**
     * Reads a book whose disk is full or write-protected. That is sound as long as all of the book is in its one file, which
     * stays as it is meanwhile; else the fault stands.
     */
    private <T> T readUntouched(Function<JdbcOperations, T> questions, BookException fault) {
        String before = whole() ? stamp() : "";
        if (before.isEmpty()) {
            throw fault;
        }
        T answer = transaction(untouched, questions);
        if (!whole() || !stamp().equals(before)) {
            throw fault;
        }
        return answer;
    }

    /** Whether nothing of the book stands in the files of a change that is not yet in the book's own. */
    private boolean whole() {
        return Stream.of("-wal", "-journal")
                .map(ending -> file.resolveSibling(file.getFileName() + ending))
                .noneMatch(beside -> beside.toFile().length() > 0);
    }

    /** What changes when somebody writes; empty where the file can't be looked at. */
    private String stamp() {
        try {
            return Files.size(file) + " " + Files.getLastModifiedTime(file);
        } catch (IOException gone) {
            return "";
        }
    }

    @Override
    public <T> T write(Function<JdbcOperations, T> changes) {
        oneWriter.lock();
        try {
            return transaction(writing, changes);
        } finally {
            oneWriter.unlock();
        }
    }

    @Override
    public void copyTo(Path newFile) {
        made(newFile, making -> {
            told(() -> new JdbcTemplate(reading)
                    .update("VACUUM INTO ?", making.toAbsolutePath().toString()));
            List<String> problems = new SqliteFile(making, PATIENCE).problems();
            if (!problems.isEmpty()) {
                throw new BookException("The copy came out damaged and was removed: " + problems.get(0));
            }
        });
    }

    @Override
    public List<String> problems() {
        return read(sql -> {
            List<String> problems = new ArrayList<>();
            for (String line : sql.queryForList("PRAGMA integrity_check", String.class)) {
                if (!line.equals("ok")) {
                    problems.add("The file is damaged: " + line + ".");
                }
            }
            problems.addAll(sql.query(
                    "PRAGMA foreign_key_check",
                    (row, number) -> "A row of the table " + row.getString("table") + " names a row of "
                            + row.getString("parent") + " that isn't there."));
            if (!sql.queryForList(SEALED, String.class).equals(List.of(form(sql)))) {
                problems.add(
                        "The tables of the file, or the guards that nothing written down for good is changed, are no"
                                + " longer as Plumbrow made them.");
            }
            Integer id = sql.queryForObject("PRAGMA application_id", Integer.class);
            if (id == null || id != APPLICATION_ID) {
                problems.add("The file no longer says that it is a book.");
            }
            return problems;
        });
    }

    /** Nothing is held open between transactions. */
    @Override
    public void close() {}

    private <T> T transaction(SQLiteDataSource source, Function<JdbcOperations, T> work) {
        return told(() -> new TransactionTemplate(new OneTransaction(source))
                .execute(status -> work.apply(new JdbcTemplate(source))));
    }

    /**
     * A transaction and nothing after it. The driver follows each commit by the beginning of another transaction, for a writer one that
     * waits for the lock: where somebody else has it by then for long, that beginning fails, and with it a commit that is done. So the
     * next one is begun without a lock; it ends with the connection.
     */
    private static final class OneTransaction extends JdbcTransactionManager {
        private static final long serialVersionUID = 1L;

        OneTransaction(SQLiteDataSource source) {
            super(source);
        }

        @Override
        protected void doCommit(DefaultTransactionStatus status) {
            nextWithoutLock(status);
            super.doCommit(status);
        }

        @Override
        protected void doRollback(DefaultTransactionStatus status) {
            nextWithoutLock(status);
            super.doRollback(status);
        }

        private static void nextWithoutLock(DefaultTransactionStatus status) {
            JdbcTransactionObjectSupport transaction = (JdbcTransactionObjectSupport) status.getTransaction();
            if (transaction.getConnectionHolder().getConnection() instanceof SQLiteConnection connection) {
                connection.getConnectionConfig().setTransactionMode(TransactionMode.DEFERRED);
            }
        }
    }

    private interface Work<T> {
        T run();
    }

    private <T> T told(Work<T> work) {
        try {
            return work.run();
        } catch (RuntimeException fault) {
            throw SqliteFaults.sentence(name(), fault);
        }
    }

    /** Makes a file under another name and puts it, whole and on the disk, under its own; of two who want one name one gets it. */
    private static void made(Path newFile, Consumer<Path> maker) {
        if (Files.exists(newFile)) {
            throw new BookException(newFile + " is there already; give a name that is not taken.");
        }
        Path making = newFile.resolveSibling("." + newFile.getFileName() + ".making-" + UUID.randomUUID());
        try {
            removeForgotten(newFile);
            Files.createFile(making);
            maker.accept(making);
            try (FileChannel file = FileChannel.open(making, StandardOpenOption.WRITE)) {
                file.force(true);
            }
            put(making, newFile);
        } catch (FileAlreadyExistsException taken) {
            throw new BookException(newFile + " is there already; give a name that is not taken.", taken);
        } catch (IOException fault) {
            throw new BookException(
                    newFile + " can't be made; check that its folder is there and may be written.", fault);
        } catch (BookException fault) {
            String sentence = String.valueOf(fault.getMessage());
            throw new BookException(sentence.replace(making.toString(), newFile.toString()), fault);
        } finally {
            making.toFile().delete();
        }
    }

    /** As a second name of the same file, which fails where the name is taken; where a disk knows no second names, by moving. */
    private static void put(Path making, Path newFile) throws IOException {
        try {
            Files.createLink(newFile, making);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | IOException noLinks) {
            Files.move(making, newFile);
        }
    }

    /** What a run that was stopped left behind long ago. */
    private static void removeForgotten(Path newFile) throws IOException {
        Path folder = Objects.requireNonNull(newFile.toAbsolutePath().getParent());
        Instant longAgo = Instant.now().minus(Duration.ofHours(1));
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".*.making-*")) {
            for (Path one : left) {
                if (Files.getLastModifiedTime(one).toInstant().isBefore(longAgo)) {
                    Files.deleteIfExists(one);
                }
            }
        }
    }

    /** Looks at the file without a database, which would touch it. */
    private static void demandBook(Path file) {
        if (!Files.exists(file)) {
            throw new BookException("There is no book " + file + "; make one with: plumbrow book new " + file);
        }
        if (!Files.isRegularFile(file)) {
            throw new BookException(file + " is a folder, not a book.");
        }
        try (InputStream start = Files.newInputStream(file)) {
            if (!Arrays.equals(start.readNBytes(FIRST_BYTES.length), FIRST_BYTES)) {
                throw new BookException(file + " is not a book.");
            }
        } catch (IOException fault) {
            throw new BookException("The book " + file + " can't be read; this person may not use the file.", fault);
        }
    }

    private static SQLiteConfig settings(Duration patience, TransactionMode mode) {
        SQLiteConfig settings = new SQLiteConfig();
        settings.enforceForeignKeys(true);
        settings.setBusyTimeout((int) patience.toMillis());
        settings.setTransactionMode(mode);
        return settings;
    }

    private static SQLiteConfig untouchedSettings(Duration patience) {
        SQLiteConfig settings = settings(patience, TransactionMode.DEFERRED);
        settings.setReadOnly(true);
        return settings;
    }

    /** Only writers set the journal: to set it touches the file, which may yet turn out to be no book. */
    private static SQLiteConfig writerSettings(Duration patience) {
        SQLiteConfig settings = settings(patience, TransactionMode.IMMEDIATE);
        settings.setJournalMode(JournalMode.WAL);
        settings.setSynchronous(SynchronousMode.FULL);
        return settings;
    }
}
