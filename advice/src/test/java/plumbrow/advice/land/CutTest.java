package plumbrow.advice.land;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.shelf.Setback;

/** Zones against areas worked out by hand, to 0.1 % as asked. */
class CutTest {
    private static final double FT2_PER_ACRE = 43_560;
    private static final Point CORNER = new Point(-93.6, 42.0);
    private static final Field SECTION = Ground.field(Ground.rectangle(CORNER, 5280, 5280), "IA", "Story");

    /** A well in the middle: a circle. */
    @ParameterizedTest
    @ValueSource(doubles = {10, 66, 150, 660, 2000})
    void aCircleAroundAWell(double feet) {
        double lost = acres(new Spot(Ground.from(CORNER, 2640, 2640)), feet);
        double byHand = Math.PI * feet * feet / FT2_PER_ACRE;
        assertThat(lost).isCloseTo(byHand, within(0.001 * byHand)).isGreaterThanOrEqualTo(byHand * (1 - 1e-6));
    }

    /** A well so many feet outside the edge: a circle segment, r² acos(d/r) − d √(r² − d²). */
    @ParameterizedTest
    @CsvSource({"50,200", "100,150", "190,200", "0,100"})
    void aCircleSegmentOfAWellOutside(double away, double feet) {
        double lost = acres(new Spot(Ground.from(CORNER, -away, 2640)), feet);
        double byHand =
                (feet * feet * Math.acos(away / feet) - away * Math.sqrt(feet * feet - away * away)) / FT2_PER_ACRE;
        assertThat(lost).isCloseTo(byHand, within(0.001 * byHand));
    }

    /** A straight ditch along the west edge, longer than the field: a strip of length × setback. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 66, 150})
    void aStripAlongADitch(double feet) {
        Shape ditch = new Line(List.of(Ground.from(CORNER, 0, -2000), Ground.from(CORNER, 0, 7280)));
        double byHand = 5280 * feet / FT2_PER_ACRE;
        assertThat(acres(ditch, feet)).isCloseTo(byHand, within(0.001 * byHand));
    }

    /** A ditch through the middle: a strip on both sides. */
    @Test
    void aStripOnBothSides() {
        Shape ditch = new Line(List.of(Ground.from(CORNER, -500, 2640), Ground.from(CORNER, 5780, 2640)));
        double byHand = 2 * 66 * 5280 / FT2_PER_ACRE;
        assertThat(acres(ditch, 66)).isCloseTo(byHand, within(0.001 * byHand));
    }

    /** A square pond of 200 ft inside: the pond, four strips, four quarter circles. */
    @Test
    void aPondAndTheStripAroundIt() {
        Shape pond = new Area(Ground.rectangle(Ground.from(CORNER, 2000, 2000), 200, 200));
        double byHand = (200 * 200 + 4 * 200 * 50 + Math.PI * 50 * 50) / FT2_PER_ACRE;
        assertThat(acres(pond, 50)).isCloseTo(byHand, within(0.001 * byHand));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void aWiderSetbackNeverLeavesMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            Field field = Ground.field(Ground.random(random), "IA", "Story");
            Shape shape = beside(field, random);
            double left = Double.MAX_VALUE;
            for (double feet : new double[] {10, 30, 100, 400, 1500}) {
                double now = left(field, feature(shape, null), feet);
                assertThat(now).isLessThanOrEqualTo(left + 1e-9);
                left = now;
            }
        }
    }

    /** A field split along its middle: what both halves lose is what the whole loses. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void halvesLoseWhatTheWholeLoses(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            double width = 300 + 5000 * random.nextDouble();
            double height = 300 + 5000 * random.nextDouble();
            Field whole = Ground.field(Ground.rectangle(CORNER, width, height), "IA", "Story");
            List<Point> ring =
                    Objects.requireNonNull(whole.boundary()).polygons().get(0).shell();
            Point south = half(ring.get(0), ring.get(1));
            Point north = half(ring.get(3), ring.get(2));
            Field west = Ground.field(
                    Ground.outline(List.of(ring.get(0), south, north, ring.get(3), ring.get(0))), "IA", "Story");
            Field east =
                    Ground.field(Ground.outline(List.of(south, ring.get(1), ring.get(2), north, south)), "IA", "Story");
            Feature feature = feature(beside(whole, random), null);
            double feet = 10 + 500 * random.nextDouble();
            double lost = Objects.requireNonNull(Cut.acres(whole, feature, feet));
            double parts = Objects.requireNonNull(Cut.acres(west, feature, feet))
                    + Objects.requireNonNull(Cut.acres(east, feature, feet));
            assertThat(parts).isCloseTo(lost, within(1e-3 + 1e-4 * lost));
        }
    }

    @Test
    void overlappingZonesCountOnce() {
        Feature one = feature(new Spot(Ground.from(CORNER, 2640, 2640)), null);
        Setback setback = new Setback("Any", FeatureKind.WELL, 100.0, false, "label");
        Zones zones =
                Cut.of(SECTION, 1, "Any", List.of(new Cut.Asked(one, setback), new Cut.Asked(one, setback)), List.of());
        assertThat(zones.lostAcres()).isCloseTo(Math.PI * 100 * 100 / FT2_PER_ACRE, within(0.001));
        assertThat(zones.zones()).hasSize(2);
    }

    @Test
    void whatHoldsOnlyDownwindIsCountedApart() {
        Feature well = feature(new Spot(Ground.from(CORNER, 2640, 2640)), null);
        Zones zones = Cut.of(
                SECTION,
                1,
                "Any",
                List.of(new Cut.Asked(well, new Setback("Any", FeatureKind.WELL, 100.0, true, "label"))),
                List.of());
        assertThat(zones.windAcres()).isCloseTo(Math.PI * 100 * 100 / FT2_PER_ACRE, within(0.001));
        assertThat(zones.sprayableAcres())
                .isCloseTo(zones.acres() - Objects.requireNonNull(zones.windAcres()), within(1e-9));
    }

    /** Without a shape nobody knows what a near thing takes; a far one takes nothing. */
    @ParameterizedTest
    @CsvSource({"50,", "66,0", "100,0"})
    void aDistanceAlone(double lies, @Nullable Double takes) {
        Feature typed = new Feature("Home", FeatureKind.STREAM, "creek", null, lies, "walked");
        assertThat(Cut.acres(SECTION, typed, 66)).isEqualTo(takes);
    }

    /** Where the ground says nearer than the drawing, the zone reaches as deep as the nearer distance asks. */
    @Test
    void aNearerTypedDistanceDeepensTheZone() {
        Shape ditch = new Line(List.of(Ground.from(CORNER, -100, -2000), Ground.from(CORNER, -100, 7280)));
        double byHand = 5280 * (66 - 40) / FT2_PER_ACRE;
        assertThat(Cut.acres(SECTION, feature(ditch, 40.0), 66)).isCloseTo(byHand, within(0.01 * byHand));
    }

    @Test
    void anOutlineOfWhatIsLeftKeepsTheHandRule() {
        Feature well = feature(new Spot(Ground.from(CORNER, 2640, 2640)), null);
        Setback setback = new Setback("Any", FeatureKind.WELL, 100.0, false, "label");
        Zones zones = Cut.of(SECTION, 1, "Any", List.of(new Cut.Asked(well, setback)), List.of());
        Boundary left = Objects.requireNonNull(zones.sprayable());
        assertThat(doubledArea(left.polygons().get(0).shell())).isPositive();
        assertThat(doubledArea(left.polygons().get(0).holes().get(0))).isNegative();
        assertThat(Acres.inside(left)).isCloseTo(Objects.requireNonNull(zones.sprayableAcres()), within(0.001));
    }

    private static double doubledArea(List<Point> ring) {
        double sum = 0;
        for (int i = 1; i < ring.size(); i++) {
            sum += ring.get(i - 1).longitude() * ring.get(i).latitude()
                    - ring.get(i).longitude() * ring.get(i - 1).latitude();
        }
        return sum;
    }

    private static double acres(Shape shape, double feet) {
        return Objects.requireNonNull(Cut.acres(SECTION, feature(shape, null), feet));
    }

    private static double left(Field field, Feature feature, double feet) {
        Setback setback = new Setback("Any", feature.kind(), feet, false, "label");
        Zones zones = Cut.of(field, 1, "Any", List.of(new Cut.Asked(feature, setback)), List.of());
        return Objects.requireNonNull(zones.sprayableAcres());
    }

    private static Feature feature(Shape shape, @Nullable Double typed) {
        return new Feature("Home", FeatureKind.WELL, "it", shape, typed, "test");
    }

    private static Point half(Point one, Point other) {
        return new Point((one.longitude() + other.longitude()) / 2, (one.latitude() + other.latitude()) / 2);
    }

    private static Shape beside(Field field, SplittableRandom random) {
        Point corner = Objects.requireNonNull(field.boundary())
                .polygons()
                .get(0)
                .shell()
                .get(0);
        Point at = Ground.from(corner, 1000 * (random.nextDouble() - 0.5), 1000 * (random.nextDouble() - 0.5));
        return switch (random.nextInt(3)) {
            case 0 -> new Spot(at);
            case 1 -> new Line(List.of(at, Ground.from(at, 900 * random.nextDouble(), 900 * random.nextDouble())));
            default -> new Area(Ground.rectangle(at, 20 + 300 * random.nextDouble(), 20 + 300 * random.nextDouble()));
        };
    }
}
