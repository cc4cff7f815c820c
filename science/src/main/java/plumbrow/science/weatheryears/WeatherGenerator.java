package plumbrow.science.weatheryears;

import java.util.ArrayList;
import java.util.List;

/**
 * Days of years that are as likely as each other at a place, from its normals.
 *
 *   wet today  if u &lt; P(W|W) or u &lt; P(W|D)·Fᵃ;  amount = β·Fᵃ·γ(α)
 *   highest = μ(wet|dry) + e·z + σ(wet|dry)·χ₁;  lowest likewise with χ₂;  lowest above highest: swapped
 *
 *   F  lognormal, mean 1, drawn for each month: what rain varies from year to year beyond the chain; a = 1/(2 − π), as the share
 *      of wet days answers to P(W|D) with the power 1 − π
 *   e  spread of the month's mean temperature beyond that of the days [°C];  z  standard normal, 0.2 from one month to the next
 *
 * Last, the mean temperature of each month is put right: where the days alone make it differ more between years than it does, its
 * departure is drawn in, and a part of it goes with the month's rain as it does in the states.
 *
 * Such a chain has too little spread between years (its known fault). F and e supply what is missing against the place's state:
 * CV²(F) = (1 + CV²)/(1 + CV² of the chain) − 1, e² = SD² − SD² of the chain, none where the chain has enough. One factor for a
 * whole year would tie the months: statewide the rain of two months in turn is not correlated.
 *
 * Source: Richardson 1981, Water Resour. Res. 17:182; Richardson &amp; Wright 1984, ARS-8; shape of the days
 * {@link Champaign}, spread between years {@link YearSpread}.
 */
public final class WeatherGenerator {
    private static final DayResiduals RESIDUALS = DayResiduals.CHAMPAIGN;

    private final SiteNormals normals;
    private final RainMonth[] rain = new RainMonth[12];
    private final double[] factorSd = new double[12];
    private final double[] power = new double[12];
    private final double[] monthSdC = new double[12];
    private final double[] rainSdC = new double[12];
    private final double[] rainCv = new double[12];
    private final double[] kept = new double[12];
    private final double[] highWet = new double[12];
    private final double[] highDry = new double[12];
    private final double[] lowWet = new double[12];
    private final double[] lowDry = new double[12];

    private WeatherGenerator(SiteNormals normals, YearSpread spread) {
        this.normals = normals;
        for (int m = 0; m < 12; m++) {
            int days = MonthCurve.days(m);
            RainMonth like = Champaign.rain(m);
            rain[m] =
                    RainMonth.fitted(normals.wetDays().get(m), normals.rainMm().get(m), days, like);
            double wet = rain[m].wetShare();
            double chain = rain[m].sdMm(days) / rain[m].meanMm(days);
            double missing = (1 + spread.rainCv()[m] * spread.rainCv()[m]) / (1 + chain * chain) - 1;
            factorSd[m] = missing <= 0 ? 0 : Math.sqrt(Math.log1p(missing));
            power[m] = 1 / (2 - wet);
            double own = RESIDUALS.sdOfMean(
                    days,
                    mixed(wet, Champaign.HIGH_WET_SD[m], Champaign.HIGH_DRY_SD[m]) / 2,
                    mixed(wet, Champaign.LOW_WET_SD[m], Champaign.LOW_DRY_SD[m]) / 2);
            double sdC = spread.meanSdF()[m] / 1.8;
            double withRain = YearSpread.WARMTH_WITH_RAIN[m];
            double wanted = sdC * Math.sqrt(1 - withRain * withRain);
            rainSdC[m] = sdC * withRain;
            kept[m] = Math.min(1, wanted / own);
            monthSdC[m] = Math.sqrt(Math.max(0, wanted * wanted - own * own));
            rainCv[m] = Math.max(chain, spread.rainCv()[m]);
            double high = Champaign.HIGH_WET[m] - Champaign.HIGH_DRY[m];
            double low = Champaign.LOW_WET[m] - Champaign.LOW_DRY[m];
            highWet[m] = normals.highC().get(m) + (1 - wet) * high;
            highDry[m] = normals.highC().get(m) - wet * high;
            lowWet[m] = normals.lowC().get(m) + (1 - wet) * low;
            lowDry[m] = normals.lowC().get(m) - wet * low;
        }
    }

    private static double mixed(double wet, double onWet, double onDry) {
        return wet * onWet + (1 - wet) * onDry;
    }

    /**
     * The generator of a place.
     *
     * @param state by its two letters; one without statistics of its own takes the mean of seven Corn Belt states
     * @param meansFromYears years that the normals are the mean of; 30 or more are as good as certain
     */
    public static WeatherGenerator of(SiteNormals normals, String state, int meansFromYears) {
        YearSpread spread = YearSpread.of(state);
        return new WeatherGenerator(normals, meansFromYears >= 30 ? spread : spread.fromYears(meansFromYears));
    }

    /** Whether a state has statistics of its own on how years differ. */
    public static boolean knows(String state) {
        return YearSpread.knows(state);
    }

    /** Rain of a month as it is drawn, before the month's own factor; 0 for January. */
    RainMonth rain(int month) {
        return rain[month];
    }

    /** The spread of the month's lognormal factor, as the standard deviation of its logarithm. */
    double factorSd(int month) {
        return factorSd[month];
    }

    /** Years by the luck given, as they come. */
    List<WeatherYear> free(WeatherChances chances) {
        List<WeatherYear> years = new ArrayList<>();
        for (int s = 0; s < chances.seasons(); s++) {
            years.add(year(chances, s));
        }
        return years;
    }

    /** Years of their own luck, as they come: for looking at the generator itself. */
    public List<WeatherYear> free(int years, long seed) {
        return free(WeatherChances.of(years, seed));
    }

    /**
     * Years by the luck given, held to the normals: over the set each month has their rain and their mean highest and lowest
     * temperature.
     */
    List<WeatherYear> held(WeatherChances chances) {
        List<WeatherYear> years = free(chances);
        for (int m = 0; m < 12; m++) {
            int from = MonthCurve.firstDay(m) - 1;
            int to = from + MonthCurve.days(m);
            double rainMm = 0;
            double high = 0;
            double low = 0;
            for (WeatherYear year : years) {
                for (int i = from; i < to; i++) {
                    rainMm += year.rainMm()[i] / years.size();
                    high += year.highC()[i] / years.size() / (to - from);
                    low += year.lowC()[i] / years.size() / (to - from);
                }
            }
            double times = rainMm > 0 ? normals.rainMm().get(m) / rainMm : 1;
            for (WeatherYear year : years) {
                for (int i = from; i < to; i++) {
                    year.rainMm()[i] *= times;
                    year.highC()[i] += normals.highC().get(m) - high;
                    year.lowC()[i] = Math.min(
                            year.highC()[i], year.lowC()[i] + normals.lowC().get(m) - low);
                }
            }
        }
        return years;
    }

    private WeatherYear year(WeatherChances chances, int season) {
        double[] high = new double[365];
        double[] low = new double[365];
        double[] mm = new double[365];
        double[] highOff = new double[12];
        double[] lowOff = new double[12];
        boolean wet = chances.wet[season][0] < rain[0].wetShare();
        double[] chi = new double[2];
        for (int i = 0; i < chances.wet[season].length; i++) {
            int day = i - WeatherChances.BEFORE + 1;
            int m = MonthCurve.month(day);
            double often =
                    Math.exp(power[m] * (factorSd[m] * chances.monthRain[season][m] - factorSd[m] * factorSd[m] / 2));
            wet = rain[m].wet(wet, chances.wet[season][i], often);
            RESIDUALS.step(chi, chances.high[season][i], chances.low[season][i]);
            if (day < 1) {
                continue;
            }
            double first = (wet ? Champaign.HIGH_WET_SD : Champaign.HIGH_DRY_SD)[m] * chi[0];
            double second = (wet ? Champaign.LOW_WET_SD : Champaign.LOW_DRY_SD)[m] * chi[1];
            highOff[m] += first / MonthCurve.days(m);
            lowOff[m] += second / MonthCurve.days(m);
            high[day - 1] = first + MonthCurve.at(wet ? highWet : highDry, day);
            low[day - 1] = second + MonthCurve.at(wet ? lowWet : lowDry, day);
            mm[day - 1] = wet ? rain[m].scaleMm() * often * chances.amount[season][i] : 0;
        }
        WeatherYear year = new WeatherYear(1, high, low, mm);
        for (int m = 0; m < 12; m++) {
            double usual = rain[m].meanMm(MonthCurve.days(m));
            double wetter = (year.monthRainMm(m) - usual) / (usual * rainCv[m]);
            double warm = monthSdC[m] * chances.monthWarmth[season][m] + rainSdC[m] * wetter;
            int from = MonthCurve.firstDay(m) - 1;
            for (int i = from; i < from + MonthCurve.days(m); i++) {
                double first = high[i] + warm - (1 - kept[m]) * highOff[m];
                double second = low[i] + warm - (1 - kept[m]) * lowOff[m];
                high[i] = Math.max(first, second);
                low[i] = Math.min(first, second);
            }
        }
        return year;
    }
}
