package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;

/** Counts of what was read right, read wrong and missed. */
final class Score {
    /** Right, read though not there or otherwise, and there though not read. */
    static final class Count {
        int right;
        int wrong;
        int missed;

        double precision() {
            return right + wrong == 0 ? 1 : (double) right / (right + wrong);
        }

        double recall() {
            return right + missed == 0 ? 1 : (double) right / (right + missed);
        }
    }

    final Map<String, Count> byHouse = new LinkedHashMap<>();
    final Map<ValueKind, Count> byKind = new EnumMap<>(ValueKind.class);
    final Map<String, Count> sectionsByHouse = new LinkedHashMap<>();
    final Count all = new Count();
    final Count sections = new Count();
    final List<String> slips = new ArrayList<>();
    int sheets;
    int pages;

    /** Reads a sheet and compares. */
    void add(MadeSheet made) {
        SafetySheet sheet = SheetReader.read(made.file(), made.fileName());
        sheets++;
        pages += sheet.pages();
        List<Fact> read = new ArrayList<>(Fact.of(sheet));
        for (Fact fact : made.truth()) {
            boolean found = read.remove(fact);
            count(made, fact, found ? 1 : 0, 0, found ? 0 : 1);
            if (!found) {
                slips.add(made.fileName() + " missed " + fact);
            }
        }
        for (Fact fact : read) {
            count(made, fact, 0, 1, 0);
            slips.add(made.fileName() + " wrong  " + fact);
        }
        for (SheetSection section : SheetSection.values()) {
            boolean found = sheet.sections().stream().anyMatch(each -> each.section() == section);
            Count house = sectionsByHouse.computeIfAbsent(made.house(), name -> new Count());
            for (Count count : List.of(sections, house)) {
                count.right += found ? 1 : 0;
                count.missed += found ? 0 : 1;
            }
            if (!found) {
                slips.add(made.fileName() + " missed section " + section);
            }
        }
    }

    private void count(MadeSheet made, Fact fact, int right, int wrong, int missed) {
        Count house = byHouse.computeIfAbsent(made.house(), name -> new Count());
        Count kind = byKind.computeIfAbsent(fact.kind(), each -> new Count());
        for (Count count : List.of(all, house, kind)) {
            count.right += right;
            count.wrong += wrong;
            count.missed += missed;
        }
    }
}
