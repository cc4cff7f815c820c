package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.documents.confirm.ReadOnLabel;
import plumbrow.documents.confirm.RowName;
import plumbrow.documents.confirm.ShelfTable;

/** What stands clearly on labels as they were last read. Works inside the transaction of whoever calls. */
final class LabelReadingRows {
    private static final String COLUMNS = "sha256, shelf, row_key, nth, property, value, page";

    private final JdbcClient client;

    LabelReadingRows(JdbcClient client) {
        this.client = client;
    }

    /** Takes the place of what was read on the label before. */
    void replace(String sha256, List<ReadOnLabel> read) {
        client.sql("DELETE FROM label_reading WHERE sha256 = ?").param(sha256).update();
        int place = 0;
        for (ReadOnLabel one : read) {
            client.sql("INSERT INTO label_reading (" + COLUMNS + ", place) VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(Arrays.asList(
                            sha256,
                            one.row().table().word(),
                            one.row().keyText(),
                            one.row().nth(),
                            one.property(),
                            one.value(),
                            one.page() == 0 ? null : one.page(),
                            ++place))
                    .update();
        }
    }

    /** All, label by label, in the order of each. */
    List<ReadOnLabel> all() {
        return client.sql("SELECT " + COLUMNS + " FROM label_reading ORDER BY sha256, place")
                .query((cells, row) -> read(cells))
                .list();
    }

    private static ReadOnLabel read(ResultSet cells) throws SQLException {
        try {
            return new ReadOnLabel(
                    cells.getString(1),
                    RowName.of(
                            ShelfTable.of(cells.getString(2)).orElseThrow(IllegalArgumentException::new),
                            cells.getString(3),
                            cells.getInt(4)),
                    ShelfTable.keyOf(cells.getString(5)),
                    cells.getString(6),
                    cells.getInt(7));
        } catch (IllegalArgumentException damaged) {
            throw new BookException("The book is damaged: what was read on a label can't be read.");
        }
    }
}
