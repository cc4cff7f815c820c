package plumbrow.app.book;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.mend.MendedPaper;
import plumbrow.documents.shelf.FiledPaper;

/** Safety sheets and labels. Works inside the transaction of whoever calls. */
final class PaperRows {
    private static final String COLUMNS =
            "number, kind, file_name, product, registration, dated, pages, needs_typing, sha256, added_at, length(content)";

    private final JdbcClient client;

    PaperRows(JdbcClient client) {
        this.client = client;
    }

    /** The number of the paper with this content, where the book has it. */
    Optional<Integer> withContent(String sha256) {
        return client.sql("SELECT number FROM paper WHERE sha256 = ?")
                .param(sha256)
                .query(Integer.class)
                .optional();
    }

    void add(FiledPaper paper, byte[] content, Instant at) {
        client.sql(
                        "INSERT INTO paper (kind, file_name, product, registration, dated, pages, needs_typing, sha256, added_at,"
                                + " content) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        paper.kind().word(),
                        paper.fileName(),
                        known(paper.product()),
                        known(paper.registration()),
                        paper.dated() == null ? null : paper.dated().toString(),
                        paper.pages(),
                        paper.needsTyping() ? 1 : 0,
                        sha256(content),
                        at.toString(),
                        content))
                .update();
        new ChainRows(client).addLast(RecordKind.PAPER);
    }

    List<StoredPaper> all() {
        List<Mend> mends = new MendRows(client).all();
        return client
                .sql("SELECT " + COLUMNS + " FROM paper ORDER BY number")
                .query((cells, row) -> stored(cells))
                .list()
                .stream()
                .map(stored -> asPutRight(stored, mends))
                .toList();
    }

    /** A page without text is filed by what somebody typed from it, any paper by what people put right on it. */
    private StoredPaper asPutRight(StoredPaper stored, List<Mend> mends) {
        List<Mend> own = mends.stream()
                .filter(mend -> mend.sha256().equals(stored.sha256()))
                .toList();
        if (!stored.paper().needsTyping() && own.isEmpty()) {
            return stored;
        }
        FiledPaper typed = stored.paper().needsTyping()
                ? TypedSheet.filed(stored.paper(), typed(stored.number()))
                : stored.paper();
        return new StoredPaper(MendedPaper.filed(typed, own), stored.sha256(), stored.addedAt(), stored.bytes());
    }

    Optional<StoredPaper> one(int number) {
        return client.sql("SELECT " + COLUMNS + " FROM paper WHERE number = ?")
                .param(number)
                .query((cells, row) -> stored(cells))
                .optional();
    }

    Optional<byte[]> content(int number) {
        return client.sql("SELECT content FROM paper WHERE number = ?")
                .param(number)
                .query((cells, row) -> cells.getBytes(1))
                .optional();
    }

    void type(TypedValue value) {
        client.sql("INSERT INTO paper_typed (paper, page, about, value, who, typed_at) VALUES (?, ?, ?, ?, ?, ?)")
                .params(
                        value.paper(),
                        value.page(),
                        value.about(),
                        value.value(),
                        value.who(),
                        value.when().toString())
                .update();
        new ChainRows(client).addLast(RecordKind.TYPED);
    }

    List<TypedValue> typed(int paper) {
        return client.sql(
                        "SELECT paper, page, about, value, who, typed_at FROM paper_typed WHERE paper = ? ORDER BY number")
                .param(paper)
                .query((cells, row) -> new TypedValue(
                        cells.getInt(1),
                        cells.getInt(2),
                        cells.getString(3),
                        cells.getString(4),
                        cells.getString(5),
                        Instant.parse(cells.getString(6))))
                .list();
    }

    /** Papers whose content is no longer what it was when it came, a sentence each. */
    List<String> damaged() {
        return all().stream()
                .filter(stored ->
                        !sha256(content(stored.number()).orElse(new byte[0])).equals(stored.sha256()))
                .map(stored -> "The paper " + stored.paper().fileName() + " (number " + stored.number()
                        + ") is no longer what it was when it came.")
                .toList();
    }

    /** The checksum by which a file is known, in small letters. */
    static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Java lacks SHA-256", missing);
        }
    }

    private static StoredPaper stored(ResultSet cells) throws SQLException {
        Row row = new Row(cells);
        int number = row.whole();
        FiledPaper.Kind kind = kind(row.text());
        FiledPaper paper = new FiledPaper(
                number,
                kind,
                row.text(),
                text(row.maybeText()),
                text(row.maybeText()),
                row.maybeDate(),
                row.whole(),
                row.yes());
        return new StoredPaper(paper, row.text(), Instant.parse(row.text()), row.whole());
    }

    private static FiledPaper.Kind kind(String word) {
        return Arrays.stream(FiledPaper.Kind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new BookException("The book is damaged: there is no kind of paper '" + word + "'."));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static @Nullable String known(String text) {
        return text.isEmpty() ? null : text;
    }
}
