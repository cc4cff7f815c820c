package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;
import tools.jackson.databind.JsonNode;

@SuppressWarnings("NullAway.Init")
class CheckCommandTest {
    private static final Season SEASON = SmallSeason.of(2027);

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SEASON);
    }

    @Test
    void everyProgramHasItsStandingInWords() {
        String out = plumbrow("check", "--book", book).good().out();
        for (Program program : SEASON.programs()) {
            String standing = Gates.standing(
                            Gates.check(SEASON, SEASON.field("North 80").orElseThrow(), program))
                    .word();
            assertThat(out).containsPattern("North 80 +" + program.name() + " +" + standing);
        }
        assertThat(out).contains("The current label is the law.");
    }

    @Test
    void jsonHasEveryFinding() {
        JsonNode json = plumbrow("check", "--book", book, "--field", "North 80", "--program", "half rate", "--json")
                .good()
                .json();
        assertThat(json.propertyNames())
                .containsExactly("season", "sentence", "matters", "programs", "look_ups", "across_lines");
        JsonNode program = json.get("programs");
        assertThat(program.size()).isEqualTo(1);
        assertThat(program.get(0).propertyNames()).containsExactly("field", "program", "standing", "findings");
        assertThat(program.get(0).get("findings").size()).isPositive();
        assertThat(program.get(0).get("findings").get(0).propertyNames())
                .contains("gate", "protects", "measured", "limit", "distance", "unit", "source", "clears");
    }

    @Test
    void theSameFindingsStandOnPaper() throws IOException {
        Path pdf = folder.resolve("check.pdf");
        plumbrow("check", "--book", book, "--pdf", pdf).good();
        try (PDDocument paper = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
            assertThat(text).contains("Check of the 2027 season", "Who to call", "half rate");
            for (Program program : SEASON.programs()) {
                Gates.check(SEASON, SEASON.field("North 80").orElseThrow(), program).stream()
                        .filter(finding -> finding.standing() != Standing.CLEAR)
                        .forEach(finding -> assertThat(text.replace(" ", ""))
                                .contains(finding.says().replace(" ", "")));
            }
        }
        plumbrow("check", "--book", book, "--pdf", pdf).refused("is there already");
    }

    @Test
    void aBarredProgramIsCodeOne() {
        Amount tooMuch = new Amount(9, FarmUnit.LB);
        Pass pass = new Pass(2, PassKind.GRANULE, null, "Stonefly 3G", tooMuch, 100, 0, new Distribution.Fixed(0), 0);
        Program half = SEASON.programs().get(1);
        Program over = new Program(
                "North 80",
                "too much",
                false,
                half.refuge(),
                "",
                List.of(half.passes().get(0), pass));
        Path other = SmallBook.of(
                folder.resolve("other.book"), with(List.of(SEASON.programs().get(0), half, over)));
        Typed typed = plumbrow("check", "--book", other, "--program", "too much");
        assertThat(typed.code()).isEqualTo(1);
        assertThat(typed.out()).contains("North 80, too much: barred").contains("9 lb");
        plumbrow("check", "--book", other, "--program", "half rate").good();
    }

    @Test
    void aNameThatIsNotThereIsSaidSo() {
        plumbrow("check", "--book", book, "--program", "none")
                .refused("There is no program 'none' there; the programs are seed alone, half rate, full rate.");
        plumbrow("check", "--book", book, "--field", "none").refused("the fields are North 80.");
    }

    private static Season with(List<Program> programs) {
        return new Season(
                SEASON.year(),
                SEASON.asOf(),
                SEASON.adviser(),
                SEASON.farms(),
                SEASON.fields(),
                SEASON.history(),
                SEASON.shelf(),
                SEASON.pests(),
                programs,
                SEASON.assumptions());
    }
}
