package plumbrow.advice.names;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the name a person most likely meant by a name that nothing bears. */
public final class Near {
    private static final int MOST_SLIPS = 2;

    private Near() {}

    /** The nearest of the names, if at most two letters part it from what is written. */
    public static Optional<String> to(String written, Collection<String> names) {
        return to(written, names, tidy(written).length() < 5 ? 1 : MOST_SLIPS);
    }

    /**
     * The nearest of the names, if at most {@code allowed} letters part it from what is written. Blanks, hyphens and case
     * do not count; names whose digits differ are never near, since Lot 1 is not a slip for Lot 2.
     */
    public static Optional<String> to(String written, Collection<String> names, int allowed) {
        String tidy = tidy(written);
        return names.stream()
                .filter(name -> digits(name).equals(digits(written)) && slips(tidy, tidy(name)) <= allowed)
                .min(Comparator.comparingInt((String name) -> slips(tidy, tidy(name)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /**
     * The name that is wider or narrower than what is written by whole words, as "rootworm" is wider than "western corn
     * rootworm": the one with the fewest words more or less.
     */
    public static Optional<String> kin(String written, Collection<String> names) {
        Set<String> words = words(written);
        return names.stream()
                .filter(name -> digits(name).equals(digits(written)) && akin(words, words(name)))
                .min(Comparator.comparingInt(
                                (String name) -> Math.abs(words(name).size() - words.size()))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The name to suggest: a slip away, else wider or narrower, else the one that shares most of its words. */
    public static Optional<String> best(String written, Collection<String> names) {
        Set<String> words = words(written);
        return to(written, names)
                .or(() -> kin(written, names))
                .or(() -> names.stream()
                        .filter(name -> digits(name).equals(digits(written)) && shared(words, words(name)) > 0)
                        .max(Comparator.comparingInt((String name) -> shared(words, words(name)))
                                .thenComparing(name -> -words(name).size())
                                .thenComparing(Comparator.reverseOrder())));
    }

    /** The tail of a fault that suggests a name; empty where none is like it. */
    public static String suggested(String written, Collection<String> names) {
        return best(written, names).map(near -> "; did you mean " + near + "?").orElse("");
    }

    private static boolean akin(Set<String> one, Set<String> other) {
        return !one.isEmpty() && !other.isEmpty() && (one.containsAll(other) || other.containsAll(one));
    }

    private static int shared(Set<String> one, Set<String> other) {
        Set<String> both = new HashSet<>(one);
        both.retainAll(other);
        return both.size();
    }

    /** The words of a name, each in the singular. */
    private static Set<String> words(String name) {
        Set<String> words = new HashSet<>();
        Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .forEach(word -> words.add(
                        word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                                ? word.substring(0, word.length() - 1)
                                : word));
        return words;
    }

    private static String digits(String name) {
        return name.replaceAll("\\D", "");
    }

    private static String tidy(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
    }

    /** Letters to add, drop or change to make one of the other (Levenshtein distance). */
    private static int slips(String one, String other) {
        if (Math.abs(one.length() - other.length()) > MOST_SLIPS) {
            return MOST_SLIPS + 1;
        }
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int swap = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(swap, 1 + Math.min(row[j - 1], above[j]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
