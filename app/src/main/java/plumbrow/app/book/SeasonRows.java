package plumbrow.app.book;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.StoredTable.Filled;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.SheetValues;
import plumbrow.documents.workbook.sheet.SeasonSheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** A whole season in and out of the tables. Works inside the transaction of whoever calls. */
final class SeasonRows {
    private final JdbcOperations sql;
    private final JdbcClient client;

    SeasonRows(JdbcOperations sql) {
        this.sql = sql;
        this.client = JdbcClient.create(sql);
    }

    List<Integer> years() {
        return client.sql("SELECT season FROM season ORDER BY season")
                .query(Integer.class)
                .list();
    }

    /** Takes a season out; the log, choices and the history of its changes stay. */
    void remove(int year) {
        clear(year);
        sql.update("DELETE FROM season_seal WHERE season = ?", year);
        sql.update("DELETE FROM season WHERE season = ?", year);
        touch();
    }

    private void clear(int year) {
        List<StoredTable> tables = new ArrayList<>(BookTables.stored());
        Collections.reverse(tables);
        tables.forEach(table -> sql.update(table.delete(), year));
    }

    /** Puts a season in the place of whatever stands for its year; its log is merged apart, by {@link LogRows}. */
    void replace(Season season) {
        List<Filled> rows = filled(season);
        clear(season.year());
        sql.update("DELETE FROM season WHERE season = ?", season.year());
        sql.update(
                "INSERT INTO season (season, as_of, adviser) VALUES (?, ?, ?)",
                season.year(),
                season.asOf().toString(),
                season.adviser());
        rows.forEach(filled -> sql.batchUpdate(filled.table().insert(), filled.rows()));
        seal(season.year());
        touch();
    }

    /** Makes {@link #version} another one. */
    void touch() {
        Integer version = sql.queryForObject("PRAGMA user_version", Integer.class);
        sql.execute("PRAGMA user_version = " + ((version == null ? 0 : version) + 1 & Integer.MAX_VALUE));
    }

    /** Takes the season's tables, as they are, for what was put in. */
    void seal(int year) {
        client.sql("DELETE FROM season_seal WHERE season = ?").param(year).update();
        seals(year)
                .forEach((part, sum) -> client.sql("INSERT INTO season_seal (season, part, sha256) VALUES (?, ?, ?)")
                        .params(year, part, sum)
                        .update());
    }

    /** The tables of a season that are no longer as they were put in, a sentence each. */
    List<String> unsealed(int year) {
        Map<String, String> then = new TreeMap<>();
        client.sql("SELECT part, sha256 FROM season_seal WHERE season = ?")
                .param(year)
                .query((row, number) -> then.put(row.getString(1), row.getString(2)))
                .list();
        Map<String, String> now = seals(year);
        Set<String> parts = new TreeSet<>(then.keySet());
        parts.addAll(now.keySet());
        return parts.stream()
                .filter(part -> !Objects.equals(then.get(part), now.get(part)))
                .map(part -> "Season " + year + " is no longer as it was put in: its table " + part.replace('_', ' ')
                        + " was changed by something else than Plumbrow.")
                .toList();
    }

    /** A checksum for each table in which the season has rows: of the cells that are not blank, each with its column's name. */
    private Map<String, String> seals(int year) {
        Map<String, String> seals = new TreeMap<>();
        client.sql("SELECT as_of, adviser FROM season WHERE season = ?")
                .param(year)
                .query((row, number) -> seals.put("season", sum(row.getString(1) + "\n" + row.getString(2))))
                .list();
        for (StoredTable table : BookTables.stored()) {
            StringBuilder text = new StringBuilder();
            sql.query(
                    table.selectByName(),
                    (ResultSet row) -> {
                        for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                            Object cell = row.getObject(column);
                            if (cell != null) {
                                text.append(row.getMetaData().getColumnName(column))
                                        .append('=')
                                        .append(
                                                cell instanceof Number number
                                                        ? Double.toHexString(number.doubleValue())
                                                        : cell.toString()
                                                                .replace("\\", "\\\\")
                                                                .replace("\n", "\\n"))
                                        .append('\n');
                            }
                        }
                        text.append('\n');
                    },
                    year);
            if (text.length() > 0) {
                seals.merge(table.name(), sum(text.toString()), (one, other) -> sum(one + other));
            }
        }
        return seals;
    }

    private static String sum(String text) {
        return PaperRows.sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What is another text after every change of what the latest season says: seasons put in, lines of the log, papers and
     * what was decided about labels.
     */
    String version() {
        return String.valueOf(sql.queryForObject("""
                SELECT (SELECT user_version FROM pragma_user_version) || ' '
                    || (SELECT coalesce(max(season), 0) FROM season) || ' '
                    || (SELECT count(*) FROM log_line) || ' ' || (SELECT count(*) FROM log_strike) || ' '
                    || (SELECT count(*) FROM log_pass) || ' '
                    || (SELECT count(*) FROM label_decision) || ' ' || (SELECT count(*) FROM paper)""", String.class));
    }

    Optional<Season> season(int year) {
        return client.sql("SELECT as_of, adviser FROM season WHERE season = ?")
                .param(year)
                .query((cells, number) -> new Head(LocalDate.parse(cells.getString(1)), cells.getString(2)))
                .optional()
                .map(head -> read(year, head));
    }

    /** Whether the season, written again, would give the rows that stand there; a sentence for each table that differs. */
    List<String> lostInReading(Season season) {
        List<String> lost = new ArrayList<>();
        for (Filled filled : filled(season)) {
            List<List<Object>> stored =
                    sql.query(filled.table().selectAll(), (cells, number) -> RawRow.of(cells), season.year());
            if (!stored.equals(filled.rows().stream().map(RawRow::of).toList())) {
                lost.add("Season " + season.year() + " reads back otherwise than it stands in the table "
                        + filled.table().name() + ".");
            }
        }
        return lost;
    }

    private record Head(LocalDate asOf, String adviser) {}

    private static List<Filled> filled(Season season) {
        Distributions distributions = new Distributions();
        List<Filled> rows = new ArrayList<>();
        BookTables.ALL.forEach(table -> rows.addAll(table.fill(season, distributions)));
        rows.addAll(0, distributions.fill(season.year()));
        return rows;
    }

    private Season read(int year, Head head) {
        Map<Sheet<?>, List<?>> rows = new HashMap<>();
        rows.put(SeasonSheet.SHEET, List.of(new SeasonSheet.Line(year, head.asOf(), head.adviser())));
        Distributions distributions = Distributions.read(sql, year);
        for (SeasonTable<?> table : BookTables.ALL) {
            rows.merge(table.sheet(), table.read(sql, year, distributions), SeasonRows::both);
        }
        Season season = Sheets.season(new Rows(rows));
        List<Done> log = new LogRows(client)
                .effective(year, season.fields()).stream()
                        .map(line -> known(line, season.programs()))
                        .toList();
        return season.withPrograms(season.programs(), season.work().withLog(log));
    }

    private static List<?> both(List<?> one, List<?> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    /** The rows of a season by sheet; those of the log come apart. */
    private record Rows(Map<Sheet<?>, List<?>> read) implements SheetValues {
        @Override
        @SuppressWarnings("unchecked") // A table reads what its own sheet makes.
        public <R> List<R> values(Sheet<R> sheet) {
            return (List<R>) read.getOrDefault(sheet, List.of());
        }
    }

    /** A line as the season can read it: that it was a pass which the season no longer has says nothing. */
    private static Done known(Done line, List<Program> programs) {
        MeantPass meant = line.meant();
        boolean there = meant == null
                || meant.none()
                || programs.stream()
                        .filter(program -> program.field().equals(line.field())
                                && program.name().equals(meant.program()))
                        .flatMap(program -> program.passes().stream())
                        .anyMatch(pass ->
                                pass.number() == meant.pass() && line.product().equals(pass.product()));
        return there ? line : line.meaning(null);
    }
}
