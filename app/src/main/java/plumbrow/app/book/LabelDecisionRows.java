package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.RowName;
import plumbrow.documents.confirm.ShelfTable;
import plumbrow.documents.confirm.Verdict;

/** What was decided about labels. Works inside the transaction of whoever calls. */
final class LabelDecisionRows {
    private static final String COLUMNS =
            "sha256, shelf, row_key, nth, property, verdict, value, instead_of, page, words, who, decided_at";

    private final JdbcClient client;

    LabelDecisionRows(JdbcClient client) {
        this.client = client;
    }

    void add(LabelDecision decision) {
        client.sql("INSERT INTO label_decision (" + COLUMNS + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        decision.sha256(),
                        decision.row().table().word(),
                        decision.row().keyText(),
                        decision.row().nth(),
                        decision.property(),
                        decision.verdict().word(),
                        known(decision.value()),
                        known(decision.instead()),
                        decision.page() == 0 ? null : decision.page(),
                        known(decision.words()),
                        decision.who(),
                        decision.when().toString()))
                .update();
        new ChainRows(client).addLast(RecordKind.LABEL_VALUE);
    }

    /** All, in the order in which they were made. */
    List<LabelDecision> all() {
        return client.sql("SELECT " + COLUMNS + " FROM label_decision ORDER BY number")
                .query((cells, row) -> decision(cells))
                .list();
    }

    private static LabelDecision decision(ResultSet cells) throws SQLException {
        try {
            return new LabelDecision(
                    cells.getString(1),
                    RowName.of(
                            ShelfTable.of(cells.getString(2)).orElseThrow(IllegalArgumentException::new),
                            cells.getString(3),
                            cells.getInt(4)),
                    ShelfTable.keyOf(cells.getString(5)),
                    Verdict.of(cells.getString(6)).orElseThrow(IllegalArgumentException::new),
                    text(cells.getString(7)),
                    text(cells.getString(8)),
                    cells.getInt(9),
                    text(cells.getString(10)),
                    cells.getString(11),
                    Instant.parse(cells.getString(12)));
        } catch (IllegalArgumentException | java.time.DateTimeException damaged) {
            throw new BookException("The book is damaged: a decision about a label can't be read.");
        }
    }

    private static @Nullable String known(String text) {
        return text.isEmpty() ? null : text;
    }

    private static String text(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }
}
