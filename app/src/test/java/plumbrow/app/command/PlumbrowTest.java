package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.app.SmallSeason;

class PlumbrowTest {
    @Test
    void withoutACommandItSaysWhatCommandsThereAre() {
        String out = plumbrow().good().out();
        assertThat(out)
                .contains(
                        "weigh",
                        "check",
                        "figure",
                        "data",
                        "workbook",
                        "book",
                        "binder",
                        "demo",
                        "serve",
                        "Exit: 0 good");
        assertThat(plumbrow("--help").good().out()).isEqualTo(out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"weigh", "check", "figure", "data", "workbook", "book", "binder", "demo", "serve"})
    void everyCommandHasHelp(String command) {
        assertThat(plumbrow(command, "--help").good().out())
                .startsWith("Usage: plumbrow " + command)
                .contains("Exit: ");
    }

    @Test
    void theVersionIsSaid() {
        assertThat(plumbrow("--version").good().out()).startsWith("Plumbrow ");
    }

    @Test
    void anUnknownCommandIsMisuse() {
        plumbrow("wiegh").misused("wiegh");
    }

    @Test
    void aFaultOfItsOwnIsOneSentenceAndGoesToTheFile(@TempDir Path folder) {
        Path book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2027));
        Path log = folder.resolve("plumbrow.log");
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        DeskDoor broken = (file, port) -> {
            throw new IllegalStateException("hinge");
        };
        String usual = System.setProperty("plumbrow.log", log.toString());
        try {
            Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), false);
            int code = Commands.run(new String[] {"serve", "--book", book.toString()}, screen, broken);
            assertThat(code).isEqualTo(2);
        } finally {
            System.setProperty("plumbrow.log", usual == null ? "" : usual);
        }
        assertThat(err.toString().strip())
                .isEqualTo("Plumbrow came upon a fault of its own and stopped; the details are in " + log + ".");
        assertThat(out.toString()).isEmpty();
        assertThat(log).content().contains("hinge", "\tat ");
    }
}
