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

/** A label on the command line: told from a sheet, said value by value, and never taken for more than a proposal. */
class ReadLabelTest {
    private static final String LABEL = """
            EPA Reg. No. 12345-67
            KEEP OUT OF REACH OF CHILDREN
            CAUTION

            DIRECTIONS FOR USE
            It is a violation of Federal law to use this product in a manner inconsistent with its labeling.

            AGRICULTURAL USE REQUIREMENTS
            The restricted-entry interval (REI) is 12 hours.

            CORN
            Apply 22 to 32 fl oz/A postemergence.
            Do not apply more than 64 fl oz/A per year.
            Do not apply more than 96 fl oz/A per year.
            """;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void written() throws IOException {
        file = Files.writeString(folder.resolve("paper.txt"), LABEL);
    }

    @Test
    void isToldFromASheetAndSaid() {
        String said = plumbrow("read", file.toString()).good().out();
        assertThat(said)
                .contains("label, 1 page", "12345-67", "CAUTION", "12 h", "22–32 fl oz/ac on CORN postemergence")
                .contains("(contradicted) CORN: ≤ 64 fl oz/ac per year")
                .contains("proposals until a person", "not stated:", "Pre-harvest interval");
    }

    @Test
    void asJsonWithWordsAndBoxes() {
        JsonNode label =
                plumbrow("read", "--json", file.toString()).good().json().get(0);
        assertThat(label.get("paper").stringValue()).isEqualTo("label");
        JsonNode rate = StreamSupport.stream(label.get("values").spliterator(), false)
                .filter(value -> value.get("says").stringValue().startsWith("22–32"))
                .findFirst()
                .orElseThrow();
        assertThat(rate.get("words").stringValue()).isEqualTo("Apply 22 to 32 fl oz/A postemergence.");
        assertThat(rate.get("page").intValue()).isEqualTo(1);
        assertThat(rate.get("marks").size()).isEqualTo(1);
    }

    @Test
    void asWhatThePersonSays() {
        assertThat(plumbrow("read", "--as", "sheet", file.toString()).good().out())
                .contains("0 of 16 sections");
        plumbrow("read", "--as", "poem", file.toString()).misused("neither label nor sheet");
    }
}
