package plumbrow.app.book;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.springframework.jdbc.core.JdbcOperations;

/**
 * Where the rows of a book are kept. All that differs between one database and another stands behind this; the rows and
 * their SQL are the same for all. Every fault comes out as a {@link BookException}.
 */
interface Database extends AutoCloseable {
    /** The file or address, as a person would name it. */
    String name();

    /** Asks in one transaction: all answers are of the same moment. */
    <T> T read(Function<JdbcOperations, T> questions);

    /** Changes in one transaction: all of it is kept or nothing, and nobody else writes meanwhile. */
    <T> T write(Function<JdbcOperations, T> changes);

    /** A whole copy in a new file. */
    void copyTo(Path newFile);

    /** What the database itself finds wrong with its content, a sentence each; empty where all is well. */
    List<String> problems();

    @Override
    void close();
}
