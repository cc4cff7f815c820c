package plumbrow.documents.paper;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Whether the text that a page carries is language: some files carry letters that only look right, others what a machine made of
 * a picture long ago, others two lines woven into one.
 *
 * Running text of the languages that papers are written in has its little words (the, of, de, und), 20 to 50 in a hundred, tables
 * some; words nearly all have a vowel. The limits are ours: of 43 sheets and 22 labels of real makers none is taken for garbled.
 */
final class TextLayer {
    private static final int FEWEST_WORDS = 40;
    private static final int MANY_WORDS = 150;
    private static final double SIGNS = .2;
    private static final double LITTLE = .015;
    private static final double HARDLY_ANY = .005;
    private static final double VOWELS = .85;
    private static final Set<String> LITTLE_WORDS = Set.copyOf(List.of(
            ("the of and to in for is or not with by on be if from this are at no as may any all do use have has an it that which"
                            + " product data section information skin eye eyes water de la el en los las del con por para no se al"
                            + " et le les des du un une dans pour sur avec ne pas der die das und von zu mit nicht bei ist o e da do"
                            + " em os il di che per van het een voor niet")
                    .split(" ")));

    private TextLayer() {}

    static boolean isLanguage(List<Row> rows) {
        List<String> words = rows.stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(cell -> cell.words().stream())
                .map(Word::text)
                .toList();
        long letters = words.stream().mapToLong(String::length).sum();
        long strange = words.stream()
                .flatMapToInt(String::chars)
                .filter(TextLayer::strange)
                .count();
        if (letters > FEWEST_WORDS && strange > SIGNS * letters) {
            return false;
        }
        List<String> plain = words.stream()
                .map(word -> word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", ""))
                .filter(word -> word.length() > 1)
                .toList();
        if (plain.size() < FEWEST_WORDS) {
            return true;
        }
        double little = share(plain, LITTLE_WORDS::contains);
        double voiced = share(
                plain.stream().filter(word -> word.length() > 2).toList(),
                word -> word.matches(".*[aeiouyáéíóúäöüàèâêîôûãõ].*"));
        return !(little < LITTLE && voiced < VOWELS) && !(little < HARDLY_ANY && plain.size() > MANY_WORDS);
    }

    private static boolean strange(int letter) {
        int kind = Character.getType(letter);
        return letter == '\ufffd'
                || kind == Character.PRIVATE_USE
                || kind == Character.UNASSIGNED
                || (kind == Character.CONTROL && !Character.isWhitespace(letter));
    }

    private static double share(List<String> words, java.util.function.Predicate<String> which) {
        return words.isEmpty() ? 1 : (double) words.stream().filter(which).count() / words.size();
    }
}
