package plumbrow.documents.workbook;

import java.util.List;
import java.util.stream.Collectors;

/** A workbook that cannot be read or written, with everything that is wrong with it. Its message is one line each. */
public final class WorkbookFaults extends RuntimeException {
    private static final long serialVersionUID = 1;

    @SuppressWarnings("serial") // Never sent anywhere as bytes.
    private final List<Fault> faults;

    public WorkbookFaults(List<Fault> faults) {
        super(faults.stream().map(Fault::sentence).collect(Collectors.joining(System.lineSeparator())));
        this.faults = List.copyOf(faults);
    }

    /** What is wrong, in the order of the sheets and rows; at least one. */
    public List<Fault> faults() {
        return faults;
    }
}
