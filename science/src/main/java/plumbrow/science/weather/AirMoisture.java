package plumbrow.science.weather;

/**
 * Water in the air.
 *
 *   es = 6.1094·exp(17.625·T/(243.04+T))      [hPa], T [°C]
 *   γ = ln(RH/100) + 17.625·T/(243.04+T);  Td = 243.04·γ/(17.625 − γ);  RH = 100·es(Td)/es(T), at most 100
 *
 * The FAO form, es = 0.6108·exp(17.27·T/(T+237.3)) [kPa], differs by less than 0.3 % above freezing (0.37 % at −10 °C) and serves the vapour deficit alone.
 * Valid from about −40 to +50 °C over water (value from memory).
 *
 * Source: Alduchov & Eskridge 1996, J. Appl. Meteor. 35:601; Allen et al. 1998, FAO-56, eq. 11.
 */
public final class AirMoisture {
    private static final double SLOPE = 17.625;
    private static final double SHIFT_C = 243.04;
    private static final double AT_ZERO_HPA = 6.1094;

    private AirMoisture() {}

    /** Vapour pressure of saturated air [hPa], Alduchov & Eskridge. */
    public static double saturationHpa(double celsius) {
        return AT_ZERO_HPA * Math.exp(SLOPE * celsius / (SHIFT_C + celsius));
    }

    /** Vapour pressure of saturated air [kPa], FAO-56. */
    public static double saturationKpaFao(double celsius) {
        return 0.6108 * Math.exp(17.27 * celsius / (celsius + 237.3));
    }

    /** Dew point [°C] at a humidity above 0 [%]. */
    public static double dewPointC(double celsius, double humidityPct) {
        double gamma = Math.log(humidityPct / 100) + SLOPE * celsius / (SHIFT_C + celsius);
        return SHIFT_C * gamma / (SLOPE - gamma);
    }

    /** Relative humidity [%] at a dew point [°C], at most 100. */
    public static double humidityPct(double celsius, double dewPointC) {
        return Math.min(100, 100 * saturationHpa(dewPointC) / saturationHpa(celsius));
    }
}
