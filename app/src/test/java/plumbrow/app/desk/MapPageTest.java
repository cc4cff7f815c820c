package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.app.desk.door.TileAddress;
import plumbrow.app.desk.shown.Shown;

/** The map without scripts: what is typed comes in whole or gets a sentence, and nothing typed is lost. */
class MapPageTest {
    private static final String MAP = "/fields/" + Shown.part(DeskSeason.HOME) + "/map";

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

    private java.util.List<Feature> features() {
        return desk.book().season().orElseThrow().ground().features(DeskSeason.HOME);
    }
}
