package plumbrow.app.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log of faults has an end. */
@SuppressWarnings("NullAway.Init")
class FaultFileTest {
    @TempDir
    Path folder;

    @Test
    void faults_without_end_fill_a_few_files_and_no_more() throws IOException {
        Path file = folder.resolve("plumbrow.log");
        String trace = "A page could not be shown\n" + "\tat somewhere.in.the.Program\n".repeat(600);
        for (int i = 0; i < 600; i++) {
            assertThat(FaultFile.addText(file, "fault " + i + " " + trace)).contains(file);
        }
        long bound = (FaultFile.KEPT + 1) * (FaultFile.FULL_BYTES + 2L * FaultFile.LONGEST_ENTRY);
        assertThat(bytes()).isLessThan(bound);
        assertThat(Files.readString(file)).contains("fault 599 ");
        assertThat(Files.readString(folder.resolve("plumbrow.log.1"))).doesNotContain("fault 599 ");
    }

    @Test
    void one_entry_has_an_end_too() throws IOException {
        Path file = folder.resolve("plumbrow.log");
        FaultFile.addText(file, "x".repeat(5_000_000));
        assertThat(bytes()).isLessThan(2L * FaultFile.LONGEST_ENTRY);
        assertThat(Files.readString(file)).contains("more signs cut off");
    }

    @Test
    void a_disk_that_takes_nothing_is_no_fault_of_its_own() throws IOException {
        Path noFolder = Files.writeString(folder.resolve("file"), "");
        assertThat(FaultFile.addText(noFolder.resolve("plumbrow.log"), "fault")).isEmpty();
    }

    private long bytes() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.mapToLong(file -> file.toFile().length()).sum();
        }
    }
}
