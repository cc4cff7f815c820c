package plumbrow.documents.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A workbook that cannot be read or written, with everything that is wrong with it. Its message is one line each; one fault that
 * many rows have is one line with its count, and such a line comes first, since it is mostly one cause.
 */
public final class WorkbookFaults extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Up to so many rows with one fault are told row by row. */
    private static final int TOLD_ROW_BY_ROW = 3;

    @SuppressWarnings("serial") // Never sent anywhere as bytes.
    private final List<Fault> faults;

    @SuppressWarnings("serial") // Never sent anywhere as bytes.
    private final List<String> lines;

    public WorkbookFaults(List<Fault> faults) {
        this(faults, 0);
    }

    /**
     * @param notListed faults more, of which the last of the list tells
     */
    WorkbookFaults(List<Fault> faults, int notListed) {
        super(String.join(System.lineSeparator(), lines(faults, notListed)));
        this.faults = List.copyOf(faults);
        this.lines = lines(faults, notListed);
    }

    private record Alike(String column, String found, String expected) {
        static Alike of(Fault fault) {
            return new Alike(fault.column(), fault.found(), fault.expected());
        }
    }

    private static List<String> lines(List<Fault> faults, int notListed) {
        int listed = notListed > 0 ? faults.size() - 1 : faults.size();
        Map<Alike, List<Fault>> alike = new LinkedHashMap<>();
        faults.subList(0, listed)
                .forEach(fault -> alike.computeIfAbsent(Alike.of(fault), first -> new ArrayList<>())
                        .add(fault));
        List<String> lines = new ArrayList<>();
        alike.values().stream()
                .filter(same -> same.size() > TOLD_ROW_BY_ROW)
                .sorted(Comparator.comparingInt((List<Fault> same) -> same.size())
                        .reversed())
                .forEach(same -> lines.add(told(same)));
        faults.subList(0, listed).stream()
                .filter(fault -> alike.getOrDefault(Alike.of(fault), List.of()).size() <= TOLD_ROW_BY_ROW)
                .forEach(fault -> lines.add(fault.sentence()));
        faults.subList(listed, faults.size()).forEach(fault -> lines.add(fault.sentence()));
        return List.copyOf(lines);
    }

    /** One fault of many rows, with the first of them, how many more, and in which sheets. */
    private static String told(List<Fault> same) {
        Map<String, Integer> sheets = new LinkedHashMap<>();
        same.forEach(fault -> sheets.merge(fault.sheet(), 1, Integer::sum));
        String where = sheets.size() == 1
                ? "up to row " + same.get(same.size() - 1).row()
                : "in "
                        + String.join(
                                ", ",
                                sheets.entrySet().stream()
                                        .map(sheet -> sheet.getKey() + " " + sheet.getValue())
                                        .toList());
        return same.get(0).sentence() + " The same in " + (same.size() - 1) + " more rows, " + where + ".";
    }

    /** What is wrong, in the order of the sheets and rows; at least one. */
    public List<Fault> faults() {
        return faults;
    }

    /** What is wrong as a person is told it: one fault of many rows once, with its count, and first. */
    public List<String> lines() {
        return lines;
    }
}
