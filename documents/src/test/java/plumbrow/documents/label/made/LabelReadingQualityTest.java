package plumbrow.documents.label.made;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** How well made labels are read. */
class LabelReadingQualityTest {
    private static final Path PAGE = Path.of("..", "docs", "reading-labels.md");
    private static final int EACH = 3;
    private static final int EACH_FOR_PAGE = 12;

    /** With -Dplumbrow.docs=write the page in the manual is measured anew, on twelve labels of each layout. */
    @Test
    void values() throws IOException {
        boolean write = System.getProperty("plumbrow.docs", "").equals("write");
        Score score = new Score();
        for (Layout layout : Layout.ALL) {
            for (int seed = 1; seed <= (write ? EACH_FOR_PAGE : EACH); seed++) {
                score.add(LabelMaker.make(layout, seed));
            }
        }
        if (write) {
            Files.writeString(PAGE, LabelReadingPage.markdown(score));
        }
        String slips = String.join("\n", score.slips);
        assertThat(score.all.precision()).as(slips).isGreaterThanOrEqualTo(.99);
        assertThat(score.all.recall()).as(slips).isGreaterThanOrEqualTo(.97);
    }
}
