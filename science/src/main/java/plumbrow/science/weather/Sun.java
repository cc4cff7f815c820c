package plumbrow.science.weather;

import java.time.LocalDate;

/**
 * Where the sun stands at a moment: its declination and the equation of time, from the century series.
 *
 *   T = (JD − 2451545)/36525;  L0 mean longitude, M mean anomaly, e eccentricity, C centre, λ apparent longitude,
 *   ε obliquity [°];  δ = asin(sin ε·sin λ);  y = tan²(ε/2)
 *   EoT = 4·deg(y sin2L0 − 2e sinM + 4ey sinM cos2L0 − ½y² sin4L0 − 1.25e² sin2M)      [min]
 *
 * The short sheet with terms in the fraction of the year is off by up to 2.1 minutes in May and is not used.
 *
 * Source: Meeus, Astronomical Algorithms, in the form NOAA uses; checked against Reda & Andreas, NREL/TP-560-34302.
 *
 * @param declination [rad]
 * @param equationOfTimeMinutes sun's time less clock's mean time [min]
 */
public record Sun(double declination, double equationOfTimeMinutes) {
    private static final double JULIAN_DAY_OF_EPOCH = 2_440_587.5;
    private static final double JULIAN_DAY_OF_2000 = 2_451_545;
    private static final double DAYS_PER_CENTURY = 36_525;
    private static final double MINUTES_PER_DEGREE = 4;

    /** The Julian day of the first moment of a date, UTC. */
    public static double julianDay(LocalDate date) {
        return date.toEpochDay() + JULIAN_DAY_OF_EPOCH;
    }

    /** The sun at a Julian day, UTC. */
    public static Sun at(double julianDay) {
        double t = (julianDay - JULIAN_DAY_OF_2000) / DAYS_PER_CENTURY;
        double meanLongitude = Math.toRadians((280.46646 + t * (36000.76983 + 0.0003032 * t)) % 360);
        double anomaly = Math.toRadians(357.52911 + t * (35999.05029 - 0.0001537 * t));
        double eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
        double centre = Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t))
                + Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t)
                + 0.000289 * Math.sin(3 * anomaly);
        double node = Math.toRadians(125.04 - 1934.136 * t);
        double longitude = meanLongitude + Math.toRadians(centre - 0.00569 - 0.00478 * Math.sin(node));
        double seconds = 21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t));
        double obliquity = Math.toRadians(23 + (26 + seconds / 60) / 60 + 0.00256 * Math.cos(node));
        double y = Math.pow(Math.tan(obliquity / 2), 2);
        double equation = y * Math.sin(2 * meanLongitude)
                - 2 * eccentricity * Math.sin(anomaly)
                + 4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * meanLongitude)
                - y * y / 2 * Math.sin(4 * meanLongitude)
                - 1.25 * eccentricity * eccentricity * Math.sin(2 * anomaly);
        return new Sun(
                Math.asin(Math.sin(obliquity) * Math.sin(longitude)), MINUTES_PER_DEGREE * Math.toDegrees(equation));
    }
}
