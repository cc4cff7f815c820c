package plumbrow.app.book;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The words of a fixed list as they stand in a book: the constant's name in small letters, blanks between words. */
final class Words {
    private Words() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static <E extends Enum<E>> Set<E> read(Class<E> list, List<String> words) {
        return words.stream().map(word -> read(list, word)).collect(Collectors.toSet());
    }

    static <E extends Enum<E>> E read(Class<E> list, String word) {
        for (E constant : list.getEnumConstants()) {
            if (of(constant).equals(word)) {
                return constant;
            }
        }
        throw new BookException("The book holds '" + word + "' where a word for "
                + list.getSimpleName().toLowerCase(Locale.ROOT) + " should stand.");
    }
}
