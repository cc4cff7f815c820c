package plumbrow.documents.workbook.form;

import java.time.LocalDate;
import plumbrow.advice.shelf.SpecialLabel;

/** The last day of a label: a date, or "none" where the label was read and prints none. */
public record LastDayKind() implements Kind<LocalDate> {
    private static final String NONE = "none";
    private static final DateKind DAY = new DateKind();

    @Override
    public String words() {
        return DAY.words() + ", or none where the label prints no last day";
    }

    @Override
    public LocalDate read(Cell cell) throws Misread {
        if (cell.found().strip().equalsIgnoreCase(NONE)) {
            return SpecialLabel.NO_LAST_DAY;
        }
        try {
            return DAY.read(cell);
        } catch (Misread fault) {
            throw fault.expected().equals(DAY.words()) ? new Misread(words()) : fault;
        }
    }

    @Override
    public Cell show(LocalDate value) {
        return value.equals(SpecialLabel.NO_LAST_DAY) ? new Cell.Text(NONE) : DAY.show(value);
    }

    @Override
    public Storage<LocalDate> storage() {
        return Storage.DAY;
    }
}
