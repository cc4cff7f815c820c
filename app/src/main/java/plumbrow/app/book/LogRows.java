package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;

/** The log of what was put on the fields: lines are added and struck, never changed. */
final class LogRows {
    /** How many years before its own a season is told of: what was put on then may repeat a group, or still be there. */
    private static final int YEARS_BACK = 5;

    private static final String ALL = """
            SELECT log_line.number, field, date, product, rate, rate_unit, share_pct, applicator, source, written_at,
                   log_strike.who, why, struck_at, said.number IS NOT NULL AS said, said.program, said.pass,
                   record_product.record
            FROM log_line LEFT JOIN log_strike ON log_strike.line = log_line.number
            LEFT JOIN log_pass AS said ON said.number =
                (SELECT max(log_pass.number) FROM log_pass WHERE log_pass.line = log_line.number)
            LEFT JOIN record_product ON record_product.line = log_line.number
            ORDER BY log_line.number""";

    private final JdbcClient client;

    LogRows(JdbcClient client) {
        this.client = client;
    }

    /** What was put on where, on which day and how much: two lines that agree in it tell of the same application. */
    private record Applied(String field, LocalDate date, String product, Amount rate, double sharePct) {
        static Applied of(Done done) {
            return new Applied(done.field(), done.date(), done.product(), done.rate(), done.sharePct());
        }
    }

    /** Every line, in the order of writing. */
    List<LogLine> all() {
        return client.sql(ALL).query((cells, number) -> line(cells)).list();
    }

    /** What counts for the fields of a season: from a few years back to the end of its year. */
    List<Done> effective(int year, List<Field> fields) {
        Set<String> names = new HashSet<>(fields.stream().map(Field::name).toList());
        return all().stream()
                .filter(LogLine::counts)
                .map(LogLine::done)
                .filter(done -> names.contains(done.field()) && within(year, done.date()))
                .toList();
    }

    /** Adds those lines of a season that are new. A line the book has already, even a struck one, is not added again. */
    LogLine.Merged merge(Season season, @Nullable Instant at) {
        Map<Applied, Integer> there = counted(all().stream().map(LogLine::done).toList());
        Map<Applied, Integer> counting = counted(effective(season.year(), season.fields()));
        int added = 0;
        List<LogLine> free =
                new ArrayList<>(all().stream().filter(LogLine::counts).toList());
        for (Done done : season.work().log()) {
            if (!taken(there, done)) {
                add(done, at);
                added++;
            } else {
                answered(free, done, at);
            }
            taken(counting, done);
        }
        int bookOnly = counting.values().stream().mapToInt(Integer::intValue).sum();
        return new LogLine.Merged(added, season.work().log().size() - added, bookOnly);
    }

    /** A line that the book has, of which the season says otherwise which pass it was: the answer comes to the book. */
    private void answered(List<LogLine> free, Done done, @Nullable Instant at) {
        Optional<LogLine> line = free.stream()
                .filter(one -> Applied.of(one.done()).equals(Applied.of(done)))
                .min(Comparator.comparing(
                        (LogLine one) -> !Objects.equals(one.done().meant(), done.meant())));
        line.ifPresent(free::remove);
        MeantPass meant = done.meant();
        if (meant != null && line.isPresent() && !meant.equals(line.get().done().meant())) {
            say(line.get().number(), meant, "as the season that was brought in says", at);
        }
    }

    private static Map<Applied, Integer> counted(List<Done> lines) {
        Map<Applied, Integer> counts = new HashMap<>();
        lines.forEach(done -> counts.merge(Applied.of(done), 1, Integer::sum));
        return counts;
    }

    /** Takes one such line out of the count; false where none is left. */
    private static boolean taken(Map<Applied, Integer> counts, Done done) {
        Integer left = counts.getOrDefault(Applied.of(done), 0);
        if (left > 0) {
            counts.put(Applied.of(done), left - 1);
        }
        return left > 0;
    }

    /** Writes a line down at the end. */
    LogLine add(Done done, @Nullable Instant at) {
        client.sql("INSERT INTO log_line (field, date, product, rate, rate_unit, share_pct, applicator, source, "
                        + "written_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(new Cells("log_line")
                        .text(done.field())
                        .date(done.date())
                        .text(done.product())
                        .amount(done.rate())
                        .real(done.sharePct())
                        .text(done.applicator())
                        .text(done.source())
                        .text(at == null ? null : at.toString())
                        .all())
                .update();
        new ChainRows(client).addLast(RecordKind.LOG_LINE);
        int number = client.sql("SELECT max(number) FROM log_line")
                .query(Integer.class)
                .single();
        MeantPass meant = done.meant();
        if (meant != null) {
            String who = done.applicator() == null ? done.source() : done.applicator();
            say(number, meant, who, at);
        }
        return line(number);
    }

    private LogLine line(int number) {
        return all().stream()
                .filter(one -> one.number() == number)
                .findFirst()
                .orElseThrow(() -> new BookException("The log has no line " + number + "."));
    }

    /** Writes down which planned pass a line was; {@code when} is null where the moment is not known. */
    LogLine say(int line, MeantPass meant, String who, @Nullable Instant when) {
        if (!line(line).counts()) {
            throw new BookException("Line " + line + " of the log is voided: it is no pass any more.");
        }
        client.sql("INSERT INTO log_pass (line, program, pass, who, said_at) VALUES (?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        line,
                        meant.program(),
                        meant.none() ? null : meant.pass(),
                        who,
                        when == null ? "" : when.toString()))
                .update();
        new ChainRows(client).addLast(RecordKind.LOG_PASS);
        return line(line);
    }

    /** Strikes a line, which must be there, count and stand by itself. */
    void strike(int number, LogLine.Strike strike) {
        Integer record = line(number).record();
        if (record != null) {
            throw new BookException("Line " + number + " of the log is a product of application record " + record
                    + ": correct that record, or say that it is void.");
        }
        strikeOfRecord(number, strike);
    }

    /** Strikes a line, whether or not it belongs to a record. */
    void strikeOfRecord(int number, LogLine.Strike strike) {
        LogLine line = line(number);
        LogLine.Strike before = line.strike();
        if (before != null) {
            throw new BookException(
                    "Line " + number + " of the log is voided already, by " + before.who() + ": " + before.why());
        }
        client.sql("INSERT INTO log_strike (line, who, why, struck_at) VALUES (?, ?, ?, ?)")
                .params(number, strike.who(), strike.why(), strike.when().toString())
                .update();
        new ChainRows(client).addLast(RecordKind.STRIKE);
    }

    private static boolean within(int year, LocalDate date) {
        return date.getYear() >= year - YEARS_BACK && date.getYear() <= year;
    }

    private static LogLine line(ResultSet cells) throws SQLException {
        Row row = new Row(cells);
        int number = row.whole();
        Done done = new Done(row.text(), row.date(), row.text(), row.amount(), row.real(), row.maybeText(), row.text());
        String writtenAt = row.maybeText();
        String who = row.maybeText();
        String why = row.maybeText();
        String struckAt = row.maybeText();
        boolean said = row.yes();
        String program = row.maybeText();
        Integer pass = row.maybeWhole();
        MeantPass meant = program == null || pass == null ? MeantPass.NONE : new MeantPass(program, pass);
        Integer record = row.maybeWhole();
        return new LogLine(
                number,
                said ? done.meaning(meant) : done,
                writtenAt == null ? null : Instant.parse(writtenAt),
                who == null
                        ? null
                        : new LogLine.Strike(
                                who, Objects.requireNonNull(why), Instant.parse(Objects.requireNonNull(struckAt))),
                record);
    }
}
