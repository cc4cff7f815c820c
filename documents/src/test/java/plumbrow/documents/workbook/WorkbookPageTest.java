package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The manual's page says what the code does, and every example in it could be filled in. */
class WorkbookPageTest {
    private static final Path PAGE = Path.of("..", "docs", "workbook.md");

    /** With -Dplumbrow.docs=write, after a column changed, the page is written anew. */
    @Test
    void isThePageInTheManual() throws IOException {
        if (System.getProperty("plumbrow.docs", "").equals("write")) {
            Files.writeString(PAGE, WorkbookPage.markdown());
        }
        assertThat(Files.readString(PAGE))
                .as("docs/workbook.md; run this test with -Dplumbrow.docs=write to write it anew")
                .isEqualTo(WorkbookPage.markdown());
    }

    @Test
    void everyExampleIsOneItsColumnTakes() {
        for (Sheet<?> sheet : Sheets.ALL) {
            for (Column<?> column : sheet.columns()) {
                assertThat(takes(column, column.example()))
                        .as(sheet.name() + " " + column.key() + " " + column.example())
                        .isTrue();
            }
        }
    }

    private static boolean takes(Column<?> column, String text) {
        try {
            column.kind().read(new Cell.Written(text));
            return true;
        } catch (Misread refused) {
            return false;
        }
    }
}
