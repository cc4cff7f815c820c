package plumbrow.documents.label.part;

import java.util.List;
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
import plumbrow.documents.paper.Passage;
import plumbrow.documents.sheet.Amount;

/** Active ingredients with their share, and pounds in a gallon. */
final class ActivePart implements Part {
    private static final Pattern LEAD = Pattern.compile(
            "(?i)^\\W*active ingredients?(?:\\(s\\))?\\s*:?\\s*(?:(?:%\\s?)?by\\s+w(?:t|eight)\\.?)?\\s*");
    private static final Pattern NO_NAME = Pattern.compile("(?i)^\\W*(?:other|inert|total|by w).*|.*\\bby weight\\s*$");
    private static final Pattern LAST = Pattern.compile("(?i)^\\W*(?:total|other ingredients|inert).*");
    private static final Pattern SHARE = Pattern.compile("(?<![\\d.])(\\d{1,3}(?:\\.\\d{1,4})?)\\s?%");
    private static final Pattern NOTES =
            Pattern.compile("(?i)[*†‡]+|\\(?\\bCAS\\b[^)]*\\)?|[.…_]{3,}|\\([^()]*-\\d-yl[^()]*\\)");
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

    private static void ingredients(List<LabelText.Line> lines, Readings readings) {
        Passage.Builder name = new Passage.Builder();
        boolean open = false;
        for (LabelText.Line line : lines) {
            Passage row = Passage.of(line.row());
            String text = row.text();
            Matcher lead = LEAD.matcher(text);
            if (lead.find()) {
                open = true;
                name = new Passage.Builder();
                row = row.from(lead.end());
                text = row.text();
            }
            if (!open || text.isEmpty()) {
                continue;
            }
            if (LAST.matcher(text).matches()) {
                open = false;
                continue;
            }
            name.line(row).endLine();
            Matcher share = SHARE.matcher(text);
            if (share.find()) {
                active(name.build(), readings);
                name = new Passage.Builder();
            }
        }
    }

    private static void active(Passage passage, Readings readings) {
        String text = passage.text();
        Matcher share = SHARE.matcher(text);
        if (!share.find()) {
            return;
        }
        String plain = NOTES.matcher(text.substring(0, share.start())).replaceAll(" ");
        String name = plain.replaceAll("[\\s\\t]+", " ")
                .replaceAll("[\\s:.,…-]+$", "")
                .strip();
        if (name.length() < 3 || NO_NAME.matcher(name).matches()) {
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
        for (String part :
                text.split("(?i)(?:,\\s*)?(?:\\bequivalent to\\b|\\bequal to\\b|\\bor\\b|\\band\\b(?=\\s+\\d))", -1)) {
            pounds(part, text.indexOf(part), sentence, readings);
        }
    }

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
