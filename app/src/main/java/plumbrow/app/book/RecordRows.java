package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.shelf.Ask;

/** Application records: added, corrected by further ones and voided, never changed. Works inside the transaction of whoever calls. */
final class RecordRows {
    private static final String ITEMS =
            Arrays.stream(RecordItem.values()).map(RecordItem::key).collect(Collectors.joining(", "));

    private static final String ALL =
            "SELECT record.number, corrects, record.why, record.who, written_at, field, date, start_at, "
                    + "end_at, acres, share_pct, "
                    + Arrays.stream(RecordItem.values())
                            .map(item -> "record." + item.key())
                            .collect(Collectors.joining(", "))
                    + ", (SELECT later.number FROM application_record AS later WHERE later.corrects = record.number), "
                    + "record_void.who, record_void.why, voided_at FROM application_record AS record "
                    + "LEFT JOIN record_void ON record_void.record = record.number";

    private static final String PRODUCTS =
            "SELECT record, line, registration, total, total_unit, restricted, reentry_h, "
                    + "preharvest_d, label_date, taken, taken_unit FROM record_product";

    private final JdbcClient client;

    RecordRows(JdbcClient client) {
        this.client = client;
    }

    /** A product of a record, and what was taken for it from the stock; null where none is on file. */
    record Taken(String product, @Nullable Amount taken) {}

    private record Product(
            int record,
            int line,
            @Nullable String registration,
            Amount total,
            Ask restricted,
            @Nullable Integer reentryHours,
            @Nullable Integer preHarvestDays,
            @Nullable LocalDate labelDate,
            @Nullable Amount taken) {}

    private record Head(
            int number,
            @Nullable Integer corrects,
            @Nullable String why,
            String who,
            Instant writtenAt,
            ApplicationRecord.Head record,
            @Nullable Integer correctedBy,
            KeptRecord.@Nullable Voided voided) {}

    /** Every record, those that no longer count among them, in the order of writing. */
    List<KeptRecord> all() {
        return records("", List.of());
    }

    KeptRecord one(int number) {
        return records(" WHERE record.number = ?", List.of(number)).stream()
                .findFirst()
                .orElseThrow(() -> new BookException("There is no record " + number + "."));
    }

    private List<KeptRecord> records(String which, List<Object> asked) {
        List<Head> heads = client.sql(ALL + which + " ORDER BY record.number")
                .params(asked)
                .query((cells, number) -> head(cells))
                .list();
        if (heads.isEmpty()) {
            return List.of();
        }
        Map<Integer, List<Product>> products = client
                .sql(PRODUCTS + (which.isEmpty() ? "" : " WHERE record = ?") + " ORDER BY record, nth")
                .params(asked)
                .query((cells, number) -> product(cells))
                .list()
                .stream()
                .collect(Collectors.groupingBy(Product::record));
        Map<Integer, Done> lines = new LinkedHashMap<>();
        new LogRows(client).all().forEach(line -> lines.put(line.number(), line.done()));
        return heads.stream()
                .map(head -> kept(head, products.getOrDefault(head.number(), List.of()), lines))
                .toList();
    }

    private static KeptRecord kept(Head head, List<Product> products, Map<Integer, Done> lines) {
        List<RecordedProduct> recorded = products.stream()
                .map(one -> {
                    Done done = lines.get(one.line());
                    if (done == null) {
                        throw damaged(head.number(), "line " + one.line() + " of the log");
                    }
                    return new RecordedProduct(
                            done.product(),
                            one.registration(),
                            done.rate(),
                            one.total(),
                            one.restricted(),
                            one.reentryHours(),
                            one.preHarvestDays(),
                            one.labelDate(),
                            done.meant());
                })
                .toList();
        if (recorded.isEmpty()) {
            throw damaged(head.number(), "its products");
        }
        return new KeptRecord(
                head.number(),
                head.record().with(recorded),
                products.stream().map(Product::line).toList(),
                head.who(),
                head.writtenAt(),
                head.corrects(),
                head.why(),
                head.correctedBy(),
                head.voided());
    }

    private static BookException damaged(int number, String what) {
        return new BookException("The book is damaged: record " + number + " lacks " + what + ".");
    }

    /**
     * Writes a record down at the end, with its lines of the log.
     *
     * @param taken for each product in order, what was taken from the stock
     * @return its number
     */
    int add(
            ApplicationRecord record,
            List<Taken> taken,
            @Nullable Integer corrects,
            @Nullable String why,
            String who,
            Instant at) {
        Cells cells = new Cells("application_record")
                .whole(corrects)
                .text(why)
                .text(who)
                .text(at.toString())
                .text(record.field())
                .date(record.date())
                .text(text(record.start()))
                .text(text(record.end()))
                .real(record.acres())
                .real(record.sharePct());
        for (RecordItem item : RecordItem.values()) {
            cells.text(record.items().get(item));
        }
        client.sql(
                        "INSERT INTO application_record (corrects, why, who, written_at, field, date, start_at, end_at, acres, "
                                + "share_pct, " + ITEMS + ") VALUES ("
                                + Stream.generate(() -> "?")
                                        .limit(10 + RecordItem.values().length)
                                        .collect(Collectors.joining(", "))
                                + ")")
                .params(cells.all())
                .update();
        new ChainRows(client).addLast(RecordKind.RECORD);
        int number = client.sql("SELECT max(number) FROM application_record")
                .query(Integer.class)
                .single();
        LogRows log = new LogRows(client);
        List<Done> lines = record.lines();
        for (int i = 0; i < lines.size(); i++) {
            LogLine line = log.add(lines.get(i), at);
            RecordedProduct product = record.products().get(i);
            client.sql("INSERT INTO record_product (line, record, nth, registration, total, total_unit, restricted, "
                            + "reentry_h, preharvest_d, label_date, taken, taken_unit) "
                            + "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(new Cells("record_product")
                            .whole(line.number())
                            .whole(number)
                            .whole(i + 1)
                            .text(product.registration())
                            .amount(product.total())
                            .word(product.restricted())
                            .whole(product.reentryHours())
                            .whole(product.preHarvestDays())
                            .date(product.labelDate())
                            .amount(taken.get(i).taken())
                            .all())
                    .update();
            new ChainRows(client).addLast(RecordKind.RECORD_PRODUCT);
        }
        return number;
    }

    /** Strikes the lines of a record that is corrected or void, which must count. */
    KeptRecord strike(int number, LogLine.Strike strike) {
        KeptRecord record = one(number);
        if (record.correctedBy() != null) {
            throw new BookException("Record " + number + " is corrected already, by record " + record.correctedBy()
                    + ": correct that one.");
        }
        KeptRecord.Voided voided = record.voided();
        if (voided != null) {
            throw new BookException("Record " + number + " is void already, by " + voided.who() + ": " + voided.why());
        }
        LogRows log = new LogRows(client);
        record.lines().forEach(line -> log.strikeOfRecord(line, strike));
        return record;
    }

    void addVoid(int number, KeptRecord.Voided voided) {
        client.sql("INSERT INTO record_void (record, who, why, voided_at) VALUES (?, ?, ?, ?)")
                .params(number, voided.who(), voided.why(), voided.when().toString())
                .update();
        new ChainRows(client).addLast(RecordKind.RECORD_VOID);
    }

    /** What a record took from the stock. */
    List<Taken> taken(KeptRecord record) {
        List<Product> products = client.sql(PRODUCTS + " WHERE record = ? ORDER BY nth")
                .param(record.number())
                .query((cells, number) -> product(cells))
                .list();
        List<Taken> taken = new ArrayList<>();
        for (int i = 0; i < products.size(); i++) {
            taken.add(new Taken(
                    record.record().products().get(i).product(), products.get(i).taken()));
        }
        return taken;
    }

    /** The record that a line of the log belongs to. */
    Optional<Integer> recordOf(int line) {
        return client.sql("SELECT record FROM record_product WHERE line = ?")
                .param(line)
                .query(Integer.class)
                .optional();
    }

    private static @Nullable String text(@Nullable ZonedDateTime moment) {
        return moment == null ? null : moment.toString();
    }

    private static Head head(ResultSet cells) throws SQLException {
        Row row = new Row(cells);
        int number = row.whole();
        Integer corrects = row.maybeWhole();
        String why = row.maybeText();
        String who = row.text();
        Instant writtenAt = Instant.parse(row.text());
        String field = row.text();
        LocalDate date = row.date();
        String start = row.maybeText();
        String end = row.maybeText();
        double acres = row.real();
        double share = row.real();
        Map<RecordItem, String> items = new EnumMap<>(RecordItem.class);
        for (RecordItem item : RecordItem.values()) {
            String said = row.maybeText();
            if (said != null) {
                items.put(item, said);
            }
        }
        Integer correctedBy = row.maybeWhole();
        String voider = row.maybeText();
        String voidWhy = row.maybeText();
        String voidedAt = row.maybeText();
        return new Head(
                number,
                corrects,
                why,
                who,
                writtenAt,
                new ApplicationRecord.Head(
                        field,
                        date,
                        start == null ? null : ZonedDateTime.parse(start),
                        end == null ? null : ZonedDateTime.parse(end),
                        acres,
                        share,
                        items),
                correctedBy,
                voider == null
                        ? null
                        : new KeptRecord.Voided(
                                voider,
                                Objects.requireNonNull(voidWhy),
                                Instant.parse(Objects.requireNonNull(voidedAt))));
    }

    private static Product product(ResultSet cells) throws SQLException {
        Row row = new Row(cells);
        return new Product(
                row.whole(),
                row.whole(),
                row.maybeText(),
                row.amount(),
                row.word(Ask.class),
                row.maybeWhole(),
                row.maybeWhole(),
                row.maybeDate(),
                row.maybeAmount());
    }
}
