package plumbrow.app.book;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.ResultSetExtractor;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The chain over all that was written down for good, in the order of writing. The hash of a link is the SHA-256 of the UTF-8 text
 *
 * <pre>hash of the link before (nothing for the first), line feed, number, line feed, kind, blank, entry, line feed, what it
 * says</pre>
 *
 * where what it says is a {@link SaidRow}. The first link, number 0 of the kind "beginning", says when the chain began and how much
 * the book held already. Works inside the transaction of whoever calls.
 */
final class ChainRows {
    private static final String BEGINNING = "beginning";

    private final JdbcClient client;

    ChainRows(JdbcClient client) {
        this.client = client;
    }

    private record Link(int number, String kind, int entry, String said, String hash) {
        String hashAfter(String before) {
            String text = before + "\n" + number + "\n" + kind + " " + entry + "\n" + said;
            return PaperRows.sha256(text.getBytes(StandardCharsets.UTF_8));
        }

        /** "entry 17 (line 3 of the log)". */
        String words() {
            return "entry " + number
                    + RecordKind.of(kind)
                            .map(known -> " (" + lower(known.words(entry)) + ")")
                            .orElse("");
        }
    }

    /** Whether the tables are there and nothing has been linked yet. */
    boolean due() {
        return client.sql("SELECT count(*) FROM chain_due").query(Integer.class).single() > 0;
    }

    /** Begins the chain with what the book holds, as it is found; does nothing where it has begun. */
    void begin(Instant now) {
        if (!due()) {
            return;
        }
        client.sql("DELETE FROM chain_due").update();
        List<Entry> held = new ArrayList<>();
        for (RecordKind kind : RecordKind.values()) {
            client.sql("SELECT " + kind.key() + " FROM " + kind.table() + " ORDER BY " + kind.key())
                    .query(Integer.class)
                    .list()
                    .forEach(entry -> held.add(new Entry(kind, entry)));
        }
        add(0, BEGINNING, 0, "began=t" + now + "\nheld=i" + held.size(), "");
        held.forEach(entry -> add(entry.kind(), entry.number()));
    }

    private record Entry(RecordKind kind, int number) {}

    /** Links the row that was just written. */
    void addLast(RecordKind kind) {
        add(kind, client.sql("SELECT last_insert_rowid()").query(Integer.class).single());
    }

    private void add(RecordKind kind, int entry) {
        RecordHead last = head();
        String said = client.sql("SELECT " + columns(kind) + " FROM " + kind.table() + " WHERE " + kind.key() + " = ?")
                .param(entry)
                .query((row, number) -> SaidRow.of(row))
                .single()
                .text();
        add(last.number() + 1, kind.word(), entry, said, last.hash());
    }

    private void add(int number, String kind, int entry, String said, String before) {
        String hash = new Link(number, kind, entry, said, "").hashAfter(before);
        client.sql("INSERT INTO chain (number, kind, entry, said, hash) VALUES (?, ?, ?, ?, ?)")
                .params(number, kind, entry, said, hash)
                .update();
    }

    /** The last link. */
    RecordHead head() {
        return client.sql("SELECT number, hash FROM chain ORDER BY number DESC LIMIT 1")
                .query((row, number) -> new RecordHead(row.getInt(1), row.getString(2)))
                .optional()
                .orElseThrow(() -> new BookException("The book is damaged: the chain of its record is gone."));
    }

    /** What is wrong with the chain and the rows it speaks of, a sentence each. */
    List<String> problems() {
        List<Link> links = client.sql("SELECT number, kind, entry, said, hash FROM chain ORDER BY number")
                .query((row, number) ->
                        new Link(row.getInt(1), row.getString(2), row.getInt(3), row.getString(4), row.getString(5)))
                .list();
        List<String> problems = new ArrayList<>(broken(links));
        for (RecordKind kind : RecordKind.values()) {
            problems.addAll(rows(
                    kind,
                    links.stream()
                            .filter(link -> link.kind().equals(kind.word()))
                            .toList()));
        }
        return problems;
    }

    /** Whether the record went through a head: the chain has its link, with its hash. */
    List<String> missing(RecordHead anchor) {
        return client.sql("SELECT hash FROM chain WHERE number = ?")
                .param(anchor.number())
                .query(String.class)
                .optional()
                .map(hash -> hash.startsWith(anchor.hash())
                        ? List.<String>of()
                        : List.of("The record up to entry " + anchor.number() + " is not the one with the head "
                                + anchor.text() + ": it was written anew since."))
                .orElseGet(() -> List.of("The record ends before entry " + anchor.number() + ", which the head "
                        + anchor.text() + " speaks of: its end was cut off."));
    }

    private static List<String> broken(List<Link> links) {
        List<String> problems = new ArrayList<>();
        if (links.isEmpty() || !links.get(0).kind().equals(BEGINNING)) {
            problems.add("The beginning of the record's chain is gone.");
        }
        String before = "";
        int next = 0;
        for (Link link : links) {
            if (link.number() != next) {
                problems.add("The record lacks "
                        + (link.number() == next + 1
                                ? "entry " + next
                                : "entries " + next + " to " + (link.number() - 1))
                        + ".");
            } else if (!link.hash().equals(link.hashAfter(before))) {
                problems.add(
                        "The record was changed at " + link.words() + ": it no longer follows from the one before it.");
            }
            before = link.hash();
            next = link.number() + 1;
        }
        return problems;
    }

    private List<String> rows(RecordKind kind, List<Link> links) {
        Map<Integer, SaidRow> rows = new HashMap<>();
        client.sql("SELECT " + kind.key() + " AS entry_of_row, " + columns(kind) + " FROM " + kind.table())
                .query((ResultSetExtractor<Integer>) found -> collect(found, rows));
        List<String> problems = new ArrayList<>();
        Set<Integer> linked = new HashSet<>();
        for (Link link : links) {
            linked.add(link.entry());
            SaidRow said = SaidRow.read(link.said());
            SaidRow now = rows.get(link.entry());
            if (now == null) {
                problems.add(kind.words(link.entry()) + " was removed; it said: " + said.words() + ".");
            } else if (!said.differs(now).isEmpty()) {
                problems.add(kind.words(link.entry()) + " was changed: " + String.join("; ", said.differs(now)) + ".");
            }
        }
        rows.keySet().stream()
                .filter(entry -> !linked.contains(entry))
                .sorted()
                .forEach(entry -> problems.add(
                        kind.words(entry) + " was not written by Plumbrow: the record's chain does" + " not know it."));
        return problems;
    }

    private static int collect(ResultSet found, Map<Integer, SaidRow> rows) throws SQLException {
        while (found.next()) {
            Map<String, String> cells = new HashMap<>(SaidRow.of(found).cells());
            cells.remove("entry_of_row");
            rows.put(found.getInt(1), new SaidRow(cells));
        }
        return rows.size();
    }

    /** All columns but the bytes of files, which may be large. */
    private String columns(RecordKind kind) {
        return String.join(
                ", ",
                client.sql("SELECT name FROM pragma_table_info(?) WHERE type <> 'BLOB' ORDER BY name")
                        .param(kind.table())
                        .query(String.class)
                        .list());
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
