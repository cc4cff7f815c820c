package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import plumbrow.documents.card.SampleCard;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperReader;
import plumbrow.documents.paper.PaperTrouble;

class PagePictureTest {
    @Test
    void aPageIsDrawnNoLargerThanAsked() throws IOException {
        byte[] pdf = CardPaper.print(SampleCard.card());
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(
                PagePicture.draw(pdf, "card.pdf", 1, 1100).png()));
        assertThat(picture.getHeight()).isBetween(1095, 1101);
        assertThat((double) picture.getWidth() / picture.getHeight()).isBetween(.76, .78);
        BufferedImage large = ImageIO.read(new ByteArrayInputStream(
                PagePicture.draw(pdf, "card.pdf", 1, 90_000).png()));
        assertThat(large.getHeight()).isEqualTo(1584);
        assertThat(dark(picture)).isGreaterThan(1000);
    }

    @Test
    void whatCantBeDrawnIsASentence() {
        byte[] pdf = CardPaper.print(SampleCard.card());
        assertThatThrownBy(() -> PagePicture.draw(pdf, "card.pdf", 2, 900))
                .isInstanceOf(PaperTrouble.class)
                .hasMessage("card.pdf has 1 pages and no page 2.");
        byte[] broken = "%PDF-1.7 nothing".getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> PagePicture.draw(broken, "x.pdf", 1, 900))
                .isInstanceOf(PaperTrouble.class)
                .hasMessageContaining("can't be drawn");
    }

    @Test
    void aPageWithoutAnythingOnItCountsAsAPage() throws IOException {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(CardPaper.print(SampleCard.card()))) {
            PDPage blank = new PDPage();
            document.getPages().insertBefore(blank, document.getPage(0));
            document.addPage(new PDPage());
            document.save(out);
        }
        Paper paper = PaperReader.read(out.toByteArray(), "card.pdf", PaperLimits.USUAL, line -> false);
        assertThat(paper.pages()).hasSize(3);
        assertThat(paper.blankPages()).containsExactly(1, 3);
    }

    private static int dark(BufferedImage picture) {
        int dark = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                dark += (picture.getRGB(x, y) & 0xff) < 100 ? 1 : 0;
            }
        }
        return dark;
    }
}
