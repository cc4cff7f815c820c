package plumbrow.science.weatheryears;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Against closed forms worked in Python, and against what was counted at Champaign, in Illinois and in Missouri. */
@DisplayName("Weather from year to year")
class WeatherYearsTest {
    private static final int YEARS = 1500;
    private static final List<WeatherYear> FREE =
            WeatherGenerator.of(Champaign.normals(), "IL", 30).free(YEARS, 5);

    /** Computed apart from this code. */
    @Test
    @DisplayName("wet days, totals and dry spells of June and July come out as worked by hand")
    void closedForms() {
        RainMonth june = Champaign.rain(5);
        assertThat(june.wetShare()).isCloseTo(.3424, within(5e-5));
        assertThat(30 * june.wetShare()).isCloseTo(10.27, within(5e-3));
        assertThat(june.meanMm(30)).isCloseTo(115.7, within(.05));
        assertThat(june.sdMm(30)).isCloseTo(55.9, within(.05));
        assertThat(june.dryChance(7)).isCloseTo(.0842, within(5e-5));
        assertThat(june.dryChance(10)).isCloseTo(.0302, within(5e-5));
        assertThat(june.moreThan(12.7)).isCloseTo(.3047, within(5e-5));
        RainMonth july = Champaign.rain(6);
        assertThat(july.wetShare()).isCloseTo(.2974, within(5e-5));
        assertThat(31 * july.wetShare()).isCloseTo(9.22, within(5e-3));
        assertThat(july.meanMm(31)).isCloseTo(97.4, within(.05));
        assertThat(july.sdMm(31)).isCloseTo(50.9, within(.05));
    }

    /** Computed apart from this code. */
    @Test
    @DisplayName("single days: wet or dry by yesterday, amounts by the gamma distribution")
    void days() {
        RainMonth june = Champaign.rain(5);
        assertThat(june.wet(true, .25, 1)).isTrue();
        assertThat(june.amountMm(.5)).isCloseTo(6.328, within(1e-3));
        assertThat(june.wet(false, .30, 1)).isFalse();
        RainMonth may = Champaign.rain(4);
        assertThat(may.wet(false, .10, 1)).isTrue();
        assertThat(may.amountMm(.9)).isCloseTo(22.339, within(1e-3));
        RainMonth april = Champaign.rain(3);
        assertThat(april.wet(true, .40, 1)).isTrue();
        assertThat(april.amountMm(.25)).isCloseTo(1.426, within(1e-3));
    }

    /** Computed apart from this code; the stationary covariance is that of M0, Richardson &amp; Wright 1984. */
    @Test
    @DisplayName("temperature residuals: one step, and what they come to in the long run")
    void residuals() {
        double[] chi = {1, .5};
        DayResiduals.USA.step(chi, .2, -.3);
        assertThat(chi[0]).isCloseTo(.76568, within(1e-5));
        assertThat(chi[1]).isCloseTo(.36656, within(1e-5));
        double[][] covariance = DayResiduals.USA.sameDay();
        assertThat(covariance[0][0]).isCloseTo(1, within(1e-3));
        assertThat(covariance[1][1]).isCloseTo(1, within(1e-3));
        assertThat(covariance[0][1]).isCloseTo(.633, within(1e-3));
        double[][] station = DayResiduals.CHAMPAIGN.sameDay();
        assertThat(station[0][0]).isCloseTo(1, within(.01));
        assertThat(station[1][1]).isCloseTo(1, within(.01));
    }

    @Test
    @DisplayName("months have the normals' rain, wet days and warmth, and the spread between years that was counted")
    void months() {
        SiteNormals normals = Champaign.normals();
        YearSpread spread = YearSpread.of("IL");
        for (int m = 0; m < 12; m++) {
            int month = m;
            double[] rain =
                    FREE.stream().mapToDouble(year -> year.monthRainMm(month)).toArray();
            assertThat(mean(rain))
                    .as("rain of month %d", m + 1)
                    .isCloseTo(normals.rainMm().get(m), within(.06 * mean(rain)));
            RainMonth chain = WeatherGenerator.of(normals, "IL", 30).rain(m);
            double least = chain.sdMm(MonthCurve.days(m)) / chain.meanMm(MonthCurve.days(m));
            assertThat(sd(rain) / mean(rain))
                    .as("spread of the rain of month %d", m + 1)
                    .isCloseTo(Math.max(least, spread.rainCv()[m]), within(.06));
            int from = MonthCurve.firstDay(m);
            int to = from + MonthCurve.days(m) - 1;
            double wet = FREE.stream()
                    .mapToLong(year -> year.wetDays(from, to))
                    .average()
                    .orElseThrow();
            assertThat(wet)
                    .isBetween(
                            .82 * normals.wetDays().get(m),
                            1.03 * normals.wetDays().get(m));
            double[] warm =
                    FREE.stream().mapToDouble(year -> year.monthC(month)).toArray();
            assertThat(mean(warm))
                    .isCloseTo((normals.highC().get(m) + normals.lowC().get(m)) / 2, within(.6));
            assertThat(sd(warm)).as("warmth of month %d", m + 1).isCloseTo(spread.meanSdF()[m] / 1.8, within(.15));
            assertThat(correlation(warm, rain))
                    .as("warmth with rain of month %d", m + 1)
                    .isCloseTo(YearSpread.WARMTH_WITH_RAIN[m], within(.12));
        }
    }

    /** Champaign 1995 to 2023: April to September .178 (n = 26: give or take .025), June to August .270, year .136. */
    @Test
    @DisplayName("rain of half years and years spreads as it was counted, within what 26 years can tell")
    void seasons() {
        assertThat(spread(91, 273)).isCloseTo(.178, within(.05));
        assertThat(spread(152, 243)).isCloseTo(.270, within(.08));
        assertThat(spread(1, 365)).isCloseTo(.136, within(.04));
    }

    private static double spread(int from, int to) {
        double[] rain = FREE.stream().mapToDouble(year -> year.rainMm(from, to)).toArray();
        return sd(rain) / mean(rain);
    }

    /** Counted from the daily record of Champaign, Illinois over 29 years, overlapping windows: about ±.05. */
    @Test
    @DisplayName("rain after an application comes as often as it did at Champaign")
    void rainAfter() {
        assertThat(rainWithin(7, 12.7, 130, 149)).isCloseTo(.65, within(.07));
        assertThat(rainWithin(7, 20, 130, 149)).isCloseTo(.49, within(.07));
        assertThat(rainWithin(15, 25, 130, 149)).isCloseTo(.81, within(.07));
        assertThat(rainWithin(15, 50, 130, 149)).isCloseTo(.48, within(.07));
        assertThat(rainWithin(15, 50, 141, 160)).isCloseTo(.51, within(.07));
        assertThat(rainWithin(15, 100, 141, 160)).isCloseTo(.19, within(.08));
    }

    private static double rainWithin(int days, double mm, int from, int to) {
        double hits = 0;
        for (WeatherYear year : FREE) {
            for (int day = from; day <= to; day++) {
                hits += year.rainMm(day, day + days - 1) >= mm ? 1 : 0;
            }
        }
        return hits / FREE.size() / (to - from + 1);
    }

    /** Illinois central 10 April to 20 May: mean 20 of 41 (the fit), SD 5.5 from the range of 31 years; Missouri. */
    @Test
    @DisplayName("days fit for field work: the mean they were fitted to, and the spread they were not")
    void fitDays() {
        double[] spring = FREE.stream().mapToDouble(year -> fit(year, 100, 140)).toArray();
        assertThat(mean(spring)).isCloseTo(20, within(1.0));
        assertThat(sd(spring)).isCloseTo(5.47, within(1.0));
        double april = FREE.stream().filter(year -> fit(year, 91, 151) >= 35).count() / (double) YEARS;
        assertThat(april).isCloseTo(.30, within(.10));
        double june = FREE.stream().filter(year -> fit(year, 91, 161) >= 35).count() / (double) YEARS;
        assertThat(june).isCloseTo(.60, within(.12));
    }

    private static double fit(WeatherYear year, int from, int to) {
        boolean[] fit = FitDays.of(year);
        double count = 0;
        for (int day = from; day <= to; day++) {
            count += fit[day - 1] ? 1 : 0;
        }
        return count;
    }

    @Test
    @DisplayName("the seasons made for a place keep its normals to the last digit, driest spring first")
    void held() {
        SiteNormals normals = Champaign.normals();
        List<WeatherYear> seasons = SeasonSet.made(normals, "IL", 30);
        assertThat(seasons).hasSize(SeasonSet.MADE);
        for (int m = 0; m < 12; m++) {
            int month = m;
            assertThat(seasons.stream()
                            .mapToDouble(year -> year.monthRainMm(month))
                            .average()
                            .orElseThrow())
                    .isCloseTo(normals.rainMm().get(m), within(1e-9));
        }
        double[] springs =
                seasons.stream().mapToDouble(WeatherYear::springRainMm).toArray();
        assertThat(springs[0]).isLessThan(.7 * springs[20]);
        assertThat(springs[40]).isGreaterThan(1.4 * springs[20]);
        assertThat(SeasonSet.made(normals, "IL", 30).get(7).rainMm())
                .isEqualTo(seasons.get(7).rainMm());
    }

    @Test
    @DisplayName("a wet season is wet at another place too: the luck is the region's")
    void region() {
        double[] twice = new double[12];
        Arrays.setAll(twice, m -> .6 * Champaign.normals().rainMm().get(m));
        SiteNormals drier = SiteNormals.of(
                array(Champaign.normals().highC()),
                array(Champaign.normals().lowC()),
                twice,
                array(Champaign.normals().wetDays()));
        double[] here = SeasonSet.made(Champaign.normals(), "IL", 30).stream()
                .mapToDouble(WeatherYear::springRainMm)
                .toArray();
        double[] there = SeasonSet.made(drier, "IA", 30).stream()
                .mapToDouble(WeatherYear::springRainMm)
                .toArray();
        assertThat(correlation(here, there)).isGreaterThan(.95);
    }

    @Test
    @DisplayName("means of one year are doubtful: the spread about them is wider")
    void fewYears() {
        YearSpread sure = YearSpread.of("IA");
        assertThat(sure.fromYears(1).meanSdF()[5]).isCloseTo(Math.sqrt(2) * 1.85, within(1e-12));
        assertThat(YearSpread.of("KS").meanSdF()[5]).isBetween(1.7, 2.6);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double sd(double[] values) {
        double mean = mean(values);
        return Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1));
    }

    private static double correlation(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - mean(a)) * (b[i] - mean(b));
        }
        return sum / (a.length - 1) / sd(a) / sd(b);
    }
}
