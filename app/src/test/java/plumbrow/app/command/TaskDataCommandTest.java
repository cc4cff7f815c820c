package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.demo.DemoBook;
import plumbrow.documents.machine.RateZones;
import plumbrow.documents.map.MapFile;
import plumbrow.documents.workbook.ground.GeoJsonFile;

@SuppressWarnings("NullAway.Init")
class TaskDataCommandTest {
    private static final String PROGRAM = "No trait, half rate";

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), DemoBook.season());
    }

    private Typed write(Object out, Object... more) {
        Object[] words = new Object[10 + more.length];
        List<Object> first = List.of(
                "task-data", "write", out, "--book", book, "--field", "Creek Bottom", "--program", PROGRAM, "--pass=2");
        System.arraycopy(first.toArray(), 0, words, 0, 10);
        System.arraycopy(more, 0, words, 10, more.length);
        return plumbrow(words);
    }

    @Test
    void aFolderAndAZip() throws IOException {
        Path out = folder.resolve("stick");
        assertThat(write(out, "--edition", "3", "--grid", "1").good().out())
                .contains("115.1 of 117.0 ac get 276.2 lb", "174 rows of 140 cells, 15 ft each.");
        assertThat(out.resolve("TASKDATA/TASKDATA.XML")).content().contains("VersionMajor=\"3\" VersionMinor=\"3\"");
        assertThat(Files.size(out.resolve("TASKDATA/GRD00001.bin"))).isEqualTo(174 * 140);
        write(folder.resolve("stick.zip"), "--json").good();
        write(out).refused("is there already");
        try (var inside = Files.list(folder)) {
            assertThat(inside.filter(path -> path.toString().endsWith(".part"))).isEmpty();
        }
    }

    /** What our own reader finds in the shapefile: the same ground at the same rates, within the digits of the table. */
    @Test
    void aShapefileIsReadBack() {
        Path zip = folder.resolve("rates.zip");
        write(zip, "--as", "shapefile").good();
        List<GeoJsonFile.Feature> shapes = MapFile.read(zip);
        assertThat(shapes).extracting(shape -> shape.property("zone")).containsExactly("Kept clear", "Planned rate");
        assertThat(shapes).extracting(shape -> shape.property("lb_ac")).containsExactly("0.000000", "2.400000");
        assertThat(shapes).extracting(shape -> shape.property("product")).containsOnly("Undersod G");
        assertThat(RateZones.read("rates.zip", shapes)).hasSize(2);
        Path again = folder.resolve("again.zip");
        assertThat(write(again, "--zones", zip).good().out()).contains("276.2 lb");
    }

    @Test
    void zonesBearTheirOwnRate() throws IOException {
        Path zones = Files.writeString(folder.resolve("zones.geojson"), """
                {"type":"FeatureCollection","features":[{"type":"Feature","properties":{"name":"knoll","rate":4.8,"unit":"lb/ac"},
                "geometry":{"type":"Polygon","coordinates":[[[-43.61,42.353],[-43.608,42.353],[-43.608,42.354],
                [-43.61,42.354],[-43.61,42.353]]]}}]}""");
        assertThat(write(folder.resolve("a.zip"), "--zones", zones).good().out())
                .contains("knoll");
        Path oz = Files.writeString(
                folder.resolve("oz.geojson"), Files.readString(zones).replace("lb/ac", "fl oz/ac"));
        write(folder.resolve("b.zip"), "--zones", oz).refused("Zone knoll is given in fl oz/ac");
        Path far = Files.writeString(
                folder.resolve("far.geojson"), Files.readString(zones).replace("4.8", "480"));
        Typed barred = write(folder.resolve("c.zip"), "--zones", far);
        assertThat(barred.code()).isEqualTo(1);
        assertThat(barred.err()).contains("Barred at 480 lb/ac");
        assertThat(folder.resolve("c.zip")).doesNotExist();
    }

    @Test
    void whatCannotBeIsSaid() {
        write(folder.resolve("a.zip"), "--edition", "2").refused("expected 3 or 4");
        write(folder.resolve("a.zip"), "--as", "kml").refused("expected task-data, shapefile or geojson");
        write(folder.resolve("a.txt"), "--as", "geojson").refused("expected one that ends in .geojson");
        write(folder.resolve("a.zip"), "--cell", "0").refused("expected 3 to 5,280 ft");
        write(folder.resolve("no/such/a.zip")).refused("its folder does not exist");
        write(folder.resolve("a.zip"), "--zones", folder.resolve("none.geojson"))
                .refused("can't be read");
        plumbrow("task-data", "write", folder.resolve("a.zip"), "--book", book, "--field", "South Slough")
                .refused("No outline of South Slough is drawn");
        plumbrow("task-data").refused("Say what to do with task data");
        assertThat(folder.resolve("a.zip")).doesNotExist();
    }
}
