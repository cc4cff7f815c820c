package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.documents.mend.Mend;

/** What people put right on papers. Works inside the transaction of whoever calls. */
final class MendRows {
    private static final String COLUMNS = "sha256, about, verdict, was, words, page, value, who, mended_at";

    private final JdbcClient client;

    MendRows(JdbcClient client) {
        this.client = client;
    }

    void add(Mend mend) {
        client.sql("INSERT INTO paper_mend (" + COLUMNS + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        mend.sha256(),
                        mend.about(),
                        mend.verdict().word(),
                        known(mend.was()),
                        known(mend.words()),
                        mend.page() == 0 ? null : mend.page(),
                        known(mend.value()),
                        mend.who(),
                        mend.when().toString()))
                .update();
        new ChainRows(client).addLast(RecordKind.MEND);
    }

    /** All, in the order in which they were made. */
    List<Mend> all() {
        return client.sql("SELECT " + COLUMNS + " FROM paper_mend ORDER BY number")
                .query((cells, row) -> mend(cells))
                .list();
    }

    private static Mend mend(ResultSet cells) throws SQLException {
        try {
            return new Mend(
                    cells.getString(1),
                    cells.getString(2),
                    Mend.Verdict.of(cells.getString(3)).orElseThrow(IllegalArgumentException::new),
                    text(cells.getString(4)),
                    text(cells.getString(5)),
                    cells.getInt(6),
                    text(cells.getString(7)),
                    cells.getString(8),
                    Instant.parse(cells.getString(9)));
        } catch (IllegalArgumentException | java.time.DateTimeException damaged) {
            throw new BookException("The book is damaged: what was put right on a paper can't be read.");
        }
    }

    private static @Nullable String known(String text) {
        return text.isEmpty() ? null : text;
    }

    private static String text(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }
}
