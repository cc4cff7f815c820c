package plumbrow.documents.binder;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.WholeFile;
import plumbrow.documents.binder.Grid.Column;

/** What the {@link Binder} tells, as a spreadsheet: a sheet for each question, units in the headers, full numbers. */
public final class AdviceSheet {
    private AdviceSheet() {}

    /**
     * Writes the spreadsheet (XLSX), in place of an older one of that name.
     *
     * @throws FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(Season season, Advice advice, Path xlsx) {
        WholeFile.write(xlsx, out -> fill(season, advice, out));
    }

    private static void fill(Season season, Advice advice, OutputStream out) throws IOException {
        try (Workbook workbook = new Workbook(out, "Plumbrow", "1.0")) {
            ProgramSheets.advice(workbook, season, advice);
            ProgramSheets.programs(workbook, advice);
            ProgramSheets.findings(workbook, advice);
            ChangeSheets.ranges(workbook, advice);
            ChangeSheets.whatMatters(workbook, advice);
            ChangeSheets.workings(workbook, advice);
            ChangeSheets.inputs(workbook, advice);
            cautions(workbook, advice);
        }
    }

    private static void cautions(Workbook workbook, Advice advice) {
        Grid grid = new Grid(workbook, "cautions", List.of(Column.words("field", 24), Column.words("caution", 100)));
        Stream.concat(StandingCautions.WHO_DECIDES.stream(), StandingCautions.WHO_TO_CALL.stream())
                .forEach(caution -> grid.row("all", caution));
        advice.fields()
                .forEach(field -> field.cautions()
                        .forEach(caution -> grid.row(field.field().name(), caution)));
    }
}
