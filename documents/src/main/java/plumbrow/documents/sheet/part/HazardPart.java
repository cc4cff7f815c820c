package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.NoDataWords;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Label;

/** Signal words and statements of hazard and precaution; the label's signal word is kept apart from the sheet's. */
final class HazardPart implements Part {
    private static final Pattern SIGNAL = Pattern.compile("(?i)\\W*\\b(danger|warning|caution)\\b.*");
    private static final Pattern SIGNAL_ALONE =
            Pattern.compile("(?i)\\W{0,3}(danger|warning|caution)\\W{0,3}(?:poison\\W{0,3})?");
    private static final Pattern SIGNAL_AHEAD = Pattern.compile("\\W{0,3}(DANGER|WARNING)\\s?[!.]\\s*(?=\\p{Lu})");

    /** What the harm to a part of the body looks like is no statement of the sheet's classification. */
    private static final Pattern BODY_PART =
            Pattern.compile("(?i)\\W*(?:eyes?|skin|inhalation|ingestion|swallowing)(?: contact)?\\W*");

    private static final Pattern QUOTED =
            Pattern.compile("(?i)\\bsignal word[^:]{0,30}[:\\s]\\s*(danger|warning|caution)\\b");
    private static final Pattern NO_SIGNAL =
            Pattern.compile("(?i)\\W*(?:no signal word|none|not required|not applicable).*");
    private static final Pattern CODE = Pattern.compile(
            "\\b(EUH\\s?\\d{3}[A-Z]?|H[2-4]\\d{2}[A-Za-z]{0,2}(?:\\s?\\+\\s?H\\d{3})*|P[1-5]\\d{2}(?:\\s?\\+\\s?P\\d{3})*)\\b");
    private static final Pattern LEAD = Pattern.compile("^[\\s:–—.)\\]-]+");
    /** No official statement is longer. */
    private static final int LONGEST = 160;

    private static final Pattern SENTENCE = Pattern.compile("[^.]+(?:\\.|$)");

    @Override
    public void read(SheetText sheet, Readings readings) {
        signal(sheet, readings);
        quotedSignal(sheet, readings);
        for (Item item : sheet.items(SheetSection.HAZARDS)) {
            coded(item.all(), readings);
        }
        uncoded(sheet, readings);
    }

    private static void signal(SheetText sheet, Readings readings) {
        for (Item item : sheet.items(SheetSection.HAZARDS)) {
            if (item.is(Label.SIGNAL_WORD)) {
                Matcher word = SIGNAL.matcher(item.value().text().replace('\n', ' '));
                if (word.matches()) {
                    keep(word.group(1), item.value().quote(word.start(1), word.end(1)), readings);
                } else if (NO_SIGNAL.matcher(item.value().text()).matches()) {
                    readings.noData(ValueKind.SIGNAL_WORD, item.value().quote());
                }
            }
        }
        if (!readings.has(ValueKind.SIGNAL_WORD)) {
            for (Row row : sheet.rows(SheetSection.HAZARDS)) {
                row.cells().forEach(cell -> alone(Passage.of(row.page(), cell), readings));
            }
        }
    }

    /** The word in a line of its own, or in capitals before what it warns of. */
    private static void alone(Passage cell, Readings readings) {
        Matcher alone = SIGNAL_ALONE.matcher(cell.text());
        Matcher ahead = SIGNAL_AHEAD.matcher(cell.text());
        if (alone.matches()) {
            keep(alone.group(1), cell.quote(), readings);
        } else if (ahead.lookingAt() && !readings.has(ValueKind.SIGNAL_WORD)) {
            keep(ahead.group(1), cell.quote(ahead.start(1), ahead.end(1)), readings);
        }
    }

    private static void keep(String word, Quote quote, Readings readings) {
        String plain = word.toLowerCase(Locale.ROOT);
        boolean ghs = !plain.equals("caution");
        String written = ghs ? Character.toUpperCase(plain.charAt(0)) + plain.substring(1) : "CAUTION";
        readings.state(ghs ? ValueKind.SIGNAL_WORD : ValueKind.LABEL_SIGNAL_WORD, new Content.Text(written), quote);
    }

    private static void quotedSignal(SheetText sheet, Readings readings) {
        for (Row row : sheet.rows(SheetSection.REGULATION)) {
            Passage passage = Passage.of(row);
            Matcher alone = SIGNAL_ALONE.matcher(passage.text());
            Matcher quoted = QUOTED.matcher(passage.text());
            Matcher found = alone.matches() ? alone : quoted.find() ? quoted : null;
            if (found != null) {
                readings.state(
                        ValueKind.LABEL_SIGNAL_WORD,
                        new Content.Text(found.group(1).toUpperCase(Locale.ROOT)),
                        passage.quote(found.start(1), found.end(1)));
            }
        }
    }

    private static void coded(Passage passage, Readings readings) {
        String text = passage.text();
        List<int[]> codes = new ArrayList<>();
        Matcher matcher = CODE.matcher(text);
        while (matcher.find()) {
            codes.add(new int[] {matcher.start(), matcher.end()});
        }
        for (int i = 0; i < codes.size(); i++) {
            int[] at = codes.get(i);
            int before = i == 0 ? 0 : codes.get(i - 1)[1];
            int after = i + 1 < codes.size() ? codes.get(i + 1)[0] : text.length();
            String code = text.substring(at[0], at[1]).replaceAll("\\s", "");
            boolean hazard = !code.startsWith("P");
            String statement = statement(code, text, before, at, after);
            readings.state(
                    hazard ? ValueKind.HAZARD_STATEMENT : ValueKind.PRECAUTION,
                    new Content.Statement(code, statement, true),
                    passage.quote(
                            at[0],
                            at[1]
                                    + Math.max(
                                            0,
                                            statement.isEmpty()
                                                    ? 0
                                                    : Math.min(after - at[1], statement.length() + 2))));
        }
    }

    /** The words after a code, or before it where it stands in brackets behind them; official ones where they are known. */
    private static String statement(String code, String text, int before, int[] at, int after) {
        String follows = LEAD.matcher(text.substring(at[1], after)).replaceFirst("");
        Optional<Integer> end = HazardWords.end(code, follows);
        if (end.isPresent()) {
            return Prose.of(follows.substring(0, end.get()));
        }
        String precedes = text.substring(before, at[0]).replaceAll("[\\s(\\[:;,–—-]+$", "");
        for (int i = Math.max(0, precedes.length() - LONGEST); i < precedes.length(); i++) {
            Optional<Integer> words = HazardWords.end(code, precedes.substring(i));
            if (words.isPresent()) {
                return Prose.of(precedes.substring(i, i + words.get()));
            }
        }
        boolean known = HazardWords.known(code.length() > 4 ? code.substring(0, 4) : code);
        return known ? "" : Prose.of(follows).replaceAll("\\s*[(\\[]$", "");
    }

    private static void uncoded(SheetText sheet, Readings readings) {
        for (Row row : sheet.rows(SheetSection.HAZARDS)) {
            if (!BODY_PART.matcher(row.first().text()).matches()) {
                row.cells().forEach(cell -> official(Passage.of(row.page(), cell), readings));
            }
        }
        for (Item item : sheet.items(SheetSection.HAZARDS)) {
            boolean hazard = item.is(Label.HAZARD_STATEMENTS);
            if ((!hazard && !item.is(Label.PRECAUTIONS))
                    || CODE.matcher(item.value().text()).find()
                    || NoDataWords.end(item.value().text()) >= 0) {
                continue;
            }
            Matcher sentences = SENTENCE.matcher(item.value().text());
            while (sentences.find()) {
                Passage sentence = item.value().part(sentences.start(), sentences.end());
                if (hazard) {
                    official(sentence, readings);
                } else if (!sentence.isEmpty()) {
                    readings.state(
                            ValueKind.PRECAUTION,
                            new Content.Statement("", Prose.of(sentence), true),
                            sentence.quote());
                }
            }
        }
    }

    private static void official(Passage words, Readings readings) {
        String plain = Prose.of(words).replaceAll("[.!]$|^[\\s:•]+", "");
        HazardWords.code(plain)
                .ifPresent(code -> readings.state(
                        ValueKind.HAZARD_STATEMENT, new Content.Statement(code, plain, false), words.quote()));
    }
}
