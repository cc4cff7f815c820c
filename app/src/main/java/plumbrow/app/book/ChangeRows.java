package plumbrow.app.book;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowName;
import plumbrow.documents.workbook.edit.SeasonDiff;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The changes of seasons, row by row: only ever added to. Works inside the transaction of whoever calls. */
final class ChangeRows {
    private final JdbcOperations sql;
    private final JdbcClient client;

    ChangeRows(JdbcOperations sql) {
        this.sql = sql;
        this.client = JdbcClient.create(sql);
    }

    /**
     * Writes down what parts a season from what it was.
     *
     * @param before null where the book had no season of the year; then its rows are not written down one by one
     */
    int add(@Nullable Season before, Season after, By by, @Nullable Integer takesBack) {
        String who = by.who();
        client.sql("INSERT INTO season_change (season, at, who, why, way, takes_back) VALUES (?, ?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        after.year(),
                        by.at() == null ? null : by.at().toString(),
                        who == null ? after.adviser() : who,
                        by.why(),
                        by.way().word(),
                        takesBack))
                .update();
        int number =
                client.sql("SELECT last_insert_rowid()").query(Integer.class).single();
        List<Object[]> rows = new ArrayList<>();
        for (RowChange change : before == null ? List.<RowChange>of() : differences(before, after)) {
            rows.add(new Object[] {
                number, rows.size() + 1, change.table(), change.at(), json(change.before()), json(change.after())
            });
        }
        sql.batchUpdate(
                "INSERT INTO season_change_row (change, nth, sheet, place, before, after) VALUES (?, ?, ?, ?, ?, ?)",
                rows);
        return number;
    }

    /** A season that a program made may hold distributions that no column takes: then there are no rows as texts. */
    static List<RowChange> differences(Season before, Season after) {
        try {
            return SeasonDiff.between(before, after);
        } catch (IllegalArgumentException unshown) {
            return List.of();
        }
    }

    private static @Nullable String json(@Nullable Map<String, String> row) {
        return row == null ? null : RowJson.of(row);
    }

    /** Tables of which {@link DeskChangeRows} tells by programs and things around a field. */
    private static final Set<String> TOLD_ELSEWHERE =
            Set.of("programs", "passes", "sprays", "tillage", "surroundings", "log");

    /**
     * Rows that were changed in the book since a workbook was last brought in, and that a coming season has otherwise than the
     * one held, in words.
     */
    List<String> lost(Season held, Season coming) {
        List<SeasonChange> changes = all(held.year());
        int since = 0;
        for (int i = 0; i < changes.size(); i++) {
            since = changes.get(i).way() == By.Way.WORKBOOK ? i + 1 : since;
        }
        Set<String> touched = new LinkedHashSet<>();
        changes.subList(since, changes.size()).stream()
                .flatMap(change -> change.rows().stream())
                .filter(row -> !TOLD_ELSEWHERE.contains(row.table()))
                .forEach(row -> {
                    touched.add(words(row.table(), row.before()));
                    touched.add(words(row.table(), row.after()));
                });
        return differences(held, coming).stream()
                .filter(row -> !row.columns().equals(List.of("boundary")))
                .map(row -> words(row.table(), row.before() == null ? row.after() : row.before()))
                .filter(touched::contains)
                .distinct()
                .map(name -> "the row " + name)
                .toList();
    }

    private static String words(String table, @Nullable Map<String, String> row) {
        return row == null
                ? ""
                : Sheets.named(table)
                        .map((Sheet<?> sheet) -> RowName.of(sheet, row))
                        .orElse("");
    }

    private record Head(
            int number,
            int season,
            @Nullable String at,
            String who,
            String why,
            String way,
            @Nullable Integer takesBack) {}

    /** Every change of a year, in the order of writing. */
    List<SeasonChange> all(int year) {
        List<Head> heads = client.sql("SELECT number, season, at, who, why, way, takes_back FROM season_change"
                        + " WHERE season = ? ORDER BY number")
                .param(year)
                .query((row, nth) -> new Head(
                        row.getInt(1),
                        row.getInt(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6),
                        row.getObject(7) == null ? null : row.getInt(7)))
                .list();
        Map<Integer, List<RowChange>> rows = new HashMap<>();
        sql.query(
                "SELECT change, sheet, place, before, after FROM season_change_row JOIN season_change ON number = change"
                        + " WHERE season = ? ORDER BY change, nth",
                row -> {
                    rows.computeIfAbsent(row.getInt(1), none -> new ArrayList<>())
                            .add(new RowChange(
                                    row.getString(2), row.getInt(3), row(row.getString(4)), row(row.getString(5))));
                },
                year);
        Set<Integer> takenBack = takenBack(heads);
        return heads.stream()
                .map(head -> new SeasonChange(
                        head.number(),
                        head.season(),
                        head.at() == null ? null : Instant.parse(head.at()),
                        head.who(),
                        head.why(),
                        By.Way.of(head.way()),
                        head.takesBack(),
                        takenBack.contains(head.number()),
                        rows.getOrDefault(head.number(), List.of())))
                .toList();
    }

    private static @Nullable Map<String, String> row(@Nullable String json) {
        return json == null ? null : RowJson.read(json);
    }

    /** The numbers of those that stand taken back: an undo that was itself taken back takes nothing back. */
    private static Set<Integer> takenBack(List<Head> heads) {
        Set<Integer> takenBack = new HashSet<>();
        List<Head> latestFirst = new ArrayList<>(heads);
        Collections.reverse(latestFirst);
        for (Head head : latestFirst) {
            Integer target = head.takesBack();
            if (target != null && !takenBack.contains(head.number())) {
                takenBack.add(target);
            }
        }
        return takenBack;
    }

    /** One change of a year. */
    SeasonChange one(int year, int number) {
        return all(year).stream()
                .filter(change -> change.number() == number)
                .findFirst()
                .orElseThrow(() -> new BookException("Season " + year + " has no change " + number + "."));
    }
}
