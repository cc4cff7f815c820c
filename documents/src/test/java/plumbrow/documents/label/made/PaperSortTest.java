package plumbrow.documents.label.made;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.reading.PaperSort;

/** A label is told from a safety sheet by what it says. */
class PaperSortTest {
    @TempDir
    Path folder;

    @Test
    void everyMadeLabelIsALabelAndReadsTheSame() throws IOException {
        for (Layout layout : Layout.ALL) {
            MadeLabel made = LabelMaker.make(layout, 1);
            Path file = Files.write(folder.resolve(made.fileName()), made.file());
            Paper paper = PaperSort.read(file, PaperLimits.USUAL);
            assertThat(PaperSort.of(paper)).as(made.fileName()).isEqualTo(PaperSort.LABEL);
            assertThat(LabelReader.read(paper)).isEqualTo(LabelReader.read(made.file(), made.fileName()));
        }
    }

    @Test
    void aSheetThatQuotesALabelIsASheet() throws IOException {
        String sheet = """
                SAFETY DATA SHEET

                SECTION 1: IDENTIFICATION
                Product name: Larkfield 4L

                SECTION 15: REGULATORY INFORMATION
                Keep out of reach of children. Directions for use stand on the label.
                """;
        Path file = Files.write(folder.resolve("sheet.txt"), sheet.getBytes(StandardCharsets.UTF_8));
        assertThat(PaperSort.of(PaperSort.read(file, PaperLimits.USUAL))).isEqualTo(PaperSort.SHEET);
    }
}
