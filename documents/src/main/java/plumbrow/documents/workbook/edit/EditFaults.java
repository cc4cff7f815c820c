package plumbrow.documents.workbook.edit;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.documents.workbook.Fault;

/** A change that can't be made, with everything that speaks against it, in the words of a workbook's faults. */
public final class EditFaults extends RuntimeException {
    private static final long serialVersionUID = 1;

    /**
     * One thing that speaks against the change.
     *
     * @param fault what is wrong, with table, row and column
     * @param change which of the changes asked for made that row, counted from 0; -1 for a row that none of them touched
     */
    public record Place(Fault fault, int change) {}

    @SuppressWarnings("serial") // Never sent anywhere as bytes.
    private final List<Place> places;

    EditFaults(List<Place> places) {
        super(places.stream().map(place -> place.fault().sentence()).collect(Collectors.joining(" ")));
        this.places = List.copyOf(places);
    }

    /** What is wrong; at least one. */
    public List<Place> places() {
        return places;
    }

    /** The faults at one cell of the row that a change made. */
    public List<Fault> at(int change, String column) {
        return places.stream()
                .filter(place ->
                        place.change() == change && place.fault().column().equals(column))
                .map(Place::fault)
                .toList();
    }

    /** The faults of rows that no change touched: those that refer to what is to go, above all. */
    public List<Fault> elsewhere() {
        return places.stream()
                .filter(place -> place.change() < 0)
                .map(Place::fault)
                .toList();
    }
}
