package plumbrow.documents.label.part;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Way;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.grammar.RateText;
import plumbrow.documents.label.grammar.WayWords;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Carrier volume, and rain. */
final class SprayPart implements Part {
    private static final Pattern LEAST = Near.words(
            "\\bminimum\\b|\\bat least\\b|\\bmin\\.|\\bnot less than\\b|\\bno less than\\b|\\bor more\\b|less than");
    private static final Pattern GPA = Pattern.compile(
            "(?i)(?<n1>\\d{1,3}(?:\\.\\d)?)(?:\\s?(?:-|–|to)\\s?(?<n2>\\d{1,3}(?:\\.\\d)?))?\\s?(?:GPA|gallons? per acre|gal(?:\\.|lons?)?\\s?/\\s?(?:A|acre)\\b)");
    private static final Pattern VOLUME = Near.words(
            "\\bwater\\b|\\bcarrier\\b|\\bspray (?:volume|solution|mixture)|\\bvolume\\b|\\bGPA\\b|\\bgallonage\\b|\\bspray mix");
    private static final Pattern RAIN = Near.words("\\brain(?:fast|fall)?\\b");
    private static final Pattern AHEAD = Near.words("\\b(?:expected|forecast(?:ed)?|predicted|likely|imminent)\\b");

    /** "a minimum of 10 gallons by ground and 5 gallons by air". */
    private static final Pattern JOINED =
            Pattern.compile("(?i)\\s*(?:(?:by|for|with)\\s(?:\\p{L}+\\s?){1,3})?,?\\s*(?:and|or)\\s+");

    private static final Pattern AVOID = Near.words("\\bavoid\\b");
    private static final Pattern NO_RAIN_AHEAD = Near.words(
            "\\brain(?:fall)? is not (?:predicted|expected|forecast)|\\bno rain(?:fall)? is (?:predicted|expected|forecast)");
    /** What rain does to a spray that has not dried: it must be said, or the hours are about something else, as runoff. */
    private static final Pattern WASHES = Near.words(
            "\\brainfast|\\bwash|\\bre-?treat|\\brepeat|\\badditional application|\\bre-?appl|\\breduc|\\beffective|\\bcontrol\\b|\\bperformance\\b");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            carrier(sentence, readings);
            rain(sentence, readings);
        }
    }

    private static void carrier(Sentence sentence, Readings readings) {
        String text = sentence.text();
        boolean goesOutIn = Stuff.goesOutIn(text);
        if (!Near.has(sentence, VOLUME) && !goesOutIn) {
            return;
        }
        int from = 0;
        Matcher gpa = GPA.matcher(text);
        java.util.List<RateText> volumes = RateText.all(text).stream()
                .filter(rate -> rate.amount().unit().equals("gal/ac"))
                .toList();
        java.util.List<RateText> rates = volumes.stream()
                .filter(rate -> Stuff.isCarrier(rate) || rate.stuff().isBlank())
                .toList();
        if ((goesOutIn && !rates.isEmpty()) || volumes.stream().anyMatch(Stuff::isCarrier)) {
            for (RateText rate : rates) {
                int next = rates.indexOf(rate) + 1 < rates.size()
                        ? rates.get(rates.indexOf(rate) + 1).from()
                        : text.length();
                put(sentence, rate.amount(), from, rate.from(), rate.to(), next, readings);
                from = rate.to();
            }
            return;
        }
        java.util.List<int[]> places = new java.util.ArrayList<>();
        while (gpa.find()) {
            places.add(new int[] {gpa.start(), gpa.end()});
        }
        for (int i = 0; i < places.size(); i++) {
            gpa.find(places.get(i)[0]);
            double low = Double.parseDouble(gpa.group("n1"));
            double high = gpa.group("n2") == null ? low : Double.parseDouble(gpa.group("n2"));
            int next = i + 1 < places.size() ? places.get(i + 1)[0] : text.length();
            if (high >= low) {
                Amount amount = new Amount(
                        high > low ? Qualifier.RANGE : Qualifier.EXACTLY, low, high, "gal/ac", Amount.Conditions.NONE);
                put(sentence, amount, from, places.get(i)[0], places.get(i)[1], next, readings);
                from = places.get(i)[1];
            }
        }
    }

    private static void put(
            Sentence sentence, Amount amount, int before, int from, int to, int next, Readings readings) {
        String text = sentence.text();
        boolean joined =
                before > 0 && JOINED.matcher(text.substring(before, from)).matches();
        boolean least = LEAST.matcher(text.substring(joined ? 0 : before, to)).find()
                || text.substring(to, next).toLowerCase(Locale.ROOT).matches("^[^,;]{0,25}(?:minimum|or more).*")
                || LEAST.matcher(sentence.under()).find();
        Way behind = WayWords.in(text.substring(to, next));
        Way ahead = WayWords.in(text.substring(before, from));
        Way way = behind != Way.ANY
                ? behind
                : ahead != Way.ANY
                        ? ahead
                        : WayWords.in(text) != Way.ANY ? WayWords.in(text) : WayWords.in(sentence.under());
        Amount plain = amount.qualifier() == Qualifier.RANGE
                ? amount
                : MeasureText.as(least ? Qualifier.AT_LEAST : Qualifier.EXACTLY, amount);
        readings.state(LabelKind.CARRIER, new LabelContent.Measured(plain, way), sentence.quote());
    }

    private static void rain(Sentence sentence, Readings readings) {
        if (!Near.has(sentence, RAIN)) {
            return;
        }
        MeasureText.all(sentence.text(), Measure.TIME).stream()
                .filter(time -> time.amount().unit().equals("h"))
                .findFirst()
                .ifPresent(time -> {
                    boolean ahead = (Near.has(sentence, AHEAD)
                                    && (Near.has(sentence, Near.DO_NOT) || Near.has(sentence, AVOID)))
                            || Near.has(sentence, NO_RAIN_AHEAD);
                    if (!ahead && !Near.has(sentence, WASHES)) {
                        return;
                    }
                    LabelKind kind = ahead ? LabelKind.RAIN_AHEAD : LabelKind.RAINFAST;
                    if (!time.doubt().isEmpty() || time.amount().qualifier() == Qualifier.RANGE) {
                        readings.unclear(
                                kind, time.doubt().isEmpty() ? "a range of hours" : time.doubt(), sentence.quote());
                        return;
                    }
                    readings.state(
                            kind,
                            new LabelContent.Measured(MeasureText.as(Qualifier.EXACTLY, time.amount()), Way.ANY),
                            sentence.quote());
                });
    }
}
