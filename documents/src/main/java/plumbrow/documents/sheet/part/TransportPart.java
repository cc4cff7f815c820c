package plumbrow.documents.sheet.part;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.section.HeaderTable;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Items;
import plumbrow.documents.sheet.section.Label;

/** UN number, class, packing group and marine pollutant, by mode of transport where the sheet tells them apart. */
final class TransportPart implements Part {
    private static final Pattern MODE = Pattern.compile(
            "(?i)\\b(?:DOT|49 CFR|IMDG|IMO|IATA|ICAO|ADR|RID|TDG|land|road|ground|sea|vessel|maritime|air)\\b");
    private static final Pattern UN = Pattern.compile("(?i)\\b(UN|NA)\\s?-?\\s?(\\d{4})(?!\\d)");
    private static final Pattern BARE_UN = Pattern.compile("\\s*(\\d{4})\\s*(?:\\D.*)?");
    private static final Pattern CLASS = Pattern.compile("(?<![\\d.])([1-9](?:\\.[1-6])?[A-S]?)(?![\\d.%])");
    private static final Pattern GROUP = Pattern.compile("(?<![\\p{L}])(I{1,3})(?![\\p{L}])");
    private static final Pattern IN_LINE = Pattern.compile(
            "(?i)(?:UN|NA)\\s?-?\\s?\\d{4}[^\\n]{0,160}?,\\s*(?:(?:hazard )?class\\s*)?(?<class>[1-9](?:\\.[1-6])?)\\s*(?:\\([\\d., ]+\\))?,\\s*(?:PG|packing group)?\\s*(?<group>I{1,3})(?![\\p{L}])");
    private static final Pattern NAME_IN_LINE = Pattern.compile(
            "(?i)(?:UN|NA)\\s?-?\\s?\\d{4}[\\s,;]+([\\p{L}][^\\n]{2,160}?)\\s*,\\s*(?:(?:hazard )?class\\s*)?$");
    /** Small packages under a class that was theirs alone until 2021. */
    private static final Pattern CONSUMER =
            Pattern.compile("(?:^|[:\\t]\\s*)((?i:consumer commodity))\\s*,\\s*(ORM-?D)\\b");

    private static final int LONGEST_NAME = 200;
    private static final Pattern FREE = Pattern.compile(
            "(?i)\\bnot (?:otherwise )?(?:dot )?(?:regulated|restricted|subject|classified as (?:a )?dangerous|dangerous goods|hazardous)\\b[^.\\t\\n]*");
    private static final Pattern YES = Pattern.compile("(?i)^\\W*(?:yes|marine pollutant|this product|P\\b|severe).*");
    private static final Pattern NO = Pattern.compile("(?i)^\\W*(?:no|none|not|n/a)\\b.*");
    private static final Pattern NONE =
            Pattern.compile("(?i)^\\W*(?:none|not applicable|n/?a|not regulated|-|–|—)\\b?.*");
    private static final Pattern POLLUTANT =
            Pattern.compile("(?i)(?<!not )(?<!not a )(?<!no )\\bmarine pollutant\\b(?!s?\\s*[:?\\t])");

    @Override
    public void read(SheetText sheet, Readings readings) {
        List<Row> rows = sheet.rows(SheetSection.TRANSPORT);
        Set<Row> used = new HashSet<>();
        for (HeaderTable table :
                HeaderTable.in(rows, TransportPart::isHeader, row -> row.cells().size() > 1)) {
            used.addAll(table.rows());
            table(table, readings);
        }
        for (HeaderTable table : HeaderTable.in(
                rows.stream().filter(row -> !used.contains(row)).toList(),
                TransportPart::isFieldsHeader,
                row -> MODE.matcher(row.first().text()).find() && row.cells().size() > 2)) {
            used.addAll(table.rows());
            byRow(table, readings);
        }
        String mode = "";
        Item before = null;
        for (Item item :
                Items.of(rows.stream().filter(row -> !used.contains(row)).toList())) {
            mode = item.is(Label.MODE) ? mode(item.head().text()) : mode;
            item(item, mode, readings);
            if (before != null
                    && item.is(Label.MARINE_POLLUTANT)
                    && item.value().isEmpty()
                    && before.value().text().endsWith(",")) {
                state(ValueKind.MARINE_POLLUTANT, mode, "yes", item.head().quote(), readings);
            }
            before = item;
        }
    }

    private static boolean isHeader(Row row) {
        return row.cells().size() > 1
                && row.cells().stream()
                                .filter(cell -> MODE.matcher(cell.text()).find()
                                        && cell.text().length() < 25)
                                .count()
                        > 1
                && !UN.matcher(row.text()).find();
    }

    /** "Regulation, UN number, proper shipping name, class, group": a line for each mode. */
    private static boolean isFieldsHeader(Row row) {
        return row.cells().size() > 3
                && row.cells().stream()
                                .filter(cell -> kind(cell.text()) != null)
                                .count()
                        > 2
                && !UN.matcher(row.text()).find();
    }

    private static void byRow(HeaderTable table, Readings readings) {
        for (List<Passage> record : table.records()) {
            String mode = mode(record.get(0).text());
            for (int i = 1; i < record.size(); i++) {
                String head = table.heads().get(i);
                ValueKind kind = head.matches("(?i)\\W*PG\\W*") ? ValueKind.PACKING_GROUP : kind(head);
                if (kind != null && !record.get(i).isEmpty()) {
                    field(kind, record.get(i), mode, readings);
                }
            }
        }
    }

    private static void table(HeaderTable table, Readings readings) {
        boolean labelsFirst = !MODE.matcher(table.heads().get(0)).find();
        for (List<Passage> record : table.records()) {
            ValueKind kind = labelsFirst ? kind(record.get(0).text()) : null;
            for (int i = labelsFirst ? 1 : 0; i < record.size(); i++) {
                if (kind != null && !record.get(i).isEmpty()) {
                    field(kind, record.get(i), mode(table.heads().get(i)), readings);
                }
            }
        }
    }

    private static @org.jspecify.annotations.Nullable ValueKind kind(String label) {
        String plain = label.toLowerCase(Locale.ROOT);
        if (plain.contains("shipping")) {
            return ValueKind.SHIPPING_NAME;
        }
        if (plain.matches(".*\\b(?:un|id)\\b.*(?:no|number|nr).*|un|.*identification n.*")) {
            return ValueKind.UN_NUMBER;
        }
        if (plain.contains("group")) {
            return ValueKind.PACKING_GROUP;
        }
        if (plain.contains("pollutant")) {
            return ValueKind.MARINE_POLLUTANT;
        }
        return plain.contains("class") ? ValueKind.TRANSPORT_CLASS : null;
    }

    private static void item(Item item, String mode, Readings readings) {
        Passage value = item.value();
        if (value.isEmpty()) {
            if (item.label().map(TransportPart::kind).isEmpty()) {
                line(item.head(), null, mode, readings);
            }
            return;
        }
        ValueKind kind = item.label().map(TransportPart::kind).orElse(null);
        if (kind == ValueKind.SHIPPING_NAME && UN.matcher(value.text()).lookingAt()) {
            kind = null;
        }
        if (kind != null) {
            field(kind, value, mode, readings);
            if (kind != ValueKind.UN_NUMBER) {
                number(value, mode, readings);
                return;
            }
        }
        line(item.all(), kind, mode, readings);
    }

    private static @org.jspecify.annotations.Nullable ValueKind kind(Label label) {
        return switch (label) {
            case UN_NUMBER -> ValueKind.UN_NUMBER;
            case SHIPPING_NAME -> ValueKind.SHIPPING_NAME;
            case TRANSPORT_CLASS -> ValueKind.TRANSPORT_CLASS;
            case PACKING_GROUP -> ValueKind.PACKING_GROUP;
            case MARINE_POLLUTANT -> ValueKind.MARINE_POLLUTANT;
            default -> null;
        };
    }

    /** A number among other fields of one line: "Class: 2.2  Group: NA  Number: UN2187". */
    private static void number(Passage value, String mode, Readings readings) {
        Matcher un = UN.matcher(value.text().replace('\t', ' '));
        if (un.find()) {
            state(
                    ValueKind.UN_NUMBER,
                    mode,
                    un.group(1).toUpperCase(Locale.ROOT) + un.group(2),
                    value.quote(un.start(), un.end()),
                    readings);
        }
    }

    /** A line that says it all: "UN3082, Environmentally hazardous substance, liquid, n.o.s. (atrazine), 9, III". */
    private static void line(
            Passage passage, @org.jspecify.annotations.Nullable ValueKind known, String mode, Readings readings) {
        String text = passage.text().replace('\t', ' ');
        Matcher un = UN.matcher(text);
        if (known == null && un.find() && text.startsWith("?", un.end())) {
            readings.unclear(
                    ValueKind.UN_NUMBER, "the sheet itself is not sure of it", passage.quote(un.start(), un.end()));
            return;
        }
        if (known == null && un.reset().find()) {
            state(
                    ValueKind.UN_NUMBER,
                    mode,
                    un.group(1).toUpperCase(Locale.ROOT) + un.group(2),
                    passage.quote(un.start(), un.end()),
                    readings);
        }
        Matcher line = IN_LINE.matcher(text);
        if (line.find()) {
            Matcher name = NAME_IN_LINE.matcher(text.substring(line.start(), line.start("class")));
            if (name.find()) {
                state(
                        ValueKind.SHIPPING_NAME,
                        mode,
                        Prose.of(name.group(1)),
                        passage.quote(line.start() + name.start(1), line.start() + name.end(1)),
                        readings);
            }
            state(
                    ValueKind.TRANSPORT_CLASS,
                    mode,
                    line.group("class"),
                    passage.quote(line.start("class"), line.end("class")),
                    readings);
            state(
                    ValueKind.PACKING_GROUP,
                    mode,
                    line.group("group"),
                    passage.quote(line.start("group"), line.end("group")),
                    readings);
        }
        Matcher consumer = CONSUMER.matcher(text);
        if (known == null && consumer.find()) {
            state(
                    ValueKind.SHIPPING_NAME,
                    mode,
                    Prose.of(consumer.group(1)),
                    passage.quote(consumer.start(1), consumer.end(1)),
                    readings);
            state(
                    ValueKind.TRANSPORT_CLASS,
                    mode,
                    "ORM-D",
                    passage.quote(consumer.start(2), consumer.end(2)),
                    readings);
        }
        Matcher free = FREE.matcher(text);
        if (known == null && free.find() && !UN.matcher(text).find()) {
            state(ValueKind.UN_NUMBER, mode, "not regulated", passage.quote(free.start(), free.end()), readings);
        }
        Matcher pollutant = POLLUTANT.matcher(text);
        if (line.reset().find() && pollutant.find()) {
            state(ValueKind.MARINE_POLLUTANT, mode, "yes", passage.quote(pollutant.start(), pollutant.end()), readings);
        }
    }

    private static void field(ValueKind kind, Passage value, String mode, Readings readings) {
        String text = value.text().replace('\t', ' ').replace('\n', ' ');
        if (kind == ValueKind.SHIPPING_NAME) {
            shippingName(value, text, mode, readings);
            return;
        }
        Matcher found = switch (kind) {
            case UN_NUMBER -> UN.matcher(text);
            case TRANSPORT_CLASS -> CLASS.matcher(text);
            default -> GROUP.matcher(text);
        };
        if (kind == ValueKind.MARINE_POLLUTANT) {
            pollutant(value, text, mode, readings);
        } else if (found.find() && found.start() < 30) {
            String printed = kind == ValueKind.UN_NUMBER
                    ? found.group(1).toUpperCase(Locale.ROOT) + found.group(2)
                    : found.group(1);
            state(kind, mode, printed, value.quote(found.start(), found.end()), readings);
        } else if (kind == ValueKind.UN_NUMBER && BARE_UN.matcher(text).matches()) {
            Matcher bare = BARE_UN.matcher(text);
            if (bare.matches()) {
                state(kind, mode, "UN" + bare.group(1), value.quote(bare.start(1), bare.end(1)), readings);
            }
        } else if (kind == ValueKind.UN_NUMBER && FREE.matcher(text).find()) {
            state(kind, mode, "not regulated", value.quote(), readings);
        } else if (NONE.matcher(text).matches()) {
            readings.noData(kind, value.quote());
        } else {
            readings.unclear(kind, "no such number or class stands there", value.quote());
        }
    }

    private static void shippingName(Passage value, String text, String mode, Readings readings) {
        Matcher free = FREE.matcher(text);
        if (free.find() && free.start() < 3) {
            state(ValueKind.UN_NUMBER, mode, "not regulated", value.quote(free.start(), free.end()), readings);
            return;
        }
        String name = Prose.of(text);
        boolean none = NONE.matcher(text).matches() || plumbrow.documents.sheet.grammar.NoDataWords.end(text) >= 0;
        if (!none && name.length() > 2 && name.length() < LONGEST_NAME) {
            state(ValueKind.SHIPPING_NAME, mode, name, value.quote(), readings);
        }
    }

    private static void pollutant(Passage value, String text, String mode, Readings readings) {
        if (NO.matcher(text).matches()) {
            state(ValueKind.MARINE_POLLUTANT, mode, "no", value.quote(), readings);
        } else if (YES.matcher(text).matches()) {
            state(ValueKind.MARINE_POLLUTANT, mode, "yes", value.quote(), readings);
        } else {
            state(ValueKind.MARINE_POLLUTANT, mode, "yes: " + Prose.of(text), value.quote(), readings);
        }
    }

    private static void state(ValueKind kind, String mode, String value, Quote quote, Readings readings) {
        readings.state(kind, new Content.Shipping(mode, value), quote);
    }

    private static String mode(String words) {
        Matcher found = MODE.matcher(words);
        String best = "";
        while (found.find()) {
            String mode = switch (found.group().toUpperCase(Locale.ROOT)) {
                case "IMDG", "IMO", "SEA", "VESSEL", "MARITIME" -> "IMDG";
                case "IATA", "ICAO", "AIR" -> "IATA";
                case "ADR", "RID" -> "ADR";
                case "TDG" -> "TDG";
                case "LAND", "ROAD", "GROUND" -> best.isEmpty() ? "road" : best;
                default -> "DOT";
            };
            best = best.isEmpty() || best.equals("road") ? mode : best;
        }
        return best;
    }
}
