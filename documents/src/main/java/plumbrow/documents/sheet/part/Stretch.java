package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.grammar.NumberStyle;

/**
 * The amounts of a text, each with the stretch of words that belongs to it: from where the last one's words ended to the
 * brackets behind the amount, or to the end of its line where no other amount follows there.
 *
 * @param from where the stretch begins
 * @param to where it ends
 * @param lineFrom where the part of it on the amount's own line begins
 */
record Stretch(AmountText amount, int from, int to, int lineFrom) {
    private static final Pattern BRACKETS =
            Pattern.compile("^\\s*(?:air|bw|body ?weight|b\\.w\\.)?\\s*(?:\\([^)]{0,80}\\)|\\[[^\\]]{0,80}\\])");
    private static final Pattern PART = Pattern.compile("[;,\\n\\t]|\\.\\s|\\band\\b|/\\s");

    private static final int NEAR = 12;

    /** A size said again in another unit. */
    private static final Pattern AGAIN = Pattern.compile(".*[(\\[]\\s*=?\\s*$|.*\\s[/=]\\s*$", Pattern.DOTALL);

    static List<Stretch> of(String text, NumberStyle style, Family... families) {
        List<AmountText> amounts = amounts(text, style, families);
        List<Stretch> stretches = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < amounts.size(); i++) {
            AmountText amount = amounts.get(i);
            int next = i + 1 < amounts.size() ? amounts.get(i + 1).from() : text.length();
            int to = end(text, amount.to(), next, i + 1 < amounts.size());
            int line = text.lastIndexOf('\n', amount.from()) + 1;
            stretches.add(new Stretch(amount, from, to, Math.max(from, line)));
            from = to;
        }
        return stretches;
    }

    private static List<AmountText> amounts(String text, NumberStyle style, Family... families) {
        List<AmountText> all = new ArrayList<>();
        for (Family family : families) {
            for (AmountText amount : AmountText.all(text, family, style)) {
                if (all.stream().noneMatch(other -> other.from() < amount.to() && other.to() > amount.from())) {
                    all.add(amount);
                }
            }
        }
        all.sort(Comparator.comparingInt(AmountText::from));
        List<AmountText> kept = new ArrayList<>();
        for (AmountText amount : all) {
            AmountText last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            boolean again = last != null
                    && amount.from() - last.to() < 6
                    && !amount.amount().unit().equals(last.amount().unit())
                    && AGAIN.matcher(text.substring(last.to(), amount.from())).matches();
            if (!again) {
                kept.add(amount);
            }
        }
        return kept;
    }

    private static int end(String text, int after, int next, boolean another) {
        int line = text.indexOf('\n', after);
        if (line >= 0 && line < next) {
            return line;
        }
        if (!another) {
            return next;
        }
        Matcher brackets = BRACKETS.matcher(text.substring(after, next));
        if (brackets.find()) {
            int behind = after + brackets.end();
            Matcher near = PART.matcher(text.substring(behind, next));
            return near.find() && near.start() < NEAR ? behind + near.start() : behind;
        }
        Matcher part = PART.matcher(text.substring(after, next));
        return part.find() ? after + part.start() : after;
    }
}
