package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.field.Farm;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.SampleAdvice;
import plumbrow.documents.SampleSeason;

class BinderTest {
    @TempDir
    static Path shelf;

    private static Path sample;

    @TempDir
    Path folder;

    @BeforeAll
    static void writeOnceForTheTestsThatOnlyRead() {
        sample = shelf.resolve("sample.pdf");
        Binder.write(contents(SampleAdvice.advice()), sample);
    }

    /** The sample season with all its fields in one hand, and the annex of an advice. */
    private static Binder.Contents contents(Advice advice) {
        Season two = SampleSeason.season();
        Season season = new Season(
                two.year(),
                two.asOf(),
                two.adviser(),
                two.farms().stream()
                        .map(farm -> new Farm(farm.name(), "Wes Aldane", farm.cropShare(), farm.costShare()))
                        .toList(),
                two.fields(),
                two.history(),
                two.shelf(),
                two.pests(),
                two.programs(),
                two.assumptions());
        FieldPlans plans = new FieldPlans(season);
        return new Binder.Contents(
                season,
                season.fields().stream()
                        .map(field -> plans.of(field, null, null, "nothing to weigh", Optional.empty()))
                        .toList(),
                List.of(),
                new Binder.Annex(inOneHand(advice), field -> Optional.empty()),
                "");
    }

    private static Advice inOneHand(Advice advice) {
        return new Advice(
                advice.year(),
                advice.asOf(),
                advice.adviser(),
                advice.draws(),
                advice.seed(),
                advice.fields().stream().map(BinderTest::inOneHand).toList());
    }

    private static FieldAdvice inOneHand(FieldAdvice of) {
        return new FieldAdvice(
                of.field(),
                "Wes Aldane",
                of.draws(),
                of.seed(),
                of.programs(),
                of.baseline(),
                of.advised(),
                of.aboutEqual(),
                of.equal(),
                of.sentence(),
                of.reason(),
                of.doubt(),
                of.gainDoubt(),
                of.comparisons(),
                of.ranges(),
                of.whatMatters(),
                of.samples(),
                of.inputs(),
                of.evpiUsdPerAcre(),
                of.cautions());
    }

    @Test
    void tellsEachAdviceWithItsNumbersAndUnits() throws IOException {
        String text = text(sample);
        for (FieldAdvice field : SampleAdvice.advice().fields()) {
            assertThat(text).contains(field.sentence()).contains(field.reason()).contains(field.doubt());
        }
        assertThat(text)
                .contains("Tilda Marsh")
                .contains("2026-03-14")
                .contains("146.20 187.4 428 277 428 579 222 71 of 100 20 of 100")
                .contains("mean margin, $/ac")
                .contains("Half rate in the furrow 40 ft 66 ft label page 3, water")
                .contains("Leave the outer eight rows untreated.")
                .contains("Look up: the refuge share on the bag tag")
                .contains("Below $3.82/bu corn another program earns more.")
                .contains("Digging 10 roots is worth about $180")
                .contains("elevator bid of March 13")
                .contains("label page 7, corn table")
                .contains("The current label is the law.")
                .contains("1-800-222-1222");
    }

    @Test
    void printsEveryLineOfTheAdvisedProgramAndOfTheBaseline() throws IOException {
        String text = text(sample);
        assertThat(text)
                .contains("Working: Half rate in the furrow (advised)")
                .contains("Working: Bought seed, nothing in the furrow (the baseline)")
                .contains("Working: Bought seed, nothing in the furrow (advised, the baseline)")
                .contains("300 $/unit ÷ 80,000 seeds × 34,000 seeds/ac 127.50")
                .contains("192 bu/ac × (1 − 0.15 × ½) × √1 · 1, Σ ≤ 3 °C ± 2 ÷ ¼ ≥ µ → ∞")
                .contains("187.4 bu/ac × 4.2 $/bu 787.08 $/ac");
    }

    @Test
    void everyGlyphIsInTheEmbeddedFace() throws IOException {
        List<String> missing = new ArrayList<>();
        PDFTextStripper reader = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                super.processTextPosition(text);
                PDFont font = text.getFont();
                try {
                    if (!font.isEmbedded()
                            || !(font instanceof PDType0Font embedded)
                            || embedded.codeToGID(text.getCharacterCodes()[0]) == 0) {
                        missing.add(font.getName() + ": " + text.getUnicode());
                    }
                } catch (IOException e) {
                    missing.add(e.toString());
                }
            }
        };
        try (PDDocument document = Loader.loadPDF(sample.toFile())) {
            String text = reader.getText(document);
            assertThat(text)
                    .hasSizeGreaterThan(4000)
                    .doesNotContain(Typeface.MISSING)
                    .doesNotContain("#");
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void hasPageNumbersRunningHeadsBookmarksAndADescription() throws IOException {
        try (PDDocument document = Loader.loadPDF(sample.toFile())) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isBetween(8, 16);
            for (int page = 1; page <= pages; page++) {
                assertThat(pageText(document, page)).contains("page " + page + " of " + pages);
            }
            List<String> bookmarks = new ArrayList<>();
            int secondField = 0;
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                bookmarks.add(item.getTitle());
                PDPage page = item.findDestinationPage(document);
                if (item.getTitle().startsWith("Plan of North quarter")) {
                    secondField = document.getPages().indexOf(page) + 1;
                }
            }
            assertThat(bookmarks)
                    .containsExactly(
                            "Orchard Hill",
                            "Lower Fork",
                            "Plan of Home 80",
                            "Plan of North quarter beyond the old creamery road",
                            "Plan of Creek bottom",
                            "Annex: Home 80",
                            "Annex: North quarter beyond the old creamery road",
                            "Annex: Creek bottom",
                            "Annex: sources of the shelf");
            assertThat(pageText(document, secondField)).startsWith("North quarter beyond the old creamery road");
            assertThat(pageText(document, secondField - 1)).startsWith("Home 80");
            assertThat(pageText(document, 2)).contains("151.2 corn none may be advised yet unknown unknown");
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Binder for the 2026 season, Wes Aldane");
            assertThat(document.getDocumentInformation().getAuthor()).isEqualTo("Tilda Marsh");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        }
    }

    @Test
    void theHeaderOfATableIsRepeatedWhereItRunsOver() throws IOException {
        Advice many = SampleAdvice.with(SampleAdvice.of(
                "Long",
                IntStream.range(0, 60)
                        .mapToObj(i -> SampleAdvice.program("Program " + i, Standing.CLEAR, 400 - i, 100, 0.5, 130))
                        .toList()));
        try (PDDocument document = Loader.loadPDF(write(many).toFile())) {
            int withRows = 0;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                String text = pageText(document, page);
                if (text.contains(" 20 of 100")) {
                    withRows++;
                    assertThat(text).contains("best of all");
                }
            }
            assertThat(withRows).isGreaterThan(1);
        }
    }

    @Test
    void sameSeasonAndAdviceGiveTheSameFileToTheByte() throws IOException {
        assertThat(Files.readAllBytes(write(SampleAdvice.advice()))).isEqualTo(Files.readAllBytes(sample));
    }

    @Test
    void hostileNamesArePrintedAsText() throws IOException {
        String name = "<script>alert(1)</script> & \"Co\" '🌽' \u0007 " + "x".repeat(300) + " ${end} $1 \\";
        Advice hostile = SampleAdvice.with(
                SampleAdvice.of(name, List.of(SampleAdvice.program(name, Standing.UNKNOWN, 400, 100, 0.5, 130))));
        String text = text(write(hostile));
        assertThat(text)
                .contains("<script>alert(1)</script> & \"Co\" '" + Typeface.MISSING + "'")
                .contains("${end} $1 \\");
        assertThat(text.replace(" ", "")).contains("x".repeat(300));
    }

    @Test
    void aFieldWithoutAnyProgramIsPrinted() throws IOException {
        assertThat(text(write(SampleAdvice.with(SampleAdvice.of("Empty", List.of())))))
                .contains("No check had anything to say of these programs.");
    }

    @Test
    void aFolderThatIsNotThereIsToldInASentence() {
        Path nowhere = folder.resolve("not there").resolve("binder.pdf");
        assertThatThrownBy(() -> Binder.write(contents(SampleAdvice.with()), nowhere))
                .isInstanceOf(FileTrouble.class)
                .hasMessage("The file " + nowhere + " could not be written: its folder does not exist.");
    }

    @Test
    void aFolderInPlaceOfTheFileIsToldAndNothingIsLeftBehind() throws IOException {
        assertThatThrownBy(() -> Binder.write(contents(SampleAdvice.with()), folder))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("it is a folder");
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    private Path write(Advice advice) {
        Path pdf = folder.resolve("binder.pdf");
        Binder.write(contents(advice), pdf);
        return pdf;
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static String pageText(PDDocument document, int page) throws IOException {
        PDFTextStripper reader = new PDFTextStripper();
        reader.setSortByPosition(true);
        reader.setStartPage(page);
        reader.setEndPage(page);
        return reader.getText(document).replaceAll("\\s+", " ").strip();
    }
}
