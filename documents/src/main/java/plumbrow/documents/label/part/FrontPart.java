package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.grammar.DateText;

/** Name, numbers and date of a label. */
final class FrontPart implements Part {
    private static final Pattern REGISTRATION = Pattern.compile(
            "(?i)\\bEPA\\s+Reg(?:istration|\\.)?\\s*(?:No|Number|#)?\\s*[.:#]*\\s*(\\d{1,6}\\s?[-–]\\s?\\d{1,5}(?:\\s?[-–]\\s?\\d{1,6})?)(?![\\d-])");
    private static final Pattern ESTABLISHMENT =
            Pattern.compile("(?i)\\bEPA\\s+Est(?:ablishments?|\\.)?\\s*(?:Nos|No|Numbers?|#)?\\s*[.:#]*\\s*(?=\\d)");
    private static final Pattern ONE_ESTABLISHMENT = Pattern.compile(
            "(?i)[\\s,;&()]*(?:and\\s+)?(?:[A-Z]{1,3}\\s?[,;)]?\\s+)?(?<number>\\d{1,6}-[A-Z]{2,3}-\\s?\\d{1,3})\\b");
    private static final Pattern DATED = Pattern.compile(
            "(?i)\\b(?:label (?:date|revised|version)|revised|revision(?: date)?|accepted|approved|date of (?:this )?label|effective)\\b[^.]{0,40}");
    private static final int LINES_OF_LIST = 3;
    private static final double UNDER = 12;

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
            date(passage, readings);
        }
        establishments(rows, readings);
        new NamePart().read(label, readings);
    }

    /** A number, or a list of them over several lines, with the letters that mark them in a lot number. */
    private static void establishments(List<Row> rows, Readings readings) {
        for (int i = 0; i < rows.size(); i++) {
            for (Cell cell : rows.get(i).cells()) {
                Passage first = Passage.of(rows.get(i).page(), cell);
                Matcher lead = ESTABLISHMENT.matcher(first.text());
                while (lead.find()) {
                    Passage.Builder all = new Passage.Builder();
                    all.line(first.from(lead.end())).endLine();
                    for (int next = i + 1; next < Math.min(rows.size(), i + 1 + LINES_OF_LIST); next++) {
                        under(rows.get(next), cell)
                                .ifPresent(under -> all.line(under).endLine());
                    }
                    list(all.build(), readings);
                }
            }
        }
    }

    private static Optional<Passage> under(Row row, Cell cell) {
        return row.cells().stream()
                .filter(each -> Math.abs(each.left() - cell.left()) < UNDER
                        || (each.left() < cell.right() && each.right() > cell.left()))
                .findFirst()
                .map(each -> Passage.of(row.page(), each));
    }

    private static void list(Passage passage, Readings readings) {
        Matcher one = ONE_ESTABLISHMENT.matcher(passage.text());
        while (one.lookingAt()) {
            readings.text(
                    LabelKind.ESTABLISHMENT,
                    one.group("number").replaceAll("\\s", "").toUpperCase(Locale.ROOT),
                    passage.quote(one.start("number"), one.end("number")));
            one.region(one.end(), passage.text().length());
        }
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
}
