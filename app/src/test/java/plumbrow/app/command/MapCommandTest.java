package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.field.Feature;
import plumbrow.app.SmallSeason;
import plumbrow.app.book.Book;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.map.MapImport;
import tools.jackson.databind.JsonNode;

@SuppressWarnings("NullAway.Init")
class MapCommandTest {
    /** A creek 100 m west of nothing in particular: it names its field. */
    private static final String CREEK = """
            {"type":"FeatureCollection","features":[{"type":"Feature",
            "properties":{"kind":"stream","name":"Mill Creek","field":"North 80"},
            "geometry":{"type":"LineString","coordinates":[[-43.6,42.0],[-43.6,42.1]]}}]}""";

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2027));
    }

    @Test
    void fieldsAreSaidWithTheirAcres() {
        assertThat(plumbrow("map", "field", "--book", book).good().out()).contains("North 80", "ac written down");
        JsonNode json =
                plumbrow("map", "field", "--book", book, "--json").good().json();
        assertThat(json.get(0).propertyNames())
                .containsExactly(
                        "field",
                        "acres_written",
                        "acres_inside",
                        "state",
                        "county",
                        "counties",
                        "remarks",
                        "surveyed",
                        "around");
    }

    @Test
    void aFeatureComesInAndGoesOutAgain() throws IOException {
        Path file = Files.writeString(folder.resolve("creek.geojson"), CREEK);
        assertThat(plumbrow("map", "import", file, "--book", book).good().out()).contains("Mill Creek", "North 80");
        assertThat(plumbrow("map", "field", "--book", book).good().out()).contains("Mill Creek");
        JsonNode zones = plumbrow(
                        "map", "zones", "--book", book, "--field", "North 80", "--program", "half rate", "--geojson")
                .good()
                .json();
        assertThat(zones.get("type").asString()).isEqualTo("FeatureCollection");
        assertThat(plumbrow("map", "zones", "--book", book, "--field", "North 80")
                        .good()
                        .out())
                .contains("The current label is the law.");
    }

    /** Two programs have the same book open; each brings files of its own. */
    @Test
    void whatTwoProgramsBringAtOneMomentIsAllTakenIn() throws InterruptedException, ExecutionException {
        ExecutorService programs = Executors.newFixedThreadPool(2);
        try (Book one = Book.open(book);
                Book other = Book.open(book)) {
            List<Future<MapImport.Result>> taken = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                Book open = i % 2 == 0 ? one : other;
                String file = "creek-" + i + ".geojson";
                byte[] content = CREEK.replace("Mill Creek", "Creek " + i).getBytes(StandardCharsets.UTF_8);
                taken.add(programs.submit(() -> MapImport.through(open::change, file, MapFile.read(file, content))));
            }
            for (Future<MapImport.Result> each : taken) {
                assertThat(each.get().refused()).isFalse();
            }
            assertThat(one.latestWritten().orElseThrow().ground().features("North 80"))
                    .extracting(Feature::name)
                    .containsExactlyInAnyOrder("Creek 0", "Creek 1", "Creek 2", "Creek 3", "Creek 4", "Creek 5");
        } finally {
            programs.shutdownNow();
        }
    }

    @Test
    void whatFitsNothingLeavesTheBookAsItWas() throws IOException {
        Path file = Files.writeString(folder.resolve("creek.geojson"), CREEK.replace("North 80", "South 80"));
        plumbrow("map", "import", file, "--book", book).refused("there is no field called South 80");
        assertThat(plumbrow("map", "field", "--book", book).good().out()).doesNotContain("Mill Creek");
        plumbrow("map", "import", folder.resolve("none.kml"), "--book", book).refused("can't be read");
        plumbrow("map", "zones", "--book", book, "--field", "North 80", "--program", "none")
                .refused("There is no program 'none' there");
        plumbrow("map", "zones", "--book", book, "--field", "North 80", "--geojson")
                .refused("Name one program");
    }
}
