package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.land.Acres;
import plumbrow.documents.workbook.ground.GeoJson;
import plumbrow.documents.workbook.ground.NoBoundary;

/** Areas against published ones, and shapes that are no field. */
class AcresTest {
    private static final double SQUARE_METRES_PER_ACRE = 4_046.856_422_4;

    /** Example in the documentation of geographiclib-rs, struct PolygonArea: 12 308 778 361.469452 m². */
    @Test
    void oneDegreeSquareAtTheEquator() throws NoBoundary {
        Boundary square = GeoJson.read("{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,0],[1,1],[0,1],[0,0]]]}");
        assertThat(Acres.inside(square) * SQUARE_METRES_PER_ACRE).isCloseTo(12_308_778_361.469452, within(1e-3));
    }

    /**
     * A square section, one statute mile on a side, is 640 acres. Its corners here are laid out from the radii of
     * curvature of the WGS 84 ellipsoid (a = 6 378 137 m, 1/f = 298.257 223 563), by hand and not by the library.
     */
    @Test
    void aSectionIsSixHundredAndFortyAcres() {
        double half = 1609.344 / 2;
        double latitude = 42;
        double e2 = (2 - 1 / 298.257_223_563) / 298.257_223_563;
        double w = 1 - e2 * Math.pow(Math.sin(Math.toRadians(latitude)), 2);
        double meridian = 6_378_137 * (1 - e2) / Math.pow(w, 1.5);
        double across = 6_378_137 / Math.sqrt(w) * Math.cos(Math.toRadians(latitude));
        double north = Math.toDegrees(half / meridian);
        double east = Math.toDegrees(half / across);
        Boundary section =
                new Boundary(List.of(new Boundary.Polygon(rectangle(-93.5, latitude, east, north), List.of())));
        assertThat(Acres.inside(section)).isCloseTo(640, within(0.001));
    }

    @Test
    void aHoleIsTakenOffWhicheverWayItRuns() throws NoBoundary {
        String shell = "[[-93.6,42],[-93.59,42],[-93.59,42.01],[-93.6,42.01],[-93.6,42]]";
        String hole = "[[-93.598,42.002],[-93.596,42.002],[-93.596,42.004],[-93.598,42.004],[-93.598,42.002]]";
        String turned = "[[-93.598,42.002],[-93.598,42.004],[-93.596,42.004],[-93.596,42.002],[-93.598,42.002]]";
        double whole = Acres.inside(polygon(shell));
        double pond = Acres.inside(polygon(hole));
        assertThat(Acres.inside(polygon(shell + "," + hole))).isCloseTo(whole - pond, within(1e-9));
        assertThat(Acres.inside(polygon(shell + "," + turned))).isCloseTo(whole - pond, within(1e-9));
    }

    @Test
    void aBoundaryIsReadAsItWasWritten() throws NoBoundary {
        assertThat(GeoJson.read(GeoJson.write(Fixture.outline()))).isEqualTo(Fixture.outline());
    }

    @Test
    void aCrossedOutlineIsNoField() {
        assertThatThrownBy(() -> polygon("[[0,0],[0.01,0.01],[0.01,0],[0,0.01],[0,0]]"))
                .isInstanceOf(NoBoundary.class)
                .hasMessageContaining("cross")
                .hasMessageContaining("near 0.005, 0.005");
    }

    @Test
    void swappedLatitudeAndLongitudeAreNoticed() {
        assertThatThrownBy(() -> polygon("[[42,-93.6],[42,-93.59],[42.01,-93.59],[42,-93.6]]"))
                .hasMessageContaining("longitude and latitude");
    }

    @Test
    void whatIsNoPolygonIsRefused() {
        List<String> shapes = List.of(
                "",
                "[]",
                "{}",
                "null",
                "3",
                "{\"type\":\"Point\",\"coordinates\":[1,2]}",
                "{\"type\":\"Polygon\"}",
                "{\"type\":\"Polygon\",\"coordinates\":[]}",
                "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,1]]]}",
                "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,0],[1,1],[0,1]]]}",
                "{\"type\":\"Polygon\",\"coordinates\":[[[\"a\",0],[1,0],[1,1],[0,0]]]}",
                "[".repeat(200_000));
        assertThat(shapes)
                .allSatisfy(shape ->
                        assertThatThrownBy(() -> GeoJson.read(shape)).as(shape).isInstanceOf(NoBoundary.class));
    }

    private static Boundary polygon(String rings) throws NoBoundary {
        return GeoJson.read("{\"type\":\"Polygon\",\"coordinates\":[" + rings + "]}");
    }

    private static List<Boundary.Point> rectangle(double longitude, double latitude, double east, double north) {
        return List.of(
                new Boundary.Point(longitude - east, latitude - north),
                new Boundary.Point(longitude + east, latitude - north),
                new Boundary.Point(longitude + east, latitude + north),
                new Boundary.Point(longitude - east, latitude + north),
                new Boundary.Point(longitude - east, latitude - north));
    }
}
