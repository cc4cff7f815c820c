package plumbrow.advice.land;

import plumbrow.advice.field.Boundary.Point;

/**
 * A plane laid on the ellipsoid of the Earth (WGS 84) at one place, such that every area keeps its size.
 *
 * <p>Lambert azimuthal equal-area projection, oblique, of the ellipsoid. Areas are exact; a distance d from the place is
 * off by less than (d / 2R)², at 20 miles one part in 600,000.
 *
 * <p>Source: Snyder 1987, Map Projections, USGS Professional Paper 1395, pages 187-190 and (3-12), (3-16), (14-15).
 */
final class EqualArea {
    private static final double WGS84_AXIS_M = 6378137;
    private static final double WGS84_FLATTENING = 1 / 298.257223563;

    private final double axis;
    private final double e2;
    private final double e;
    private final double middle;
    private final double polarQ;
    private final double radius;
    private final double sinB;
    private final double cosB;
    private final double stretch;

    EqualArea(Point middle) {
        this(WGS84_AXIS_M, WGS84_FLATTENING * (2 - WGS84_FLATTENING), middle);
    }

    EqualArea(double axisM, double eccentricitySquared, Point middle) {
        axis = axisM;
        e2 = eccentricitySquared;
        e = Math.sqrt(e2);
        this.middle = middle.longitude();
        polarQ = q(1);
        radius = axis * Math.sqrt(polarQ / 2);
        double sin = Math.sin(Math.toRadians(middle.latitude()));
        sinB = q(sin) / polarQ;
        cosB = Math.sqrt(1 - sinB * sinB);
        stretch = axis * Math.cos(Math.toRadians(middle.latitude())) / Math.sqrt(1 - e2 * sin * sin) / (radius * cosB);
    }

    private double q(double sin) {
        return (1 - e2) * (sin / (1 - e2 * sin * sin) - Math.log((1 - e * sin) / (1 + e * sin)) / (2 * e));
    }

    /** Metres east and north of the middle. */
    double[] metres(Point point) {
        double turn = Math.toRadians(Math.IEEEremainder(point.longitude() - middle, 360));
        double sin = q(Math.sin(Math.toRadians(point.latitude()))) / polarQ;
        double cos = Math.sqrt(Math.max(0, 1 - sin * sin));
        double b = radius * Math.sqrt(2 / (1 + sinB * sin + cosB * cos * Math.cos(turn)));
        return new double[] {
            b * stretch * cos * Math.sin(turn), b / stretch * (cosB * sin - sinB * cos * Math.cos(turn))
        };
    }

    /** The place so many metres east and north of the middle. */
    Point point(double east, double north) {
        double away = Math.hypot(east / stretch, stretch * north);
        if (away == 0) {
            return new Point(middle, latitude(sinB));
        }
        double angle = 2 * Math.asin(away / (2 * radius));
        double sin = Math.cos(angle) * sinB + stretch * north * Math.sin(angle) * cosB / away;
        double turn = Math.atan2(
                east * Math.sin(angle),
                stretch * away * cosB * Math.cos(angle) - stretch * stretch * north * sinB * Math.sin(angle));
        return new Point(middle + Math.toDegrees(turn), latitude(sin));
    }

    /** The latitude whose authalic latitude has this sine, by Newton steps on q. */
    private double latitude(double authalicSine) {
        double wanted = authalicSine * polarQ;
        double latitude = Math.asin(authalicSine);
        for (int step = 0; step < 8; step++) {
            double sin = Math.sin(latitude);
            double part = 1 - e2 * sin * sin;
            latitude += part * part / (2 * Math.cos(latitude)) * (wanted - q(sin)) / (1 - e2);
        }
        return Math.toDegrees(latitude);
    }
}
