package plumbrow.documents.workbook;

import java.nio.file.Path;
import java.util.List;
import plumbrow.documents.workbook.file.Page;
import plumbrow.documents.workbook.form.Cell;

/** Refuses to put into a spreadsheet cell what does not fit there: an outline of very many points. */
final class TooLong {
    private static final int CELL_CHARACTERS = 32_767;

    private TooLong() {}

    static void check(List<Page> pages, Path file) {
        FaultList faults = new FaultList(String.valueOf(file.getFileName()));
        for (Page page : pages) {
            for (int row = 0; row < page.rows().size(); row++) {
                List<Cell> cells = page.rows().get(row);
                for (int i = 0; i < cells.size(); i++) {
                    if (cells.get(i).found().length() > CELL_CHARACTERS) {
                        faults.at(
                                page.sheet().name(),
                                row + 2,
                                page.sheet().columns().get(i).key(),
                                cells.get(i).found(),
                                "no more than a spreadsheet cell holds; write this season to a folder instead");
                    }
                }
            }
        }
        faults.throwIfAny();
    }
}
