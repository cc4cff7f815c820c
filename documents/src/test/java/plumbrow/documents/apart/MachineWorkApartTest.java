package plumbrow.documents.apart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.machine.log.MachineWork;
import plumbrow.documents.paper.PaperTrouble;

/** What machines wrote goes through the other process whole, and so do the sentences on what can't be read. */
@SuppressWarnings("NullAway.Init")
class MachineWorkApartTest {
    @TempDir
    Path folder;

    @Test
    void aTableAndSentences() throws IOException {
        Path table = Files.writeString(folder.resolve("a.csv"), "AREA,gal_ac,time\n2,15,2026-05-20 08:00\n");
        Path text = Files.writeString(folder.resolve("a.zip"), "no zip");
        try (ApartReader reader = new ApartReader()) {
            MachineWork work =
                    reader.machineWork(table, Map.of("area_ac", "AREA")).works().get(0);
            assertThat(work.acres()).isEqualTo(2);
            assertThat(work.totals().get(0).amount()).isEqualTo(30);
            assertThat(work.end()).isEqualTo(work.start()).isNotNull();
            assertThatThrownBy(() -> reader.machineWork(table, Map.of()))
                    .isInstanceOf(PaperTrouble.class)
                    .hasMessageContaining("does not tell the ground");
            assertThatThrownBy(() -> reader.machineWork(text, Map.of())).hasMessageContaining("no sound zip file");
            assertThatThrownBy(() -> reader.machineWork(folder.resolve("none"), Map.of()))
                    .hasMessageContaining("There is no file");
        }
    }
}
