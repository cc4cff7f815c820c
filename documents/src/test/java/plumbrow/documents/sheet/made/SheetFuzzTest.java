package plumbrow.documents.sheet.made;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;

/**
 * Whatever the bytes, the reader answers with a sheet or with its own sentence. Without JAZZER_FUZZ the made sheets and what
 * was found before are read once; {@code fuzz/run} lets a coverage-guided fuzzer grow more from them.
 */
class SheetFuzzTest {
    private static final int LARGEST = 400_000;

    static Stream<Arguments> texts() {
        return Stream.of(made("plain text", 1), made("plain text", 2), made("plain text", 3));
    }

    static Stream<Arguments> pages() {
        return Stream.of(made("web page", 1), made("web page", 2));
    }

    static Stream<Arguments> papers() {
        return Stream.of(made("two columns, hyphens", 1), made("boxed tables", 1), made("typewriter, leaders", 1));
    }

    private static Arguments made(String house, int seed) {
        House style = Houses.ALL.stream()
                .filter(each -> each.name().equals(house))
                .findFirst()
                .orElseThrow();
        return Arguments.of((Object) SheetMaker.make(style, seed).file());
    }

    @MethodSource("texts")
    @FuzzTest(maxDuration = "2m")
    void text(byte[] file) {
        read(new String(file, StandardCharsets.UTF_8).replace('\0', ' ').getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("pages")
    @FuzzTest(maxDuration = "2m")
    void html(byte[] file) {
        byte[] start = "<html><body>".getBytes(StandardCharsets.UTF_8);
        byte[] page = new byte[start.length + file.length];
        System.arraycopy(start, 0, page, 0, start.length);
        System.arraycopy(file, 0, page, start.length, file.length);
        read(page);
    }

    @MethodSource("papers")
    @FuzzTest(maxDuration = "2m")
    void pdf(byte[] file) {
        read(file);
    }

    private static void read(byte[] file) {
        if (file.length > LARGEST) {
            return;
        }
        try {
            SafetySheet sheet = SheetReader.read(file, "grown");
            for (Reading reading : sheet.account()) {
                assertThat(reading.words()).isNotNull();
            }
        } catch (PaperTrouble trouble) {
            assertThat(trouble.getMessage()).isNotBlank().doesNotContain("\n");
        }
    }
}
