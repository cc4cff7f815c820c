package plumbrow.documents.workbook.form;

/**
 * The most that a label allows of something that may go as high as it likes where the label says nothing of it. "none"
 * says that the label was read and sets no limit; it is kept as {@code free}, higher than any field will see.
 *
 * @param free the number that stands for none
 */
public record CeilingKind(double free) implements Kind<Double> {
    private static final String NONE = "none";

    private NumberKind number() {
        return NumberKind.between(0, free);
    }

    @Override
    public String words() {
        return number().words() + ", or none where the label sets no limit";
    }

    @Override
    public Double read(Cell cell) throws Misread {
        if (cell.found().strip().equalsIgnoreCase(NONE)) {
            return free;
        }
        double value = Numeric.read(cell, words());
        if (!number().holds(value)) {
            throw new Misread(words());
        }
        return value;
    }

    @Override
    public Cell show(Double value) {
        return value == free ? new Cell.Text(NONE) : Cell.Numeral.of(value);
    }

    @Override
    public Storage<Double> storage() {
        return Storage.NUMBER;
    }
}
