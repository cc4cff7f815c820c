package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.label.text.Topics;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.grammar.DateText;

/** Name, numbers and date of a label. */
final class FrontPart implements Part {
    private static final Pattern REGISTRATION = Pattern.compile(
            "(?i)\\bEPA\\s+Reg(?:istration|\\.)?\\s*(?:No|Number|#)?\\s*[.:#]*\\s*(\\d{1,6}\\s?[-–]\\s?\\d{1,5}(?:\\s?[-–]\\s?\\d{1,6})?)(?![\\d-])");
    private static final Pattern ESTABLISHMENT = Pattern.compile(
            "(?i)\\bEPA\\s+Est(?:ablishment|\\.)?\\s*(?:No|Nos|Number|#)?\\s*[.:#]*\\s*(\\d{1,6}-[A-Z]{2,3}-\\d{1,3})\\b");
    private static final Pattern DATED = Pattern.compile(
            "(?i)\\b(?:label (?:date|revised|version)|revised|revision(?: date)?|accepted|approved|date of (?:this )?label|effective)\\b[^.]{0,40}");
    private static final Pattern NO_NAME = Pattern.compile(
            "(?i).*\\b(?:restricted|danger|warning|caution|keep out|herbicide|insecticide|fungicide|miticide|group|net contents|epa|label|directions|active|first aid|booklet|for use|page)\\b.*");
    private static final double LARGE = 1.3;

    @Override
    public void read(LabelText label, Readings readings) {
        List<Row> rows = new ArrayList<>(label.heads());
        label.lines().stream()
                .filter(line -> line.topic() != Topic.MIXING && line.topic() != Topic.CROP)
                .forEach(line -> rows.add(line.row()));
        for (Row row : rows) {
            Passage passage = Passage.of(row);
            Matcher registration = REGISTRATION.matcher(passage.text());
            while (registration.find()) {
                readings.text(
                        LabelKind.REGISTRATION,
                        registration.group(1).replaceAll("\\s", "").replace('–', '-'),
                        passage.quote(registration.start(), registration.end()));
            }
            Matcher establishment = ESTABLISHMENT.matcher(passage.text());
            while (establishment.find()) {
                readings.text(
                        LabelKind.ESTABLISHMENT,
                        establishment.group(1).toUpperCase(Locale.ROOT),
                        passage.quote(establishment.start(), establishment.end()));
            }
            date(passage, readings);
        }
        name(label, readings);
    }

    /** Labels of this kind are American: the month stands first. */
    private static void date(Passage passage, Readings readings) {
        Matcher dated = DATED.matcher(passage.text());
        if (!dated.find()) {
            return;
        }
        DateText date = DateText.first(passage.text().substring(dated.start()), DateText.Order.MONTH_FIRST);
        if (date == null || date.from() > 45) {
            return;
        }
        if (date.date() == null) {
            readings.unclear(LabelKind.LABEL_DATE, date.doubt(), passage.quote());
        } else {
            readings.state(
                    LabelKind.LABEL_DATE,
                    new LabelContent.Day(date.date()),
                    passage.quote(dated.start(), dated.start() + date.to()));
        }
    }

    /** The line in the largest type on the first page, above the ingredients. */
    private static void name(LabelText label, Readings readings) {
        List<Row> front = label.lines().stream()
                .takeWhile(line -> line.topic() == Topic.FRONT)
                .map(LabelText.Line::row)
                .filter(row -> row.page() == 1)
                .toList();
        List<Double> heights = label.lines().stream()
                .map(line -> line.row().bottom() - line.row().top())
                .sorted()
                .toList();
        if (heights.isEmpty()) {
            return;
        }
        double usual = heights.get(heights.size() / 2);
        front.stream()
                .filter(row -> row.bottom() - row.top() >= LARGE * usual
                        && Topics.of(row.text()).isEmpty()
                        && !NO_NAME.matcher(row.text()).matches()
                        && row.text().matches(".*\\p{L}{3}.*"))
                .max(Comparator.comparingDouble(row -> row.bottom() - row.top()))
                .ifPresent(row -> readings.text(
                        LabelKind.PRODUCT_NAME,
                        row.text().replaceAll("[®™]", "").strip(),
                        Passage.of(row).quote()));
    }
}
