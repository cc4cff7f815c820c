package plumbrow.documents.label.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.grammar.CropWords;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.text.Column;
import plumbrow.documents.label.text.Grid;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** How long other crops must wait on treated ground. */
final class RotationPart implements Part {
    private static final Pattern ANY_TIME =
            Pattern.compile("(?i)\\b(?:any ?time|immediately|no (?:interval|restrictions?|waiting)|none)\\b");
    private static final Pattern PLANT =
            Pattern.compile("(?i)\\b(?:re-?)?plant(?:ed|ing)?\\b|\\brotat|\\bsow(?:n|ing)?\\b|\\bseed(?:ed|ing)\\b");
    private static final Pattern ALL_OTHER = Pattern.compile(
            "(?i)\\b(?:all|any) other (?:rotational )?crops?\\b|\\bother crops\\b|\\bcrops not listed(?: above)?|\\ball crops\\b");
    private static final Pattern CONDITION = Pattern.compile(
            "(?i)\\b(?:if|provided|where|when|following|after a|and a|plus a|unless)\\b[^.;]{3,90}|\\(?(?:field )?bioassay[^.;]{0,60}|\\bpH\\b[^.;,]{2,40}");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Grid grid : label.grids()) {
            if (grid.topic() == Topic.ROTATION || grid.column(Column.PLANT_BACK) >= 0) {
                grid.records().forEach(record -> row(grid, record, readings));
            }
        }
        for (Sentence sentence : label.sentences()) {
            if (sentence.topic() == Topic.ROTATION) {
                sentence(sentence, readings);
            }
        }
    }

    private static void row(Grid grid, List<Passage> record, Readings readings) {
        int crop = Math.max(0, grid.column(Column.CROP));
        int time = grid.column(Column.PLANT_BACK);
        for (int i = 0; i < record.size() && time < 0; i++) {
            time = i != crop && grid.columns().get(i).isValue() ? i : -1;
        }
        if (time < 0 || record.get(crop).isEmpty() || record.get(time).isEmpty()) {
            return;
        }
        String name = record.get(crop).text().replaceAll("\\s+", " ").replaceAll("[*†‡:]+$", "");
        String words = record.get(time).text().replaceAll("\\s+", " ").replaceAll("[*†‡]+$", "");
        String head = grid.heads().get(time).toLowerCase(Locale.ROOT);
        String unit = head.contains("day")
                ? " days"
                : head.contains("year") ? " years" : head.contains("month") ? " months" : "";
        String full = words.matches("\\d{1,3}(?:\\.\\d)?") ? words + unit : words;
        Passage.Builder all = new Passage.Builder();
        record.forEach(all::cell);
        StringBuilder condition = new StringBuilder();
        for (int i = 0; i < record.size(); i++) {
            if (i != crop && i != time && grid.columns().get(i) == Column.OTHER) {
                condition
                        .append(condition.isEmpty() ? "" : "; ")
                        .append(record.get(i).text().replaceAll("\\s+", " "));
            }
        }
        state(name, full, condition.toString(), all.build().quote(), readings);
    }

    private static void sentence(Sentence sentence, Readings readings) {
        String text = sentence.text();
        boolean pair = text.matches("(?s)[^:.]{3,90}(?:[:\\t]|\\s[-–—])\\s.*");
        if (!pair && !PLANT.matcher(text).find()) {
            return;
        }
        Matcher other = ALL_OTHER.matcher(text);
        Optional<String> crop = other.find() ? Optional.of(other.group()) : CropWords.in(text);
        if (pair && crop.isPresent()) {
            String lead = text.split("[:\\t]|\\s[-–—]\\s", 2)[0].strip();
            crop = CropWords.in(lead).isPresent() || ALL_OTHER.matcher(lead).find() ? Optional.of(lead) : crop;
        }
        if (crop.isEmpty()) {
            return;
        }
        Matcher condition = CONDITION.matcher(text);
        state(crop.get(), text, condition.find() ? condition.group().strip() : "", sentence.quote(), readings);
    }

    private static void state(String crop, String words, String condition, Quote quote, Readings readings) {
        List<MeasureText> times = MeasureText.all(words, Measure.TIME);
        if (times.isEmpty()) {
            if (ANY_TIME.matcher(words).find()) {
                Amount none = new Amount(Qualifier.EXACTLY, 0, 0, "d", Amount.Conditions.NONE);
                readings.state(LabelKind.PLANT_BACK, new LabelContent.Interval(crop, none, condition), quote);
            }
            return;
        }
        MeasureText time = times.get(0);
        boolean several =
                times.stream().map(each -> each.amount().words()).distinct().count() > 1;
        if (several || !time.doubt().isEmpty() || time.amount().qualifier() == Qualifier.RANGE) {
            readings.unclear(
                    LabelKind.PLANT_BACK,
                    time.doubt().isEmpty() ? "more than one time stands for " + crop : time.doubt(),
                    quote);
            return;
        }
        readings.state(
                LabelKind.PLANT_BACK,
                new LabelContent.Interval(crop, MeasureText.as(Qualifier.EXACTLY, time.amount()), condition),
                quote);
    }
}
