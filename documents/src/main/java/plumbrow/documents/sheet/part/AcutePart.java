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
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Circumstance;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.HeaderTable;
import plumbrow.documents.sheet.section.RowTable;

/**
 * Half-lethal doses by mouth, skin and breath, with species, sex and exposure time: from tables with a column for each route,
 * from tables with a line for each test, from lists that step in, and from running text.
 */
final class AcutePart implements Part {
    private static final Pattern MEASURE = Pattern.compile(
            "(?i)\\b(?:L[DC]\\s?\\d{2,3}|LDLo|LCLo|ATE(?:mix)?)(?!\\d)|LD₅₀|LC₅₀|\\b(?:NO(?:A)?EL|LO(?:A)?EL|NOAEC|BMD|ADI|acute toxicity estimate)\\b");
    private static final Pattern ROUTE = Pattern.compile(
            "(?i)\\b(?:oral(?:ly)?|ingestion|swallow(?:ed|ing)|dermal(?:ly)?|skin|percutaneous|inhal\\w*|gavage)\\b");
    private static final Pattern SPECIES =
            Pattern.compile("(?i)\\b(?:rats?|mouse|mice|rabbits?|guinea[- ]pigs?|dogs?|hamsters?|cats?|monkeys?)\\b");
    private static final Pattern SEX = Pattern.compile(
            "(?i)\\b(?:males?\\s*(?:and|&|/|,|\\+)\\s*females?|females?\\s*(?:and|&|/)\\s*males?|females?|males?)\\b|♀|♂");
    private static final Pattern HOURS = Pattern.compile(
            "(?i)(?<![\\d.,])\\d{1,3}(?:[.,]\\d{1,2})?\\s?-?\\s?(?:hours?|hrs?|h|minutes?|min)(?![\\p{L}])");
    private static final Pattern HEADER = Pattern.compile("(?i).*(?:LD\\s?50|LC\\s?50|oral|dermal|inhal).*");
    private static final Pattern NAME_HEAD =
            Pattern.compile("(?i).*\\b(?:name|ingredients?|components?|substances?|chemicals?|products?)\\b.*");
    private static final Pattern TEST_HEAD = Pattern.compile(
            "(?i)\\W*(?:test(?: results?)?|results?|route(?:s)?(?: of .*)?|species|dose|value|exposure(?: time)?|end ?-?point|type|method)\\W*");
    private static final Pattern AMOUNT = Pattern.compile("\\d\\s?(?:mg|g|µg|ml|mL|µL|ppm)\\b");
    private static final Pattern UNIT_IN_HEAD = Pattern.compile(
            "\\(\\s*(mg\\s?/\\s?kg|mg\\s?/\\s?l|mg\\s?/\\s?L|ppm|mg\\s?/\\s?m[3³])[^)]*\\)?|\\b(mg/kg|mg/[lL]|ppm)\\b");
    private static final Pattern BARE_CELL = Pattern.compile(
            "(?is)\\s*[=:]?\\s*([<>≤≥]?\\s*\\d[\\d.,]*\\d|[<>≤≥]?\\s*\\d)\\s*(?:,?\\s*\\(?(?:rats?|mouse|mice|rabbits?|guinea pigs?|dogs?)\\b.*)?");
    /** Where a sheet turns from its ingredients to the mixture. */
    private static final Pattern OWN_ESTIMATES =
            Pattern.compile("(?i)numerical measures of toxicity|acute toxicity estimates?|\\bATE\\s*(?:mix|values?)");

    /** "A substance: INHALATION (LC50) …": a name with a colon before its test. */
    private static final Pattern HEADED = Pattern.compile(
            "(?:^|[\\n\\t])[\\s:]*([\\p{Lu}\\d][^:\\n\\t]{3,90}?)\\s?:\\s*(?=(?i:inhalation|oral|dermal|LC\\s?50|LD\\s?50))");

    private static final Family[] UNITS = {Family.DOSE, Family.AIR};

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        List<Row> rows = sheet.rows(SheetSection.TOXICOLOGY);
        Set<Row> used = new HashSet<>();
        for (RowTable table : RowTable.in(rows, AcutePart::isTestHeader, AcutePart::holdsAmount, substances::goesOn)) {
            used.addAll(table.rows());
            if (stepsIn(table)) {
                steps(table.rows(), sheet, substances, readings);
            } else {
                lines(table, sheet, substances, readings);
            }
        }
        List<Row> others = rows.stream().filter(row -> !used.contains(row)).toList();
        for (HeaderTable table :
                HeaderTable.in(others, AcutePart::isHeader, AcutePart::holdsValue, row -> false, substances::goesOn)) {
            used.addAll(table.rows());
            table(table, sheet, substances, readings);
        }
        for (HeaderTable table :
                HeaderTable.in(sheet.rows(SheetSection.COMPOSITION), AcutePart::isHeader, IngredientPart::isAnchor)) {
            table(table, sheet, substances, readings);
        }
        Passage.Builder rest = new Passage.Builder();
        substances
                .joined(rows.stream().filter(row -> !used.contains(row)).toList())
                .forEach(row -> rest.newLine(Passage.of(row)).endLine());
        running(rest.build(), sheet, substances, readings);
    }

    private static boolean isHeader(Row row) {
        return row.cells().size() > 1
                && row.cells().stream()
                                .filter(cell -> HEADER.matcher(cell.text()).matches()
                                        && !cell.text().contains(":"))
                                .count()
                        > 1
                && !AMOUNT.matcher(row.text()).find();
    }

    /** "Component, result, species, dose": each line below is one test. */
    private static boolean isTestHeader(Row row) {
        List<Cell> cells = row.cells();
        return cells.size() > 2
                && NAME_HEAD.matcher(cells.get(0).text()).matches()
                && cells.stream()
                                .skip(1)
                                .filter(cell -> TEST_HEAD.matcher(cell.text()).matches())
                                .count()
                        > 1
                && !holdsAmount(row);
    }

    private static boolean holdsAmount(Row row) {
        return AMOUNT.matcher(row.text()).find();
    }

    /** An amount with a unit, or a bare number beside a name where the unit stands in the header. */
    private static boolean holdsValue(Row row) {
        return holdsAmount(row)
                || row.cells().stream()
                        .skip(1)
                        .anyMatch(cell -> BARE_CELL.matcher(cell.text()).matches());
    }

    /** A list in which substance, route and measure stand on lines of their own above what they hold for. */
    private static boolean stepsIn(RowTable table) {
        return table.rows().stream()
                        .skip(1)
                        .filter(row -> row.cells().size() == 1
                                && ROUTE.matcher(row.text()).matches())
                        .count()
                > 0;
    }

    private static void steps(List<Row> rows, SheetText sheet, Substances substances, Readings readings) {
        String substance = "";
        String route = "";
        String measure = "";
        String species = "";
        double left = rows.get(0).first().left();
        for (Row row : rows.subList(1, rows.size())) {
            Passage passage = Passage.of(row);
            String text = passage.text();
            if (!holdsAmount(row) && text.matches(".*\\d\\s?%.*|\\s*-\\s*")) {
                continue;
            }
            if (!holdsAmount(row)) {
                boolean outer = row.first().left() < left + 8;
                if (ROUTE.matcher(text).matches()) {
                    route = text;
                } else if (outer && !text.matches("(?i)\\W*(?:acute|chronic|\\*.*)\\W*")) {
                    substance = substances.ofCell(text);
                    route = "";
                }
                measure = "";
                species = "";
                continue;
            }
            String nextMeasure = find(MEASURE, text);
            String nextSpecies = find(SPECIES, text);
            species = nextSpecies.isEmpty() && nextMeasure.isEmpty() ? species : nextSpecies;
            measure = nextMeasure.isEmpty() ? measure : nextMeasure;
            for (Stretch stretch : Stretch.of(text, sheet.style(), UNITS)) {
                state(
                        stretch,
                        passage,
                        measure,
                        route(route),
                        species(species),
                        sex(text),
                        substance,
                        hours(text.substring(stretch.amount().to())),
                        readings);
            }
        }
    }

    private static void lines(RowTable table, SheetText sheet, Substances substances, Readings readings) {
        String name = "";
        String measure = "";
        String route = "";
        String species = "";
        for (RowTable.Entry entry : table.entries()) {
            boolean same = entry.name().equals(name);
            name = entry.name();
            Passage line = entry.line();
            String text = line.text();
            measure = first(find(MEASURE, text), same ? measure : "");
            route = first(find(ROUTE, text), same ? route : "");
            species = first(find(SPECIES, text), same ? species : "");
            List<Stretch> stretches = Stretch.of(text, sheet.style(), UNITS);
            for (Stretch stretch : stretches) {
                String behind = text.substring(stretch.amount().to());
                state(
                        stretch,
                        line,
                        measure,
                        route(route),
                        species(species),
                        sex(text),
                        substances.ofCell(name),
                        stretches.size() == 1 ? first(hours(behind), hours(text)) : hours(behind),
                        readings);
            }
        }
    }

    private static void table(HeaderTable table, SheetText sheet, Substances substances, Readings readings) {
        for (List<Passage> record : table.records()) {
            String first = record.get(0).text();
            String substance =
                    MEASURE.matcher(first).find() || ROUTE.matcher(first).find()
                            ? substances.in(first, "")
                            : substances.ofCell(first);
            for (int i = 0; i < record.size(); i++) {
                Passage cell = record.get(i);
                String head = table.heads().get(i);
                List<Stretch> stretches = Stretch.of(cell.text(), sheet.style(), UNITS);
                boolean before = stretches.isEmpty()
                        || saysBefore(cell.text()
                                .substring(0, stretches.get(0).amount().from()));
                for (int k = 0; k < stretches.size(); k++) {
                    Stretch stretch = stretches.get(k);
                    int from = k == 0 ? 0 : stretches.get(k - 1).amount().to();
                    int to = k + 1 < stretches.size()
                            ? stretches.get(k + 1).amount().from()
                            : cell.text().length();
                    String own = before
                            ? cell.text().substring(from, k + 1 < stretches.size() ? stretch.to() : to)
                            : cell.text().substring(stretch.amount().from(), to);
                    Nearby near = new Nearby(cell.text(), stretch);
                    String measure = first(near.find(MEASURE), find(MEASURE, head), find(MEASURE, first));
                    String route = first(near.find(ROUTE), find(ROUTE, head), find(ROUTE, first));
                    String species =
                            first(find(SPECIES, own), find(SPECIES, head), find(SPECIES, first), speciesOf(record));
                    String hours = first(hours(own), hours(head), k == 0 && before ? "" : hours(near.line()));
                    state(stretch, cell, measure, route(route), species(species), sex(own), substance, hours, readings);
                }
                if (stretches.isEmpty() && i > 0) {
                    bare(table, record, i, substance, sheet, readings);
                }
            }
        }
    }

    /** A number alone, with its unit in the header: "Oral (mg/kg): 2500". */
    private static void bare(
            HeaderTable table, List<Passage> record, int column, String substance, SheetText sheet, Readings readings) {
        String head = table.heads().get(column).replaceAll("/\\s+", "/");
        Matcher unit = UNIT_IN_HEAD.matcher(head);
        Passage cell = record.get(column);
        Matcher number = BARE_CELL.matcher(cell.text());
        if (!unit.find() || !number.matches()) {
            return;
        }
        String printed = unit.group(1) == null ? unit.group(2) : unit.group(1);
        AmountText amount = null;
        for (Family family : UNITS) {
            amount = amount == null
                    ? AmountText.first(number.group(1).strip() + " " + printed, family, sheet.style())
                    : amount;
        }
        if (amount != null) {
            String measure = first(find(MEASURE, head), find(MEASURE, String.join(" ", table.heads())), "ATE");
            Stretch whole = new Stretch(
                    new AmountText(amount.amount(), 0, cell.text().length(), amount.doubt()),
                    0,
                    cell.text().length(),
                    0);
            state(
                    whole,
                    cell,
                    measure,
                    route(find(ROUTE, head)),
                    species(first(find(SPECIES, cell.text()), find(SPECIES, head))),
                    "",
                    substance,
                    hours(head),
                    readings);
        }
    }

    /** Whether species or exposure stand before their amount, as in "rat, 4 h: 5.2 mg/L", and not behind it. */
    private static boolean saysBefore(String text) {
        return SPECIES.matcher(text).find() || HOURS.matcher(text).find();
    }

    private static String speciesOf(List<Passage> record) {
        return record.stream()
                .map(cell -> find(SPECIES, cell.text()))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse("");
    }

    private static void running(Passage passage, SheetText sheet, Substances substances, Readings readings) {
        String text = passage.text();
        String substance = "";
        String measure = "";
        String species = "";
        Route route = Route.UNSAID;
        int end = 0;
        for (Stretch stretch : Stretch.of(text, sheet.style(), UNITS)) {
            Nearby near = new Nearby(text, stretch);
            String words = near.before() + "\n" + near.line();
            int from = stretch.amount().from();
            String between = text.substring(Math.min(end, from), from);
            boolean own = OWN_ESTIMATES.matcher(between).find();
            if (own) {
                substance = "";
                species = "";
                words = near.line();
            }
            end = stretch.amount().to();
            substance = named(near, words, substances, substances.in(words, substance));
            boolean dose = stretch.amount().amount().unit().contains("/kg");
            Route printed = route(near.find(ROUTE));
            Route nextRoute = dose && printed == Route.INHALED ? Route.UNSAID : printed;
            String nextSpecies = own ? find(SPECIES, near.line()) : near.find(SPECIES);
            boolean sameRoute = nextRoute == Route.UNSAID || nextRoute == route;
            species = nextSpecies.isEmpty() && sameRoute && !words.contains("\n\n") ? species : nextSpecies;
            route = nextRoute == Route.UNSAID ? route : nextRoute;
            String nextMeasure = near.find(MEASURE);
            measure = nextMeasure.isEmpty() ? measure : nextMeasure;
            route = dose && nextRoute == Route.UNSAID && route == Route.INHALED ? Route.UNSAID : route;
            state(
                    stretch,
                    passage,
                    measure,
                    route,
                    species(species),
                    sex(near.onLine(SEX)),
                    substance,
                    first(hoursOfMeasure(between), lastHours(words)),
                    readings);
        }
    }

    /** "LC50 4 h (nose only) > 0.51 mg/L": hours between measure and amount are that amount's. */
    private static String hoursOfMeasure(String between) {
        int behind = -1;
        Matcher measures = MEASURE.matcher(between);
        while (measures.find()) {
            behind = measures.end();
        }
        return behind < 0 ? "" : lastHours(between.substring(behind));
    }

    /** A name in the first column of the line, where the list says whose value each is. */
    private static String named(Nearby near, String words, Substances substances, String before) {
        Matcher headed = HEADED.matcher(words);
        String name = "";
        while (headed.find()) {
            name = headed.group(1);
        }
        if (!name.isEmpty() && substances.resembles(name)) {
            return substances.ofCell(name);
        }
        int column = near.line().indexOf('\t');
        if (column < 0) {
            return before;
        }
        String first = near.line().substring(0, column);
        return substances.begins(first) ? substances.ofCell(first) : before;
    }

    private static void state(
            Stretch stretch,
            Passage passage,
            String printedMeasure,
            Route route,
            String species,
            String sex,
            String substance,
            String printedHours,
            Readings readings) {
        String measure = measure(printedMeasure);
        if (!measure.equals("LD50") && !measure.equals("LC50") && !measure.equals("ATE")) {
            return;
        }
        Amount amount = stretch.amount().amount();
        boolean air = !amount.unit().contains("/kg");
        Route known = air && measure.equals("LC50") && route != Route.INHALED ? Route.INHALED : route;
        if (air != (known == Route.INHALED) || perDay(passage.text(), stretch)) {
            return;
        }
        Quote quote = passage.quote(
                stretch.lineFrom(), Math.max(stretch.to(), stretch.amount().to()));
        if (!stretch.amount().doubt().isEmpty()) {
            readings.unclear(ValueKind.ACUTE_TOXICITY, stretch.amount().doubt(), quote);
            return;
        }
        @Nullable Double hours = air ? Circumstance.hours(printedHours) : null;
        Amount under = amount.under(new Conditions(null, hours, ""));
        readings.state(
                ValueKind.ACUTE_TOXICITY, new Content.Acute(substance, known, measure, species, sex, under), quote);
    }

    private static String hours(String text) {
        return find(HOURS, text);
    }

    private static String lastHours(String words) {
        String found = "";
        Matcher matcher = HOURS.matcher(words);
        while (matcher.find()) {
            found = matcher.group();
        }
        return found;
    }

    private static boolean perDay(String text, Stretch stretch) {
        int to = stretch.amount().to();
        return text.substring(to, Math.min(text.length(), to + 14))
                .matches("(?is)\\s*(?:bw)?\\s*(?:/|per)\\s*d(?:ay)?\\b.*|\\s*(?:diet|feed).*");
    }

    private static String measure(String printed) {
        String plain = printed.toUpperCase(Locale.ROOT)
                .replaceAll("\\s", "")
                .replace('₅', '5')
                .replace('₀', '0');
        boolean estimate = plain.startsWith("ATE") || plain.startsWith("ACUTETOX");
        return estimate ? "ATE" : plain.startsWith("LD") || plain.startsWith("LC") ? plain : "other";
    }

    private static Route route(String printed) {
        String plain = printed.toLowerCase(Locale.ROOT);
        if (plain.isEmpty()) {
            return Route.UNSAID;
        }
        return plain.startsWith("inhal")
                ? Route.INHALED
                : plain.startsWith("derm") || plain.equals("skin") || plain.startsWith("perc")
                        ? Route.SKIN
                        : Route.SWALLOWED;
    }

    private static String species(String printed) {
        String plain = printed.toLowerCase(Locale.ROOT).replace('-', ' ');
        return plain.equals("mice") ? "mouse" : plain.endsWith("s") ? plain.substring(0, plain.length() - 1) : plain;
    }

    private static String sex(String text) {
        List<String> all = new ArrayList<>();
        Matcher matcher = SEX.matcher(text);
        while (matcher.find()) {
            all.add(matcher.group().toLowerCase(Locale.ROOT));
        }
        if (all.size() != 1 || all.get(0).matches(".*(?:and|&|/|,|\\+).*")) {
            return "";
        }
        return all.get(0).startsWith("f") || all.get(0).equals("♀") ? "female" : "male";
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
