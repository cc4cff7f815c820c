package plumbrow.documents.sheet.part;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.LimitBasis;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.HeaderTable;

/** Exposure limits of the air people work in, by who set them and over how long they count. */
final class LimitPart implements Part {
    private static final Pattern AUTHORITY = Pattern.compile(
            "(?i)\\b(?:OSHA|PEL|ACGIH|TLV|NIOSH|REL|WEL|EH40|Cal/?OSHA|manufacturer|company|internal|AIHA|WEEL|MAK|AGW|VLEP|IOELV)\\b");
    private static final Pattern BASIS = Pattern.compile(
            "(?i)\\bSTEL\\b|\\bshort[- ]term\\b|\\b15[- ]?min|\\bceiling\\b|\\bCEIL\\b|\\bTLV-C\\b|\\(C\\)|\\bTWA\\b|\\b8[- ]?(?:h|hr|hour)s?\\b|time[- ]weighted");
    private static final Pattern HEADER =
            Pattern.compile("(?i).*\\b(?:PEL|TLV|REL|WEL|OEL|TWA|STEL|limits?|OSHA|ACGIH|NIOSH|ceiling)\\b.*");
    private static final Pattern AMOUNT = Pattern.compile("\\d\\s?(?:mg/|µg/|ppm|g/m)");

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        List<Row> rows = sheet.rows(SheetSection.EXPOSURE);
        Set<Row> used = new HashSet<>();
        for (HeaderTable table : HeaderTable.in(rows, LimitPart::isHeader, LimitPart::holdsAmount)) {
            used.addAll(table.rows());
            table(table, sheet, substances, readings);
        }
        running(rows.stream().filter(row -> !used.contains(row)).toList(), sheet, substances, readings);
    }

    private static boolean isHeader(Row row) {
        return row.cells().size() > 1
                && row.cells().stream()
                        .skip(1)
                        .anyMatch(cell -> HEADER.matcher(cell.text()).matches()
                                && cell.text().length() < 40)
                && !AMOUNT.matcher(row.text()).find();
    }

    private static boolean holdsAmount(Row row) {
        return AMOUNT.matcher(row.text()).find();
    }

    private static void table(HeaderTable table, SheetText sheet, Substances substances, Readings readings) {
        for (List<Passage> record : table.records()) {
            String substance = substances.in(record.get(0).text(), "");
            StringBuilder whole = new StringBuilder();
            record.forEach(cell -> whole.append(cell.text()).append(' '));
            for (int i = 0; i < record.size(); i++) {
                Passage cell = record.get(i);
                String head = table.heads().get(i);
                for (Stretch stretch : Stretch.of(cell.text(), sheet.style(), Family.AIR)) {
                    Nearby near = new Nearby(cell.text(), stretch);
                    String authority =
                            first(near.find(AUTHORITY), find(AUTHORITY, head), find(AUTHORITY, whole.toString()));
                    String basis = first(near.find(BASIS), find(BASIS, head), find(BASIS, others(record, i)));
                    state(stretch, cell, substance, authority, basis, readings);
                }
            }
        }
    }

    private static String others(List<Passage> record, int except) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < record.size(); i++) {
            if (i != except
                    && Stretch.of(record.get(i).text(), plumbrow.documents.sheet.grammar.NumberStyle.POINT, Family.AIR)
                            .isEmpty()) {
                text.append(record.get(i).text()).append(' ');
            }
        }
        return text.toString();
    }

    private static void running(List<Row> rows, SheetText sheet, Substances substances, Readings readings) {
        Passage.Builder all = new Passage.Builder();
        rows.forEach(row -> all.newLine(Passage.of(row)).endLine());
        Passage passage = all.build();
        String text = passage.text();
        String substance = "";
        String authority = "";
        for (Stretch stretch : Stretch.of(text, sheet.style(), Family.AIR)) {
            Nearby near = new Nearby(text, stretch);
            substance = substances.in(near.before() + "\n" + near.line(), substance);
            authority = first(near.find(AUTHORITY), authority);
            String basis = near.onLine(BASIS);
            if (!authority.isEmpty() || !basis.isEmpty()) {
                state(stretch, passage, substance, authority, basis, readings);
            }
        }
    }

    private static void state(
            Stretch stretch, Passage passage, String substance, String authority, String basis, Readings readings) {
        var quote = passage.quote(stretch.lineFrom(), stretch.to());
        if (!stretch.amount().doubt().isEmpty()) {
            readings.unclear(ValueKind.EXPOSURE_LIMIT, stretch.amount().doubt(), quote);
        } else {
            readings.state(
                    ValueKind.EXPOSURE_LIMIT,
                    new Content.ExposureLimit(
                            substance,
                            authority(authority),
                            basis(basis),
                            stretch.amount().amount()),
                    quote);
        }
    }

    private static String authority(String printed) {
        return switch (printed.toUpperCase(Locale.ROOT)) {
            case "OSHA", "PEL" -> "OSHA PEL";
            case "ACGIH", "TLV" -> "ACGIH TLV";
            case "NIOSH", "REL" -> "NIOSH REL";
            case "WEL", "EH40" -> "UK WEL";
            case "MANUFACTURER", "COMPANY", "INTERNAL" -> "maker's own";
            default -> printed;
        };
    }

    private static LimitBasis basis(String printed) {
        String plain = printed.toLowerCase(Locale.ROOT);
        if (plain.isEmpty()) {
            return LimitBasis.UNSAID;
        }
        if (plain.startsWith("stel") || plain.startsWith("short") || plain.startsWith("15")) {
            return LimitBasis.STEL;
        }
        return plain.startsWith("ceil") || plain.endsWith("-c") || plain.equals("(c)")
                ? LimitBasis.CEILING
                : LimitBasis.TWA;
    }

    private static String find(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.find() ? matcher.group() : "";
    }

    private static String first(String... words) {
        for (String word : words) {
            if (!word.isEmpty()) {
                return word;
            }
        }
        return "";
    }
}
