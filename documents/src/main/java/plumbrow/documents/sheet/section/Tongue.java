package plumbrow.documents.sheet.section;

import java.util.Locale;
import java.util.Set;

/** Tells by small words whether a line is in another language than English. */
final class Tongue {
    private static final Set<String> ENGLISH = Set.of(
            "the", "of", "and", "in", "to", "with", "for", "is", "if", "or", "be", "as", "at", "from", "by", "on",
            "are", "do", "this", "any", "may", "an", "should");
    private static final Set<String> OTHER = Set.of(
            "el", "la", "los", "las", "del", "en", "con", "para", "por", "una", "y", "si", "se", "al", "es", "le",
            "les", "des", "du", "avec", "pour", "une", "et", "ne", "pas", "sur", "aux", "est", "der", "die", "das",
            "und", "mit", "für", "bei", "nicht", "ist", "auf", "von", "de", "o", "ou", "oder", "dans", "que", "kein",
            "keine");

    private Tongue() {}

    /** Whether a text has more small words of English than of other languages. */
    static boolean english(String text) {
        return balance(text) > 0;
    }

    private static int balance(String text) {
        int balance = 0;
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1)) {
            balance += ENGLISH.contains(word) ? 1 : OTHER.contains(word) ? -1 : 0;
        }
        return balance;
    }

    static boolean other(String line) {
        int english = 0;
        int other = 0;
        for (String word : line.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1)) {
            english += ENGLISH.contains(word) ? 1 : 0;
            other += OTHER.contains(word) ? 1 : 0;
        }
        return other >= 2 && other > 2 * english;
    }
}
