package plumbrow.documents.sheet.made;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** How well made sheets are read. */
class ReadingQualityTest {
    private static final Path PAGE = Path.of("..", "docs", "reading.md");

    /** A folder that keeps the made sheets, for the benchmark. */
    private static final String MADE = System.getProperty("plumbrow.made", "");

    private static final int EACH = 4;

    /** Lots from here on were not looked at while the reader was made. */
    private static final int UNSEEN = 3001;

    private static final int EACH_FOR_PAGE = 20;
    private static final int MIXED_FOR_PAGE = 60;

    private static void add(MadeSheet made, Score score) throws IOException {
        if (!MADE.isEmpty()) {
            Files.write(Path.of(MADE, made.fileName()), made.file());
        }
        score.add(made);
    }

    /** With -Dplumbrow.docs=write the page in the manual is measured anew, on twenty sheets of each house. */
    @Test
    void valuesAndSections() throws IOException {
        boolean write = System.getProperty("plumbrow.docs", "").equals("write");
        boolean many = write || !MADE.isEmpty();
        Score score = new Score();
        for (House house : Houses.ALL) {
            for (int seed = 1; seed <= (many ? EACH_FOR_PAGE : EACH); seed++) {
                add(SheetMaker.make(house, seed), score);
            }
        }
        for (int seed = UNSEEN; seed < UNSEEN + (many ? MIXED_FOR_PAGE : EACH); seed++) {
            add(SheetMaker.make(Houses.mixed(seed), seed), score);
        }
        if (write) {
            Files.writeString(PAGE, ReadingPage.markdown(score));
        }
        String slips = String.join("\n", score.slips);
        assertThat(score.all.precision()).as(slips).isGreaterThanOrEqualTo(.99);
        assertThat(score.all.recall()).as(slips).isGreaterThanOrEqualTo(.97);
        assertThat(score.sections.recall()).as(slips).isGreaterThanOrEqualTo(.99);
    }
}
