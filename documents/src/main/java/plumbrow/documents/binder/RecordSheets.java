package plumbrow.documents.binder;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.RecordFact;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.records.Reentry;
import plumbrow.advice.text.TextRule;

/** Records as a table, a row for each product of each record: CSV and XLSX. No text in it is run by a spreadsheet program. */
public final class RecordSheets {
    private static final List<String> FIRST = List.of(
            "record",
            "standing",
            "corrects",
            "why",
            "field",
            "date",
            "start",
            "end",
            "clock",
            "acres",
            "product",
            "registration",
            "rate",
            "rate_unit",
            "total",
            "total_unit",
            "restricted",
            "reentry_h",
            "preharvest_d");
    private static final List<String> LAST = List.of(
            "entry_allowed_from",
            "missing",
            "perhaps_missing",
            "write_by",
            "keep_until",
            "written_by",
            "written_at",
            "log_line",
            "chain_head",
            "ask");

    private RecordSheets() {}

    /** A file that ends in .csv, in UTF-8. */
    public static byte[] csv(RecordExport export) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(head());
            for (List<Object> row : rows(export)) {
                csv.writeRecord(row.stream().map(RecordSheets::escaped).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        // Spreadsheet programs take a file with letters beyond ASCII for UTF-8 only if it begins with this mark.
        boolean plain = text.toString().chars().allMatch(c -> c < 128);
        return (plain ? text.toString() : "\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
    }

    /** A file that ends in .xlsx. */
    public static byte[] xlsx(RecordExport export) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Plumbrow", "1.0")) {
            Worksheet about = workbook.newWorksheet("about");
            about.width(0, 90);
            List<String> lines = about(export);
            for (int row = 0; row < lines.size(); row++) {
                about.value(row, 0, lines.get(row));
            }
            about.style(0, 0).bold().fontSize(16).set();
            Worksheet sheet = workbook.newWorksheet("records");
            List<String> head = head();
            for (int column = 0; column < head.size(); column++) {
                sheet.value(0, column, head.get(column));
                sheet.style(0, column).bold().set();
                sheet.width(column, 16);
            }
            sheet.freezePane(2, 1);
            sheet.pageOrientation("landscape");
            sheet.repeatRows(0);
            List<List<Object>> rows = rows(export);
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < head.size(); column++) {
                    Object cell = rows.get(row).get(column);
                    if (cell instanceof Number number) {
                        sheet.value(row + 1, column, number);
                    } else if (!cell.toString().isEmpty()) {
                        sheet.value(row + 1, column, TextRule.PROSE.seen(cell.toString()));
                    }
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    static List<String> about(RecordExport export) {
        return List.of(
                "Application records",
                "What was asked for: " + export.asked() + ".",
                "Made on " + export.day() + ". Ask " + export.ask() + ".",
                "Records that were corrected or void stay in it; the column standing says so, the column why the reason.",
                export.anchor());
    }

    static List<String> head() {
        List<String> head = new ArrayList<>(FIRST);
        for (RecordItem item : RecordItem.values()) {
            head.add(item.key());
        }
        head.addAll(LAST);
        return head;
    }

    /** Numbers as numbers, everything else as text; blank where nothing was written down. */
    static List<List<Object>> rows(RecordExport export) {
        List<List<Object>> rows = new ArrayList<>();
        for (KeptRecord kept : export.records()) {
            RecordCheck check = RecordCheck.of(export.season(), kept);
            for (int i = 0; i < kept.record().products().size(); i++) {
                rows.add(row(export, kept, check, i));
            }
        }
        return rows;
    }

    private static List<Object> row(RecordExport export, KeptRecord kept, RecordCheck check, int nth) {
        ApplicationRecord record = kept.record();
        RecordedProduct one = record.products().get(nth);
        ZonedDateTime clock = record.start() == null ? record.end() : record.start();
        List<Object> row = new ArrayList<>();
        row.add(kept.number());
        row.add(RecordFact.state(kept));
        row.add(or(kept.corrects()));
        row.add(or(kept.why()));
        row.add(record.field());
        row.add(record.date().toString());
        row.add(moment(record.start()));
        row.add(moment(record.end()));
        row.add(clock == null ? "" : clock.getZone().getId());
        row.add(record.acres());
        row.add(one.product());
        row.add(or(one.registration()));
        row.add(one.rate().value());
        row.add(one.rate().unit().symbol() + "/ac");
        row.add(one.total().value());
        row.add(one.total().unit().symbol());
        row.add(one.restricted().word());
        row.add(or(one.reentryHours()));
        row.add(or(one.preHarvestDays()));
        for (RecordItem item : RecordItem.values()) {
            String text = record.items().getOrDefault(item, "");
            row.add(item.form().kind() == RecordItem.Kind.NUMBER && !text.isEmpty() ? Double.valueOf(text) : text);
        }
        LocalDateTime allowed = Reentry.of(record).allowedFrom();
        row.add(allowed == null ? "not known" : allowed.toString().replace('T', ' '));
        row.add(String.join(", ", check.missing()));
        row.add(String.join(", ", check.perhaps()));
        row.add(check.due() == null ? "" : check.due().toString().replace('T', ' '));
        row.add(check.keepUntil() == null ? "" : check.keepUntil().toString());
        row.add(kept.who());
        row.add(kept.writtenAt().toString());
        row.add(kept.lines().get(nth));
        row.add(export.head());
        row.add(export.ask());
        return row;
    }

    private static Object or(@Nullable Object value) {
        return Objects.requireNonNullElse(value, "");
    }

    private static String moment(@Nullable ZonedDateTime moment) {
        return moment == null ? "" : moment.toOffsetDateTime().toString();
    }

    /** A text that a spreadsheet program would run goes out with an apostrophe before it. */
    private static String escaped(Object cell) {
        if (cell instanceof Double number) {
            return RecordItem.digits(number);
        }
        String text = TextRule.PROSE.seen(cell.toString());
        return !(cell instanceof Number) && TextRule.formula(text) ? "'" + text : text;
    }
}
