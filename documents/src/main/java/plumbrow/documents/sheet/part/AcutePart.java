package plumbrow.documents.sheet.part;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.Circumstance;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.HeaderTable;

/** Half-lethal doses by mouth, skin and breath, with species, sex and exposure time. */
final class AcutePart implements Part {
    private static final Pattern MEASURE = Pattern.compile(
            "(?i)\\b(?:LD\\s?50|LC\\s?50|LDLo|ATE(?:mix)?)|LD₅₀|LC₅₀|\\b(?:NO(?:A)?EL|LO(?:A)?EL|NOAEC|BMD|ADI)\\b");
    private static final Pattern ROUTE = Pattern.compile(
            "(?i)\\b(?:oral(?:ly)?|ingestion|swallow(?:ed|ing)|dermal(?:ly)?|skin|percutaneous|inhal\\w*|gavage)\\b");
    private static final Pattern SPECIES =
            Pattern.compile("(?i)\\b(?:rats?|mouse|mice|rabbits?|guinea pigs?|dogs?|hamsters?|cats?)\\b");
    private static final Pattern SEX = Pattern.compile(
            "(?i)\\b(?:males?\\s*(?:and|&|/|,|\\+)\\s*females?|females?\\s*(?:and|&|/)\\s*males?|females?|males?)\\b|♀|♂");
    private static final Pattern HOURS = Pattern.compile("(?i)\\b\\d{1,2}(?:[.,]\\d)?\\s?-?\\s?(?:hours?|hrs?|h)\\b");
    private static final Pattern HEADER = Pattern.compile("(?i).*(?:LD\\s?50|LC\\s?50|oral|dermal|inhal).*");
    private static final Pattern AMOUNT = Pattern.compile("\\d\\s?(?:mg|g|µg|ppm)\\b");
    private static final Family[] UNITS = {Family.DOSE, Family.AIR};

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        List<Row> rows = sheet.rows(SheetSection.TOXICOLOGY);
        Set<Row> used = new HashSet<>();
        for (HeaderTable table : HeaderTable.in(rows, AcutePart::isHeader, AcutePart::holdsAmount)) {
            used.addAll(table.rows());
            table(table, sheet, substances, readings);
        }
        Passage.Builder rest = new Passage.Builder();
        rows.stream()
                .filter(row -> !used.contains(row))
                .forEach(row -> rest.newLine(Passage.of(row)).endLine());
        running(rest.build(), sheet, substances, readings);
    }

    private static boolean isHeader(Row row) {
        return row.cells().size() > 1
                && row.cells().stream()
                                .filter(cell -> HEADER.matcher(cell.text()).matches())
                                .count()
                        > 1
                && !AMOUNT.matcher(row.text()).find();
    }

    private static boolean holdsAmount(Row row) {
        return AMOUNT.matcher(row.text()).find();
    }

    private static void table(HeaderTable table, SheetText sheet, Substances substances, Readings readings) {
        for (List<Passage> record : table.records()) {
            String substance = substances.in(record.get(0).text(), "");
            for (int i = 0; i < record.size(); i++) {
                Passage cell = record.get(i);
                for (Stretch stretch : Stretch.of(cell.text(), sheet.style(), UNITS)) {
                    Nearby near = new Nearby(cell.text(), stretch);
                    String head = table.heads().get(i);
                    String first = record.get(0).text();
                    String measure = first(near.find(MEASURE), find(MEASURE, head), find(MEASURE, first));
                    String route = first(near.find(ROUTE), find(ROUTE, head), find(ROUTE, first));
                    String species =
                            first(near.find(SPECIES), find(SPECIES, head), find(SPECIES, first), speciesOf(record));
                    state(
                            stretch,
                            cell,
                            measure,
                            route(route),
                            species(species),
                            sex(near),
                            substance,
                            near.line() + " " + head,
                            readings);
                }
            }
        }
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
        for (Stretch stretch : Stretch.of(text, sheet.style(), UNITS)) {
            Nearby near = new Nearby(text, stretch);
            String words = near.before() + "\n" + near.line();
            substance = substances.in(words, substance);
            Route nextRoute = route(near.find(ROUTE));
            String nextSpecies = near.find(SPECIES);
            boolean sameRoute = nextRoute == Route.UNSAID || nextRoute == route;
            species = nextSpecies.isEmpty() && sameRoute && !words.contains("\n\n") ? species : nextSpecies;
            route = nextRoute == Route.UNSAID ? route : nextRoute;
            String nextMeasure = near.find(MEASURE);
            measure = nextMeasure.isEmpty() ? measure : nextMeasure;
            state(stretch, passage, measure, route, species(species), sex(near), substance, words, readings);
        }
    }

    private static void state(
            Stretch stretch,
            Passage passage,
            String printedMeasure,
            Route route,
            String species,
            String sex,
            String substance,
            String words,
            Readings readings) {
        String measure = measure(printedMeasure);
        if (!measure.startsWith("L") && !measure.equals("ATE")) {
            return;
        }
        Amount amount = stretch.amount().amount();
        boolean air = !amount.unit().contains("/kg");
        Route known = air && measure.equals("LC50") && route != Route.INHALED ? Route.INHALED : route;
        if (air != (known == Route.INHALED) || perDay(passage.text(), stretch)) {
            return;
        }
        var quote = passage.quote(stretch.lineFrom(), stretch.to());
        if (!stretch.amount().doubt().isEmpty()) {
            readings.unclear(ValueKind.ACUTE_TOXICITY, stretch.amount().doubt(), quote);
            return;
        }
        Double hours = air ? Circumstance.hours(lastHours(words)) : null;
        Amount under = amount.under(new Conditions(null, hours, ""));
        readings.state(
                ValueKind.ACUTE_TOXICITY, new Content.Acute(substance, known, measure, species, sex, under), quote);
    }

    private static String lastHours(String words) {
        String found = "";
        var matcher = HOURS.matcher(words);
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
        return plain.startsWith("ATE") ? "ATE" : plain.startsWith("LD") || plain.startsWith("LC") ? plain : "other";
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
        String plain = printed.toLowerCase(Locale.ROOT);
        return plain.equals("mice") ? "mouse" : plain.endsWith("s") ? plain.substring(0, plain.length() - 1) : plain;
    }

    private static String sex(Nearby near) {
        String found = near.onLine(SEX).toLowerCase(Locale.ROOT);
        if (found.isEmpty() || found.matches(".*(?:and|&|/|,|\\+).*")) {
            return "";
        }
        return found.startsWith("f") || found.equals("♀") ? "female" : "male";
    }

    private static String find(Pattern pattern, String text) {
        var matcher = pattern.matcher(text);
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
