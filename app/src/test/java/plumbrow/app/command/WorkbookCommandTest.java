package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.SmallSeason;
import plumbrow.documents.workbook.WorkbookWriter;
import tools.jackson.databind.JsonNode;

@SuppressWarnings("NullAway.Init")
class WorkbookCommandTest {
    @TempDir
    Path folder;

    @Test
    void theTemplateIsAnEmptyWorkbookAndNeverWritesOverAFile() throws IOException {
        Path file = folder.resolve("new.xlsx");
        assertThat(plumbrow("workbook", "template", file).good().out()).startsWith("An empty workbook is in " + file);
        assertThat(Files.size(file)).isPositive();
        byte[] before = Files.readAllBytes(file);
        plumbrow("workbook", "template", file).refused(file + " is there already");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        plumbrow("workbook", "template", folder.resolve("new.csv")).refused("expected one that ends in .xlsx");
    }

    @Test
    void aGoodWorkbookIsSaidToBeGood() {
        Path file = folder.resolve("season.xlsx");
        WorkbookWriter.write(SmallSeason.of(2027), file);
        assertThat(plumbrow("workbook", "check", file).good().out())
                .contains("can be used. Season 2027: 1 farm, 1 field with 3 programs, 2 products.");
        assertThat(plumbrow("workbook", "check", file, "--json")
                        .good()
                        .json()
                        .get("season")
                        .get("year")
                        .intValue())
                .isEqualTo(2027);
    }

    @Test
    void everyFaultIsALineWithSheetRowAndColumn() throws IOException {
        Path in = folder.resolve("season");
        WorkbookWriter.write(SmallSeason.of(2027), in);
        Path farms = in.resolve("farms.csv");
        Files.writeString(farms, Files.readString(farms).replaceAll("1(\\.0)?,1(\\.0)?", "much,more"));
        Typed typed = plumbrow("workbook", "check", in);
        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err().lines().toList())
                .anySatisfy(line -> assertThat(line).contains("farms", "row 2", "crop_share", "\"much\""))
                .anySatisfy(line -> assertThat(line).contains("farms", "row 2", "cost_share", "\"more\""));
        Typed asJson = plumbrow("workbook", "check", in, "--json");
        assertThat(asJson.code()).isEqualTo(2);
        JsonNode fault = asJson.json().get("faults").get(0);
        assertThat(fault.propertyNames()).containsExactly("sheet", "row", "column", "found", "expected");
    }

    @Test
    void whatIsNotAWorkbookIsRefused() throws IOException {
        plumbrow("workbook", "check", folder.resolve("none.xlsx")).refused("none.xlsx");
        Path text = Files.writeString(folder.resolve("text.xlsx"), "not a spreadsheet");
        plumbrow("workbook", "check", text).refused("text.xlsx");
        plumbrow("workbook").refused("template or check");
        plumbrow("workbook", "check").misused("FILE");
    }
}
