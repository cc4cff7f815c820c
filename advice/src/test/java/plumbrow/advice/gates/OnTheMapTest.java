package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.land.Zones;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Setback;

/** What gates make of an outline and of shapes around it. */
class OnTheMapTest {
    private static final Point CORNER = new Point(-93.47, 42.04);
    /** A line along the west edge, 0.0002° (54 ft) off it. */
    private static final Shape CREEK = new Line(List.of(new Point(-93.4702, 42.03), new Point(-93.4702, 42.06)));

    @Test
    void aShapeIsMeasuredWhereNoDistanceIsWrittenDown() {
        Finding finding = only(scene(null).findings(Setbacks.fromWater()));
        assertThat(finding.standing()).isEqualTo(Standing.CONDITIONAL);
        assertThat(finding.measured()).isBetween(54.0, 55.0);
        assertThat(finding.says()).contains("measured on the map").contains("That takes 0.");
        assertThat(finding.clears())
                .matches("Leave the 0\\.\\d ac, the outer 11\\.\\d ft of the field on that side, unsprayed\\.");
    }

    @Test
    void whereBothDisagreeTheLesserCounts() {
        Finding nearer = only(scene(20.0).findings(Setbacks.fromWater()));
        assertThat(nearer.measured()).isEqualTo(20);
        assertThat(nearer.says()).contains("the lesser counts");
        Finding farther = only(scene(90.0).findings(Setbacks.fromWater()));
        assertThat(farther.measured()).isBetween(54.0, 55.0);
        assertThat(farther.says()).contains("written down are 90 ft");
    }

    @Test
    void zonesAskTheSameRowsAsTheGate() {
        Scene scene = scene(null);
        List<Zones> zones = Gates.of(scene.season()).zones(scene.field(), scene.program());
        assertThat(zones).singleElement().satisfies(one -> {
            assertThat(one.product()).isEqualTo("Any");
            assertThat(one.lostAcres()).isBetween(0.4, 0.6);
            assertThat(one.notRead()).isEmpty();
        });
        scene.setbacks.clear();
        assertThat(Gates.of(scene.season())
                        .zones(scene.field(), scene.program())
                        .get(0)
                        .notRead())
                .containsExactly("stream creek");
    }

    /** Kansas and Nebraska part at 40° N. */
    @Test
    void acrossAStateLineBothStatesJudge() {
        Scene scene = at(39.99, 40.01, "KS", county("KS", 39.99, 40.01));
        scene.product("Any", ProductKind.HERBICIDE, List.of("KS"), List.of())
                .pass(PassKind.SPRAY, Scene.PLANTING, "Any", null, 100);
        List<Finding> findings = scene.findings(new RegisteredInState());
        assertThat(findings).extracting(Finding::standing).containsExactlyInAnyOrder(Standing.CLEAR, Standing.BARRED);
        assertThat(scene.findings(new CountyNotExcluded())).hasSize(2);
    }

    /** West of Ames the line of Boone and Story counties, Iowa, runs near 93.70° W; place from memory, line from the map. */
    @Test
    void acrossACountyLineBothCountiesJudge() {
        Scene scene = new Scene();
        scene.field = field(outline(-93.72, 42.04, -93.68, 42.045), "IA", "Story");
        scene.product("Any", ProductKind.HERBICIDE, List.of("IA"), List.of("IA: Boone"))
                .pass(PassKind.SPRAY, Scene.PLANTING, "Any", null, 100);
        assertThat(Gates.of(scene.season()).counties(scene.field()))
                .containsExactly("Story County, IA", "Boone County, IA");
        assertThat(scene.findings(new CountyNotExcluded()))
                .extracting(Finding::standing)
                .containsExactlyInAnyOrder(Standing.CLEAR, Standing.BARRED);
        assertThat(scene.findings(new CountyNotExcluded()))
                .filteredOn(finding -> finding.standing() == Standing.BARRED)
                .singleElement()
                .extracting(Finding::says)
                .asString()
                .contains("Boone");
    }

    /** Half a mile south of the line: a question, and only where the answer would differ. */
    @Test
    void besideAStateLineItIsAsked() {
        Scene kansasOnly = at(39.985, 39.993, "KS", county("KS", 39.985, 39.993));
        kansasOnly
                .product("Any", ProductKind.HERBICIDE, List.of("KS"), List.of())
                .pass(PassKind.SPRAY, Scene.PLANTING, "Any", null, 100);
        List<Finding> asked = kansasOnly.findings(new RegisteredInState());
        assertThat(asked).extracting(Finding::standing).containsExactlyInAnyOrder(Standing.CLEAR, Standing.UNKNOWN);
        assertThat(asked.get(1).clears()).contains("Look at the deed or the county map");
        Scene both = at(39.985, 39.993, "KS", county("KS", 39.985, 39.993));
        both.product("Any", ProductKind.HERBICIDE, List.of("KS", "NE"), List.of())
                .pass(PassKind.SPRAY, Scene.PLANTING, "Any", null, 100);
        assertThat(both.standing(new RegisteredInState())).isEqualTo(Standing.CLEAR);
    }

    private static String county(String state, double south, double north) {
        return CountyFit.of(outline(-98.0, south, -97.99, north)).in().stream()
                .map(part -> part.county())
                .filter(county -> county.state().equals(state))
                .findFirst()
                .orElseThrow()
                .name();
    }

    private static Scene at(double south, double north, String state, String county) {
        Scene scene = new Scene();
        scene.field = field(outline(-98.0, south, -97.99, north), state, county);
        return scene;
    }

    private static Scene scene(@Nullable Double typed) {
        Scene scene = new Scene();
        scene.field = field(outline(CORNER.longitude(), CORNER.latitude(), -93.46, 42.045), "IA", "Story");
        scene.product("Any", ProductKind.HERBICIDE).pass(PassKind.SPRAY, Scene.PLANTING, "Any", null, 100);
        scene.features.add(new Feature("Home", FeatureKind.STREAM, "creek", CREEK, typed, "map"));
        scene.setbacks.add(new Setback("Any", FeatureKind.STREAM, 66.0, false, "label p. 3"));
        return scene;
    }

    private static Field field(Boundary outline, String state, String county) {
        return new Field("Home", "Farm", 160, outline, state, county, Crop.CORN, null, null, null, null);
    }

    private static Boundary outline(double west, double south, double east, double north) {
        return new Boundary(List.of(new Boundary.Polygon(
                List.of(
                        new Point(west, south),
                        new Point(east, south),
                        new Point(east, north),
                        new Point(west, north),
                        new Point(west, south)),
                List.of())));
    }

    private static Finding only(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
