package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.SmallSeason;
import plumbrow.app.book.Book;
import plumbrow.app.demo.DemoBook;

@SuppressWarnings("NullAway.Init")
class DemoCommandTest {
    @TempDir
    Path folder;

    @Test
    void onceMakesEverything() throws IOException {
        Path demo = folder.resolve("demo");
        String out = plumbrow("demo", "--once", "--folder", demo).good().out();
        assertThat(out.lines().findFirst())
                .hasValueSatisfying(line -> assertThat(line).contains("18 fields"));
        assertThat(out).contains("The farms, people and products are invented.");
        try (Book book = Book.open(demo.resolve("demo.book"))) {
            assertThat(book.latestWritten()).contains(DemoBook.season());
        }
        for (String name : new String[] {
            "binder-l-brandvold.pdf", "binder-r-castell.pdf", "advice-j-halvorsrud.xlsx", "workbook/fields.csv"
        }) {
            assertThat(Files.size(demo.resolve(name))).isPositive();
        }
        assertThat(plumbrow("workbook", "check", demo.resolve("workbook"))
                        .good()
                        .out())
                .contains("can be used");
    }

    @Test
    void aDemoBookThatIsThereIsUsedAsItStands() throws IOException {
        Path book = SmallBook.of(folder.resolve("demo.book"), SmallSeason.of(2027));
        byte[] before = Files.readAllBytes(book);
        assertThat(plumbrow("demo", "--once", "--folder", folder).good().out()).startsWith("North 80: ");
        assertThat(Files.readAllBytes(book)).isEqualTo(before);
    }

    @Test
    void aFolderThatHoldsSomethingElseIsLeftAlone() throws IOException {
        Path workbook = Files.createDirectories(folder.resolve("demo/workbook"));
        Path mine = Files.writeString(workbook.resolve("fields.csv"), "mine");
        plumbrow("demo", "--once", "--folder", folder.resolve("demo")).refused(workbook + " is there already");
        assertThat(mine).hasContent("mine");
        plumbrow("demo", "--once", "--folder", mine).refused("can't be written to");
        plumbrow("demo", "--port", 70_000).refused("The port is 70000; expected 0 to 65535.");
    }
}
