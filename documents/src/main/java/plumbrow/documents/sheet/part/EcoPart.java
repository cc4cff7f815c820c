package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Organism;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.Circumstance;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.HeaderTable;
import plumbrow.documents.sheet.section.RowTable;

/**
 * Toxicity to fish, water fleas, algae, birds, bees and worms: from tables with a column for each group of creatures, from tables
 * with a line for each test, from lists that step in, and from running text.
 */
final class EcoPart implements Part {
    private static final Pattern MEASURE = Pattern.compile(
            "(?i)\\b(?:LC\\s?50|EC\\s?50|E[rby]C\\s?50|IC\\s?50|LD\\s?50|NOE[CL]|LOE[CL]|NOAE[CL])|[LE]C₅₀|LD₅₀|\\b(?:DT\\s?50|BCF|Koc|half-life)\\b");
    private static final Pattern HOURS =
            Pattern.compile("(?i)(?<![\\d.,])\\d{1,3}\\s?-?\\s?(?:hours?|hrs?|h|days?|d)(?![\\p{L}])");
    private static final Pattern MINUTES = Pattern.compile("(?i)(?<![\\d.,])\\d{1,3}\\s?-?\\s?min");
    private static final Pattern NAME_HEAD =
            Pattern.compile("(?i).*\\b(?:name|ingredients?|components?|substances?|chemicals?|products?)\\b.*");
    private static final Pattern TEST_HEAD = Pattern.compile(
            "(?i)\\W*(?:test(?: results?)?|results?|species|dose|value|exposure(?: time)?|end ?-?point|type|method)\\W*");
    private static final Pattern CREATURES_HEAD = Pattern.compile(
            "(?i).*\\b(?:toxicity to|fish|algae|daphnia|crustacea|micro-?organisms|invertebrates)\\b.*");
    private static final Pattern AMOUNT = Pattern.compile("\\d\\s?(?:[mµuμn]?g|ml|mL|ppm|ppb|%)");
    /** Heads of parts of a list that are no substance. */
    private static final Pattern PART = Pattern.compile(
            "(?i)\\W*(?:aquatic|terrestrial|acute|chronic|\\*.*|fish|crustacea|algae|daphnia|.*toxicity.*)\\W*");
    /** What may stand on a line beside measure, amount and time without naming another creature. */
    private static final Pattern IDLE = Pattern.compile(
            "(?i)\\b(?:acute|chronic|toxicity|static|semi|flow|through|nominal|measured|renewal|oral|contact|dietary|dose|value|test|the|for|to|of|and|is|was|in|at|h|hr|hrs|hours?|d|days?)\\b");

    private static final Family[] UNITS = {Family.PER_BEE, Family.DOSE, Family.WATER};

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        List<Row> rows = sheet.rows(SheetSection.ECOLOGY);
        Set<Row> used = new HashSet<>();
        for (HeaderTable table : HeaderTable.in(
                rows, EcoPart::isCreaturesHeader, EcoPart::isNamedOrMeasured, row -> false, substances::goesOn)) {
            used.addAll(table.rows());
            columns(table, sheet, substances, readings);
        }
        List<Row> others = rows.stream().filter(row -> !used.contains(row)).toList();
        for (RowTable table : RowTable.in(others, EcoPart::isTestHeader, EcoPart::holdsAmount, substances::goesOn)) {
            used.addAll(table.rows());
            lines(table, sheet, substances, readings);
        }
        Passage.Builder rest = new Passage.Builder();
        rows.stream()
                .filter(row -> !used.contains(row))
                .forEach(row -> rest.newLine(Passage.of(row)).endLine());
        running(rest.build(), sheet, substances, readings);
    }

    private static boolean isCreaturesHeader(Row row) {
        return row.cells().size() > 2
                && NAME_HEAD.matcher(row.first().text()).matches()
                && row.cells().stream()
                                .skip(1)
                                .filter(cell ->
                                        CREATURES_HEAD.matcher(cell.text()).matches())
                                .count()
                        > 1
                && !holdsAmount(row);
    }

    private static boolean isTestHeader(Row row) {
        return row.cells().size() > 2
                && NAME_HEAD.matcher(row.first().text()).matches()
                && row.cells().stream()
                                .skip(1)
                                .filter(cell -> TEST_HEAD.matcher(cell.text()).matches())
                                .count()
                        > 1
                && !holdsAmount(row);
    }

    private static boolean holdsAmount(Row row) {
        return AMOUNT.matcher(row.text()).find();
    }

    private static boolean isNamedOrMeasured(Row row) {
        return MEASURE.matcher(row.text()).find() || holdsAmount(row);
    }

    private static void columns(HeaderTable table, SheetText sheet, Substances substances, Readings readings) {
        for (List<Passage> record : table.records()) {
            String substance = substances.ofCell(record.get(0).text());
            for (int i = 1; i < record.size(); i++) {
                cell(record.get(i), table.heads().get(i), substance, sheet, readings);
            }
        }
    }

    /** In a cell each measure begins a statement: "LC50 13.4 mg/L Pimephales promelas 96 h LC50 …". */
    private static void cell(Passage cell, String head, String substance, SheetText sheet, Readings readings) {
        String text = cell.text();
        List<Integer> starts = new ArrayList<>();
        Matcher measures = MEASURE.matcher(text);
        while (measures.find()) {
            starts.add(measures.start());
        }
        for (int i = 0; i < starts.size(); i++) {
            int to = i + 1 < starts.size() ? starts.get(i + 1) : text.length();
            Passage part = cell.part(starts.get(i), to);
            String said = part.text();
            Matcher measure = MEASURE.matcher(said);
            List<Stretch> amounts = Stretch.of(said, sheet.style(), UNITS);
            Optional<Organism> organism = Organism.in(said).or(() -> Organism.in(head));
            if (!measure.find() || amounts.size() != 1 || organism.isEmpty()) {
                continue;
            }
            Stretch amount = amounts.get(0);
            String behind = said.substring(amount.amount().to());
            String hours = first(
                    find(HOURS, behind),
                    find(HOURS, said.substring(0, amount.amount().from())));
            if (MINUTES.matcher(behind).find()) {
                continue;
            }
            state(amount, part, organism.get(), plain(measure.group()), hours, substance, readings);
        }
    }

    private static void lines(RowTable table, SheetText sheet, Substances substances, Readings readings) {
        boolean steps = table.rows().stream()
                .skip(1)
                .anyMatch(row ->
                        row.cells().size() == 1 && PART.matcher(row.text()).matches());
        if (steps) {
            steps(table.rows(), sheet, substances, readings);
            return;
        }
        for (RowTable.Entry entry : table.entries()) {
            Passage line = entry.line();
            line(line, substances.ofCell(entry.name()), sheet, readings);
        }
    }

    private static void steps(List<Row> rows, SheetText sheet, Substances substances, Readings readings) {
        String substance = "";
        for (Row row : rows.subList(1, rows.size())) {
            Passage passage = Passage.of(row);
            if (holdsAmount(row)) {
                line(passage, substance, sheet, readings);
            } else if (row.cells().size() == 1 && !PART.matcher(row.text()).matches()) {
                substance = substances.ofCell(row.text());
            }
        }
    }

    /** A line with one test: nothing is taken over from the line above. */
    private static void line(Passage line, String substance, SheetText sheet, Readings readings) {
        String text = line.text();
        Optional<Organism> organism = Organism.in(text);
        Matcher measure = MEASURE.matcher(text);
        List<Stretch> amounts = Stretch.of(text, sheet.style(), UNITS);
        if (organism.isPresent() && measure.find() && amounts.size() == 1) {
            Stretch amount = amounts.get(0);
            String hours = first(find(HOURS, text.substring(amount.amount().to())), find(HOURS, text));
            state(amount, line, organism.get(), plain(measure.group()), hours, substance, readings);
        }
    }

    private static void running(Passage passage, SheetText sheet, Substances substances, Readings readings) {
        String text = passage.text();
        String substance = "";
        String measure = "";
        Organism organism = null;
        for (Stretch stretch : Stretch.of(text, sheet.style(), UNITS)) {
            Nearby near = new Nearby(text, stretch);
            substance = substances.in(near.before() + "\n" + near.line(), substance);
            String found = near.find(MEASURE);
            measure = found.isEmpty() ? measure : plain(found);
            Optional<Organism> named = organism(near, stretch);
            organism = named.isPresent() || namesOther(near.line(), stretch) ? named.orElse(null) : organism;
            String whose = ownName(near.line(), substances, substance);
            if (organism != null) {
                state(stretch, passage, organism, measure, near.find(HOURS), whose, readings);
            }
        }
    }

    /** "n-heptane - 24 h EC50 …": a name with a dash before the test. */
    private static String ownName(String line, Substances substances, String before) {
        Matcher name = Pattern.compile("(?:^|\\t)\\s*([\\p{L}\\d][\\p{L}\\d,()'-]*(?: [\\p{L}\\d,()'-]+){0,4}) [-–] ")
                .matcher(line);
        if (!name.find()
                || Organism.in(name.group(1)).isPresent()
                || MEASURE.matcher(name.group(1)).find()) {
            return before;
        }
        return substances.ofCell(name.group(1));
    }

    /** Whether words stand before the amount on its line that may name a creature which isn't known. */
    private static boolean namesOther(String line, Stretch stretch) {
        int at = Math.max(0, Math.min(line.length(), stretch.amount().from() - stretch.lineFrom()));
        String words = MEASURE.matcher(line.substring(0, at)).replaceAll(" ");
        return IDLE.matcher(words).replaceAll(" ").replaceAll("[^\\p{L}]+", "").length() > 4;
    }

    private static void state(
            Stretch stretch,
            Passage passage,
            Organism organism,
            String measure,
            String hours,
            String substance,
            Readings readings) {
        if (!measure.matches("(?:LC|EC|E[RBY]C|IC|LD)50|NOE[CL]")) {
            return;
        }
        Quote quote = passage.quote(
                stretch.lineFrom(), Math.max(stretch.to(), stretch.amount().to()));
        if (!stretch.amount().doubt().isEmpty()) {
            readings.unclear(ValueKind.ECOTOXICITY, stretch.amount().doubt(), quote);
            return;
        }
        @Nullable Double time = Circumstance.hours(hours);
        readings.state(
                ValueKind.ECOTOXICITY,
                new Content.Eco(
                        substance,
                        organism,
                        spelled(measure),
                        stretch.amount().amount().under(new Conditions(null, time, ""))),
                quote);
    }

    /** The one on the amount's line, else the last one named in the lines before. */
    private static Optional<Organism> organism(Nearby near, Stretch stretch) {
        Optional<Organism> onLine = Organism.in(near.line());
        if (onLine.isPresent() || stretch.lineFrom() == stretch.from()) {
            return onLine;
        }
        String[] lines = near.before().split("\n", -1);
        for (int i = lines.length - 1; i >= 0; i--) {
            Optional<Organism> found = Organism.in(lines[i]);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static String plain(String printed) {
        return printed.toUpperCase(Locale.ROOT)
                .replaceAll("\\s", "")
                .replace('₅', '5')
                .replace('₀', '0');
    }

    private static String spelled(String measure) {
        Matcher growth = Pattern.compile("E([RBY])C50").matcher(measure);
        return growth.matches() ? "E" + growth.group(1).toLowerCase(Locale.ROOT) + "C50" : measure;
    }

    private static String find(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.find() ? matcher.group() : "";
    }

    private static String first(String one, String other) {
        return one.isEmpty() ? other : one;
    }
}
