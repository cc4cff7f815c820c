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
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.outlook.Law;
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
    void everyCourseHasItsStandingInWords() {
        String out = plumbrow("check", "--book", book).good().out();
        for (Course course : SEASON.courses()) {
            String standing = Gates.standing(
                            Gates.check(SEASON, SEASON.field("North 80").orElseThrow(), course))
                    .word();
            assertThat(out).contains("North 80, " + course.name() + ": " + standing);
        }
        assertThat(out).contains("The current label is the law.");
    }

    @Test
    void jsonHasEveryFinding() {
        JsonNode json = plumbrow("check", "--book", book, "--field", "North 80", "--course", "half rate", "--json")
                .good()
                .json();
        assertThat(json.propertyNames()).containsExactly("season", "sentence", "courses", "look_ups", "across_lines");
        JsonNode course = json.get("courses");
        assertThat(course.size()).isEqualTo(1);
        assertThat(course.get(0).propertyNames()).containsExactly("field", "course", "standing", "findings");
        assertThat(course.get(0).get("findings").size()).isPositive();
        assertThat(course.get(0).get("findings").get(0).propertyNames())
                .contains("gate", "protects", "measured", "limit", "distance", "unit", "source", "clears");
    }

    @Test
    void theSameFindingsStandOnPaper() throws IOException {
        Path pdf = folder.resolve("check.pdf");
        plumbrow("check", "--book", book, "--pdf", pdf).good();
        try (PDDocument paper = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
            assertThat(text).contains("Check of the 2027 season", "Who to call", "half rate");
            for (Course course : SEASON.courses()) {
                Gates.check(SEASON, SEASON.field("North 80").orElseThrow(), course).stream()
                        .filter(finding -> finding.standing() != Standing.CLEAR)
                        .forEach(finding -> assertThat(text.replace(" ", ""))
                                .contains(finding.says().replace(" ", "")));
            }
        }
        plumbrow("check", "--book", book, "--pdf", pdf).refused("is there already");
    }

    @Test
    void aBarredCourseIsCodeOne() {
        Amount tooMuch = new Amount(9, FarmUnit.LB);
        Pass pass = new Pass(2, PassKind.GRANULE, null, "Stonefly 3G", tooMuch, 100, 0, new Law.Fixed(0), 0);
        Course half = SEASON.courses().get(1);
        Course over = new Course(
                "North 80",
                "too much",
                false,
                half.refuge(),
                "",
                List.of(half.passes().get(0), pass));
        Path other = SmallBook.of(
                folder.resolve("other.book"), with(List.of(SEASON.courses().get(0), half, over)));
        Typed typed = plumbrow("check", "--book", other, "--course", "too much");
        assertThat(typed.code()).isEqualTo(1);
        assertThat(typed.out()).contains("North 80, too much: barred").contains("9 lb");
        plumbrow("check", "--book", other, "--course", "half rate").good();
    }

    @Test
    void aNameThatIsNotThereIsSaidSo() {
        plumbrow("check", "--book", book, "--course", "none")
                .refused("There is no course 'none' there; the courses are seed alone, half rate, full rate.");
        plumbrow("check", "--book", book, "--field", "none").refused("the fields are North 80.");
    }

    private static Season with(List<Course> courses) {
        return new Season(
                SEASON.year(),
                SEASON.asOf(),
                SEASON.adviser(),
                SEASON.farms(),
                SEASON.fields(),
                SEASON.history(),
                SEASON.shelf(),
                SEASON.pests(),
                courses,
                SEASON.outlook());
    }
}
