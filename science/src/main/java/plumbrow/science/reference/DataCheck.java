package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import plumbrow.science.figure.Status;

/**
 * Looks through reference data: the files are the reviewed ones; columns, CAS digits, units and numbers are possible; every
 * row names a source, and a verified one a place; no row stands twice; one source does not say two things of one.
 */
public final class DataCheck {
    private DataCheck() {}

    /** The sets that come with Plumbrow. */
    public static DataReport packed() {
        return of(Packed::text, ReferenceSet.values());
    }

    /** Some sets, with the text of each file, the checksums among them, given by name. */
    static DataReport of(Function<String, String> files, ReferenceSet... sets) {
        List<DataReport.SetCount> counts = new ArrayList<>();
        List<DataReport.Contested> contested = new ArrayList<>();
        List<Trouble> troubles = new ArrayList<>();
        Map<String, String> sums = Checksums.read(files.apply(Checksums.FILE));
        Checksums.check(sums, Sources.FILE, files.apply(Sources.FILE), troubles);
        Sources.read(files.apply(Sources.FILE), troubles);
        for (ReferenceSet set : sets) {
            String text = files.apply(set.file());
            Checksums.check(sums, set.file(), text, troubles);
            look(set, set.title(), set.file(), text, counts, contested, troubles);
        }
        return report(counts, contested, troubles);
    }

    /** An adviser's own guide in the columns of the efficacy set. */
    public static DataReport guide(String name, String csv) {
        List<DataReport.SetCount> counts = new ArrayList<>();
        List<DataReport.Contested> contested = new ArrayList<>();
        List<Trouble> troubles = new ArrayList<>();
        look(ReferenceSet.EFFICACY, "own guide", name, csv, counts, contested, troubles);
        return report(counts, contested, troubles);
    }

    private static DataReport report(
            List<DataReport.SetCount> counts, List<DataReport.Contested> contested, List<Trouble> troubles) {
        return new DataReport(List.copyOf(counts), List.copyOf(contested), List.copyOf(troubles));
    }

    private static void look(
            ReferenceSet set,
            String title,
            String file,
            String text,
            List<DataReport.SetCount> counts,
            List<DataReport.Contested> contested,
            List<Trouble> troubles) {
        List<Entry> entries = set.read(file, text, troubles);
        Map<Status, Integer> byStatus = new EnumMap<>(Status.class);
        entries.forEach(entry -> byStatus.merge(entry.backing().status(), 1, Integer::sum));
        int reserved = (int) entries.stream()
                .filter(entry -> entry.backing().status() == Status.VERIFIED
                        && !entry.backing().sure())
                .count();
        counts.add(new DataReport.SetCount(title, file, entries.size(), byStatus, reserved));
        Map<String, List<Entry>> byThing = new LinkedHashMap<>();
        entries.forEach(entry -> byThing.computeIfAbsent(entry.about(), about -> new ArrayList<>())
                .add(entry));
        byThing.forEach((about, rows) -> compare(file, about, rows, contested, troubles));
        if (set == ReferenceSet.SUBSTANCES) {
            names(file, entries, troubles);
        }
    }

    private static void compare(
            String file, String about, List<Entry> rows, List<DataReport.Contested> contested, List<Trouble> troubles) {
        for (int i = 1; i < rows.size(); i++) {
            Entry later = rows.get(i);
            for (Entry earlier : rows.subList(0, i)) {
                if (earlier.origin().source().equals(later.origin().source())) {
                    troubles.add(new Trouble(
                            file,
                            later.row(),
                            "",
                            later.says() + " for " + about,
                            earlier.says().equals(later.says())
                                    ? "the row once; it stands in row " + earlier.row()
                                    : "what row " + earlier.row() + " says from the same source, " + earlier.says()
                                            + ", or other conditions"));
                    break;
                }
            }
        }
        List<String> values = rows.stream().map(Entry::says).distinct().toList();
        if (values.size() > 1) {
            contested.add(new DataReport.Contested(
                    file, about, values, rows.stream().map(Entry::row).toList()));
        }
    }

    /** One number, one name, one kind. */
    private static void names(String file, List<Entry> entries, List<Trouble> troubles) {
        Map<String, String> byCas = new LinkedHashMap<>();
        Map<String, String> byName = new LinkedHashMap<>();
        for (Entry entry : entries) {
            SubstanceFact row = (SubstanceFact) entry;
            String named = byCas.computeIfAbsent(row.cas(), cas -> row.name() + ", " + row.kind());
            if (!named.equals(row.name() + ", " + row.kind())) {
                troubles.add(new Trouble(
                        file, row.row(), "common_name", row.name() + ", " + row.kind(), named + " for " + row.cas()));
            }
            String numbered = byName.computeIfAbsent(row.name(), name -> row.cas());
            if (!numbered.equals(row.cas())) {
                troubles.add(new Trouble(file, row.row(), "cas", row.cas(), numbered + " for " + row.name()));
            }
        }
    }
}
