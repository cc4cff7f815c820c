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
    private static final double SHEET_NAME_WIDTH = 16;
    private static final double SENTENCE_WIDTH = 90;

    private XlsxPages() {}

    /** Writes a new file: a first sheet with plain text, then the pages. */
    public static void write(String readMeName, List<String> readMe, List<Page> pages, Path file) throws IOException {
        Path drawn = Files.createTempFile("plumbrow-", ".xlsx");
        try {
            draw(readMeName, readMe, pages, drawn);
            NoteBoxes.enlarge(drawn, file);
        } finally {
            Files.delete(drawn);
        }
    }

    private static void draw(String readMeName, List<String> readMe, List<Page> pages, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                Workbook workbook = new Workbook(out, PROGRAM, PROGRAM_VERSION)) {
            readMe(workbook.newWorksheet(readMeName), readMe);
            for (Page page : pages) {
                page(workbook.newWorksheet(page.sheet().name()), page);
            }
        }
    }

    /** A line with a tab has its first part in the first column; others run over both. */
    private static void readMe(Worksheet sheet, List<String> lines) {
        sheet.width(0, SHEET_NAME_WIDTH);
        sheet.width(1, SENTENCE_WIDTH);
        forPrinting(sheet);
        for (int row = 0; row < lines.size(); row++) {
            String[] parts = lines.get(row).split("\t", 2);
            for (int column = 0; column < parts.length; column++) {
                sheet.value(row, column, parts[column]);
            }
            if (row == 0 || parts.length > 1) {
                sheet.style(row, 0).bold().fontSize(row == 0 ? 16 : 11).set();
            }
        }
    }

    private static void page(Worksheet sheet, Page page) throws IOException {
        List<Column<?>> columns = page.sheet().columns();
        for (int i = 0; i < columns.size(); i++) {
            HeaderCell.write(sheet, i, columns.get(i));
        }
        sheet.freezePane(1, 1);
        forPrinting(sheet);
        for (int row = 0; row < page.rows().size(); row++) {
            List<Cell> cells = page.rows().get(row);
            for (int i = 0; i < cells.size(); i++) {
                cell(sheet, row + 1, i, cells.get(i));
            }
        }
        sheet.finish();
    }

    private static void forPrinting(Worksheet sheet) {
        sheet.pageOrientation("landscape");
        sheet.setFitToPage(true);
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
        sheet.repeatRows(0);
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
