package plumbrow.documents.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.documents.workbook.form.Objections;

/** Collects faults up to a number that a person could still work through, each once, and counts the rest. */
final class FaultList implements Objections {
    static final int MOST = 500;

    private final String file;
    private final Set<Fault> faults = new LinkedHashSet<>();
    private int more;

    FaultList(String file) {
        this.file = file;
    }

    @Override
    public void at(String place, int row, String column, String found, String expected) {
        Fault fault = new Fault(place, row, column, found, expected);
        if (faults.size() < MOST) {
            faults.add(fault);
        } else if (!faults.contains(fault)) {
            more++;
        }
    }

    /** Sheets in the order in which they were looked at, rows from the top. */
    private List<Fault> inReadingOrder() {
        Map<String, List<Fault>> bySheet =
                faults.stream().collect(Collectors.groupingBy(Fault::sheet, LinkedHashMap::new, Collectors.toList()));
        List<Fault> ordered = new ArrayList<>();
        bySheet.values().forEach(sheet -> {
            sheet.sort(Comparator.comparingInt(Fault::row));
            ordered.addAll(sheet);
        });
        return ordered;
    }

    void throwIfAny() {
        if (!faults.isEmpty()) {
            List<Fault> all = inReadingOrder();
            if (more > 0) {
                all.add(new Fault(file, 0, "", more + " more faults", "these " + MOST + " to be put right first"));
            }
            throw new WorkbookFaults(all, more);
        }
    }
}
