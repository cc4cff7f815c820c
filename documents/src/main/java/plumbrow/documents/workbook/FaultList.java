package plumbrow.documents.workbook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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

    void throwIfAny() {
        if (!faults.isEmpty()) {
            List<Fault> all = new ArrayList<>(faults);
            if (more > 0) {
                all.add(new Fault(file, 0, "", more + " more faults", "these " + MOST + " to be put right first"));
            }
            throw new WorkbookFaults(all);
        }
    }
}
