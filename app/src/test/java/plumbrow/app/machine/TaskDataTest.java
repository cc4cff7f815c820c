package plumbrow.app.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.CellGrid;
import plumbrow.advice.program.Program;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.ratemap.RateMaps;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
import plumbrow.documents.machine.FileBundle;
import plumbrow.documents.machine.GridType;
import plumbrow.documents.machine.TaskData;
import plumbrow.documents.machine.TaskDataVersion;
import tools.jackson.databind.JsonNode;

/** Task data of the demo, read back by a library outside this project. */
class TaskDataTest {
    private static final Season DEMO = DemoBook.season();

    static RateMap map(Season season, String field, String program, int pass, RateMaps.Asked asked) {
        Field its = season.field(field).orElseThrow();
        Program found = season.programs(field).stream()
                .filter(one -> one.name().equals(program))
                .findFirst()
                .orElseThrow();
        return RateMaps.of(season, its, found, pass, asked);
    }

    /** Liquid in furrow, granules and seed on the demo's Levee, beside a pond. */
    private static List<RateMap> maps() {
        return List.of(
                map(DEMO, "Levee", "Single trait, Trenchline in furrow", 2, RateMaps.Asked.USUAL),
                map(DEMO, "Levee", "Single trait, Undersod full rate", 2, RateMaps.Asked.USUAL),
                map(DEMO, "Levee", "Single trait, Undersod full rate", 1, RateMaps.Asked.USUAL));
    }

    /** Two editions, two grid types, three dictionary entries: no warning, and every cell as it was meant. */
    @Test
    void anotherReaderFindsWhatWasWritten(@TempDir Path work) throws IOException, InterruptedException {
        List<RateMap> maps = maps();
        List<Path> zips = new ArrayList<>();
        for (RateMap map : maps) {
            for (TaskDataVersion version : TaskDataVersion.values()) {
                for (GridType type : GridType.values()) {
                    Path zip = work.resolve("task" + zips.size() + ".zip");
                    Files.write(zip, FileBundle.zip(TaskData.files(map, version, type)));
                    zips.add(zip);
                }
            }
        }
        List<JsonNode> found = IndependentReader.read(work, zips);
        assertThat(found).hasSize(12);
        int at = 0;
        for (RateMap map : maps) {
            for (TaskDataVersion version : TaskDataVersion.values()) {
                for (GridType type : GridType.values()) {
                    same(found.get(at++), map, version, type);
                }
            }
        }
        assertThat(found.stream()
                        .flatMap(one -> strings(one.get("ddis")).stream())
                        .distinct())
                .containsExactly("0001", "0006", "000B");
    }

    private static void same(JsonNode found, RateMap map, TaskDataVersion version, GridType type) {
        assertThat(strings(found.get("warnings"))).isEmpty();
        assertThat(found.get("major").asString()).isEqualTo(String.valueOf(version.major()));
        assertThat(found.get("minor").asString()).isEqualTo("3");
        assertThat(found.get("customer").asString()).isEqualTo(map.grower());
        assertThat(found.get("farm").asString()).isEqualTo("Millrace");
        assertThat(found.get("field").asString()).isEqualTo("Levee");
        assertThat(found.get("area").asDouble() / 4046.8564224)
                .isCloseTo(map.acres(), org.assertj.core.api.Assertions.within(1e-3));
        assertThat(found.get("status").asString()).isEqualTo("1");
        assertThat(found.get("fallback").toString()).isEqualTo("[0,0,0]");
        assertThat(strings(found.get("ddis"))).containsExactly(map.metering().setPointDdi());
        assertThat(strings(found.get("products"))).allMatch(name -> name.length() <= 32);
        assertThat(found.get("task").asString()).hasSizeLessThanOrEqualTo(32).startsWith("2026-05-01 pass ");
        assertThat(strings(found.get("polygons")))
                .startsWith("1")
                .filteredOn(kind -> !kind.equals("1"))
                .hasSize(map.clear().size())
                .allMatch(kind -> kind.equals(version == TaskDataVersion.V4 ? "11" : "8"));
        JsonNode grid = found.get("grid");
        CellGrid cells = map.cells().grid();
        assertThat(grid.get("type").asString()).isEqualTo(String.valueOf(type.number()));
        assertThat(grid.get("north").asDouble()).isEqualTo(cells.southDeg());
        assertThat(grid.get("east").asDouble()).isEqualTo(cells.westDeg());
        assertThat(grid.get("high").asDouble()).isEqualTo(cells.highDeg());
        assertThat(grid.get("wide").asDouble()).isEqualTo(cells.wideDeg());
        assertThat(grid.get("rows").asInt()).isEqualTo(cells.rows());
        assertThat(grid.get("columns").asInt()).isEqualTo(cells.columns());
        assertThat(found.get("cells").size()).isEqualTo(cells.cells());
        for (int i = 0; i < cells.cells(); i++) {
            int code = map.cells().at(i);
            int value = found.get("cells").get(i).asInt();
            assertThat(value).isEqualTo(type == GridType.ZONES ? code : map.steps(code));
        }
        Map<Integer, Integer> zones = new java.util.HashMap<>();
        found.get("zones")
                .forEach(zone ->
                        zones.put(zone.get("code").asInt(), zone.get("value").asInt()));
        assertThat(zones).containsEntry(0, 0);
        if (type == GridType.ZONES) {
            map.parts().forEach(part -> assertThat(zones).containsEntry(part.code(), part.steps()));
        }
    }

    private static List<String> strings(JsonNode list) {
        List<String> strings = new ArrayList<>();
        list.forEach(one -> strings.add(one.asString()));
        return strings;
    }
}
