package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;

/** What is written is read again as it was, to the last digit. */
class RoundTripTest {
    @TempDir
    Path folder;

    @Test
    void aRichSeasonThroughASpreadsheet() {
        assertThat(through(Fixture.season(), folder.resolve("season.xlsx"))).isEqualTo(Fixture.season());
    }

    @Test
    void aRichSeasonThroughAFolder() {
        assertThat(through(Fixture.season(), folder.resolve("season"))).isEqualTo(Fixture.season());
    }

    private static Season through(Season season, Path path) {
        WorkbookWriter.write(season, path);
        return WorkbookReader.read(path);
    }
}
