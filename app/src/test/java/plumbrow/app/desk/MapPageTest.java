package plumbrow.app.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.app.desk.door.TileAddress;
import plumbrow.app.desk.shown.Shown;

/** The map without scripts: what is typed comes in whole or gets a sentence, and nothing typed is lost. */
class MapPageTest {
    private static final String MAP = "/fields/" + Shown.part(DeskSeason.HOME) + "/map";

    private static final String WELL = """
            {"type":"FeatureCollection","features":[{"type":"Feature",
            "properties":{"kind":"well","name":"NAME","field":"%s"},
            "geometry":{"type":"Point","coordinates":[-94.7003,41.03]}}]}""".formatted(DeskSeason.HOME);

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeEach
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027));
        visitor = new Visitor(desk);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void a_typed_creek_is_measured_and_stands_in_the_book() {
        visitor.get(MAP);
        Visitor.Page page = visitor.post(
                MAP,
                Map.of(
                        "kind", "stream",
                        "called", "Mill Creek",
                        "form", "line",
                        "places", "41.0290, -94.7003\n41.0380, -94.7003",
                        "source", "walked"));
        assertThat(page.status()).isEqualTo(302);
        assertThat(features()).singleElement().satisfies(feature -> {
            assertThat(feature.kind()).isEqualTo(FeatureKind.STREAM);
            assertThat(feature.shape()).isInstanceOf(Feature.Line.class);
            assertThat(feature.nearestFt()).isNull();
        });
        String text = visitor.get(MAP).text();
        assertThat(text).contains("Mill Creek").contains("The distance is measured on the map.");
        assertThat(visitor.get(MAP + "?kind=stream&feature=Mill%20Creek").body())
                .contains("41.029, -94.7003");
        visitor.post(MAP + "/remove", Map.of("kind", "stream", "feature", "Mill Creek"));
        assertThat(features()).isEmpty();
    }

    @Test
    void what_cant_be_used_gets_a_sentence_and_stays_typed() {
        visitor.get(MAP);
        Visitor.Page page = visitor.post(
                MAP, Map.of("kind", "well", "called", "old <well>", "form", "point", "places", "41.03 north"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("Line 1 is “41.03 north”; expected latitude, longitude in degrees");
        assertThat(page.body()).contains("old &lt;well").contains("41.03 north");
        assertThat(features()).isEmpty();
    }

    @Test
    void an_outline_that_can_t_be_the_field_s_is_refused() {
        visitor.get(MAP);
        Visitor.Page page = visitor.post(
                MAP,
                Map.of("kind", "outline of the field", "form", "area", "places", "41,-94\n41,-93\n42,-93\n42,-94"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("expected them within 10 %");
    }

    @Test
    void every_field_is_on_the_map_of_all() {
        assertThat(visitor.get("/map").text()).contains(DeskSeason.HOME, "inside the outline", "no outline on file");
    }

    @Test
    void programs_get_the_same() {
        assertThat(visitor.get("/api/map").body()).contains("\"acres_inside\"");
        Visitor.Page shapes = visitor.get("/api" + MAP + ".geojson");
        assertThat(shapes.header("Content-Type")).startsWith("application/geo+json");
        assertThat(shapes.body()).contains("\"part\":\"field\"");
        assertThat(visitor.get("/api/fields/none/zones").status()).isEqualTo(404);
    }

    /** Each brings a thing of its own; whatever comes first, the other one is still taken into what that left. */
    @Test
    void files_that_come_at_one_moment_are_all_taken_in() throws InterruptedException, ExecutionException {
        ExecutorService many = Executors.newFixedThreadPool(4);
        try {
            List<Future<Integer>> answers = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                String well = WELL.replace("NAME", "well " + i);
                answers.add(many.submit(() -> send("application/geo+json", well).getStatus()));
            }
            for (Future<Integer> answer : answers) {
                assertThat(answer.get()).isEqualTo(200);
            }
        } finally {
            many.shutdownNow();
        }
        assertThat(features())
                .extracting(Feature::name)
                .containsExactlyInAnyOrder(
                        "well 0", "well 1", "well 2", "well 3", "well 4", "well 5", "well 6", "well 7");
    }

    @Test
    void programs_bring_map_files_whole_or_not_at_all() throws Exception {
        assertThat(send("application/json", WELL).getContentAsString()).contains("\"field\" : \"" + DeskSeason.HOME);
        assertThat(features()).singleElement().extracting(Feature::source).isEqualTo("farm.geojson");
        MockHttpServletResponse unknown = send("application/geo+json", WELL.replace(DeskSeason.HOME, "no such field"));
        assertThat(unknown.getStatus()).isEqualTo(422);
        assertThat(unknown.getContentAsString()).contains("Nothing of farm.geojson was taken in", "no such field");
        assertThat(send("application/geo+json", WELL.replace("-94.7003,41.03", "-94.7003,14.03"))
                        .getContentAsString())
                .contains("expected within 25 miles of " + DeskSeason.HOME);
        assertThat(send("application/geo+json", "{").getStatus()).isEqualTo(422);
        assertThat(send("application/zip", "no zip").getStatus()).isEqualTo(422);
        assertThat(send("text/plain", WELL).getStatus()).isEqualTo(403);
        assertThat(features()).hasSize(1);
    }

    private MockHttpServletResponse send(String type, String content) throws Exception {
        return visitor.mvc()
                .perform(post("/api/map?name=farm").contentType(type).content(content.getBytes(UTF_8)))
                .andReturn()
                .getResponse();
    }

    @Test
    void pictures_come_from_the_one_host_that_is_named_or_from_none() {
        assertThat(TileAddress.of("https://tiles.example/{z}/{x}/{y}.png").host())
                .contains("https://tiles.example");
        assertThat(TileAddress.of("http://tiles.example/{z}/{x}/{y}.png").host())
                .isEmpty();
        assertThat(TileAddress.of("https://tiles.example/{z}/{x}/{y}.png; script-src *")
                        .host())
                .isEmpty();
        assertThat(TileAddress.of(null).host()).isEmpty();
        assertThat(visitor.get(MAP).header("Content-Security-Policy")).doesNotContain("img-src");
    }

    private List<Feature> features() {
        return desk.book().season().orElseThrow().ground().features(DeskSeason.HOME);
    }
}
