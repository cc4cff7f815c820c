package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.reading.LabelReader;

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

    final Map<String, Count> byLayout = new LinkedHashMap<>();
    final Map<LabelKind, Count> byKind = new EnumMap<>(LabelKind.class);
    final Count all = new Count();
    final List<String> slips = new ArrayList<>();
    int labels;
    int pages;

    /** Reads a label and compares. */
    void add(MadeLabel made) {
        LabelPaper label = LabelReader.read(made.file(), made.fileName());
        labels++;
        pages += label.pages();
        List<Fact> read = new ArrayList<>(Fact.of(label));
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
    }

    private void count(MadeLabel made, Fact fact, int right, int wrong, int missed) {
        Count layout = byLayout.computeIfAbsent(made.layout(), name -> new Count());
        Count kind = byKind.computeIfAbsent(fact.kind(), each -> new Count());
        for (Count count : List.of(all, layout, kind)) {
            count.right += right;
            count.wrong += wrong;
            count.missed += missed;
        }
    }
}
