package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.grammar.RateText;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.sheet.Amount.Qualifier;

/** The most that may be put out: in a season, at once, and how many times. */
final class MostPart implements Part {
    static final Pattern LIMIT = Near.words(
            "\\bnot (?:apply |use |make )?(?:a total of )?(?:more than|exceed)|\\bexceed|\\bmax(?:imum|\\.)|\\bno more than\\b|\\bnot to exceed\\b|\\bup to a total\\b|\\btotal of all applications|\\bcombined total\\b");
    private static final Pattern TIME = Near.words(
            "(?:per|/|in (?:a|any|one)|each|within a|during (?:a|the)|for the)\\s?(?:\\w+ ){0,2}?(?<per>year|season|12[- ]month)|\\b(?<annual>annual(?:ly)?|yearly|seasonal)\\b|\\b(?<cumulative>in a (?:crop )?(?:year|season))");
    private static final Pattern SINGLE = Near.words(
            "(?:per|/|single|each|(?:any )?one|individual)\\s?(?:\\w+ ){0,1}?application|\\bat one time\\b|per treatment");
    private static final Pattern COUNT = Pattern.compile(
            "(?i)(?:(?:more than|maximum (?:number )?of|no more than|at most|maximum number of applications[^\\d:]{0,30}:?|exceed|up to|limit(?:ed)? to)\\s*)(?<n>\\d{1,2}|one|two|three|four|five|six)(?:\\s?\\((?<d>\\d{1,2})\\))?\\s*(?:(?:(?:broadcast|foliar|sequential|total|such|ground|aerial|post-?emergence|pre-?emergence|separate)\\s+){0,2}applications?\\b|times\\b|\\.?\\s*$|per\\b)");
    private static final List<String> NUMBERS = List.of("zero", "one", "two", "three", "four", "five", "six");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (!Near.has(sentence, LIMIT)) {
                continue;
            }
            most(sentence, readings);
            count(sentence, readings);
        }
    }

    private static void most(Sentence sentence, Readings readings) {
        String text = sentence.text();
        List<RateText> rates = RateText.all(text).stream()
                .map(rate -> rate.ofProduct(readings.productName()))
                .filter(rate -> !Stuff.isOther(rate))
                .toList();
        for (int i = 0; i < rates.size(); i++) {
            int next = i + 1 < rates.size() ? rates.get(i + 1).from() : text.length();
            String behind = per(
                    text.substring(rates.get(i).from(), Math.max(rates.get(i).to(), next)));
            state(sentence, rates.get(i), behind.isEmpty() ? per(text) : behind, readings);
        }
    }

    private static String per(String part) {
        boolean single = SINGLE.matcher(part).find();
        Matcher time = TIME.matcher(part);
        boolean timed = time.find();
        if (single == timed) {
            return single ? "both" : "";
        }
        if (single) {
            return "application";
        }
        return season(time.group().toLowerCase(Locale.ROOT));
    }

    private static String season(String words) {
        return words.contains("season") ? "season" : "year";
    }

    private static void state(Sentence sentence, RateText rate, String per, Readings readings) {
        LabelKind kind = per.equals("application") ? LabelKind.SINGLE_MAX : LabelKind.SEASON_MAX;
        if (per.isEmpty() || per.equals("both") || !rate.doubt().isEmpty()) {
            String why = rate.doubt().isEmpty() ? "it doesn't say whether at once or in a season" : rate.doubt();
            readings.unclear(kind, why, sentence.quote());
            return;
        }
        readings.state(
                kind,
                new LabelContent.Most(
                        Sites.of(sentence, rate),
                        MeasureText.as(Qualifier.AT_MOST, rate.amount()),
                        rate.of(),
                        rate.of() == Of.PRODUCT ? "" : rate.stuff(),
                        per),
                sentence.quote());
    }

    private static void count(Sentence sentence, Readings readings) {
        Matcher count = COUNT.matcher(sentence.text());
        List<String> seen = new ArrayList<>();
        while (count.find()) {
            String number = count.group("n").toLowerCase(Locale.ROOT);
            int most = NUMBERS.contains(number) ? NUMBERS.indexOf(number) : Integer.parseInt(number);
            boolean agrees = count.group("d") == null || Integer.parseInt(count.group("d")) == most;
            Matcher time = TIME.matcher(sentence.text());
            boolean counted = sentence.text().matches("(?is).*\\b(?:applications?|times)\\b.*");
            if (!counted || seen.contains(number) || most == 0) {
                continue;
            }
            seen.add(number);
            if (!agrees) {
                readings.unclear(LabelKind.APPLICATIONS, "words and digits differ", sentence.quote());
                continue;
            }
            String per = time.find() ? season(time.group().toLowerCase(Locale.ROOT)) : "season";
            readings.state(
                    LabelKind.APPLICATIONS, new LabelContent.Count(Near.crop(sentence), most, per), sentence.quote());
        }
    }
}
