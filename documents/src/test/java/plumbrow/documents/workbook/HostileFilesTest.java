package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no plain workbook, some of them made to do harm. */
class HostileFilesTest {
    /** The part of the history sheet: after the read me, season, farms and fields. */
    private static final String HISTORY = "xl/worksheets/sheet5.xml";

    @TempDir
    Path folder;

    private Path good = Path.of("");
    private Path bad = Path.of("");

    @BeforeEach
    void write() {
        good = folder.resolve("good.xlsx");
        bad = folder.resolve("bad.xlsx");
        WorkbookWriter.write(Fixture.season(), good);
    }

    @Test
    void anEmptyFile() throws IOException {
        Files.createFile(bad);
        assertThat(sentences()).containsExactly("bad.xlsx: found \"an empty file\", expected an XLSX workbook.");
    }

    @Test
    void aTextFileWithTheWrongName() throws IOException {
        Files.writeString(bad, "field,acres\nEast 80,78\n");
        assertThat(sentences())
                .containsExactly("bad.xlsx: found \"a file of another kind\", expected an XLSX workbook.");
    }

    @Test
    void theOldFormat() throws IOException {
        try (HSSFWorkbook old = new HSSFWorkbook();
                OutputStream out = Files.newOutputStream(bad)) {
            old.createSheet("fields");
            old.write(out);
        }
        assertThat(sentences())
                .containsExactly(
                        "bad.xlsx: found \"a workbook in the old XLS format\", expected an XLSX workbook: save it "
                                + "again as XLSX.");
    }

    @Test
    void aPassword() throws IOException, GeneralSecurityException {
        try (POIFSFileSystem container = new POIFSFileSystem();
                OutputStream out = Files.newOutputStream(bad)) {
            Encryptor lock = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            lock.confirmPassword("harvest");
            try (OutputStream locked = lock.getDataStream(container)) {
                Files.copy(good, locked);
            }
            container.writeFilesystem(out);
        }
        assertThat(sentences())
                .containsExactly(
                        "bad.xlsx: found \"a workbook locked with a password\", expected one that opens without a "
                                + "password.");
    }

    @Test
    void macros() throws IOException {
        ZipParts.edit(
                good,
                bad,
                "[Content_Types].xml",
                text -> text.replace(
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml"));
        assertThat(sentences())
                .containsExactly(
                        "bad.xlsx: found \"a workbook with macros\", expected one without: save it as a plain XLSX "
                                + "workbook.");
    }

    @Test
    void macrosUnderAPlainName() throws IOException {
        Path typed = folder.resolve("typed.xlsx");
        ZipParts.edit(
                good,
                typed,
                "[Content_Types].xml",
                text -> text.replace(
                        "</Types>",
                        "<Default Extension=\"bin\" ContentType=\"application/vnd.ms-office.vbaProject\"/></Types>"));
        ZipParts.replace(typed, bad, "xl/vbaProject.bin", out -> out.write(new byte[100]));
        assertThat(sentences().get(0)).startsWith("bad.xlsx: found \"a workbook with macros\"");
    }

    @Test
    void anOpenDocument() throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(bad))) {
            out.putNextEntry(new ZipEntry("mimetype"));
            out.write("application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII));
            out.putNextEntry(new ZipEntry("settings.xml"));
            out.write("<office:document-settings/>".getBytes(StandardCharsets.US_ASCII));
        }
        assertThat(sentences())
                .containsExactly(
                        "bad.xlsx: found \"an OpenDocument file\", expected an XLSX workbook: save it again as XLSX.");
    }

    @Test
    void aSheetThatUnpacksToGigabytes() throws IOException {
        byte[] blanks = new byte[1 << 20];
        Arrays.fill(blanks, (byte) ' ');
        ZipParts.replace(good, bad, HISTORY, out -> {
            out.write("<worksheet><sheetData>".getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; i < 300; i++) {
                out.write(blanks);
            }
        });
        assertThat(sentences().get(0))
                .isEqualTo("history: found \"a file that unpacks to far more than it should (a zip bomb)\", expected a "
                        + "workbook of one season.");
    }

    @Test
    void sharedTextsThatUnpackToGigabytes() throws IOException {
        byte[] letters = new byte[1 << 20];
        Arrays.fill(letters, (byte) 'a');
        ZipParts.replace(good, bad, "xl/sharedStrings.xml", out -> {
            out.write("<sst><si><t>".getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; i < 300; i++) {
                out.write(letters);
            }
        });
        assertThat(sentences().get(0)).startsWith("bad.xlsx: found \"a file that unpacks to far more than it should");
    }

    @Test
    void entitiesFromOutside() throws IOException {
        Path secret = folder.resolve("secret.txt");
        Files.writeString(secret, "do not tell");
        ZipParts.edit(
                good,
                bad,
                HISTORY,
                text -> text.replaceFirst(
                                "<worksheet",
                                "<!DOCTYPE worksheet [<!ENTITY secret SYSTEM \"" + secret.toUri() + "\">]><worksheet")
                        .replaceFirst("<sheetData>", "<sheetData>&secret;"));
        assertThat(sentences())
                .contains(
                        "history: found \"XML with a document type, which could draw in other files\", expected a workbook "
                                + "saved by a spreadsheet program.")
                .noneMatch(sentence -> sentence.contains("do not tell"));
    }

    @Test
    void entitiesThatMultiply() throws IOException {
        String laughs = "<!DOCTYPE sst [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>";
        ZipParts.edit(good, bad, "xl/sharedStrings.xml", text -> text.replaceFirst("<sst", laughs + "<sst"));
        assertThat(sentences())
                .containsExactly(
                        "bad.xlsx: found \"XML with a document type, which could draw in other files\", expected a "
                                + "workbook saved by a spreadsheet program.");
    }

    @Test
    void aMillionRows() throws IOException {
        ZipParts.replace(good, bad, HISTORY, out -> {
            out.write(("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
                            + "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>field</t></is></c></row>")
                    .getBytes(StandardCharsets.US_ASCII));
            for (int i = 2; i <= 1_000_000; i++) {
                out.write(("<row r=\"" + i + "\"><c r=\"A" + i + "\"><v>" + i + "</v></c></row>")
                        .getBytes(StandardCharsets.US_ASCII));
            }
            out.write("</sheetData></worksheet>".getBytes(StandardCharsets.US_ASCII));
        });
        assertThat(sentences())
                .contains(
                        "history, row 20002: found \"more than 20,000 rows\", expected at most 20,000 rows under the column "
                                + "names.");
    }

    @Test
    void aMillionBlankRowsAreOnlyFormatted() throws IOException {
        ZipParts.edit(good, bad, HISTORY, text -> {
            StringBuilder blank = new StringBuilder();
            for (int i = 10; i <= 200_000; i++) {
                blank.append("<row r=\"")
                        .append(i)
                        .append("\"><c r=\"A")
                        .append(i)
                        .append("\" s=\"1\"/></row>");
            }
            return text.replace("</sheetData>", blank + "</sheetData>");
        });
        assertThat(WorkbookReader.read(bad)).isEqualTo(Fixture.season());
    }

    @Test
    void cutOff() throws IOException {
        byte[] whole = Files.readAllBytes(good);
        Files.write(bad, Arrays.copyOf(whole, whole.length / 2));
        assertThat(sentences())
                .containsExactly(
                        "bad.xlsx: found \"a broken or cut-off file\", expected a workbook saved by a spreadsheet "
                                + "program; open it there and save it again as XLSX.");
    }

    @Test
    void xmlCutOff() throws IOException {
        ZipParts.edit(good, bad, HISTORY, text -> text.substring(0, text.length() / 2));
        assertThat(sentences())
                .contains("history: found \"a broken or cut-off file\", expected a workbook saved by a "
                        + "spreadsheet program; open it there and save it again as XLSX.");
    }

    @Test
    void aTooLargeFile() throws IOException {
        Files.write(bad, new byte[33 << 20]);
        assertThat(sentences())
                .containsExactly("bad.xlsx: found \"a file of 33 MB\", expected a workbook of a few MB at most.");
    }

    /** Whatever is done to a file's bytes, a person gets sentences and never a stack trace. */
    @Test
    void bytesChangedAtRandom() throws IOException {
        byte[] whole = Files.readAllBytes(good);
        Random random = new Random(8_040);
        for (int round = 0; round < 150; round++) {
            byte[] changed = whole.clone();
            for (int i = 0; i <= round % 5; i++) {
                changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            }
            Files.write(bad, changed);
            try {
                assertThat(WorkbookReader.read(bad).year()).isEqualTo(2026);
            } catch (WorkbookFaults faults) {
                assertThat(faults.faults()).as("round " + round).isNotEmpty();
            }
        }
    }

    private List<String> sentences() {
        return catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(bad)).faults().stream()
                .map(Fault::sentence)
                .toList();
    }
}
