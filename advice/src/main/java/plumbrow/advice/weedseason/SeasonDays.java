package plumbrow.advice.weedseason;

import java.util.Arrays;
import plumbrow.science.insects.DegreeDays;
import plumbrow.science.weatheryears.FitDays;
import plumbrow.science.weatheryears.WeatherYear;
import plumbrow.science.weedseason.Days;

/**
 * One season of a field's weather as weeds, herbicides, crop and sprayer meet it, up to the end of September.
 *
 * @param days means of air and soil, rain and surface
 * @param lows lowest temperature of each day, as air temperature
 * @param highs highest temperature of each day
 * @param fit whether each day is fit for work in the field
 * @param weather what all of them come from
 */
@SuppressWarnings("ArrayRecordComponent") // One flag a day; read only.
record SeasonDays(Days days, Days lows, Days highs, boolean[] fit, WeatherYear weather) {
    private static final int SOIL_LAG_DAYS = 5;
    private static final int MOST_WAITED = 14;

    /** @param last day of the year of the last day taken */
    static SeasonDays of(WeatherYear year, int last) {
        int count = last - year.first() + 1;
        double[] lows = Arrays.copyOf(year.lowC(), count);
        double[] highs = Arrays.copyOf(year.highC(), count);
        double[] rain = Arrays.copyOf(year.rainMm(), count);
        double[] air = new double[count];
        Arrays.setAll(air, i -> (lows[i] + highs[i]) / 2);
        double[] soil = new double[count];
        Arrays.setAll(
                soil,
                i -> Arrays.stream(air, Math.max(0, i + 1 - SOIL_LAG_DAYS), i + 1)
                        .average()
                        .orElseThrow());
        int first = year.first();
        return new SeasonDays(
                Days.measured(first, soil, air, rain),
                Days.measured(first, soil, lows, rain),
                Days.measured(first, soil, highs, rain),
                FitDays.of(year),
                year);
    }

    int last() {
        return days.first() + days.count() - 1;
    }

    /** The day of the year on which so many degree days (86/50, °F) are reached after a day; past the last where never. */
    int dayAfter(int dayOfYear, double degreeDays) {
        double sum = 0;
        int day = dayOfYear;
        while (sum < degreeDays && day < last()) {
            day++;
            int index = day - days.first();
            sum += DegreeDays.modified(lows.airC(index) * 1.8 + 32, highs.airC(index) * 1.8 + 32, 50, 86);
        }
        return sum < degreeDays ? last() + 1 : day;
    }

    /** The first day from a planned one on that is fit for the field; after two weeks of waiting the work is done all the same. */
    int fitFrom(int dayOfYear) {
        int day = dayOfYear;
        while (day < dayOfYear + MOST_WAITED && day < last() && !fit[Math.max(0, day - days.first())]) {
            day++;
        }
        return day;
    }
}
