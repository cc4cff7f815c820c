package plumbrow.documents.ocr;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.paper.Optical;
import plumbrow.documents.paper.OpticalReader;
import plumbrow.documents.paper.OpticalWord;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.reading.PaperSort;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/** Scans of invented sheets, from the office scanner's to the fax's. */
@SuppressWarnings("NullAway.Init")
class ScannedPapersTest {
    private static final String SHEET = """
            SAFETY DATA SHEET
            SECTION 1: IDENTIFICATION
            Product name: Quarrywick 4L
            EPA Reg. No.: 99990-41
            SECTION 3: COMPOSITION
            Ingredient\tCAS No.\t% by weight
            Atrazine\t1912-24-9\t42.2
            Propylene glycol\t57-55-6\t4.1
            SECTION 4: FIRST AID MEASURES
            If swallowed: Call a poison control center. Do not induce vomiting.
            If on skin: Rinse skin with plenty of water.
            SECTION 9: PHYSICAL AND CHEMICAL PROPERTIES
            Flash point: 62 °C
            Density: 1.12 g/cm3
            SECTION 11: TOXICOLOGICAL INFORMATION
            Oral LD50 (rat): 3090 mg/kg
            """;

    @TempDir
    Path folder;

    private Paper read(byte[] pdf, @Nullable OpticalReader reader) throws IOException {
        return PaperSort.read(Files.write(folder.resolve("scan.pdf"), pdf), PaperLimits.USUAL, reader);
    }

    private static SafetySheet sheet(Paper paper) {
        return OcrDoubts.over(SheetReader.read(paper), paper.optical());
    }

    private static void installed() {
        assumeTrue(new Tesseract().ready(), Tesseract.INSTALL);
    }

    private static List<Content.Ingredient> ingredients(SafetySheet sheet) {
        return sheet.all(ValueKind.INGREDIENT).stream()
                .map(one -> (Content.Ingredient) one.content())
                .toList();
    }

    @Test
    void anOfficeScanIsReadWithPlacesAndMarked() throws IOException {
        installed();
        Paper paper = read(Scanner.scan(Scanner.page(SHEET), Scanner.Grade.OFFICE, 1, 7), new Tesseract());
        SafetySheet sheet = sheet(paper);
        assertThat(paper.optical().pages()).containsExactly(1);
        assertThat(paper.notices()).singleElement().asString().contains("read by OCR", "held it against the page");
        assertThat(sheet.of(ValueKind.PRODUCT_NAME).words()).isEqualTo("Quarrywick 4L");
        assertThat(ingredients(sheet)).extracting(Content.Ingredient::cas).contains("1912-24-9");
        assertThat(sheet.of(ValueKind.FLASH_POINT).words()).contains("62");
        assertThat(sheet.all(ValueKind.FIRST_AID)).hasSize(2);
        Reading.Stated name = (Reading.Stated) sheet.of(ValueKind.PRODUCT_NAME);
        assertThat(name.quote().marks().get(0).box().left())
                .as("where it stands [pt]")
                .isBetween(60., 180.);
        assertThat(name.quote().marks().get(0).box().bottom()).isBetween(95., 108.);
    }

    /** At fax grade the point of "42.2" is lost and "4L" reads "AL": nothing is stated. */
    @Test
    void atFaxGradeNothingIsStated() throws IOException {
        installed();
        Paper paper = read(Scanner.scan(Scanner.page(SHEET), Scanner.Grade.FAX, 1, 7), new Tesseract());
        assertThat(paper.optical().pages()).containsExactly(1);
        assertThat(paper.rows()).as("made out at all").isNotEmpty();
        assertThat(sheet(paper).readings()).isNotEmpty().noneMatch(reading -> reading instanceof Reading.Stated);
    }

    /** Points swallowed on a page that is fine otherwise: the gap between the digits gives them away. */
    @Test
    void aNumberWhoseGapMayHaveHeldAPointIsNotStated() throws IOException {
        installed();
        byte[] lost = Scanner.page(SHEET.replace("42.2", "42 2").replace("1.12", "1 12"));
        Paper paper = read(Scanner.scan(lost, Scanner.Grade.FINE_FAX, 1, 7), new Tesseract());
        for (Content.Ingredient one : ingredients(sheet(paper))) {
            assertThat(one.words()).doesNotContain("422", "42 2");
        }
        assertThat(sheet(paper).of(ValueKind.DENSITY).words()).doesNotStartWith("112");
    }

    /** Letters that stand for others, as where a file's own table of signs is wrong: the picture is read and not they. */
    @Test
    void aGarbledTextIsTreatedAsAScan() throws IOException {
        installed();
        StringBuilder moved = new StringBuilder();
        (SHEET + SHEET)
                .chars()
                .forEach(letter ->
                        moved.append(Character.isLetter(letter) && letter < 'w' ? (char) (letter + 3) : (char) letter));
        byte[] garbled = Scanner.page(moved.toString().replace("°", "").replace('\t', ' '));
        Paper without = read(garbled, null);
        assertThat(without.rows()).isEmpty();
        assertThat(without.notices()).singleElement().asString().contains("page 1 is no language", "not read");
        byte[] under = Scanner.scan(
                Scanner.page(SHEET),
                Scanner.Grade.OFFICE,
                1,
                7,
                moved.toString().replace("°", "").replace('\t', ' '));
        assertThat(sheet(read(under, new Tesseract()))
                        .of(ValueKind.PRODUCT_NAME)
                        .words())
                .isEqualTo("Quarrywick 4L");
    }

    /** What another machine made out of the picture is doubted where this one has no OCR, and held against its own where it has. */
    @Test
    void textThatNobodySeesIsNoText() throws IOException {
        byte[] hidden = Scanner.scan(
                Scanner.page(SHEET),
                Scanner.Grade.OFFICE,
                1,
                7,
                SHEET.replace("42.2", "422").replace('\t', ' '));
        Paper without = read(hidden, new Tesseract(null, Duration.ofSeconds(5)));
        assertThat(without.optical().pages()).containsExactly(1);
        assertThat(sheet(without).readings().stream().filter(each -> each instanceof Reading.Stated))
                .allSatisfy(reading -> assertThat(reading.words()).doesNotContainPattern("\\d"));
        installed();
        Paper with = read(hidden, new Tesseract());
        assertThat(sheet(with).of(ValueKind.FLASH_POINT).words()).isEqualTo("62 °C");
        assertThat(sheet(with).readings().stream().filter(each -> each instanceof Reading.Stated))
                .noneSatisfy(reading -> assertThat(reading.words()).contains("422"));
    }

    @Test
    void whereItIsNotInstalledThePaperSaysHowToGetIt() throws IOException {
        byte[] scan = Scanner.scan(Scanner.page(SHEET), Scanner.Grade.FAX, 1, 7);
        Paper paper = read(scan, new Tesseract(null, Duration.ofSeconds(5)));
        assertThat(paper.needsTyping()).isTrue();
        assertThat(paper.optical()).isEqualTo(Optical.NONE);
        assertThat(paper.notices()).singleElement().asString().contains("apt-get install tesseract-ocr");
    }

    /** One that never answers, one that fails and one that writes rubbish cost the page and no more. */
    @Test
    void aReaderThatHangsOrBreaksCostsThePage() throws IOException {
        byte[] scan = Scanner.scan(Scanner.page(SHEET), Scanner.Grade.FAX, 1, 7);
        assertThat(read(scan, program("exec sleep 600")).notices())
                .singleElement()
                .asString()
                .contains("Page 1 is a picture that could not be read");
        assertThat(read(scan, program("exit 3")).notices())
                .singleElement()
                .asString()
                .contains("could not be read");
        assertThat(read(scan, program("cat >/dev/null; echo '5\t1\t1'; echo rubbish"))
                        .rows())
                .isEmpty();
    }

    private Tesseract program(String script) throws IOException {
        Path file = Files.writeString(folder.resolve("eye"), "#!/bin/sh\n" + script + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwx------"));
        return new Tesseract(file, Duration.ofMillis(700));
    }

    @Test
    void linesThatAreNoWordsArePassedOver() {
        String lines = """
                level\tpage_num\tblock_num\tpar_num\tline_num\tword_num\tleft\ttop\twidth\theight\tconf\ttext
                5\t1\t1\t1\t1\t1\t10\t20\t30\t12\t96.5\tFlash
                5\t1\t1\t1\t1\t2\t45\t20\t30\t12\t91\tpoint
                5\t1\t1\t1\t2\t1\t10\t40\t30\t12\t88\t62
                5\t1\t1\t1\t2\t2\t-4\t40\t30\t12\t88\tno
                5\t1\t1\t1\t2\t3\t9\t40\t0\t12\t88\tno
                5\t1\t1\t1\t2\t4\t9999999999\t40\t3\t12\t88\tno
                5\t1\t1\t1\t2\t5\t9\t40\t3\t12\tx\tno
                5\t1\t1\t1\t2\t6\t9\t40\t3\t12\t95\t\s
                """;
        assertThat(TesseractLines.read(lines))
                .extracting(OpticalWord::text, OpticalWord::line)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("Flash", 1),
                        org.assertj.core.groups.Tuple.tuple("point", 1),
                        org.assertj.core.groups.Tuple.tuple("62", 2));
    }
}
