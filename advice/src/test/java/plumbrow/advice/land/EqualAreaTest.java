package plumbrow.advice.land;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;

class EqualAreaTest {
    /** Snyder 1987, page 333: oblique aspect on the ellipsoid Clarke 1866, centre 40 N 100 W, point 30 N 110 W. */
    @Test
    void theWorkedExampleOfTheSource() {
        EqualArea plane = new EqualArea(6378206.4, 0.00676866, new Point(-100, 40));
        double[] metres = plane.metres(new Point(-110, 30));
        assertThat(metres[0]).isCloseTo(-965_932.1, within(0.1));
        assertThat(metres[1]).isCloseTo(-1_056_814.9, within(0.1));
        Point back = plane.point(-965_932.1, -1_056_814.9);
        assertThat(back.longitude()).isCloseTo(-110, within(1e-6));
        assertThat(back.latitude()).isCloseTo(30, within(1e-6));
    }

    /** Areas against GeographicLib's polygons with geodesic edges (Karney 2013): the task allows 0.1 %. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void areasAreThoseOfTheEllipsoid(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 250; i++) {
            Boundary field = Ground.random(random);
            double flat = Plane.acres(Plane.under(field).field(field));
            assertThat(flat).isCloseTo(Acres.inside(field), within(1e-5 * flat));
        }
    }

    /** Distances between corners against GeographicLib's geodesics. */
    @ParameterizedTest
    @ValueSource(longs = {5, 6, 7, 8})
    void distancesAreThoseOfTheEllipsoid(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 250; i++) {
            Boundary field = Ground.random(random);
            List<Point> ring = field.polygons().get(0).shell();
            Plane plane = Plane.under(field);
            Point one = ring.get(0);
            Point other = ring.get(1 + random.nextInt(ring.size() - 2));
            double flat = Plane.feet(
                    plane.shape(new plumbrow.advice.field.Feature.Spot(one)),
                    plane.shape(new plumbrow.advice.field.Feature.Spot(other)));
            double round =
                    Geodesic.WGS84.Inverse(one.latitude(), one.longitude(), other.latitude(), other.longitude()).s12
                            / Ground.M_PER_FT;
            assertThat(flat).isCloseTo(round, within(1e-5 * round));
        }
    }

    @Test
    void thereAndBack() {
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < 1000; i++) {
            Point middle = new Point(-180 + 360 * random.nextDouble(), -70 + 140 * random.nextDouble());
            EqualArea plane = new EqualArea(middle);
            double east = 40_000 * (random.nextDouble() - 0.5);
            double north = 40_000 * (random.nextDouble() - 0.5);
            double[] again = plane.metres(plane.point(east, north));
            assertThat(again[0]).isCloseTo(east, within(1e-6));
            assertThat(again[1]).isCloseTo(north, within(1e-6));
        }
    }
}
