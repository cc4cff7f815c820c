package plumbrow.documents.map;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Acres;
import plumbrow.advice.land.Nearness;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Shelf;
import plumbrow.documents.workbook.ground.GeoJson;
import plumbrow.documents.workbook.ground.NoBoundary;

class MapImportTest {
    private static final String HOME = """
            {"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"Name":"home"},"geometry":{"type":"Polygon","coordinates":
              [[[-93.47,42.04],[-93.46,42.04],[-93.46,42.045],[-93.47,42.045],[-93.47,42.04]]]}},
            {"type":"Feature","properties":{"name":"wells","kind":"well"},"geometry":{"type":"MultiPoint","coordinates":
              [[-93.4702,42.041],[-93.4704,42.042]]}},
            {"type":"Feature","properties":{"name":"far creek","kind":"stream"},"geometry":{"type":"LineString","coordinates":
              [[-92,42],[-92,42.1]]}},
            {"type":"Feature","properties":{"name":"Nowhere"},"geometry":{"type":"Polygon","coordinates":
              [[[-93.47,42.04],[-93.46,42.04],[-93.46,42.045],[-93.47,42.04]]]}}]}
            """;

    @Test
    void outlinesAndFeaturesFindTheirFields() {
        MapImport.Result result = read("home.geojson", HOME, season(113.6, "IA", "Story"));
        assertThat(result.wrong()).isFalse();
        assertThat(result.taken()).isEqualTo(3);
        assertThat(result.rows()).extracting(MapImport.Row::field).containsExactly("Home", "Home", "Home", null, null);
        assertThat(result.rows().get(0).says()).contains("Story County, IA");
        Season season = result.season();
        Boundary outline = season.fields().get(0).boundary();
        assertThat(outline).isNotNull();
        assertThat(season.ground().features("Home")).extracting(Feature::name).containsExactly("wells 1", "wells 2");
        Double feet = Nearness.of(outline, season.ground().features().get(0)).feet();
        assertThat(feet).isCloseTo(54, within(2.0));
        assertThat(season.ground().looked()).isEmpty();
    }

    @Test
    void anOutlineInAnotherCountyIsRefusedWhole() {
        MapImport.Result result = read("home.geojson", HOME, season(113.6, "IA", "Polk"));
        assertThat(result.wrong()).isTrue();
        assertThat(result.season()).isEqualTo(season(113.6, "IA", "Polk"));
        assertThat(result.rows())
                .anySatisfy(row -> assertThat(row.says()).contains("Polk, IA; expected Story County, IA"));
    }

    @Test
    void acresThatDontFitAreRefused() {
        MapImport.Result result = read("home.geojson", HOME, season(80, "IA", "Story"));
        assertThat(result.wrong()).isTrue();
        assertThat(result.rows().get(0).says()).contains("80.0 ac are written down");
    }

    @Test
    void kmlWithPinsAndExtendedData() {
        String kml = """
                <kml xmlns="http://www.opengis.net/kml/2.2"><Document>
                <Placemark><name>Home</name><Polygon><outerBoundaryIs><LinearRing><coordinates>
                -93.47,42.04,0 -93.46,42.04,0 -93.46,42.045,0 -93.47,42.045,0 -93.47,42.04,0
                </coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>
                <Placemark><name>old mill</name><ExtendedData><Data name="kind"><value>dwelling</value></Data></ExtendedData>
                <Point><coordinates>-93.4702,42.041</coordinates></Point></Placemark>
                <Placemark><name>creek</name><ExtendedData><SchemaData><SimpleData name="kind">stream</SimpleData></SchemaData>
                </ExtendedData><LineString><coordinates>-93.48,42.041 -93.471,42.042</coordinates></LineString></Placemark>
                </Document></kml>""";
        MapImport.Result result = read("home.kml", kml, season(113.6, "IA", "Story"));
        assertThat(result.rows())
                .extracting(MapImport.Row::field)
                .containsOnly("Home")
                .hasSize(3);
        assertThat(result.season().ground().features())
                .extracting(Feature::kind)
                .containsExactly(FeatureKind.DWELLING, FeatureKind.STREAM);
    }

    /** Going out as GeoJSON and coming in again changes nothing but the rounding of the outline's digits. */
    @Test
    void outAndInAgain() throws NoBoundary {
        Season season = read("home.geojson", HOME, season(113.6, "IA", "Story")).season();
        Field home = season.fields().get(0);
        String text = MapText.of(home, season.ground().features(), List.of());
        Season again = read("again.json", text, season(113.6, "IA", "Story")).season();
        assertThat(again.fields()).isEqualTo(season.fields());
        assertThat(again.ground().features())
                .extracting(Feature::shape)
                .isEqualTo(
                        season.ground().features().stream().map(Feature::shape).toList());
    }

    @Test
    void whatIsWrittenKeepsTheHandRule() throws NoBoundary {
        Boundary clockwise = GeoJson.read("{\"type\":\"Polygon\",\"coordinates\":[[[0,40],[0,41],[1,41],[1,40],[0,40]],"
                + "[[0.2,40.2],[0.4,40.2],[0.4,40.4],[0.2,40.4],[0.2,40.2]]]}");
        Field field = new Field("A", "F", 1, clockwise, "IA", "X", Crop.CORN, null, null, null, null);
        assertThat(MapText.of(field, List.of(), List.of()))
                .contains("[[[0.0,40.0],[1.0,40.0],[1.0,41.0],[0.0,41.0],[0.0,40.0]]")
                .contains("[[0.2,40.2],[0.2,40.4],[0.4,40.4],[0.4,40.2],[0.2,40.2]]");
        assertThat(Acres.inside(clockwise)).isPositive();
    }

    @Test
    void whatCantBeReadGetsASentence() {
        assertThatThrownBy(() -> MapFile.read("farm.gpx", new byte[0])).hasMessageContaining("expected GeoJSON");
        assertThatThrownBy(() -> MapFile.read("farm.json", "{".getBytes(UTF_8))).hasMessageContaining("GeoJSON");
        assertThatThrownBy(() -> MapFile.read("farm.kml", "<kml".getBytes(UTF_8)))
                .hasMessageContaining("KML");
    }

    private static MapImport.Result read(String name, String text, Season season) {
        return MapImport.into(season, name, MapFile.read(name, text.getBytes(UTF_8)));
    }

    private static Season season(double acres, String state, String county) {
        Field field = new Field("Home", "Farm", acres, null, state, county, Crop.CORN, null, null, null, null);
        return new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "",
                List.of(),
                List.of(field),
                List.of(),
                new Shelf(
                        List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), LabelBook.UNREAD),
                new Pests(List.of(), List.of(), List.of(), List.of()),
                List.of(),
                List.of());
    }
}
