package plumbrow.documents.workbook.form;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * One of a few words, compared ignoring case and extra blanks.
 *
 * @param values what the words stand for
 * @param word the word for each
 * @param storage how a database holds one
 */
public record WordKind<T>(List<T> values, Function<T, String> word, Storage<T> storage) implements Kind<T> {
    public static <E extends Enum<E>> WordKind<E> of(Class<E> type, Function<E, String> word) {
        return new WordKind<>(List.of(type.getEnumConstants()), word, Storage.word(type));
    }

    public static WordKind<String> of(List<String> words) {
        return new WordKind<>(words, Function.identity(), Storage.TEXT);
    }

    /** yes or no; a spreadsheet's TRUE and FALSE are read as yes and no. */
    public static WordKind<Boolean> yesNo() {
        return new WordKind<>(List.of(true, false), yes -> yes ? "yes" : "no", Storage.TRUTH);
    }

    @Override
    public List<String> choices() {
        return values.stream().map(word).toList();
    }

    @Override
    public String words() {
        List<String> choices = choices();
        return choices.size() > 31
                ? "one of the " + choices.size() + " words of the list, such as " + choices.get(0)
                : choices.size() == 1 ? choices.get(0) : "one of: " + String.join(", ", choices);
    }

    @Override
    public T read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        String found = cell instanceof Cell.Truth truth ? (truth.yes() ? "yes" : "no") : cell.found();
        return values.stream()
                .filter(value -> same(word.apply(value), found))
                .findFirst()
                .orElseThrow(() -> new Misread(words()));
    }

    @Override
    public Cell show(T value) {
        return new Cell.Text(word.apply(value));
    }

    private static boolean same(String one, String other) {
        return tidy(one).equals(tidy(other));
    }

    private static String tidy(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
