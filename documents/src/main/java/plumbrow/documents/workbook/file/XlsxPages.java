package plumbrow.documents.workbook.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;

/** Writes pages as a spreadsheet: notes on the column names, drop-downs where few words may stand, a frozen header. */
public final class XlsxPages {
    private static final String PROGRAM = "Plumbrow";
    private static final String PROGRAM_VERSION = "1.0";
    private static final double READ_ME_WIDTH = 110;

    private XlsxPages() {}

    /** Writes a new file: a first sheet with plain text, one line a row, then the pages. */
    public static void write(String readMeName, List<String> readMe, List<Page> pages, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                Workbook workbook = new Workbook(out, PROGRAM, PROGRAM_VERSION)) {
            readMe(workbook.newWorksheet(readMeName), readMe);
            for (Page page : pages) {
                page(workbook.newWorksheet(page.sheet().name()), page);
            }
        }
    }

    private static void readMe(Worksheet sheet, List<String> lines) {
        sheet.width(0, READ_ME_WIDTH);
        for (int row = 0; row < lines.size(); row++) {
            sheet.value(row, 0, lines.get(row));
            sheet.style(row, 0).wrapText(true).verticalAlignment("top").set();
        }
        sheet.style(0, 0).bold().fontSize(16).set();
    }

    private static void page(Worksheet sheet, Page page) throws IOException {
        List<Column<?>> columns = page.sheet().columns();
        for (int i = 0; i < columns.size(); i++) {
            HeaderCell.write(sheet, i, columns.get(i));
        }
        sheet.freezePane(1, 1);
        for (int row = 0; row < page.rows().size(); row++) {
            List<Cell> cells = page.rows().get(row);
            for (int i = 0; i < cells.size(); i++) {
                cell(sheet, row + 1, i, cells.get(i));
            }
        }
        sheet.finish();
    }

    private static void cell(Worksheet sheet, int row, int column, Cell cell) {
        if (cell instanceof Cell.Numeral numeral) {
            sheet.value(row, column, numeral.value());
        } else if (cell instanceof Cell.Day day) {
            sheet.value(row, column, day.date());
            sheet.style(row, column).format(HeaderCell.DATE_FORMAT).set();
        } else if (!(cell instanceof Cell.Blank)) {
            sheet.value(row, column, cell.found());
            sheet.style(row, column).format(HeaderCell.TEXT_FORMAT).set();
        }
    }
}
