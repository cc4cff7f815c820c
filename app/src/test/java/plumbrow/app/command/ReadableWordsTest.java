package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.ReadableText;
import plumbrow.app.demo.DemoBook;

/** What the terminal and the papers of the demo say, as a person reads it. Numbers that a figure answers are a working of their own. */
@SuppressWarnings("NullAway.Init")
class ReadableWordsTest {
    /** Money to the cent in a column of dollars: every digit of it is meant. */
    private static final String CENTS = "(?m)(?<=\\s)\\d{1,3}\\.\\d\\d(?=\\s|$)";

    @TempDir
    Path folder;

    @Test
    @DisplayName(
            "No command and no paper of the demo has an exponent, more than four digits outside a working, a plural of one,"
                    + " a code name or a source that is not written out")
    void wordsReadAsAPersonWrites() throws IOException {
        Path book = SmallBook.of(folder.resolve("demo.book"), DemoBook.season());
        Set<String> wrong = new TreeSet<>();
        look(wrong, "check", plumbrow("check", "--book", book).out());
        look(
                wrong,
                "weigh",
                plumbrow("weigh", "--book", book, "--field", "Airport").good().out());
        look(
                wrong,
                "next",
                plumbrow("next", "--book", book, "--field", "Airport").good().out());
        look(wrong, "today", plumbrow("today", "--book", book).good().out());
        look(wrong, "log list", plumbrow("log", "list", "--book", book).good().out());
        look(
                wrong,
                "figure",
                plumbrow("figure", "handler-equipment", "skin=II", "inhalation=III", "eye=II")
                        .good()
                        .out());
        Path pdf = folder.resolve("check.pdf");
        plumbrow("check", "--book", book, "--pdf", pdf);
        try (PDDocument paper = Loader.loadPDF(pdf.toFile())) {
            look(wrong, "check.pdf", new PDFTextStripper().getText(paper));
        }
        assertThat(wrong).isEmpty();
    }

    private static void look(Set<String> wrong, String where, String text) {
        assertThat(text).as(where).isNotBlank();
        ReadableText.faults(text.replaceAll(CENTS, "")).forEach(fault -> wrong.add(where + ": " + fault));
    }
}
