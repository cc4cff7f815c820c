package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.grammar.DateText;
import plumbrow.documents.sheet.grammar.NumberStyle;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Items;
import plumbrow.documents.sheet.section.Label;
import plumbrow.documents.sheet.section.Sections;

/** A sheet as its part readers see it: sections, labels with values, and how it writes numbers and dates. */
final class SheetText {
    private static final Pattern AMERICAN = Pattern.compile(
            "(?i)\\bEPA reg|\\bOSHA\\b|29 CFR|\\bSARA\\b|\\bTSCA\\b|\\bU\\.?S\\.?A\\.?\\b|GHS-US|HazCom|Federal Register|\\bCERCLA\\b");
    private static final Pattern EUROPEAN =
            Pattern.compile("1272/2008|1907/2006|2020/878|2015/830|\\bREACH\\b|\\bCLP\\b");

    private final Sections sections;
    private final List<Row> heads;
    private final Map<SheetSection, List<Item>> items = new EnumMap<>(SheetSection.class);
    private final List<Item> front;
    private final NumberStyle style;
    private final DateText.Order dates;

    SheetText(Paper paper, Sections sections) {
        this.sections = sections;
        this.heads = paper.heads();
        this.front = Items.of(sections.front());
        StringBuilder all = new StringBuilder();
        heads.forEach(row -> all.append(row.text()).append('\n'));
        sections.front().forEach(row -> all.append(row.text()).append('\n'));
        sections.all()
                .forEach(section ->
                        section.rows().forEach(row -> all.append(row.text()).append('\n')));
        style = NumberStyle.of(all.toString());
        long american = signs(AMERICAN, all);
        long european = signs(EUROPEAN, all);
        dates = american == european
                ? DateText.Order.UNSAID
                : american > european ? DateText.Order.MONTH_FIRST : DateText.Order.DAY_FIRST;
    }

    /** How many differing signs of a region a text bears: one word alone may be quoted from elsewhere. */
    private static long signs(Pattern pattern, CharSequence text) {
        return pattern.matcher(text)
                .results()
                .map(found -> found.group().toUpperCase(Locale.ROOT))
                .distinct()
                .count();
    }

    NumberStyle style() {
        return style;
    }

    DateText.Order dates() {
        return dates;
    }

    /** Running heads and feet, each once. */
    List<Row> heads() {
        return heads;
    }

    /** What stands before the first heading. */
    List<Row> front() {
        return sections.front();
    }

    List<Item> frontItems() {
        return front;
    }

    List<Row> rows(SheetSection section) {
        return sections.rows(section);
    }

    List<Item> items(SheetSection section) {
        return items.computeIfAbsent(section, each -> Items.of(sections.rows(each)));
    }

    /** Items with a label in some sections, then in what stands before the first heading. */
    List<Item> items(Label label, SheetSection... in) {
        List<Item> found = new ArrayList<>();
        for (SheetSection section : in) {
            items(section).stream().filter(item -> item.is(label)).forEach(found::add);
        }
        front.stream().filter(item -> item.is(label)).forEach(found::add);
        return found;
    }

    /** All text of a section in one passage, cells parted by tabs. */
    Passage whole(SheetSection section) {
        Passage.Builder whole = new Passage.Builder();
        for (Row row : rows(section)) {
            whole.line(Passage.of(row)).endLine();
        }
        return whole.build();
    }

    /** Every row of the paper: heads, front, sections. */
    List<Row> everything() {
        List<Row> rows = new ArrayList<>(heads);
        rows.addAll(front());
        sections.all().forEach(section -> rows.addAll(section.rows()));
        return rows;
    }
}
