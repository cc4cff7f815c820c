package plumbrow.documents.workbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.file.CsvPages;
import plumbrow.documents.workbook.file.Page;
import plumbrow.documents.workbook.file.XlsxPages;
import plumbrow.documents.workbook.sheet.Sheets;

/** Writes a season as a workbook from which {@link WorkbookReader} reads the same season again, to the last digit. */
public final class WorkbookWriter {
    private static final String XLSX = ".xlsx";

    private WorkbookWriter() {}

    /**
     * Writes an XLSX file where the name ends in .xlsx, else a folder of CSV files. What stood there before stays until
     * all of the new one is written.
     *
     * @throws WorkbookFaults where it cannot be written; nothing is changed then
     */
    public static void write(Season season, Path fileOrFolder) {
        List<Page> pages = Sheets.ALL.stream()
                .map(sheet -> new Page(sheet, sheet.cells(season)))
                .toList();
        if (spreadsheet(fileOrFolder)) {
            TooLong.check(pages, fileOrFolder);
            Placing.file(fileOrFolder, file -> XlsxPages.write(ReadMe.SHEET, ReadMe.lines(), pages, file));
        } else {
            Placing.folder(fileOrFolder, folder -> CsvPages.write(pages, folder));
        }
    }

    static boolean spreadsheet(Path path) {
        return !Files.isDirectory(path)
                && path.toString().toLowerCase(Locale.ROOT).endsWith(XLSX);
    }
}
