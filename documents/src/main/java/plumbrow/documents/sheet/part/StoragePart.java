package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Family;

/**
 * At what temperature the product may be stored, from the sentences of its section. The words decide which way a number bounds:
 * "do not store above 40 °C" is at most 40 °C, and a temperature that no such words go with is not taken for a bound.
 */
final class StoragePart implements Part {
    private static final Pattern STORED = Pattern.compile("(?:stor|keep|kept|maintain|expos|temperature|avoid)[a-z]*");
    private static final Pattern OTHER_MATTER = Pattern.compile(
            "auto-?ignit|flash|decompos|melt|heating above|react|can (?:cause|result)|may (?:cause|result|burst)|frost");
    private static final Pattern FORBIDDEN_ABOVE = Pattern.compile(
            ".*\\b(?:not|never|avoid)\\b.{0,90}?(?:above|over|exceed(?:s|ing)?|higher than|greater than|in excess of|more than)\\W*");
    private static final Pattern NO_MORE = Pattern.compile(
            ".*(?:\\b(?:no|not) (?:more|higher|greater) than|maximum(?: storage)?(?: temperature)?(?: of)?:?|\\bup to|at or below|do not exceed)\\W*");
    private static final Pattern FORBIDDEN_BELOW =
            Pattern.compile(".*\\b(?:not|never|avoid)\\b.{0,60}?(?:below|under|less than|lower than)\\W*");
    private static final Pattern BELOW = Pattern.compile(".*(?:below|under|less than|cooler than|lower than)\\W*");
    private static final Pattern ABOVE =
            Pattern.compile(".*(?:stor|keep|kept|maintain)[a-z]*(?: [a-z]+){0,4} (?:above|over|greater than)\\W*");
    private static final Pattern BETWEEN = Pattern.compile(
            ".*(?:between|stor(?:e|ed|age)(?: at| temperatures?| between| from)*|temperatures?(?: between| range| of| from)*|keep at|from)\\W*");
    private static final Pattern LABELLED = Pattern.compile(".*storage temperatures?\\W*");
    private static final Pattern AGAIN = Pattern.compile("\\s*[(\\[/]?\\s*=?\\s*");
    private static final int CONTEXT = 140;

    @Override
    public void read(SheetText sheet, Readings readings) {
        Passage text = sheet.whole(SheetSection.HANDLING);
        List<AmountText> all = new ArrayList<>();
        AmountText last = null;
        for (AmountText amount : AmountText.all(text.text(), Family.TEMPERATURE, sheet.style())) {
            boolean again = last != null
                    && !amount.amount().unit().equals(last.amount().unit())
                    && AGAIN.matcher(text.text().substring(last.to(), Math.max(last.to(), amount.from())))
                            .matches();
            if (!again) {
                all.add(amount);
            }
            last = amount;
        }
        for (AmountText amount : all) {
            Amount bound = bound(text.text(), amount);
            if (bound != null && amount.doubt().isEmpty()) {
                readings.state(
                        ValueKind.STORAGE_TEMPERATURE,
                        new Content.Measured(bound),
                        text.quote(amount.from(), amount.to()));
            }
        }
    }

    private static @Nullable Amount bound(String text, AmountText found) {
        Amount amount = found.amount();
        int number = found.from();
        while (number < found.to() && !Character.isDigit(text.charAt(number)) && text.charAt(number) != '-') {
            number++;
        }
        int from = Math.max(0, found.from() - CONTEXT);
        String words = sentence(text.substring(from, number).toLowerCase(Locale.ROOT));
        if (!STORED.matcher(words).find() || OTHER_MATTER.matcher(words).find()) {
            return null;
        }
        String plain = words.replaceAll("[<>≤≥=]\\s*$", "");
        if (amount.qualifier() == Qualifier.RANGE) {
            return BETWEEN.matcher(plain).matches() ? amount : null;
        }
        if (LABELLED.matcher(plain).matches()) {
            return amount;
        }
        if (FORBIDDEN_ABOVE.matcher(plain).matches() || NO_MORE.matcher(plain).matches()) {
            return signed(amount, Qualifier.AT_MOST);
        }
        if (FORBIDDEN_BELOW.matcher(plain).matches()) {
            return signed(amount, Qualifier.AT_LEAST);
        }
        if (BELOW.matcher(plain).matches()) {
            return signed(amount, Qualifier.LESS_THAN);
        }
        return ABOVE.matcher(plain).matches() ? signed(amount, Qualifier.MORE_THAN) : null;
    }

    private static String sentence(String words) {
        int end = Math.max(words.lastIndexOf(". "), words.lastIndexOf("\n\n"));
        return Prose.of(end < 0 ? words : words.substring(end + 1));
    }

    private static Amount signed(Amount amount, Qualifier qualifier) {
        return new Amount(qualifier, amount.low(), amount.high(), amount.unit(), amount.conditions());
    }
}
