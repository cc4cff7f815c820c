package plumbrow.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.documents.workbook.WorkbookReader;

@DisplayName("A season from its workbook to the advice to keep a stand or to replant it")
class ReplantFromWorkbookTest {
    private static final String FIELD = "Creek Bottom";
    private static final String KEEP = "No trait, no insecticide";
    private static final String AGAIN = "Replant on 20 May";

    @TempDir
    Path folder;

    @Test
    @DisplayName(
            "8,000 plants of 1 May are replanted on 20 May, 24,000 are kept, and the working says why line by line")
    void keptOrReplanted() throws IOException {
        FieldAdvice thin = advice("7000,8000,9000");
        assertThat(thin.advised()).isEqualTo(AGAIN);
        WeighedProgram replant = thin.program(AGAIN).orElseThrow();
        WeighedProgram keep = thin.program(KEEP).orElseThrow();
        assertThat(replant.meanMarginUsdPerAcre()).isGreaterThan(keep.meanMarginUsdPerAcre() + 20);
        assertThat(replant.working())
                .anySatisfy(step -> assertThat(step.text()).contains("final stand", "thousand seeds/ac"))
                .anySatisfy(step -> assertThat(step.text()).contains("with the planting date"))
                .anySatisfy(step -> assertThat(step.text()).contains("Insurance payment for replanting"));
        assertThat(keep.working()).anySatisfy(step -> assertThat(step.text()).contains("as counted"));
        assertThat(thin.inputs())
                .anySatisfy(input -> assertThat(input.source()).contains("twelve counts"))
                .anySatisfy(input -> assertThat(input.id()).isEqualTo("late planting"));

        FieldAdvice good = advice("22000,24000,26000");
        assertThat(good.advised()).isNotEqualTo(AGAIN);
        assertThat(good.program(AGAIN).orElseThrow().meanMarginUsdPerAcre())
                .isLessThan(good.program(KEEP).orElseThrow().meanMarginUsdPerAcre() - 20);
    }

    private FieldAdvice advice(String plants) throws IOException {
        Path workbook = folder.resolve(plants.replace(',', '-'));
        DemoBook.copyTo(workbook);
        append(workbook, "programs.csv", FIELD + "," + AGAIN + ",no,,,");
        append(workbook, "passes.csv", pass(1, "seed,2026-05-01,Hollowbrook 102,33,1000 seeds/ac,100,20"));
        append(workbook, "passes.csv", pass(2, "tillage,2026-05-19,,,,100,12"));
        append(workbook, "passes.csv", pass(3, "seed,2026-05-20,Hollowbrook 102,33,1000 seeds/ac,100,20"));
        append(workbook, "passes.csv", pass(4, "harvest,2026-10-20,,,,100,36"));
        Files.writeString(
                workbook.resolve("stand_counts.csv"),
                "field,planted,counted,plants_low_ac,plants_likely_ac,plants_high_ac,gaps_low_pct,gaps_likely_pct,gaps_high_pct,"
                        + "replant_payment_usd_ac,source\n"
                        + FIELD + ",2026-05-01,2026-05-14," + plants + ",0,2,4,25,\"twelve counts, invented\"\n");
        Season season = WorkbookReader.read(workbook);
        return Adviser.adviseField(season, season.field(FIELD).orElseThrow(), WeighingOptions.DEFAULT.withDraws(2_000));
    }

    private static String pass(int number, String rest) {
        return FIELD + "," + AGAIN + "," + number + "," + rest + ",,0,,0";
    }

    private static void append(Path workbook, String sheet, String row) throws IOException {
        Path file = Objects.requireNonNull(workbook.resolve(sheet));
        String text = Files.readString(file);
        Files.writeString(file, (text.endsWith("\n") ? "" : "\n") + row + "\n", StandardOpenOption.APPEND);
    }
}
