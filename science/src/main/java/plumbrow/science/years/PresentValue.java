package plumbrow.science.years;

/**
 * Money of later years in money of now.
 *
 *   value = Σ m_y/(1 + i)^y,  y = 0 for this season
 *
 *   m_y  money of year y;  i  discount rate [share a year], more than −1
 *
 * Source: definition of net present value.
 */
public final class PresentValue {
    private PresentValue() {}

    /** 1/(1 + i)^y. */
    public static double factor(double rate, int yearsFromNow) {
        return Math.pow(1 + rate, -yearsFromNow);
    }

    /** The level yearly sum that has the same present value over so many years, this one the first. */
    public static double perYear(double value, double rate, int years) {
        double factors = 0;
        for (int y = 0; y < years; y++) {
            factors += factor(rate, y);
        }
        return value / factors;
    }
}
