package plumbrow.advice.land;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.advice.field.FeatureKind;

/** Distances laid out by geodesics of GeographicLib and measured again. */
class NearnessTest {
    private static final Point CORNER = new Point(-93.6, 42.0);
    private static final Boundary FIELD = Ground.rectangle(CORNER, 2640, 2640);

    @ParameterizedTest
    @CsvSource({"0", "12", "66", "300", "2500"})
    void aWellWestOfTheEdge(double feet) {
        assertThat(measured(new Spot(Ground.from(CORNER, -feet, 1000)))).isCloseTo(feet, within(0.11));
    }

    @Test
    void insideOrTouchingIsNothing() {
        assertThat(measured(new Spot(Ground.from(CORNER, 900, 900)))).isZero();
        assertThat(measured(new Line(List.of(CORNER, Ground.from(CORNER, -500, -500)))))
                .isZero();
        assertThat(measured(new Area(Ground.rectangle(Ground.from(CORNER, -500, -500), 9000, 9000))))
                .isZero();
    }

    @Test
    void theNearestPartCounts() {
        Shape creek = new Line(List.of(Ground.from(CORNER, -4000, 1300), Ground.from(CORNER, -80, 1300)));
        assertThat(measured(creek)).isCloseTo(80, within(0.11));
    }

    /** The edge is 100 ft off by its shape: a tenth of the greater or 15 ft is let pass, more is not. */
    @ParameterizedTest
    @CsvSource({"100,100", "115,115", "116,99.9", "85,85", "84,84", "40,40"})
    void whereBothAreKnown(double typed, double counts) {
        Nearness nearness = of(new Spot(Ground.from(CORNER, -100.05, 1000)), typed);
        assertThat(nearness.feet()).isCloseTo(counts, within(0.2));
        boolean apart = Math.abs(typed - 100) > 15;
        assertThat(nearness.says().isEmpty()).isEqualTo(!apart);
        if (apart) {
            assertThat(nearness.says()).contains("the lesser counts");
        }
    }

    @Test
    void aTenthOfAFarDistanceIsLetPass() {
        assertThat(of(new Spot(Ground.from(CORNER, -1000, 1000)), 920.0).says()).isEmpty();
        assertThat(of(new Spot(Ground.from(CORNER, -1000, 1000)), 880.0).feet()).isEqualTo(880);
    }

    @Test
    void withoutAShapeWhatIsTypedCounts() {
        Feature typed = new Feature("Home", FeatureKind.WELL, "well", null, 40.0, "walked");
        assertThat(Nearness.of(FIELD, typed)).isEqualTo(new Nearness(40.0, null, ""));
        Feature drawn = new Feature("Home", FeatureKind.WELL, "well", new Spot(CORNER), null, "walked");
        assertThat(Nearness.of(null, drawn).feet()).isNull();
    }

    private static double measured(Shape shape) {
        Double feet = of(shape, null).feet();
        return feet == null ? Double.NaN : feet;
    }

    private static Nearness of(Shape shape, @Nullable Double typed) {
        return Nearness.of(FIELD, new Feature("Home", FeatureKind.WELL, "it", shape, typed, "test"));
    }
}
