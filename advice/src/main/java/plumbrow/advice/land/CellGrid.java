package plumbrow.advice.land;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;

/**
 * Cells of equal degrees over a field, row by row from the south-west corner, west to east, then north.
 *
 * @param southDeg south edge of the first row [degrees]
 * @param westDeg west edge of the first column [degrees]
 * @param highDeg height of a cell [degrees of latitude]
 * @param wideDeg width of a cell [degrees of longitude]
 */
public record CellGrid(double southDeg, double westDeg, double highDeg, double wideDeg, int rows, int columns) {
    /** Outside the field. */
    public static final int OUTSIDE = 0;
    /** In the field and kept clear. */
    public static final int CLEAR = 1;
    /** In the field, in no zone. */
    public static final int REST = 2;
    /** The first zone; the next ones follow. */
    public static final int FIRST_ZONE = 3;
    /** The most zones that fit beside the others in the codes of the standard, 0 to 254. */
    public static final int MOST_ZONES = 254 - FIRST_ZONE + 1;

    private static final double AXIS_M = 6378137;
    private static final double FLATTENING = 1 / 298.257223563;
    private static final double E2 = FLATTENING * (2 - FLATTENING);
    private static final double E = Math.sqrt(E2);

    /**
     * Lays cells over a field, so that they cover it and no more than it takes.
     *
     * @param cellFt side of a cell in the field's middle [ft], more than 0
     * @throws TooManyCellsException where that takes more than {@code most}
     */
    public static CellGrid over(Boundary field, double cellFt, int most) {
        double west = 180;
        double east = -180;
        double south = 90;
        double north = -90;
        for (Boundary.Polygon polygon : field.polygons()) {
            for (Point point : polygon.shell()) {
                west = Math.min(west, point.longitude());
                east = Math.max(east, point.longitude());
                south = Math.min(south, point.latitude());
                north = Math.max(north, point.latitude());
            }
        }
        double metres = cellFt * Plane.M_PER_FT;
        double middle = Math.toRadians((south + north) / 2);
        double bend = 1 - E2 * Math.sin(middle) * Math.sin(middle);
        double high = rounded(Math.toDegrees(metres * Math.pow(bend, 1.5) / (AXIS_M * (1 - E2))), 12);
        double wide = rounded(Math.toDegrees(metres * Math.sqrt(bend) / (AXIS_M * Math.cos(middle))), 12);
        double rows = Math.max(1, Math.ceil((north - south) / high - 1e-9));
        double columns = Math.max(1, Math.ceil((east - west) / wide - 1e-9));
        if (!(rows * columns <= most)) {
            throw new TooManyCellsException(rows * columns);
        }
        // The cells stand out alike on both sides; corners are written with nine decimals, a tenth of a millimetre.
        double southEdge = rounded(south - (rows * high - (north - south)) / 2, 9);
        double westEdge = rounded(west - (columns * wide - (east - west)) / 2, 9);
        return new CellGrid(southEdge, westEdge, high, wide, (int) rows, (int) columns);
    }

    /** More cells than may be. */
    public static final class TooManyCellsException extends IllegalArgumentException {
        private static final long serialVersionUID = 1;
        private final double cells;

        TooManyCellsException(double cells) {
            super("too many cells");
            this.cells = cells;
        }

        public double cells() {
            return cells;
        }
    }

    public int cells() {
        return rows * columns;
    }

    /** The middle of a cell. */
    public Point middle(int row, int column) {
        return new Point(westDeg + (column + 0.5) * wideDeg, southDeg + (row + 0.5) * highDeg);
    }

    /**
     * The area of each cell of a row on the ellipsoid [m²]: a²·Δλ/2 · (q(φ₂) − q(φ₁)) with
     * q = (1−e²)·[sin φ/(1−e²·sin²φ) + (1/2e)·ln((1+e·sin φ)/(1−e·sin φ))].
     *
     * <p>Source: Snyder 1987, USGS Professional Paper 1395, (3-12) and page 77; exact between parallels and meridians.
     */
    public double cellSquareMetres(int row) {
        double south = southDeg + row * highDeg;
        return AXIS_M * AXIS_M * Math.toRadians(wideDeg) / 2 * (q(south + highDeg) - q(south));
    }

    private static double q(double latitude) {
        double sin = Math.sin(Math.toRadians(latitude));
        return (1 - E2) * (sin / (1 - E2 * sin * sin) + Math.log((1 + E * sin) / (1 - E * sin)) / (2 * E));
    }

    /**
     * The code of every cell. A cell belongs to the field where its middle lies inside the outline, and to the zone in which its
     * middle lies. One of the field that reaches into what is kept clear, by however little, is kept clear as a whole.
     *
     * @param clear what is kept clear; null for nothing
     * @param zones zones, at most {@link #MOST_ZONES}; where two overlap the first counts
     */
    public CellCodes codes(Boundary field, @Nullable Boundary clear, List<Boundary> zones) {
        if (zones.size() > MOST_ZONES) {
            throw new IllegalArgumentException("at most " + MOST_ZONES + " zones, not " + zones.size());
        }
        Plane plane = Plane.under(field);
        // Edges are straight in degrees in one file and geodesics in another: only a middle inside by both is inside.
        IndexedPointInAreaLocator byDegrees = new IndexedPointInAreaLocator(Plane.degrees(field));
        IndexedPointInAreaLocator byPlane = new IndexedPointInAreaLocator(plane.field(field));
        Geometry kept = clear == null ? null : plane.field(clear);
        PreparedGeometry keptClear = kept == null ? null : PreparedGeometryFactory.prepare(kept);
        List<IndexedPointInAreaLocator> areas = zones.stream()
                .map(zone -> new IndexedPointInAreaLocator(plane.field(zone)))
                .toList();
        byte[] codes = new byte[cells()];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Point middle = middle(row, column);
                if (!inside(byDegrees, new Coordinate(middle.longitude(), middle.latitude()))) {
                    continue;
                }
                Coordinate place = plane.coordinate(middle);
                if (!inside(byPlane, place)) {
                    continue;
                }
                int code = keptClear != null && keptClear.intersects(cell(plane, row, column)) ? CLEAR : REST;
                for (int i = 0; i < areas.size() && code == REST; i++) {
                    if (inside(areas.get(i), place)) {
                        code = FIRST_ZONE + i;
                    }
                }
                codes[row * columns + column] = (byte) code;
            }
        }
        return new CellCodes(this, codes);
    }

    private static boolean inside(IndexedPointInAreaLocator area, Coordinate place) {
        return area.locate(place) == Location.INTERIOR;
    }

    private Geometry cell(Plane plane, int row, int column) {
        double south = southDeg + row * highDeg;
        double west = westDeg + column * wideDeg;
        List<Point> corners = List.of(
                new Point(west, south),
                new Point(west + wideDeg, south),
                new Point(west + wideDeg, south + highDeg),
                new Point(west, south + highDeg),
                new Point(west, south));
        return plane.polygon(plane.ring(corners), List.of());
    }

    private static double rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}
