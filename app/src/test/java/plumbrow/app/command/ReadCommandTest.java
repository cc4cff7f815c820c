package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

@SuppressWarnings("NullAway.Init")
class ReadCommandTest {
    @TempDir
    Path folder;

    private Path sheet;

    @BeforeEach
    void write() throws IOException {
        sheet = folder.resolve("sheet.txt");
        Files.writeString(sheet, """
                SECTION 1: IDENTIFICATION
                Product name: Larkfield 4L
                SECTION 9: PHYSICAL AND CHEMICAL PROPERTIES
                Flash point: > 93 °C closed cup
                pH: Not determined
                Vapour pressure: 2.9 x 10-7 mm Hg at 25 °C
                """);
    }

    @Test
    void saysValuesWithTheirPageAndWhatIsMissing() {
        String out = plumbrow("read", sheet).good().out();
        assertThat(out).contains("Larkfield 4L", "> 93 °C, closed cup", "2.9E-7 mmHg at 25 °C");
        assertThat(out).contains("the sheet says: Not determined");
        assertThat(out).contains("not stated:", "Signal word", "sections left out:", "Transport information");
    }

    @Test
    void jsonHasPartsWordsAndBoxes() {
        JsonNode read = plumbrow("read", sheet, "--json").good().json().get(0);
        JsonNode flash = StreamSupport.stream(read.get("values").spliterator(), false)
                .filter(value -> value.get("kind").asString().equals("flash point"))
                .findFirst()
                .orElseThrow();
        assertThat(flash.get("state").asString()).isEqualTo("stated");
        assertThat(flash.get("content").get("amount").get("low").asDouble()).isEqualTo(93);
        assertThat(flash.get("page").asInt()).isEqualTo(1);
        assertThat(flash.get("marks").get(0).get("box").has("left")).isTrue();
    }

    @Test
    void oneBadFileDoesNotKeepTheOthers() throws IOException {
        Path bad = folder.resolve("bad.pdf");
        Files.writeString(bad, "%PDF-1.7\nnothing more");
        Typed both = plumbrow("read", bad, sheet);
        assertThat(both.code()).isZero();
        assertThat(both.err()).contains("bad.pdf is broken or cut off");
        assertThat(both.out()).contains("Larkfield 4L");
        plumbrow("read", bad).refused("bad.pdf is broken or cut off");
        plumbrow("read", folder.resolve("none.pdf")).refused("There is no file");
    }
}
