package plumbrow.documents.workbook.form;

/** A whole number from {@code low} to {@code high}, both allowed. */
public record WholeKind(int low, int high) implements Kind<Integer> {
    @Override
    public String words() {
        return "a whole number from " + low + " to " + high;
    }

    @Override
    public Integer read(Cell cell) throws Misread {
        double value = Numeric.read(cell, words());
        if (value != Math.rint(value) || value < low || value > high) {
            throw new Misread(words());
        }
        return (int) value;
    }

    @Override
    public Cell show(Integer value) {
        return Cell.Numeral.of(value);
    }

    @Override
    public Storage<Integer> storage() {
        return Storage.WHOLE;
    }
}
