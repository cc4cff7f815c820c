package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.HeaderTable;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Label;
import plumbrow.science.safety.CasCheck;

/** Ingredients with their CAS numbers and shares: from a table, from labels one below the other, or from plain lines. */
final class IngredientPart implements Part {
    static final Pattern CAS = Pattern.compile("(?<![\\d-])0*(\\d{2,7})[-–‐‑](\\d{2})[-–‐‑](\\d)(?![\\d-])");
    private static final Pattern OLD_CAS = Pattern.compile("\\s*(\\d{2,7})(\\d{2})(\\d)\\s*");
    /** A sheet of old gives the limits of each ingredient below it. */
    private static final Pattern LIMIT_ROW =
            Pattern.compile("(?i)^\\W*(?:ACGIH|OSHA|NIOSH|PEL|TLV|STEL|exposure limits?)\\b.*");

    /** What stands below a table and is none of it. */
    private static final Pattern FOOTNOTE = Pattern.compile(
            "(?i)^[*†‡]\\s*[\\p{L}=].*|^(?:see|note|any|there|full text|the|for|occupational|this|a specific|all|specific|balance of)\\b.{12,}|.{60,}\\.|.*\\b(?:is|are|was|were|means?)\\b.*[.”\"]");

    private static final Pattern UNNUMBERED = Pattern.compile(
            "(?i)\\s*(?:proprietary.*|trade secret.*|confidential.*|n/?a|not available|none|mixture|-+)\\s*");
    private static final Pattern PERCENT_BEFORE = Pattern.compile("(?i)\\bpercent(?:age)?\\s*:\\s*");
    private static final Pattern NAME_HEAD =
            Pattern.compile("(?i).*(?:name|ingredient|component|substance|chemical|material|identity).*");
    private static final Pattern CAS_HEAD = Pattern.compile("(?i).*\\b(?:CAS|identifier|registry)\\b.*");
    private static final Pattern CAS_ALONE =
            Pattern.compile("(?i)\\W*CAS\\W*(?:no|number|nr|reg).*|\\W*CAS\\W*|.*identifier.*");
    private static final Pattern SHARE_HEAD =
            Pattern.compile("(?i).*(?:%|percent|conc|weight|content|\\bwt\\b|amount).*");
    private static final int LONGEST_HEAD = 60;
    private static final Pattern CAS_WORDS =
            Pattern.compile("(?i)\\(?\\s*\\bCAS(?:[- ]?(?:no|number|nr|#|rn))?\\b\\.?\\s*[:#]?\\s*\\)?");
    private static final Pattern SHARE_CELL =
            Pattern.compile("\\s*[<>≤≥~=]*\\s*[\\d.,]+(?:\\s*(?:-|–|to)\\s*[<>≤≥=]*\\s*[\\d.,]+)?\\s*%?\\s*[*†]*\\s*");

    @Override
    public void read(SheetText sheet, Readings readings) {
        List<Row> rows = sheet.rows(SheetSection.COMPOSITION).stream()
                .filter(row -> !LIMIT_ROW.matcher(row.text()).matches() && !footnote(row))
                .toList();
        Set<Row> used = new HashSet<>();
        for (HeaderTable table : HeaderTable.in(
                rows,
                IngredientPart::isHeader,
                IngredientPart::isAnchor,
                row -> CAS.matcher(row.text()).find())) {
            used.addAll(table.rows());
            table(table, sheet, readings);
        }
        List<Row> rest = rows.stream().filter(row -> !used.contains(row)).toList();
        if (used.isEmpty() && !labelled(sheet, readings)) {
            lines(rest, sheet, readings);
        }
    }

    private static boolean isHeader(Row row) {
        if (row.cells().size() < 2 || CAS.matcher(row.text()).find()) {
            return false;
        }
        boolean numbers = has(row, CAS_HEAD);
        boolean names = has(row, NAME_HEAD);
        boolean shares = has(row, SHARE_HEAD);
        boolean digits = row.text().chars().anyMatch(Character::isDigit);
        return (numbers && (names || shares)) || (names && shares && row.cells().size() > 2 && !digits);
    }

    private static boolean has(Row row, Pattern head) {
        return row.cells().stream()
                .anyMatch(cell -> cell.text().length() < LONGEST_HEAD
                        && head.matcher(cell.text()).matches());
    }

    private static boolean footnote(Row row) {
        return row.cells().size() == 1
                && FOOTNOTE.matcher(row.text()).matches()
                && !CAS.matcher(row.text()).find();
    }

    static boolean isAnchor(Row row) {
        return CAS.matcher(row.text()).find()
                || (row.cells().size() > 1
                        && row.cells().stream()
                                .skip(
                                        row.cells().stream()
                                                        .anyMatch(cell -> UNNUMBERED
                                                                .matcher(cell.text())
                                                                .matches())
                                                ? 0
                                                : 1)
                                .map(Cell::text)
                                .anyMatch(text -> SHARE_CELL.matcher(text).matches()));
    }

    private static void table(HeaderTable table, SheetText sheet, Readings readings) {
        int alone = column(table.heads(), CAS_ALONE, -1);
        int cas = alone >= 0 ? alone : column(table.heads(), CAS_HEAD, -1);
        int share = column(table.heads(), SHARE_HEAD, cas);
        int name = column(table.heads(), NAME_HEAD, cas);
        for (List<Passage> record : table.records()) {
            Passage.Builder all = new Passage.Builder();
            record.forEach(all::cell);
            Passage whole = all.build();
            String names = name < 0 ? "" : withoutCas(record.get(name).text());
            Passage shares = share < 0 || share == name ? whole : record.get(share);
            String number = cas < 0 ? whole.text() : record.get(cas).text();
            Amount percent = share(shares, share >= 0, sheet, readings);
            state(names, number, cas >= 0, percent, whole.quote(), readings);
        }
    }

    private static int column(List<String> heads, Pattern words, int except) {
        for (int i = 0; i < heads.size(); i++) {
            if (i != except && words.matcher(heads.get(i)).matches()) {
                return i;
            }
        }
        return -1;
    }

    private static boolean labelled(SheetText sheet, Readings readings) {
        List<List<Item>> groups = new ArrayList<>();
        for (Item item : sheet.items(SheetSection.COMPOSITION)) {
            boolean name = item.is(Label.INGREDIENT_NAME) || item.is(Label.SYNONYMS);
            if (name && !item.value().isEmpty()) {
                groups.add(new ArrayList<>(List.of(item)));
            } else if (!groups.isEmpty() && (item.is(Label.CAS) || item.is(Label.CONCENTRATION))) {
                groups.get(groups.size() - 1).add(item);
            }
        }
        groups.removeIf(group -> group.size() < 2);
        for (List<Item> group : groups) {
            Passage.Builder all = new Passage.Builder();
            Passage number = new Passage.Builder().build();
            Amount percent = null;
            for (Item item : group) {
                all.cell(item.value());
                if (item.is(Label.CAS)) {
                    number = item.value();
                } else if (item.is(Label.CONCENTRATION)) {
                    percent = share(item.value(), true, sheet, readings);
                }
            }
            String name = Prose.of(group.get(0).value().firstLine());
            state(name, number.text(), true, percent, all.build().quote(), readings);
        }
        return !groups.isEmpty();
    }

    private static void lines(List<Row> rows, SheetText sheet, Readings readings) {
        for (Row row : rows) {
            Passage passage = Passage.of(row);
            String text = passage.text();
            Matcher cas = CAS.matcher(text);
            AmountText share = AmountText.first(
                    CAS.matcher(text).replaceAll(found -> "#".repeat(found.end() - found.start())),
                    Family.PERCENT,
                    sheet.style());
            Matcher words = PERCENT_BEFORE.matcher(text);
            if (share == null && words.find()) {
                AmountText bare = AmountText.first(text.substring(words.end()), Family.BARE, sheet.style());
                share = bare == null
                        ? null
                        : new AmountText(bare.amount(), words.start(), words.end() + bare.to(), bare.doubt());
            }
            if (!cas.find() && share == null) {
                continue;
            }
            boolean numbered = CAS.matcher(text).find();
            int end = Math.min(numbered ? cas.start() : text.length(), share == null ? text.length() : share.from());
            String name = withoutCas(text.substring(0, end));
            if (name.isEmpty() || (!numbered && name.length() > 60)) {
                continue;
            }
            Amount percent = share == null ? null : clear(share, passage, readings);
            state(name, text, false, percent, passage.quote(), readings);
        }
    }

    private static String withoutCas(String text) {
        String plain = CAS_WORDS.matcher(CAS.matcher(text).replaceAll(" ")).replaceAll(" ");
        return Prose.of(plain).replaceAll("[\\s:;,(\\[–-]+$|^[\\s:;,*)–-]+", "");
    }

    private static @Nullable Amount share(Passage passage, boolean bare, SheetText sheet, Readings readings) {
        String text = CAS.matcher(passage.text()).replaceAll(found -> "#".repeat(found.end() - found.start()));
        AmountText share = AmountText.first(text, Family.PERCENT, sheet.style());
        if (share == null && bare) {
            share = AmountText.first(text, Family.BARE, sheet.style());
        }
        return share == null ? null : clear(share, passage, readings);
    }

    private static @Nullable Amount clear(AmountText share, Passage passage, Readings readings) {
        if (!share.doubt().isEmpty()) {
            readings.unclear(ValueKind.INGREDIENT, share.doubt(), passage.quote(share.from(), share.to()));
            return null;
        }
        Amount amount = share.amount();
        return new Amount(amount.qualifier(), amount.low(), amount.high(), "%", amount.conditions());
    }

    private static void state(
            String name, String numbers, boolean ownColumn, @Nullable Amount percent, Quote quote, Readings readings) {
        Matcher cas = CAS.matcher(numbers);
        Matcher old = OLD_CAS.matcher(numbers);
        Matcher found = cas.find() ? cas : ownColumn && old.matches() ? old : null;
        String number = found == null ? "" : found.group(1) + "-" + found.group(2) + "-" + found.group(3);
        boolean fits = found != null
                && CasCheck.checkDigit(found.group(1) + found.group(2)) == Integer.parseInt(found.group(3));
        String plain = name.replaceAll("\\s+", " ").strip();
        if ((plain.isEmpty() && number.isEmpty()) || (percent == null && number.isEmpty())) {
            return;
        }
        readings.state(ValueKind.INGREDIENT, new Content.Ingredient(plain, number, fits, percent), quote);
    }
}
