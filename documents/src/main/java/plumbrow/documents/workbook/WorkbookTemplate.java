package plumbrow.documents.workbook;

import java.nio.file.Path;
import java.util.List;
import plumbrow.documents.workbook.file.Page;
import plumbrow.documents.workbook.file.XlsxPages;
import plumbrow.documents.workbook.sheet.Sheets;

/** An empty workbook to be filled in: every column with its note, drop-downs where few words may stand. */
public final class WorkbookTemplate {
    private WorkbookTemplate() {}

    /**
     * Writes the template as an XLSX file.
     *
     * @throws WorkbookFaults where it cannot be written; nothing is changed then
     */
    public static void write(Path file) {
        List<Page> pages =
                Sheets.ALL.stream().map(sheet -> new Page(sheet, List.of())).toList();
        Placing.file(file, target -> XlsxPages.write(ReadMe.SHEET, ReadMe.lines(), pages, target));
    }
}
