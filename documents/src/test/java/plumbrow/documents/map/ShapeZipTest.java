package plumbrow.documents.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.documents.workbook.ground.FeatureShape;
import plumbrow.documents.workbook.ground.GeoJsonFile.Feature;
import plumbrow.documents.workbook.ground.NoBoundary;

class ShapeZipTest {
    private static final double[] SHELL = {0, 40, 0, 40.01, 0.01, 40.01, 0.01, 40, 0, 40};
    private static final double[] HOLE = {0.002, 40.002, 0.004, 40.002, 0.004, 40.004, 0.002, 40.004, 0.002, 40.002};
    private static final double[] OTHER = {0.02, 40, 0.02, 40.01, 0.03, 40.01, 0.03, 40, 0.02, 40};

    @Test
    void pointsLinesAndAreasWithTheirAttributes() throws NoBoundary {
        byte[] zip = new MadeShapefile()
                .point("windmill", "well", -93.6, 42)
                .parts(3, "Bell Creek", "stream", new double[] {-93.6, 42, -93.59, 42.01})
                .parts(5, "East 80", "", SHELL)
                .nothing("lost")
                .zip();
        List<Feature> read = MapFile.read("farm.zip", zip);
        assertThat(read).hasSize(3);
        assertThat(read.get(0).properties())
                .containsExactlyInAnyOrderEntriesOf(Map.of("NAME", "windmill", "KIND", "well"));
        assertThat(FeatureShape.read(read.get(0).geometry())).isEqualTo(new Spot(new Point(-93.6, 42)));
        assertThat(FeatureShape.read(read.get(1).geometry()))
                .isEqualTo(new Line(List.of(new Point(-93.6, 42), new Point(-93.59, 42.01))));
        assertThat(FeatureShape.read(read.get(2).geometry())).isInstanceOf(Area.class);
    }

    @Test
    void ringsWithTheClockAreShellsAndTheOthersHolesInThem() throws NoBoundary {
        byte[] zip = new MadeShapefile().parts(5, "Two", "", HOLE, OTHER, SHELL).zip();
        Area area = (Area) FeatureShape.read(MapFile.read("two.zip", zip).get(0).geometry());
        List<Boundary.Polygon> polygons = area.outline().polygons();
        assertThat(polygons).hasSize(2);
        assertThat(polygons.get(0).holes()).isEmpty();
        assertThat(polygons.get(1).holes()).hasSize(1);
    }

    /** GeographicLib's manual of GeoConvert: 33.3 N 44.4 E is 38n 444140.54 3684706.36. */
    @Test
    void aUtmGrid() throws NoBoundary {
        MadeShapefile made = new MadeShapefile().point("there", "well", 444140.54, 3684706.36);
        made.projection = MadeShapefile.UTM_38N;
        Spot spot = (Spot)
                FeatureShape.read(MapFile.read("utm.zip", made.zip()).get(0).geometry());
        assertThat(spot.at().latitude()).isCloseTo(33.3, within(1e-7));
        assertThat(spot.at().longitude()).isCloseTo(44.4, within(1e-7));
    }

    /** Web Mercator: 180° is π × 6378137 m, and atan(sinh(1)) is R north. */
    @Test
    void webMercator() throws NoBoundary {
        MadeShapefile made = new MadeShapefile().point("there", "well", -Math.PI * 6378137 / 2, 6378137);
        made.projection = "PROJCS[\"WGS_1984_Web_Mercator_Auxiliary_Sphere\"," + MadeShapefile.WGS84
                + ",PROJECTION[\"Mercator_Auxiliary_Sphere\"],UNIT[\"Meter\",1.0]]";
        Spot spot = (Spot)
                FeatureShape.read(MapFile.read("web.zip", made.zip()).get(0).geometry());
        assertThat(spot.at().longitude()).isCloseTo(-90, within(1e-9));
        assertThat(spot.at().latitude()).isCloseTo(Math.toDegrees(Math.atan(Math.sinh(1))), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "LOCAL_CS[\"field\"]",
                "GEOGCS[\"GCS_North_American_1927\",DATUM[\"D_North_American_1927\"],UNIT[\"Degree\",0.0174532925199433]]",
                "PROJCS[\"NAD_1983_StatePlane_Iowa_North\",GEOGCS[\"GCS_North_American_1983\"],"
                        + "PROJECTION[\"Lambert_Conformal_Conic\"],UNIT[\"Foot_US\",0.3048006096]]"
            })
    void anotherProjectionIsRefused(String projection) {
        MadeShapefile made = new MadeShapefile().point("there", "well", 1, 2);
        made.projection = projection;
        refused(made.zip(), "expected WGS 84 or NAD 83 in degrees, UTM or Web Mercator");
    }

    @ParameterizedTest
    @ValueSource(strings = {"shp", "shx", "dbf", "prj"})
    void aMissingPartIsNamed(String part) {
        Map<String, byte[]> files =
                new MadeShapefile().point("there", "well", 1, 2).files();
        files.remove("fields." + part);
        refused(MadeShapefile.zip(files), "lacks its ." + part);
    }

    @Test
    void twoShapefilesAreRefused() {
        Map<String, byte[]> files =
                new MadeShapefile().point("there", "well", 1, 2).files();
        files.put("other.shp", new byte[100]);
        refused(MadeShapefile.zip(files), "expected one in each zip");
    }

    @Test
    void aNumberThatIsNoneIsRefused() {
        refused(new MadeShapefile().point("there", "well", Double.NaN, 2).zip(), "no number");
        refused(new MadeShapefile().point("there", "well", 500000, 2).zip(), "says degrees");
    }

    @Test
    void aHoleOutsideAndAnOpenRingAreRefused() {
        double[] far = HOLE.clone();
        far[0] += 5;
        refused(new MadeShapefile().parts(5, "open", "", far).zip(), "does not end where it begins");
        refused(new MadeShapefile().parts(5, "hole", "", HOLE).zip(), "hole outside");
    }

    @Test
    void whatUnpacksToTooMuchIsRefused() {
        refused(MadeShapefile.zip(Map.of("fields.shp", new byte[65 << 20])), "more than 64 MB");
    }

    @Test
    void noZipIsRefused() {
        refused("no zip at all".getBytes(StandardCharsets.US_ASCII), "lacks its .dbf");
    }

    /** Whatever byte is damaged, the answer is shapes or a sentence. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void damagedBytes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, byte[]> sound = new MadeShapefile()
                .parts(5, "Two", "", HOLE, OTHER, SHELL)
                .parts(3, "creek", "stream", new double[] {0, 40, 1, 41})
                .point("well", "well", 0, 40)
                .files();
        List<String> names = List.copyOf(sound.keySet());
        for (int i = 0; i < 2000; i++) {
            Map<String, byte[]> files = new LinkedHashMap<>(sound);
            String name = names.get(random.nextInt(names.size()));
            byte[] bytes = files.getOrDefault(name, new byte[0]).clone();
            for (int hits = random.nextInt(4); hits >= 0; hits--) {
                int at = random.nextInt(bytes.length);
                if (random.nextInt(3) == 0 && at + 4 <= bytes.length) {
                    ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(at, random.nextInt());
                } else {
                    bytes[at] = (byte) random.nextInt();
                }
            }
            files.put(name, random.nextInt(5) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes);
            try {
                assertThat(MapFile.read("any.zip", MadeShapefile.zip(files))).isNotNull();
            } catch (MapTrouble sentence) {
                assertThat(sentence.getMessage()).startsWith("any.zip ").endsWith(".");
            }
        }
    }

    private static void refused(byte[] zip, String words) {
        assertThatThrownBy(() -> MapFile.read("farm.zip", zip))
                .isInstanceOf(MapTrouble.class)
                .hasMessageContaining(words);
    }
}
