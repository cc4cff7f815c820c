package plumbrow.documents.map;

import plumbrow.advice.field.Boundary.Point;

/**
 * From a transverse Mercator grid such as UTM back to longitude and latitude, on the ellipsoid WGS 84.
 *
 * <p>Krüger's series to the fourth order in the third flattening; good to a micrometre within a zone. Source: Karney 2011,
 * Transverse Mercator with an accuracy of a few nanometers, J. Geodesy 85:475, equations (11), (12), (36).
 */
final class TransverseMercator {
    private static final double AXIS_M = 6378137;
    private static final double FLATTENING = 1 / 298.257223563;
    private static final double N = FLATTENING / (2 - FLATTENING);
    private static final double E = Math.sqrt(FLATTENING * (2 - FLATTENING));
    /** Radius of the circle as long as a meridian. */
    private static final double RADIUS = AXIS_M / (1 + N) * (1 + N * N / 4 + N * N * N * N / 64);

    private static final double[] BACK = {
        N / 2 - 2 * N * N / 3 + 37 * N * N * N / 96 - N * N * N * N / 360,
        N * N / 48 + N * N * N / 15 - 437 * N * N * N * N / 1440,
        17 * N * N * N / 480 - 37 * N * N * N * N / 840,
        4397 * N * N * N * N / 161280
    };

    private final double meridian;
    private final double scale;
    private final double originM;

    TransverseMercator(double centralMeridian, double latitudeOfOrigin, double scaleFactor) {
        if (!(scaleFactor > 0.9 && scaleFactor < 1.1) || Math.abs(latitudeOfOrigin) > 90) {
            throw new MapTrouble("its .prj has a scale factor or origin that no grid has");
        }
        meridian = centralMeridian;
        scale = scaleFactor;
        originM = latitudeOfOrigin == 0 ? 0 : alongMeridian(latitudeOfOrigin);
    }

    /** The place so many metres east of the meridian and north of the origin. */
    Point place(double eastM, double northM) {
        double xi = (northM / scale + originM) / RADIUS;
        double eta = eastM / scale / RADIUS;
        double x = xi;
        double y = eta;
        for (int j = 0; j < BACK.length; j++) {
            double k = 2.0 * (j + 1);
            x -= BACK[j] * Math.sin(k * xi) * Math.cosh(k * eta);
            y -= BACK[j] * Math.cos(k * xi) * Math.sinh(k * eta);
        }
        double conformal = Math.sin(x) / Math.hypot(Math.sinh(y), Math.cos(x));
        double longitude = Math.toDegrees(Math.atan2(Math.sinh(y), Math.cos(x)));
        return new Point(
                Math.IEEEremainder(meridian + longitude, 360), Math.toDegrees(Math.atan(geographic(conformal))));
    }

    /** The tangent of the latitude from that of the conformal latitude, by Newton steps. */
    private static double geographic(double wanted) {
        double tan = wanted / (1 - E * E);
        for (int step = 0; step < 6; step++) {
            double sigma = Math.sinh(E * atanh(E * tan / Math.hypot(1, tan)));
            double conformal = tan * Math.hypot(1, sigma) - sigma * Math.hypot(1, tan);
            tan += (wanted - conformal)
                    / Math.hypot(1, conformal)
                    * (1 + (1 - E * E) * tan * tan)
                    / ((1 - E * E) * Math.hypot(1, tan));
        }
        return tan;
    }

    private static double atanh(double x) {
        return Math.log((1 + x) / (1 - x)) / 2;
    }

    /** Metres along a meridian from the equator: Simpson's rule on the radius of curvature, good to a micrometre. */
    private static double alongMeridian(double latitude) {
        int steps = 2000;
        double width = Math.toRadians(latitude) / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double sin = Math.sin(i * width);
            double weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * AXIS_M * (1 - E * E) / Math.pow(1 - E * E * sin * sin, 1.5);
        }
        return sum * width / 3;
    }
}
