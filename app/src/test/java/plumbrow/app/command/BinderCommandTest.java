package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.SmallSeason;

@SuppressWarnings("NullAway.Init")
class BinderCommandTest {
    @TempDir
    Path folder;

    @Test
    void pagesOrSpreadsheetByName() throws IOException {
        Path book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2027));
        Path pages = folder.resolve("out.PDF");
        assertThat(plumbrow("binder", pages, "--book", book).good().out())
                .contains("The binder for 2027 is in " + pages);
        assertThat(new String(Files.readAllBytes(pages), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        Path sheet = folder.resolve("out.xlsx");
        assertThat(plumbrow("binder", sheet, "--book", book, "--json")
                        .good()
                        .json()
                        .get("fields")
                        .intValue())
                .isEqualTo(1);
        assertThat(new String(Files.readAllBytes(sheet), 0, 2, StandardCharsets.US_ASCII))
                .isEqualTo("PK");
    }

    @Test
    void otherNamesAndFoldersAreRefused() {
        Path book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2027));
        plumbrow("binder", folder.resolve("out.doc"), "--book", book).refused("ends in .pdf or .xlsx");
        plumbrow("binder", folder.resolve("no/out.pdf"), "--book", book).refused("its folder does not exist");
        plumbrow("binder", "--book", book).misused("OUT");
        plumbrow("binder", folder.resolve("out.pdf"), "--book", book, "--farm", "Nowhere")
                .refused("There is no farm 'Nowhere' in 2027; the farms are Alder Home.");
        plumbrow("binder", folder.resolve("out.pdf"), "--book", book, "--field", "Nowhere")
                .refused("There is no field 'Nowhere'");
        plumbrow("binder", folder.resolve("out.pdf"), "--book", folder.resolve("none.book"))
                .refused("There is no book");
    }
}
