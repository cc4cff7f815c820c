package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.LimitBasis;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.HeaderTable;
import plumbrow.documents.sheet.section.RowTable;

/**
 * Exposure limits of the air people work in, by who set them and over how long they count: from tables with a column for each
 * authority, from a table for each authority, and from lines below each substance. Limits that no longer hold ("vacated") and
 * those of lands other than the sheet's own law are left out.
 */
final class LimitPart implements Part {
    private static final Pattern AUTHORITY = Pattern.compile(
            "(?i)\\b(?:OSHA|PEL|ACGIH|TLV|NIOSH|REL|WEL|EH40|Cal/?OSHA|manufacturer|company|internal|AIHA|WEEL|MAK|AGW|VLEP|IOELV)\\b");
    private static final Pattern BASIS = Pattern.compile(
            "(?i)\\bSTE[LV]\\b|\\bshort[- ]term\\b|\\b15[- ]?min|\\bceiling\\b|\\bCEIL\\b|\\bTLV-C\\b|\\(C\\)|\\bTWA(?:EV)?(?:\\b|(?=\\d))|\\b8[- ]?(?:h|hr|hour)s?\\b|time[- ]weighted");
    private static final Pattern HEADER =
            Pattern.compile("(?i).*\\b(?:PEL|TLV|REL|WEL|OEL|TWA|STEL|limits?|OSHA|ACGIH|NIOSH|ceiling)\\b.*");
    private static final Pattern NAME_HEAD = Pattern.compile(
            "(?i).*\\b(?:name|ingredients?(?:\\(s\\))?|components?(?:\\(s\\))?|substances?|chemicals?)\\b.*");
    private static final Pattern TYPE_HEAD = Pattern.compile("(?i)\\W*(?:type|value type.*|form|basis|result)\\W*");
    private static final Pattern VALUE_HEAD = Pattern.compile("(?i)\\W*(?:values?|limits?|control parameters?.*)\\W*");
    private static final Pattern AMOUNT = Pattern.compile("\\d\\s?(?:mg\\s?/|µg/|ppm\\b|PPM\\b|g/m)");
    private static final Pattern BARE_CELL = Pattern.compile("\\s*(\\d[\\d.,]*)\\s*(\\([a-z]\\))?\\s*");
    private static final Pattern UNIT = Pattern.compile("(?i)mg\\s?/\\s?m\\s?[3³]|ppm|f/cc|µg/m[3³]");
    private static final Pattern VACATED = Pattern.compile("(?i)\\bvacated\\b|\\(v\\)");

    /** Columns and lines of other lands' law. */
    private static final Pattern ELSEWHERE = Pattern.compile(
            "(?i)\\b(?:Quebec|Québec|Ontario|Alberta|British Columbia|Mexico|Brazil|Canada|CAN|OHSA|TWAEV|STEV|Argentina|Chile)\\b");

    private static final Pattern NOT_SET = Pattern.compile(
            "(?i)\\bnot\\s+(?:established|available|applicable)|\\bnone\\b|\\bN\\.?/?E\\.?\\b|(?<!\\S)[-–](?!\\S)");
    private static final Pattern DANGER = Pattern.compile("(?i)\\bIDLH\\b");
    private static final int LONGEST_NAME = 90;

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        List<Row> composition = sheet.rows(SheetSection.COMPOSITION);
        for (HeaderTable table : HeaderTable.in(
                composition,
                row -> isHeader(row)
                        && row.cells().stream()
                                .anyMatch(cell -> AUTHORITY.matcher(cell.text()).find()),
                row -> holdsAmount(row) || IngredientPart.isAnchor(row),
                row -> IngredientPart.CAS.matcher(row.text()).find(),
                substances::goesOn)) {
            table(table, "", sheet, substances, readings);
        }
        below(composition, sheet, substances, readings);

        List<Row> rows = withSpanningHeads(sheet.rows(SheetSection.EXPOSURE));
        Set<Row> used = new HashSet<>();
        for (RowTable table : RowTable.in(rows, LimitPart::isTypeHeader, LimitPart::holdsAmount, substances::goesOn)) {
            used.addAll(table.rows());
            String title = title(rows, table.rows().get(0));
            byType(table, title, sheet, substances, readings);
        }
        List<Row> others = rows.stream().filter(row -> !used.contains(row)).toList();
        int unsure = rows.size();
        for (HeaderTable table :
                HeaderTable.in(others, LimitPart::isHeader, LimitPart::holdsValue, row -> false, substances::goesOn)) {
            if (table.heads().size() > 2 || !Lines.listsBelowNames(table)) {
                used.addAll(table.rows());
                table(table, title(rows, table.rows().get(0)), sheet, substances, readings);
                boolean manyLands = table.heads().stream()
                        .anyMatch(head -> ELSEWHERE.matcher(head).find());
                unsure = manyLands ? Math.min(unsure, rows.indexOf(table.rows().get(0))) : unsure;
            }
        }
        // what is left of a table with other lands' columns may be of any of them
        Lines.read(
                rows.subList(0, unsure).stream()
                        .filter(row -> !used.contains(row))
                        .toList(),
                sheet,
                substances,
                readings);
    }

    private static boolean isHeader(Row row) {
        boolean elsewhere = row.cells().size() > 2
                && NAME_HEAD.matcher(row.first().text()).matches()
                && ELSEWHERE.matcher(row.text()).find()
                && !AMOUNT.matcher(row.text()).find();
        return elsewhere
                || (row.cells().size() > 1
                        && row.cells().stream()
                                .skip(1)
                                .anyMatch(cell -> HEADER.matcher(cell.text()).matches()
                                        && cell.text().length() < 40)
                        && !AMOUNT.matcher(row.text()).find()
                        && !(row.cells().size() == 2
                                && Lines.isLimitLine(row.cells().get(1).text())));
    }

    /** "Components, type, value": who set the limits stands above the table. */
    private static boolean isTypeHeader(Row row) {
        List<Cell> cells = row.cells();
        return cells.size() > 2
                && NAME_HEAD.matcher(cells.get(0).text()).matches()
                && cells.stream()
                        .anyMatch(cell -> TYPE_HEAD.matcher(cell.text()).matches())
                && cells.stream()
                        .anyMatch(cell -> VALUE_HEAD.matcher(cell.text()).matches());
    }

    private static boolean holdsAmount(Row row) {
        return AMOUNT.matcher(row.text()).find();
    }

    private static boolean holdsValue(Row row) {
        return holdsAmount(row)
                || (row.cells().size() > 2
                        && row.cells().stream()
                                .skip(1)
                                .anyMatch(cell -> BARE_CELL.matcher(cell.text()).matches()));
    }

    /** The line above a table that says whose limits it has; empty without. */
    private static String title(List<Row> rows, Row header) {
        int at = rows.indexOf(header);
        for (int i = at - 1; i >= 0 && i >= at - 2; i--) {
            String text = rows.get(i).text();
            if (AUTHORITY.matcher(text).find() && rows.get(i).cells().size() == 1) {
                return text;
            }
        }
        return "";
    }

    /**
     * Two lines of heads, the upper with the authorities each above some of the lower: "OSHA, ACGIH" over "TWA, STEL, TWA, STEL".
     * Each lower head takes the words of the one it stands under.
     */
    private static List<Row> withSpanningHeads(List<Row> rows) {
        List<Row> joined = new ArrayList<>(rows);
        for (int i = 0; i + 1 < joined.size(); i++) {
            Row upper = joined.get(i);
            Row lower = joined.get(i + 1);
            boolean spanning = upper.cells().size() > 1
                    && upper.cells().size() < lower.cells().size()
                    && AUTHORITY.matcher(upper.first().text()).find()
                    && NAME_HEAD.matcher(lower.first().text()).matches()
                    && lower.first().right() < upper.first().left()
                    && !holdsAmount(upper);
            if (spanning) {
                List<Cell> cells = new ArrayList<>();
                for (Cell cell : lower.cells()) {
                    Cell above = nearest(upper.cells(), cell);
                    boolean basis = BASIS.matcher(cell.text()).find();
                    List<plumbrow.documents.paper.Word> words = new ArrayList<>(cell.words());
                    if (basis) {
                        words.addAll(above.words().stream()
                                .map(word -> new plumbrow.documents.paper.Word(
                                        word.text(),
                                        cell.words()
                                                .get(cell.words().size() - 1)
                                                .box()))
                                .toList());
                    }
                    cells.add(new Cell(words));
                }
                joined.set(i + 1, new Row(lower.page(), cells));
                joined.remove(i);
            }
        }
        return joined;
    }

    private static Cell nearest(List<Cell> cells, Cell to) {
        double middle = (to.left() + to.right()) / 2;
        return cells.stream()
                .min(java.util.Comparator.comparingDouble(cell -> Math.abs((cell.left() + cell.right()) / 2 - middle)))
                .orElseThrow();
    }

    private static void byType(
            RowTable table, String title, SheetText sheet, Substances substances, Readings readings) {
        String name = "";
        String basis = "";
        String authority = find(AUTHORITY, title);
        for (RowTable.Entry entry : table.entries()) {
            Passage line = entry.line();
            String type = find(BASIS, line.text());
            String own = find(AUTHORITY, line.text());
            basis = first(type, entry.name().equals(name) && own.isEmpty() ? basis : "");
            name = entry.name();
            if (VACATED.matcher(line.text()).find()
                    || DANGER.matcher(line.text()).find()) {
                continue;
            }
            for (Stretch stretch : Stretch.of(line.text(), sheet.style(), Family.AIR)) {
                state(stretch, line, substances.ofCell(name), first(authority, own), basis, readings);
            }
        }
    }

    private static void table(
            HeaderTable table, String title, SheetText sheet, Substances substances, Readings readings) {
        for (List<Passage> record : table.records()) {
            String first = record.get(0).text();
            String substance = AMOUNT.matcher(first).find() ? substances.in(first, "") : substances.ofCell(first);
            StringBuilder whole = new StringBuilder();
            record.forEach(cell -> whole.append(cell.text()).append(' '));
            for (int i = 0; i < record.size(); i++) {
                Passage cell = record.get(i);
                String head = table.heads().get(i);
                if (ELSEWHERE.matcher(head).find() || DANGER.matcher(head).find()) {
                    continue;
                }
                List<Stretch> stretches = Stretch.of(cell.text(), sheet.style(), Family.AIR);
                boolean before = basisBefore(cell.text(), stretches);
                for (int k = 0; k < stretches.size(); k++) {
                    String own = own(cell.text(), stretches, k, before);
                    int from = k == 0 ? 0 : stretches.get(k - 1).amount().to();
                    String ahead = cell.text()
                            .substring(from, stretches.get(k).amount().from());
                    if (VACATED.matcher(own).find() || DANGER.matcher(ahead).find()) {
                        continue;
                    }
                    Nearby near = new Nearby(cell.text(), stretches.get(k));
                    String authority = first(
                            near.find(AUTHORITY),
                            find(AUTHORITY, head),
                            find(AUTHORITY, whole.toString()),
                            find(AUTHORITY, title));
                    String basis = first(
                            byOrder(record, i, k, cell.text(), stretches),
                            find(BASIS, own),
                            k > 0 && before ? near.find(BASIS) : "",
                            find(BASIS, head),
                            find(BASIS, others(record, i)));
                    state(stretches.get(k), cell, substance, authority, basis, readings);
                }
                if (stretches.isEmpty()) {
                    bare(table, record, i, substance, sheet, readings);
                }
            }
        }
    }

    /** "TWA / STEL" in one cell and "100 ppm / not established" in the other: each amount has the basis of its own line. */
    private static String byOrder(List<Passage> record, int column, int at, String text, List<Stretch> stretches) {
        for (int i = 0; i < record.size(); i++) {
            String types = record.get(i).text();
            List<String> all = BASIS.matcher(types)
                    .results()
                    .map(java.util.regex.MatchResult::group)
                    .toList();
            if (i == column
                    || all.size() < 2
                    || BASIS.matcher(text).find()
                    || AMOUNT.matcher(types).find()) {
                continue;
            }
            List<Integer> places = new ArrayList<>();
            stretches.forEach(stretch -> places.add(stretch.amount().from()));
            int mine = places.get(at);
            NOT_SET.matcher(text).results().forEach(none -> places.add(none.start()));
            places.sort(null);
            return places.size() == all.size() ? all.get(places.indexOf(mine)) : "";
        }
        return "";
    }

    /** A number alone under an authority's head, with its unit in the head or in a column of its own. */
    private static void bare(
            HeaderTable table, List<Passage> record, int column, String substance, SheetText sheet, Readings readings) {
        String head = table.heads().get(column);
        Passage cell = record.get(column);
        Matcher number = BARE_CELL.matcher(cell.text());
        if (!AUTHORITY.matcher(head).find()
                || !number.matches()
                || VACATED.matcher(cell.text()).find()) {
            return;
        }
        String unit = find(UNIT, head);
        for (int i = 0; i < table.heads().size() && unit.isEmpty(); i++) {
            unit = AUTHORITY.matcher(table.heads().get(i)).find()
                    ? find(UNIT, table.heads().get(i))
                    : "";
        }
        for (int i = 0; i < record.size() && unit.isEmpty(); i++) {
            unit = table.heads().get(i).matches("(?i)\\W*units?\\W*")
                    ? find(UNIT, record.get(i).text())
                    : "";
        }
        AmountText amount =
                unit.isEmpty() ? null : AmountText.first(number.group(1) + " " + unit, Family.AIR, sheet.style());
        if (amount != null) {
            int end = cell.text().length();
            Stretch whole = new Stretch(new AmountText(amount.amount(), 0, end, amount.doubt()), 0, end, 0);
            String basis = first(find(BASIS, head), find(BASIS, String.join(" ", table.heads())));
            state(whole, cell, substance, find(AUTHORITY, head), basis, readings);
        }
    }

    /** Whether the basis stands before its amount in a text, as in "TWA: 100 ppm STEL: 150 ppm". */
    private static boolean basisBefore(String text, List<Stretch> stretches) {
        return stretches.isEmpty()
                || BASIS.matcher(text.substring(0, stretches.get(0).amount().from()))
                        .find();
    }

    /** The words that belong to one of several amounts: those before it or those behind it, up to the next. */
    private static String own(String text, List<Stretch> stretches, int at, boolean before) {
        if (before) {
            int from = at == 0 ? 0 : stretches.get(at - 1).amount().to();
            return text.substring(from, stretches.get(at).amount().to());
        }
        int to = at + 1 < stretches.size() ? stretches.get(at + 1).amount().from() : text.length();
        return text.substring(stretches.get(at).amount().from(), to);
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

    /** An older sheet gives the limits of each ingredient on lines below it. */
    private static void below(List<Row> rows, SheetText sheet, Substances substances, Readings readings) {
        boolean limits = rows.stream()
                .anyMatch(row -> AUTHORITY.matcher(row.first().text()).lookingAt() && holdsAmount(row));
        if (limits) {
            Lines.read(rows, sheet, substances, readings);
        }
    }

    /** Limits line by line: a name holds for the lines below it, an authority until the next, a basis on its own line. */
    private static final class Lines {
        private Lines() {}

        static boolean isLimitLine(String text) {
            return text.matches("(?i)\\W*(?:OSHA|ACGIH|NIOSH)\\s+(?:PEL|TLV|REL)\\b.*\\(.*");
        }

        /** Two columns, names and texts of several lines: no table with a value in each cell. */
        static boolean listsBelowNames(HeaderTable table) {
            return table.records().stream()
                    .anyMatch(record -> isLimitLine(record.get(1).text()));
        }

        static void read(List<Row> rows, SheetText sheet, Substances substances, Readings readings) {
            String substance = "";
            String name = "";
            String authority = "";
            double left = Double.NaN;
            boolean vacated = false;
            boolean elsewhere = false;
            for (Row row : rows) {
                Passage passage = Passage.of(row);
                Cell cell = row.first();
                boolean named = names(row, substances, name);
                if (named || (isPartOfName(row, left) && substances.goesOn(name, cell.text()))) {
                    boolean more =
                            !name.isEmpty() && Math.abs(cell.left() - left) < 4 && substances.goesOn(name, cell.text());
                    name = more ? name + " " + cell.text() : cell.text();
                    substance = substances.ofCell(name);
                    left = cell.left();
                    authority = more ? authority : "";
                    vacated = more && vacated;
                    elsewhere = more && elsewhere;
                } else {
                    substance = substances.in(passage.text(), substance);
                }
                String text = passage.text();
                List<Stretch> stretches = Stretch.of(text, sheet.style(), Family.AIR);
                boolean before = basisBefore(text, stretches);
                if (stretches.isEmpty()) {
                    String said = last(AUTHORITY, text);
                    authority = first(said, authority);
                    vacated = said.isEmpty()
                            ? vacated || VACATED.matcher(text).find()
                            : VACATED.matcher(text).find();
                    elsewhere = said.isEmpty()
                            ? elsewhere || ELSEWHERE.matcher(text).find()
                            : ELSEWHERE.matcher(text).find();
                    continue;
                }
                for (int k = 0; k < stretches.size(); k++) {
                    Stretch stretch = stretches.get(k);
                    String own = own(text, stretches, k, before);
                    String ahead = text.substring(
                            k == 0 ? 0 : stretches.get(k - 1).amount().to(),
                            stretch.amount().from());
                    String said =
                            first(last(AUTHORITY, ahead), k == 0 && authority.isEmpty() ? find(AUTHORITY, own) : "");
                    if (!said.isEmpty()) {
                        vacated = false;
                        elsewhere = false;
                    }
                    authority = first(said, authority);
                    vacated = vacated || VACATED.matcher(ahead).find();
                    elsewhere = elsewhere || ELSEWHERE.matcher(ahead).find();
                    String basis = first(
                            find(BASIS, own),
                            before && k > 0
                                    ? last(
                                            BASIS,
                                            text.substring(0, stretch.amount().from()))
                                    : "");
                    boolean speaks = !authority.isEmpty() || !basis.isEmpty();
                    boolean none = vacated || elsewhere || DANGER.matcher(ahead).find() || prose(text, stretch);
                    if (speaks && !none) {
                        state(stretch, passage, substance, authority, basis, readings);
                    }
                }
            }
        }

        /** A sentence about what to do above or below some amount sets no limit. */
        private static boolean prose(String text, Stretch stretch) {
            String words = text.substring(0, stretch.amount().from());
            return words.matches("(?is).*\\b(?:atmospheres?|wear|use|respirator|concentrations?)\\b.*");
        }

        private static boolean isPartOfName(Row row, double left) {
            return !Double.isNaN(left)
                    && Math.abs(row.first().left() - left) < 4
                    && plainWords(row.first().text());
        }

        private static boolean plainWords(String text) {
            return text.length() < LONGEST_NAME
                    && !AMOUNT.matcher(text).find()
                    && !AUTHORITY.matcher(text).find()
                    && !BASIS.matcher(text).find()
                    && !text.endsWith(":")
                    && !text.endsWith(".")
                    && text.matches(".*\\p{L}{3}.*");
        }

        /** Whether a row begins with a substance's name: an ingredient's, or any beside a limit. */
        private static boolean names(Row row, Substances substances, String before) {
            String text = row.first().text();
            if (!plainWords(text)) {
                return false;
            }
            if (substances.begins(text)) {
                return true;
            }
            boolean beside = row.cells().size() > 1
                    && (AUTHORITY.matcher(row.cells().get(1).text()).lookingAt()
                            || AMOUNT.matcher(row.cells().get(1).text()).find());
            return beside && !before.isEmpty();
        }

        private static String last(Pattern pattern, String text) {
            Matcher matcher = pattern.matcher(text);
            String found = "";
            while (matcher.find()) {
                found = matcher.group();
            }
            return found;
        }
    }

    private static void state(
            Stretch stretch, Passage passage, String substance, String authority, String basis, Readings readings) {
        Quote quote = passage.quote(
                Math.min(stretch.lineFrom(), stretch.amount().from()),
                Math.max(stretch.to(), stretch.amount().to()));
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
        if (plain.startsWith("ste") || plain.startsWith("short") || plain.startsWith("15")) {
            return LimitBasis.STEL;
        }
        return plain.startsWith("ceil") || plain.endsWith("-c") || plain.equals("(c)")
                ? LimitBasis.CEILING
                : LimitBasis.TWA;
    }

    private static String find(Pattern pattern, @Nullable String text) {
        Matcher matcher = pattern.matcher(text == null ? "" : text);
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
