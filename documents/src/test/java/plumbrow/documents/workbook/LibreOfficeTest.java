package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbook that LibreOffice opened and saved again is still the same season. */
class LibreOfficeTest {
    private static final int PATIENCE_SECONDS = 180;

    @TempDir
    Path folder;

    @Test
    void savedAgainItIsStillTheSameSeason() throws IOException, InterruptedException {
        Optional<String> soffice = soffice();
        assumeTrue(
                soffice.isPresent(),
                "SKIPPED: LibreOffice is not on the PATH and -Dplumbrow.soffice names none; install libreoffice-calc-nogui");
        Path written = folder.resolve("season.xlsx");
        WorkbookWriter.write(Fixture.season(), written);
        Path saved = folder.resolve("saved");
        Process office = new ProcessBuilder(
                        soffice.get(),
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx",
                        "--outdir",
                        saved.toString(),
                        written.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("soffice.log").toFile())
                .start();
        try {
            assertThat(office.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        } finally {
            office.destroyForcibly();
        }
        assertThat(saved.resolve("season.xlsx"))
                .as(Files.readString(folder.resolve("soffice.log")))
                .exists();
        assertThat(WorkbookReader.read(saved.resolve("season.xlsx"))).isEqualTo(Fixture.season());
    }

    private static Optional<String> soffice() {
        Stream<String> named = Stream.of(System.getProperty("plumbrow.soffice", ""));
        Stream<String> onPath = Arrays.stream(
                        Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
                .map(directory -> directory + File.separator + "soffice");
        return Stream.concat(named, onPath)
                .filter(path -> !path.isEmpty() && Files.isExecutable(Path.of(path)))
                .findFirst();
    }
}
