package plumbrow.documents.shelf;

import java.util.List;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/**
 * What one kind of value was on one revision of a sheet and is on another; what both say is left out.
 *
 * @param before only on the first; empty where nothing was taken away
 * @param after only on the second; empty where nothing was added
 */
public record SheetChange(ValueKind kind, List<Reading.OnPaper> before, List<Reading.OnPaper> after) {
    public SheetChange {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }
}
