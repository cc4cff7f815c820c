package plumbrow.science.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Floor, residue and acres, against values from outside")
class GroundTest {
    private static final double[][] SQUARE = {{42.00, -93.50}, {42.00, -93.49}, {42.01, -93.49}, {42.01, -93.50}};

    @Test
    @DisplayName("9.1 polygon A less its hole is 191.0003 acres (computed)")
    void hole() {
        double[][] hole = {{42.003, -93.497}, {42.003, -93.493}, {42.007, -93.493}, {42.007, -93.497}};
        assertPrinted(PolygonAcres.acres(SQUARE) - PolygonAcres.acres(hole), "191.0003");
    }

    @Test
    @DisplayName("9.1 a closed ring, and the corners the other way round, have the same area")
    void rings() {
        double[][] closed = {SQUARE[0], SQUARE[1], SQUARE[2], SQUARE[3], SQUARE[0]};
        double[][] turned = {SQUARE[3], SQUARE[2], SQUARE[1], SQUARE[0]};
        assertThat(PolygonAcres.acres(closed)).isCloseTo(PolygonAcres.acres(SQUARE), within(1e-6));
        assertThat(PolygonAcres.acres(turned)).isCloseTo(PolygonAcres.acres(SQUARE), within(1e-6));
    }

    @Test
    @DisplayName("9.1 the equal-area projection and the sphere give 227.3813 and 227.035: the ellipsoid decides")
    void sphere() {
        double radius = 6_371_008.8;
        double sphere = radius
                * radius
                * Math.toRadians(.01)
                * (Math.sin(Math.toRadians(42.01)) - Math.sin(Math.toRadians(42)))
                / 4046.8564224;
        assertPrinted(sphere, "227.035");
        assertThat(PolygonAcres.acres(SQUARE) / sphere - 1).isCloseTo(.0015, within(2e-4));
    }

    @Test
    @DisplayName("9.1 fewer than three corners, a third number, longitude first: one sentence each")
    void badCorners() {
        for (String points : new String[] {"42,-93;42,-92", "42,-93,1;42,-92;41,-92", "-93.5,42;-93.4,42;-93.4,42.1"}) {
            assertThatThrownBy(() -> PolygonAcres.FIGURE.answer(Map.of("points", points)))
                    .isInstanceOf(FigureInputException.class)
                    .hasMessageStartingWith("points is");
        }
    }

    @Test
    @DisplayName("6.4 a pass may uncover residue, but never more than there is ground")
    void uncovered() {
        assertThat(ResidueCover.coverPct(50, 1.5)).isEqualTo(75);
        assertThat(ResidueCover.coverPct(80, 1.5, .5)).isEqualTo(50);
    }

    @Test
    @DisplayName(
            "6.1 a furrow slice of 6.67 in at 1.33 weighs 2.01 million lb/ac; 1 kg/ha in 5 cm at 1.5 is 1.3333 mg/kg")
    void furrowSlice() {
        assertPrinted(1 / Incorporation.ppm(1, 6.67, 1.33), "2.01");
        assertPrinted(Incorporation.ppm(1 / 1.12085116, 5 / 2.54, 1.5), "1.3333");
    }

    @Test
    @DisplayName("6.2 one depth has no spread and is refused")
    void oneDepth() {
        assertThatThrownBy(() -> TillageFloor.FIGURE.answer(Map.of("depths_in", "2")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("at least two depths");
    }
}
