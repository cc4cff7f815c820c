package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.card.SampleCard;

@SuppressWarnings("NullAway.Init")
class CardPaperTest {
    @TempDir
    Path folder;

    @Test
    void oneCardIsOnePageWithWhatMattersWhole() throws IOException {
        Path pdf = folder.resolve("card.pdf");
        CardPaper.write(SampleCard.card(), pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(text(document))
                    .contains("Furrowgate 4 EC", "Barrier laminate or butyl rubber gloves.", "1-800-222-1222")
                    .contains(
                            "REPORT it",
                            "Beside everyday substances",
                            "The current label is the law.",
                            "unknown; look up")
                    .doesNotContain("□");
        }
    }

    @Test
    void longTextsAreCutBeforeFirstAidIs() throws IOException {
        ProductCard card = SampleCard.wordy();
        try (PDDocument document = Loader.loadPDF(CardPaper.print(card))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(text(document))
                    .contains("(read on there)", "Do not make the person vomit")
                    .doesNotContain("away from feed");
        }
    }

    @Test
    void theSameCardIsTheSameFileAndAFolderThatIsNotThereIsASentence() {
        assertThat(CardPaper.print(SampleCard.card())).isEqualTo(CardPaper.print(SampleCard.card()));
        assertThatThrownBy(() -> CardPaper.write(SampleCard.card(), folder.resolve("no/card.pdf")))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("its folder does not exist");
        assertThat(Files.exists(folder.resolve("no"))).isFalse();
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
}
