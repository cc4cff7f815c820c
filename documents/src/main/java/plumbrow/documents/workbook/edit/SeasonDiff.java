package plumbrow.documents.workbook.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * What parts one season from another, row by row. The changes, made one after the other, lead from the first to the second, and
 * their inverses from the last back to the first: rows at their places, too.
 */
public final class SeasonDiff {
    private SeasonDiff() {}

    public static List<RowChange> between(Season before, Season after) {
        return between(SeasonTables.of(before), SeasonTables.of(after));
    }

    static List<RowChange> between(SeasonTables before, SeasonTables after) {
        List<RowChange> changes = new ArrayList<>();
        for (Sheet<?> sheet : Sheets.ALL) {
            changes.addAll(between(sheet, before.rows(sheet), after.rows(sheet)));
        }
        return changes;
    }

    private static List<RowChange> between(
            Sheet<?> sheet, List<Map<String, String>> before, List<Map<String, String>> after) {
        if (before.equals(after)) {
            return List.of();
        }
        int[] partner = partners(sheet, before, after);
        pairAlike(partner, before, after);
        boolean[] met = new boolean[after.size()];
        List<RowChange> changes = new ArrayList<>();
        for (int i = before.size() - 1; i >= 0; i--) {
            if (partner[i] < 0) {
                changes.add(RowChange.remove(sheet.name(), i, before.get(i)));
            }
        }
        int kept = 0;
        for (int i = 0; i < before.size(); i++) {
            int j = partner[i];
            if (j >= 0) {
                met[j] = true;
                if (!before.get(i).equals(after.get(j))) {
                    changes.add(RowChange.change(sheet.name(), kept, before.get(i), after.get(j)));
                }
                kept++;
            }
        }
        for (int j = 0; j < after.size(); j++) {
            if (!met[j]) {
                changes.add(new RowChange(sheet.name(), j, null, after.get(j)));
            }
        }
        return changes;
    }

    /** For each row before, the row of the same key after, or -1; rows that passed one another have none. */
    private static int[] partners(Sheet<?> sheet, List<Map<String, String>> before, List<Map<String, String>> after) {
        Map<Object, Deque<Integer>> places = new HashMap<>();
        for (int j = 0; j < after.size(); j++) {
            places.computeIfAbsent(key(sheet, after.get(j)), none -> new ArrayDeque<>())
                    .add(j);
        }
        int[] partner = new int[before.size()];
        Arrays.fill(partner, -1);
        for (int i = 0; i < before.size(); i++) {
            Deque<Integer> there = places.get(key(sheet, before.get(i)));
            Integer j = there == null ? null : there.poll();
            partner[i] = j == null ? -1 : j;
        }
        inOrder(partner);
        return partner;
    }

    private static Object key(Sheet<?> sheet, Map<String, String> row) {
        return sheet.unique().isEmpty()
                ? row
                : sheet.unique().get(0).stream()
                        .map(column -> row.getOrDefault(column.key(), ""))
                        .toList();
    }

    /** Leaves partners only to rows of the longest run that stands in the same order before and after. */
    private static void inOrder(int[] partner) {
        List<Integer> ends = new ArrayList<>();
        int[] previous = new int[partner.length];
        List<Integer> tails = new ArrayList<>();
        for (int i = 0; i < partner.length; i++) {
            if (partner[i] < 0) {
                continue;
            }
            int place = Collections.binarySearch(tails, partner[i]);
            place = place < 0 ? -place - 1 : place;
            previous[i] = place == 0 ? -1 : ends.get(place - 1);
            if (place == tails.size()) {
                tails.add(partner[i]);
                ends.add(i);
            } else {
                tails.set(place, partner[i]);
                ends.set(place, i);
            }
        }
        boolean[] stays = new boolean[partner.length];
        for (int i = ends.isEmpty() ? -1 : ends.get(ends.size() - 1); i >= 0; i = previous[i]) {
            stays[i] = true;
        }
        for (int i = 0; i < partner.length; i++) {
            if (!stays[i]) {
                partner[i] = -1;
            }
        }
    }

    /** A row without a partner and a new one at the same place that say mostly the same are one row under another name. */
    private static void pairAlike(int[] partner, List<Map<String, String>> before, List<Map<String, String>> after) {
        boolean[] met = new boolean[after.size()];
        for (int j : partner) {
            if (j >= 0) {
                met[j] = true;
            }
        }
        int next = 0;
        for (int i = 0; i < partner.length; i++) {
            if (partner[i] >= 0) {
                next = partner[i] + 1;
            } else if (next < after.size() && !met[next] && alike(before.get(i), after.get(next))) {
                partner[i] = next;
                met[next] = true;
                next++;
            }
        }
    }

    private static boolean alike(Map<String, String> one, Map<String, String> other) {
        long same = one.entrySet().stream()
                .filter(cell -> cell.getValue().equals(other.get(cell.getKey())))
                .count();
        return 2 * same >= Math.max(one.size(), other.size());
    }
}
