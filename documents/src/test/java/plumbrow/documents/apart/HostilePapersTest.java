package plumbrow.documents.apart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/** Files that are no plain sheet, some of them made to do harm: each ends in one sentence and leaves nothing behind. */
@SuppressWarnings("NullAway.Init")
class HostilePapersTest {
    @TempDir
    Path folder;

    private ApartReader reader;
    private Path file;
    private Set<String> before = Set.of();

    @BeforeEach
    void open() throws IOException {
        reader = new ApartReader();
        file = folder.resolve("sheet.pdf");
        before = temporary();
    }

    @AfterEach
    void nothingIsLeftBehind() throws IOException {
        reader.close();
        assertThat(temporary()).as("files in the folder for temporary ones").isSubsetOf(before);
    }

    private static Set<String> temporary() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.map(path -> path.getFileName().toString())
                    .filter(name -> name.toLowerCase(Locale.ROOT).contains("pdf"))
                    .collect(Collectors.toSet());
        }
    }

    @Test
    void anEmptyFile() throws IOException {
        Files.createFile(file);
        refused("sheet.pdf is empty; expected a PDF, a text or a web page.");
    }

    @Test
    void noFileAndAFolder() {
        refused("There is no file ");
        file = folder;
        refused("is a folder; expected a file.");
    }

    @Test
    void aPictureOrAnArchive() throws IOException {
        Files.write(file, new byte[] {'P', 'K', 3, 4, 0, 0});
        refused("sheet.pdf is a file of another kind; expected a PDF, a text or a web page.");
    }

    @Test
    void oneTooLarge() throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            byte[] block = new byte[1 << 20];
            for (int i = 0; i < 33; i++) {
                out.write(block);
            }
        }
        refused("sheet.pdf has 33 MB; expected at most 32 MB for a safety sheet or label.");
    }

    @Test
    void oneLockedWithAPassword() throws IOException {
        try (PDDocument document = lines("Product name: Locked")) {
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(file.toFile());
        }
        refused("sheet.pdf is locked with a password; expected a PDF that opens without one.");
    }

    @Test
    void oneCutOffOrScrambled() throws IOException {
        byte[] whole = bytes(lines("SECTION 1: Identification", "Product name: Cut"));
        Random random = new Random(11);
        for (int i = 0; i < 40; i++) {
            byte[] bad = Arrays.copyOf(whole, whole.length - random.nextInt(whole.length / 2));
            for (int j = 0; j < 1 + random.nextInt(60); j++) {
                bad[8 + random.nextInt(bad.length - 8)] = (byte) random.nextInt(256);
            }
            Files.write(file, bad);
            try {
                reader.sheet(file);
            } catch (PaperTrouble trouble) {
                assertThat(trouble.getMessage())
                        .startsWith("sheet.pdf")
                        .endsWith(".")
                        .doesNotContain("\n", "Exception");
            }
        }
    }

    @Test
    void oneWhosePagesLeadInACircle() throws IOException {
        try (PDDocument document = lines("Product name: Loop")) {
            COSDictionary pages = document.getDocumentCatalog().getPages().getCOSObject();
            COSArray kids = pages.getCOSArray(COSName.KIDS);
            kids.add(pages);
            document.save(file.toFile());
        }
        try {
            assertThat(reader.sheet(file).pages()).isLessThan(10);
        } catch (PaperTrouble trouble) {
            assertThat(trouble.getMessage()).startsWith("sheet.pdf");
        }
    }

    @Test
    void oneThatUnpacksToFarMore() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            PDResources resources = new PDResources();
            String font = resources.add(new PDType1Font(FontName.HELVETICA)).getName();
            page.setResources(resources);
            COSStream stream = document.getDocument().createCOSStream();
            try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                byte[] block = "(aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa) Tj\n"
                        .repeat(20_000)
                        .getBytes(StandardCharsets.US_ASCII);
                out.write(("BT /" + font + " 12 Tf\n").getBytes(StandardCharsets.US_ASCII));
                for (int i = 0; i < 100; i++) {
                    out.write(block);
                }
            }
            page.getCOSObject().setItem(COSName.CONTENTS, stream);
            document.save(file.toFile());
        }
        assertThat(Files.size(file)).isLessThan(4 << 20);
        PaperTrouble trouble = refused("sheet.pdf");
        assertThat(trouble.getMessage()).containsAnyOf("letters", "memory", "seconds", "broken");
        stillReads();
    }

    @Test
    void oneThatTakesTooLong() throws IOException {
        try (ApartReader hurried = new ApartReader(Duration.ofMillis(1), 256)) {
            Files.write(file, bytes(lines("Product name: Slow")));
            PaperTrouble trouble = catchThrowableOfType(PaperTrouble.class, () -> hurried.sheet(file));
            assertThat(trouble).hasMessageContaining("took longer than");
        }
    }

    @Test
    void oneThatNeedsTooMuchMemory() throws IOException {
        Files.write(file, bytes(lines("Product name: Large")));
        try (ApartReader tight = new ApartReader(Duration.ofSeconds(30), 4)) {
            PaperTrouble trouble = catchThrowableOfType(PaperTrouble.class, () -> tight.sheet(file));
            assertThat(trouble).hasMessageContaining("needs more than 4 MB of memory");
        }
    }

    @Test
    void aScriptIsNotRunAndSaid() throws IOException {
        try (PDDocument document = lines("SECTION 1: Identification", "Product name: Scripted")) {
            document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert('x');"));
            document.save(file.toFile());
        }
        SafetySheet sheet = reader.sheet(file);
        assertThat(sheet.notices()).anyMatch(notice -> notice.contains("script") && notice.contains("not run"));
        assertThat(sheet.of(ValueKind.PRODUCT_NAME).words()).isEqualTo("Scripted");
    }

    @Test
    void aScannedPageNeedsTyping() throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.save(file.toFile());
        }
        SafetySheet sheet = reader.sheet(file);
        assertThat(sheet.needsTyping()).isTrue();
        assertThat(sheet.notices()).anyMatch(notice -> notice.contains("has to type"));
    }

    /** The picture comes from the other process; a page that isn't there or takes too long is a sentence. */
    @Test
    void aPageIsDrawnApart() throws IOException {
        Files.write(file, bytes(lines("SECTION 1: Identification", "Product name: Drawn")));
        PagePicture.Drawn drawn = reader.picture(file, 1, 700);
        assertThat(drawn.png()).startsWith(0x89, 'P', 'N', 'G');
        assertThat(drawn.width()).isEqualTo(612);
        assertThat(drawn.height()).isEqualTo(792);
        assertThat(catchThrowableOfType(PaperTrouble.class, () -> reader.picture(file, 2, 700)))
                .hasMessageContaining("has 1 pages and no page 2");
        try (ApartReader hurried = new ApartReader(Duration.ofMillis(1), 256)) {
            assertThat(catchThrowableOfType(PaperTrouble.class, () -> hurried.picture(file, 1, 700)))
                    .hasMessageContaining("seconds to draw");
        }
        try (ApartReader tight = new ApartReader(Duration.ofSeconds(30), 4)) {
            assertThat(catchThrowableOfType(PaperTrouble.class, () -> tight.picture(file, 1, 700)))
                    .hasMessageContaining("of memory to draw");
        }
        stillReads();
    }

    private void stillReads() throws IOException {
        Files.write(file, bytes(lines("SECTION 1: Identification", "Product name: Next")));
        assertThat(reader.sheet(file).of(ValueKind.PRODUCT_NAME).words()).isEqualTo("Next");
    }

    private PaperTrouble refused(String words) {
        PaperTrouble trouble = catchThrowableOfType(PaperTrouble.class, () -> reader.sheet(file));
        assertThat(trouble).isNotNull();
        assertThat(trouble.getMessage()).contains(words).endsWith(".").doesNotContain("\n", "Exception");
        return trouble;
    }

    private static byte[] bytes(PDDocument document) throws IOException {
        try (document) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static PDDocument lines(String... lines) throws IOException {
        PDDocument document = new PDDocument();
        PDPage page = new PDPage();
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            float top = 700;
            for (String line : lines) {
                content.beginText();
                content.setFont(new PDType1Font(FontName.HELVETICA), 11);
                content.newLineAtOffset(72, top);
                content.showText(line);
                content.endText();
                top -= 16;
            }
        }
        return document;
    }
}
