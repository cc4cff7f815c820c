package plumbrow.advice.land;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.science.soil.PolygonAcres;

/** Cells over fields: their size against geodesics, what they belong to against a ray cast by hand. */
class CellGridTest {
    private static final double M2_PER_ACRE = 4046.8564224;

    /** The cells of a polygon add up to its acres on the ellipsoid, 227.3813, worked with another geodesic library. */
    @Test
    void cellsAddUpToTheGround() {
        CellGrid grid = new CellGrid(42.0, -93.5, 0.0005, 0.0005, 20, 20);
        double sum = 0;
        for (int row = 0; row < grid.rows(); row++) {
            sum += grid.columns() * grid.cellSquareMetres(row);
        }
        assertThat(sum / M2_PER_ACRE).isCloseTo(227.3813, within(0.0001));
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 15, 33, 200})
    void aCellIsAsLargeAsAsked(double feet) {
        Boundary field = Ground.rectangle(new Point(-93.6, 42.0), 2640, 1320);
        CellGrid grid = CellGrid.over(field, feet, 1_000_000);
        assertThat(grid.cellSquareMetres(grid.rows() / 2))
                .isCloseTo(feet * feet * 0.3048 * 0.3048, within(feet * feet * 1e-5));
        double byGeodesics = PolygonAcres.acres(new double[][] {
            {grid.southDeg(), grid.westDeg()},
            {grid.southDeg(), grid.westDeg() + grid.wideDeg()},
            {grid.southDeg() + grid.highDeg(), grid.westDeg() + grid.wideDeg()},
            {grid.southDeg() + grid.highDeg(), grid.westDeg()}
        });
        assertThat(grid.cellSquareMetres(0) / M2_PER_ACRE).isCloseTo(byGeodesics, within(byGeodesics * 1e-4));
    }

    @Test
    void aFieldSmallerThanACellHasOne() {
        CellGrid grid = CellGrid.over(Ground.rectangle(new Point(-93.6, 42.0), 60, 40), 200, 1_000_000);
        assertThat(grid.cells()).isOne();
        assertThat(grid.codes(Ground.rectangle(new Point(-93.6, 42.0), 60, 40), null, List.of())
                        .at(0))
                .isEqualTo(CellGrid.REST);
    }

    @Test
    void moreCellsThanMayBeAreRefused() {
        Boundary field = Ground.rectangle(new Point(-93.6, 42.0), 5280, 5280);
        assertThatThrownBy(() -> CellGrid.over(field, 5, 1_000_000))
                .isInstanceOfSatisfying(
                        CellGrid.TooManyCellsException.class,
                        many -> assertThat(many.cells()).isBetween(1_110_000.0, 1_130_000.0));
    }

    /** Over made fields with a strip kept clear: by an even-odd ray in degrees no cell outside bears a rate, all codes partition. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void nothingOutsideTheOutline(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 12; i++) {
            Boundary field = Ground.random(random);
            Point at = field.polygons().get(0).shell().get(0);
            double size = Math.sqrt(Acres.inside(field) * 43_560);
            Boundary clear = Ground.rectangle(Ground.from(at, -size / 4, -size / 4), size / 2, size / 3);
            Boundary zone = Ground.rectangle(Ground.from(at, -size, -size), size * 1.5, size * 1.5);
            CellGrid grid = CellGrid.over(field, size / 60, 1_000_000);
            GroundParts parts = GroundParts.of(field, List.of(clear), List.of(zone));
            CellCodes codes = grid.codes(field, parts.clear().outline(), List.of(zone));
            for (int row = 0; row < grid.rows(); row++) {
                for (int column = 0; column < grid.columns(); column++) {
                    int code = codes.at(row, column);
                    boolean inside = inside(field, grid.middle(row, column));
                    if (code != CellGrid.OUTSIDE) {
                        assertThat(inside).isTrue();
                    }
                    if (code > CellGrid.CLEAR) {
                        for (Point corner : corners(grid, row, column)) {
                            assertThat(inside(clear, corner) && inside(field, corner))
                                    .as("a treated cell reaches into what is kept clear")
                                    .isFalse();
                        }
                    }
                    if (code >= CellGrid.FIRST_ZONE) {
                        assertThat(inside(zone, grid.middle(row, column))).isTrue();
                    }
                }
            }
            double drawn = parts.clear().acres()
                    + parts.rest().acres()
                    + parts.zones().get(0).acres();
            assertThat(drawn).isCloseTo(parts.acres(), within(parts.acres() * 1e-9));
            double cells = 0;
            for (int code = CellGrid.CLEAR; code <= CellGrid.FIRST_ZONE; code++) {
                cells += codes.squareMetres(code) / M2_PER_ACRE;
            }
            // A cell is in or out by its middle: what that misses is a small part of the cells along the edge.
            assertThat(cells).isCloseTo(parts.acres(), within(parts.acres() * 0.02));
        }
    }

    @Test
    void holesAndSecondPartsCount() {
        Point corner = new Point(-93.6, 42.0);
        Boundary first = Ground.rectangle(corner, 1320, 1320);
        Boundary hole = Ground.rectangle(Ground.from(corner, 440, 440), 440, 440);
        Boundary second = Ground.rectangle(Ground.from(corner, 2000, 0), 660, 1320);
        Boundary field = new Boundary(List.of(
                new Boundary.Polygon(
                        first.polygons().get(0).shell(),
                        List.of(hole.polygons().get(0).shell())),
                second.polygons().get(0)));
        CellGrid grid = CellGrid.over(field, 10, 1_000_000);
        CellCodes codes = grid.codes(field, null, List.of());
        double byHand = (1320 * 1320 - 440 * 440 + 660 * 1320) / 43_560.0;
        assertThat(codes.squareMetres(CellGrid.REST) / M2_PER_ACRE).isCloseTo(byHand, within(byHand * 0.005));
        assertThat(codes.squareMetres(CellGrid.CLEAR)).isZero();
    }

    private static List<Point> corners(CellGrid grid, int row, int column) {
        List<Point> corners = new ArrayList<>();
        for (double up : new double[] {1e-6, 0.5, 1 - 1e-6}) {
            for (double over : new double[] {1e-6, 0.5, 1 - 1e-6}) {
                corners.add(new Point(
                        grid.westDeg() + (column + over) * grid.wideDeg(),
                        grid.southDeg() + (row + up) * grid.highDeg()));
            }
        }
        return corners;
    }

    /** Even-odd rule in degrees, by hand. */
    private static boolean inside(Boundary area, Point at) {
        boolean inside = false;
        for (Boundary.Polygon polygon : area.polygons()) {
            List<Point> ring = polygon.shell();
            for (int i = 0; i + 1 < ring.size(); i++) {
                Point one = ring.get(i);
                Point two = ring.get(i + 1);
                if (one.latitude() > at.latitude() != two.latitude() > at.latitude()
                        && at.longitude()
                                < (two.longitude() - one.longitude())
                                                * (at.latitude() - one.latitude())
                                                / (two.latitude() - one.latitude())
                                        + one.longitude()) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }
}
