package plumbrow.advice.hours;

import java.util.List;
import plumbrow.advice.hours.HourRule.Kind;
import plumbrow.advice.hours.HourRule.Whose;

/**
 * Limits of good practice, which hold beside every label. They are settings: advice, not distribution.
 *
 * @param windLeastMph least wind at the boom [mph], {@code windMostMph} most
 * @param deltaLeastC least delta T [°C], {@code deltaMostC} most
 * @param afterSunriseH inversions are likely until so long after sunrise [h]
 * @param beforeSunsetH and from so long before sunset [h]
 * @param coolestF air below which weeds hardly take a spray up [°F], for sprays on leaves
 * @param dewHumidityPct humidity from which leaves are taken to be wet [%], for sprays on leaves
 */
public record Practice(
        double windLeastMph,
        double windMostMph,
        double deltaLeastC,
        double deltaMostC,
        double afterSunriseH,
        double beforeSunsetH,
        double coolestF,
        double dewHumidityPct) {
    /**
     * Wind: 3 to 10 mph, as many labels have it (pesticidestewardship.org says 3 to 8). Delta T: 2 to 10, of which above 8 is
     * marginal (GRDC, Australia). Inversions: 2 h before sunset to 1 h after sunrise (GRDC module 10.8). Air: 40 °F (Illinois, Pest
     * Management Bulletin 9, 1997). Dew from 90 % humidity: common practice, no source.
     */
    public static final Practice DEFAULT = new Practice(3, 10, 2, 10, 1, 2, 40, 90);

    private static final String OWNER = "good practice";

    public Practice {
        if (!(windLeastMph >= 0 && windLeastMph <= windMostMph && deltaLeastC <= deltaMostC)
                || !(afterSunriseH >= 0 && beforeSunsetH >= 0)) {
            throw new IllegalArgumentException(
                    "limits of good practice stand in order: least wind not above most, least delta T not above most, hours not negative");
        }
    }

    /** The rules, for a spray that goes on leaves or on bare ground. */
    public List<HourRule> rules(boolean leaves) {
        List<HourRule> all = List.of(
                rule(Kind.WIND, windLeastMph, windMostMph, "pesticidestewardship.org, and limits of many labels"),
                rule(Kind.DELTA_T, deltaLeastC, deltaMostC, "Australian advice (GRDC), not US law"),
                rule(Kind.INVERSION, afterSunriseH, beforeSunsetH, "GRDC Spray Application Manual, module 10.8"),
                rule(Kind.DARK, 0, 0, "common practice, no source"),
                rule(Kind.RAIN_NOW, 0, 0, "common practice, no source"),
                rule(Kind.GROUND, 0, 0, "ours, fitted to days fit in Illinois"),
                rule(Kind.AIR, coolestF, Double.POSITIVE_INFINITY, "Illinois Pest Management Bulletin 9, 1997"),
                rule(Kind.DEW, 0, dewHumidityPct, "common practice, no source"));
        return leaves ? all : all.subList(0, all.size() - 2);
    }

    private static HourRule rule(Kind kind, double least, double most, String source) {
        return new HourRule(
                kind, Whose.PRACTICE, OWNER, least, Double.isInfinite(most) ? null : Double.valueOf(most), "", source);
    }
}
