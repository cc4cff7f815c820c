package plumbrow.documents.workbook.form;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name a person most likely meant by a name that is a slip away from it. */
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
