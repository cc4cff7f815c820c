package plumbrow.app.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.mock.web.MockHttpServletResponse;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.map.MapFile;

/** The machine file on the desk: shown, handed out, made with zones; each thing that can't be gets its sentence and status. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class MachinePageTest {
    private static final String CREEK = "?program=" + Shown.part("No trait, half rate") + "&pass=2";
    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(DemoBook.season());
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    @Test
    void the_page_says_what_goes_where() {
        Visitor.Page page = visitor.get("/fields/Creek%20Bottom/machine" + CREEK);
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text())
                .contains("115.1 of 117.0 ac get 276.2 lb")
                .contains("Undersod G keeps 20 ft from ditch field ditch")
                .contains("What else lies around Creek Bottom is unknown");
    }

    @Test
    void the_load_card_leads_to_it() {
        assertThat(visitor.get("/fields/Creek%20Bottom/mix" + CREEK).body())
                .contains("/fields/Creek%20Bottom/machine?program=");
    }

    @Test
    void files_of_each_kind_come() {
        String address = "/api/fields/Creek%20Bottom/machine-file" + CREEK;
        for (String kind : new String[] {"task-data", "shapefile"}) {
            Visitor.Page page = visitor.get(address + "&as=" + kind);
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.header("Content-Type")).isEqualTo("application/zip");
            assertThat(page.header("Content-Disposition")).contains(".zip");
        }
        Visitor.Page shapes = visitor.get(address + "&as=geojson");
        assertThat(shapes.header("Content-Type")).startsWith("application/geo+json");
        assertThat(MapFile.read("rates.geojson", shapes.body().getBytes(UTF_8))).hasSize(2);
    }

    @Test
    void what_cannot_be_is_said() {
        says("South%20Slough/machine-file", 422, "No outline of South Slough is drawn");
        says("Levee/machine-file?pass=1&edition=5", 422, "expected 3 or 4");
        says("Levee/machine-file?pass=1&grid=0", 422, "expected 1 (a zone in each cell) or 2");
        says("Levee/machine-file?pass=1&as=kml", 422, "expected task-data, shapefile or geojson");
        says("Levee/rate-map?pass=x", 422, "expected the number of a pass");
        says("Levee/rate-map?cell=1,5", 422, "expected feet as a number");
        says("Levee/rate-map?cell=1", 422, "expected 3 to 5,280 ft");
        says("Levee/rate-map?unread=-1", 422, "expected 0 to 5,280 ft");
        says("Levee/rate-map?program=none", 422, "There is no program 'none'");
        says("Nowhere/rate-map", 404, "There is no field called “Nowhere”");
        says("Airport/rate-map?program=" + Shown.part("Sweepline at R3") + "&pass=2", 409, "Barred");
        assertThat(visitor.get("/fields/South%20Slough/machine").status()).isEqualTo(200);
        assertThat(visitor.get("/fields/South%20Slough/machine").text())
                .contains("No outline of South Slough is drawn");
        assertThat(visitor.get("/fields/Levee/machine?pass=1&cell=abc").status())
                .isEqualTo(422);
    }

    private void says(String address, int status, String sentence) {
        Visitor.Page page = visitor.get("/api/fields/" + address);
        assertThat(page.status()).as(address).isEqualTo(status);
        assertThat(page.header("Content-Type")).startsWith("application/json");
        assertThat(page.body()).contains(sentence);
    }

    /** Its own GeoJSON comes back as zones and gives the same rates. */
    @Test
    void zones_come_in_the_body() throws Exception {
        String address = "/api/fields/Creek%20Bottom/machine-file" + CREEK + "&as=geojson";
        String own = visitor.get(address).body();
        MockHttpServletResponse answer = zoned(address, "application/geo+json", own);
        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString(UTF_8)).contains("\"lb_ac\":2.4", "\"zone\":\"Kept clear\",\"code\":1");
        assertThat(zoned(address, "application/geo+json", own.replace("2.4", "\"2,4\""))
                        .getContentAsString(UTF_8))
                .contains("the rate is “2,4”; expected a number of zero or more");
        assertThat(zoned(address, "application/geo+json", own.replace("lb_ac", "colour"))
                        .getContentAsString(UTF_8))
                .contains("it bears no rate");
        // What no map file is does not pass the door.
        assertThat(zoned(address, "application/pdf", own).getStatus()).isEqualTo(403);
        assertThat(zoned(address, "application/geo+json", "").getStatus()).isEqualTo(422);
    }

    private MockHttpServletResponse zoned(String address, String type, String body) throws Exception {
        return visitor.mvc()
                .perform(post(java.net.URI.create(address)).contentType(type).content(body.getBytes(UTF_8)))
                .andReturn()
                .getResponse();
    }
}
