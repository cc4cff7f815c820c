package plumbrow.documents.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import plumbrow.advice.names.Near;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.file.CsvFolder;
import plumbrow.documents.workbook.file.XlsxFile;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TableReader;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.rule.Rules;
import plumbrow.documents.workbook.sheet.Sheets;

/** Reads a workbook, an XLSX file or a folder of CSV files, all or nothing. */
public final class WorkbookReader {
    private WorkbookReader() {}

    /**
     * The season of a workbook in which nothing is wrong.
     *
     * @throws WorkbookFaults with everything that is wrong with it, each with sheet, row and column
     */
    public static Season read(Path fileOrFolder) {
        return read(fileOrFolder, told -> {});
    }

    /**
     * The same, and says of each sheet read by a former name how it is called now, and asks of values that are hardly true.
     *
     * @param told takes a sentence for each
     */
    public static Season read(Path fileOrFolder, Consumer<String> told) {
        FaultList faults = new FaultList(String.valueOf(fileOrFolder.getFileName()));
        Tables tables = tables(grids(fileOrFolder, faults), faults, told);
        Rules.check(tables, faults);
        faults.throwIfAny();
        Season season = Sheets.season(tables);
        Plausible.questions(season).forEach(told);
        return season;
    }

    private static List<Grid> grids(Path path, FaultList faults) {
        String name = String.valueOf(path.getFileName());
        if (!Files.exists(path)) {
            faults.at(name, 0, "", "", "a workbook of this name");
        }
        faults.throwIfAny();
        List<Grid> grids;
        try {
            grids = Files.isDirectory(path)
                    ? CsvFolder.read(path, WorkbookReader::known, faults)
                    : XlsxFile.read(path, WorkbookReader::known, faults);
        } catch (IOException | UncheckedIOException unreadable) {
            faults.at(name, 0, "", "a file that cannot be read", "one that Plumbrow may read");
            grids = List.of();
        }
        if (grids.isEmpty()) {
            faults.throwIfAny();
        }
        return grids;
    }

    private static boolean known(String sheet) {
        return Sheets.named(sheet).isPresent();
    }

    private static Tables tables(List<Grid> grids, FaultList faults, Consumer<String> told) {
        Map<String, Grid> byName = new HashMap<>();
        for (Grid grid : grids) {
            Optional<Sheet<?>> sheet = Sheets.named(grid.name());
            if (sheet.isEmpty()) {
                strange(grid, faults);
            } else if (byName.put(sheet.get().name(), grid) != null) {
                faults.at(grid.place(), 0, "", "a second sheet of this name", "each sheet once");
            } else if (!sheet.get().name().equalsIgnoreCase(grid.name().strip())) {
                told.accept("The sheet " + grid.name().strip() + " is called "
                        + sheet.get().name() + " now and was read as that.");
            }
        }
        Map<String, List<Row>> rows = new HashMap<>();
        for (Sheet<?> sheet : Sheets.ALL) {
            Grid grid = byName.get(sheet.name());
            if (grid != null) {
                rows.put(sheet.name(), new TableReader(sheet, faults).read(grid));
            } else if (sheet.optional()) {
                rows.put(sheet.name(), List.of());
            } else {
                faults.at(sheet.name(), 0, "", "no such sheet", "this sheet, if only with its column names");
            }
        }
        return new Tables(rows);
    }

    private static void strange(Grid grid, FaultList faults) {
        if (!grid.name().strip().equalsIgnoreCase(ReadMe.SHEET)) {
            String near = Near.to(
                            grid.name(), Sheets.ALL.stream().map(Sheet::name).toList())
                    .map(name -> "; did you mean " + name + "?")
                    .orElse("");
            faults.at(grid.place(), 0, "", "an unknown sheet", "only sheets of the template" + near);
        }
    }
}
