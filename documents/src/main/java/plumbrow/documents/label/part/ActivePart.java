package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Amount;

/** Active ingredients with their share, and pounds in a gallon. */
final class ActivePart implements Part {
    private static final Pattern LEAD = Pattern.compile(
            "(?i)^\\W*active ingredients?(?:\\(s\\))?\\s*:?\\s*(?:(?:%\\s?)?by\\s+w(?:t|eight)\\.?)?\\s*");
    private static final Pattern NO_NAME = Pattern.compile("(?i)^\\W*(?:other|inert|total|by w).*|.*\\bby weight\\s*$");
    private static final Pattern LAST = Pattern.compile("(?i)^\\W*(?:total|other ingredients|inert).*");
    private static final Pattern SHARE = Pattern.compile("(?<!\\d)(?<!\\d\\.)(\\d{1,3}(?:\\.\\d{1,4})?)\\s?%");
    private static final Pattern NOTES =
            Pattern.compile("(?i)[*†‡]+|\\(?\\bCAS\\b[^)]*\\)?|[.…_]{3,}|\\([^()]*-\\d-yl[^()]*\\)");
    private static final Pattern NOT_ALONE = Pattern.compile(
            "(?i)\\bEPA\\b|\\bReg\\b|keep out|caution|warning|danger|first aid|\\bsee (?:back|side|panel)|net (?:wt|contents)|\\d{3,}-\\d{2,}|(?-i:\\.\\s+\\p{Lu}\\p{Ll}{3})|^[^(\\[]*[)\\]]");
    private static final int LONGEST_NAME = 170;
    private static final double ASIDE = 6;
    private static final double INDENT = 24;
    private static final Pattern OF_NAMED = Pattern.compile(
            "(?i)(?:lbs?\\.?|pounds?)\\s+(?:of\\s+)?(?:the\\s+)?(?:(?:active ingredients?|a\\.?i\\.?)\\s*,?\\s*(?:of\\s+)?)?(?<name>[^,;()/]*(?:,\\d[^,;()/]*)?(?:, \\p{L}+ salt)?)\\s*(?:\\([^)]*\\))?\\s*(?:per|/)");
    private static final Pattern BEHIND = Pattern.compile(
            "(?i)^\\s*(?:of\\s+)?(?:the\\s+)?(?:active ingredient\\s*,?\\s*)?(?<name>[^.;]{3,60}?)(?=\\s+(?:and|or|per|equivalent)\\b|[.;()]|, equivalent|$)");
    private static final Pattern ACID = Pattern.compile("(?i)\\bacid\\b|\\ba\\.?e\\.?\\b");
    private static final Pattern BASIS = Pattern.compile(
            "(?i)\\b(?:of|the|this|active|ingredients?|a\\.?i\\b\\.?|a\\.?e\\b\\.?|acid|equivalents?|as|expressed|form|each)\\b|[*]");
    private static final Pattern CONTAINS =
            Pattern.compile("(?i)\\bcontains?|\\bequivalent\\b|\\bequal to\\b|\\bgallon\\b");
    private static final Pattern ACID_SHARE = Pattern.compile(
            "(?i)(\\d{1,3}(?:\\.\\d{1,4})?)\\s?%\\s*(?:of\\s+)?(?:(?<name>[\\p{L}\\d,-]+(?:\\s[\\p{L}]+)?)\\s+)?(?:acid(?: equivalents?)?|a\\.?e\\b\\.?)");

    @Override
    public void read(LabelText label, Readings readings) {
        ingredients(label.lines(), readings);
        for (Sentence sentence : label.sentences()) {
            boolean front = sentence.topic() == Topic.INGREDIENTS
                    || sentence.topic() == Topic.FRONT
                    || sentence.topic() == Topic.DIRECTIONS;
            if (CONTAINS.matcher(sentence.text()).find()
                    && (front || sentence.text().matches("(?is).*contains.*"))) {
                strength(sentence, readings);
                acid(sentence, readings);
            }
        }
    }

    /** Names and shares under "active ingredient", in the column that these words begin. */
    private static void ingredients(List<LabelText.Line> lines, Readings readings) {
        Passage.Builder name = new Passage.Builder();
        Cell column = null;
        int page = 0;
        for (LabelText.Line line : lines) {
            List<Cell> cells = line.row().cells();
            Cell lead = cells.stream()
                    .filter(cell -> LEAD.matcher(cell.text()).find())
                    .findFirst()
                    .orElse(null);
            if (lead != null) {
                column = lead;
                name = new Passage.Builder();
            } else if (column != null && line.row().page() != page) {
                column = null;
            }
            page = line.row().page();
            if (column == null) {
                continue;
            }
            Passage part = share(line.row(), column, lead != null);
            if (part.isEmpty()) {
                continue;
            }
            if (LAST.matcher(part.text()).matches()) {
                column = null;
                continue;
            }
            name.line(part).endLine();
            if (SHARE.matcher(part.text()).find()) {
                active(name.build(), readings);
                name = new Passage.Builder();
            }
        }
    }

    /** What a row has in the column: the cell at its edge and those up to the share; empty for nothing. */
    private static Passage share(Row row, Cell column, boolean first) {
        Passage.Builder part = new Passage.Builder();
        boolean any =
                row.cells().stream().anyMatch(cell -> SHARE.matcher(cell.text()).find());
        for (Cell cell : row.cells()) {
            if (cell.left() < column.left() - ASIDE) {
                continue;
            }
            Passage passage = Passage.of(row.page(), cell);
            Matcher lead = LEAD.matcher(passage.text());
            boolean leads = first && lead.find();
            if (leads) {
                passage = passage.from(lead.end());
            }
            boolean atEdge = leads || cell.left() < column.left() + INDENT;
            boolean share = SHARE.matcher(passage.text()).find();
            if (!(atEdge || (any && (share || !part.isEmpty() || first)))) {
                break;
            }
            if (!passage.isEmpty()) {
                part.line(passage);
            }
            if (share) {
                break;
            }
            if (!any && !part.isEmpty()) {
                break;
            }
        }
        return part.build();
    }

    private static void active(Passage passage, Readings readings) {
        String text = passage.text();
        Matcher share = SHARE.matcher(text);
        if (!share.find()) {
            return;
        }
        String plain = NOTES.matcher(text.substring(0, share.start())).replaceAll(" ");
        String name = plain.replaceAll("\\[[^\\[]*\\]|\\[[^\\[\\]]*\\)[^\\]]*$", " ")
                .replaceAll("(?:\\s\\.)+(?=\\s|$)", " ")
                .replaceAll("[\\s\\t]+", " ")
                .replaceAll("[\\s:.,…-]+$", "")
                .strip();
        if (name.length() < 3 || NO_NAME.matcher(name).matches()) {
            return;
        }
        if (NOT_ALONE.matcher(name).find() || name.length() > LONGEST_NAME) {
            readings.unclear(LabelKind.ACTIVE, "other matter seems to stand before the share", passage.quote());
            return;
        }
        double percent = Double.parseDouble(share.group(1));
        if (percent > 100) {
            readings.unclear(LabelKind.ACTIVE, share.group() + " is more than a whole", passage.quote());
            return;
        }
        Amount amount = new Amount(Amount.Qualifier.EXACTLY, percent, percent, "%", Amount.Conditions.NONE);
        readings.state(LabelKind.ACTIVE, new LabelContent.Active(name, amount), passage.quote(0, share.end()));
    }

    private static void strength(Sentence sentence, Readings readings) {
        String text = sentence.text();
        if (listed(sentence, readings)) {
            return;
        }
        for (String part :
                text.split("(?i)(?:,\\s*)?(?:\\bequivalent to\\b|\\bequal to\\b|\\bor\\b|\\band\\b(?=\\s+\\d))", -1)) {
            pounds(part, text.indexOf(part), sentence, readings);
        }
    }

    /** "Contains 0.3 lb of one, 0.1 lb of two and 0.1 lb of three per gallon": pounds of each, in a gallon or a smaller measure. */
    private static boolean listed(Sentence sentence, Readings readings) {
        String text = sentence.text();
        Matcher per = PER_MEASURE.matcher(text);
        if (!per.find() || EQUIVALENT.matcher(text).find()) {
            return false;
        }
        Matcher each = EACH.matcher(text.substring(0, per.start("per")));
        record Found(double value, String name, int from, int to) {}
        List<Found> found = new ArrayList<>();
        while (each.find()) {
            String name = each.group("name").replaceAll("\\s+", " ").replaceAll("^the\\s|[*\\s]+$", "");
            found.add(new Found(Double.parseDouble(each.group("n")), name, each.start(), each.end()));
        }
        String unit = per.group("unit").toLowerCase(Locale.ROOT);
        String measure = unit.startsWith("g") ? "lb/gal" : unit.startsWith("q") ? "lb/qt" : "lb/pt";
        if (found.size() < 2 && measure.equals("lb/gal")) {
            return false;
        }
        for (Found one : found) {
            if (one.name.length() < 3) {
                return false;
            }
        }
        for (Found one : found) {
            Amount amount = new Amount(Amount.Qualifier.EXACTLY, one.value, one.value, measure, Amount.Conditions.NONE);
            readings.state(
                    LabelKind.STRENGTH,
                    new LabelContent.Strength(one.name, amount, Of.ACTIVE),
                    sentence.passage().quote(one.from, one.to));
        }
        return !found.isEmpty();
    }

    private static final Pattern PER_MEASURE = Pattern.compile(
            "(?i)\\bcontains?\\b.*(?<per>\\s(?:per|/|in (?:a|each))\\s?(?:U\\.?S\\.?\\s)?(?<unit>gal(?:lon)?|pint|pt|quart|qt)\\b)",
            Pattern.DOTALL);
    private static final Pattern EQUIVALENT =
            Pattern.compile("(?i)\\bequivalent|\\ba\\.?e\\b|\\bequal to\\b|\\bexpressed\\b|\\ba\\.?i\\b|\\bactive\\b");
    private static final Pattern EACH = Pattern.compile(
            "(?i)(?<n>\\d{1,2}(?:\\.\\d{1,4})?|\\.\\d{1,4})\\s?(?:lbs?\\.?|pounds?)\\s+(?:of\\s+)?(?<name>\\p{L}[^,;]{2,70}?)(?=\\s*[,;]|\\s+and\\s+(?:\\d|\\.\\d)|$)");

    private static void pounds(String part, int at, Sentence sentence, Readings readings) {
        Optional<MeasureText> found = MeasureText.first(part, Measure.STRENGTH);
        MeasureText size = found.orElse(null);
        int end = size == null ? 0 : size.to();
        if (size == null) {
            Matcher shared = SHARED.matcher(part);
            if (!shared.find()
                    || !sentence.text().matches("(?is).*(?:per\\s+gallon|/\\s?gal\\b|gallon[^.]*contains).*")) {
                return;
            }
            size = MeasureText.first(shared.group(1) + " lb per gallon", Measure.STRENGTH)
                    .orElse(null);
            end = shared.end();
            if (size == null) {
                return;
            }
        }
        String words = found.isPresent() ? part.substring(size.from(), size.to()) : part;
        Matcher named = OF_NAMED.matcher(
                found.isPresent() ? words : PER_GALLON.matcher(words).replaceAll(" ") + " per");
        String inside = named.find() ? named.group("name") : "";
        Matcher behind = BEHIND.matcher(part.substring(Math.min(part.length(), end)));
        String name = plain(inside);
        if (name.isEmpty() && found.isPresent() && behind.find()) {
            name = plain(behind.group("name"));
        }
        String around = words + " " + (found.isPresent() ? part.substring(size.to()) : "");
        Of of = ACID.matcher(around).find() ? Of.ACID : Of.ACTIVE;
        readings.state(
                LabelKind.STRENGTH,
                new LabelContent.Strength(name, size.amount(), of),
                sentence.passage().quote(at, Math.min(sentence.text().length(), at + part.length())));
    }

    private static final Pattern PER_GALLON = Pattern.compile("(?i)\\bper\\s+gallon\\b|/\\s?gal\\b");
    private static final Pattern SHARED =
            Pattern.compile("(?i)(\\d{1,2}(?:\\.\\d{1,3})?)\\s?(?:lbs?\\.?|pounds?)(?=\\s)");

    private static String plain(String name) {
        String text =
                BASIS.matcher(name.replace("a.e.", " ").replace("a.i.", " ")).replaceAll(" ");
        return text.replaceAll("\\s+", " ").replaceAll("^[\\s,:.-]+|[\\s,:.-]+$", "");
    }

    private static void acid(Sentence sentence, Readings readings) {
        Matcher share = ACID_SHARE.matcher(sentence.text());
        if (share.find()) {
            double percent = Double.parseDouble(share.group(1));
            Amount amount = new Amount(Amount.Qualifier.EXACTLY, percent, percent, "%", Amount.Conditions.NONE);
            String name = share.group("name") == null ? "" : plain(share.group("name"));
            readings.state(
                    LabelKind.STRENGTH,
                    new LabelContent.Strength(name, amount, Of.ACID),
                    sentence.passage().quote(share.start(), share.end()));
        }
    }
}
