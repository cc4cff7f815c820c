package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import plumbrow.advice.field.Field;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.science.insects.DegreeDays;
import plumbrow.science.weedseason.Days;
import plumbrow.science.weedseason.Surface;

/**
 * The days of a field's season.
 *
 * From measured days of the field or its county where they run from 1 March to the end of September without a gap; else from
 * its twelve months, and rain is drawn. From months, the soil surface counts as dry where in April to June it rains on fewer
 * than one day in five, as moist else (ours, after the three days that a rain keeps it moist).
 *
 * @param lows lowest temperature of each day, as air temperature
 * @param highs highest temperature of each day
 * @param months the normals, empty where the days are measured
 * @param source who says so
 */
record FieldClimate(Days days, Days lows, Days highs, List<MonthClimate> months, String source) {
    static final int LAST_DAY = 273;
    private static final int FIRST_NEEDED = 60;
    private static final int MONTHS = 12;
    private static final int SOIL_LAG_DAYS = 5;
    private static final double DRY_SHARE = .2;
    private static final double DAYS_A_MONTH = 30.4;
    private static final double MM_PER_INCH = 25.4;

    /** Rain that puts half of a soil herbicide to work: the middle of the ramp to 20 mm (weeds.md 4.2). */
    private static final double ACTIVATING_MM = 10;

    static Optional<FieldClimate> of(WeedBook book, Field field) {
        for (String place : List.of(field.name(), field.state() + ": " + field.county())) {
            Optional<FieldClimate> found = measured(book, place).or(() -> normals(book, place));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<FieldClimate> normals(WeedBook book, String place) {
        List<MonthClimate> months = book.climate().stream()
                .filter(month -> month.place().equalsIgnoreCase(place))
                .sorted(Comparator.comparingInt(MonthClimate::month))
                .toList();
        if (months.size() != MONTHS) {
            return Optional.empty();
        }
        double wet = months.subList(3, 6).stream()
                        .mapToDouble(MonthClimate::rainDays)
                        .sum()
                / (3 * DAYS_A_MONTH);
        Surface surface = wet < DRY_SHARE ? Surface.DRY : Surface.MOIST;
        return Optional.of(new FieldClimate(
                ofMonths(months.stream().mapToDouble(MonthClimate::meanF), surface),
                ofMonths(months.stream().mapToDouble(FieldClimate::low), surface),
                ofMonths(months.stream().mapToDouble(FieldClimate::high), surface),
                months,
                "normals of " + place + ": " + months.get(0).source()));
    }

    private static Days ofMonths(DoubleStream fahrenheit, Surface surface) {
        return Days.ofMonths(fahrenheit.map(FieldClimate::celsius).toArray(), 1, LAST_DAY, surface);
    }

    private static double low(MonthClimate month) {
        Double low = month.lowF();
        return low == null ? month.meanF() : low;
    }

    private static double high(MonthClimate month) {
        Double high = month.highF();
        return high == null ? month.meanF() : high;
    }

    private static Optional<FieldClimate> measured(WeedBook book, String place) {
        Map<Integer, WeatherDay> byDay = new TreeMap<>();
        for (WeatherDay day : book.days()) {
            if (day.place().equalsIgnoreCase(place)) {
                byDay.put(DayOfYear.of(day.date()), day);
            }
        }
        int first = FIRST_NEEDED;
        while (byDay.containsKey(first - 1)) {
            first--;
        }
        List<WeatherDay> run = new ArrayList<>();
        for (int day = first; day <= LAST_DAY; day++) {
            WeatherDay found = byDay.get(day);
            if (found == null) {
                return Optional.empty();
            }
            run.add(found);
        }
        double[] lows = celsius(run, WeatherDay::lowF);
        double[] highs = celsius(run, WeatherDay::highF);
        double[] air = new double[lows.length];
        Arrays.setAll(air, i -> (lows[i] + highs[i]) / 2);
        double[] soil = new double[air.length];
        Arrays.setAll(
                soil,
                i -> Arrays.stream(air, Math.max(0, i + 1 - SOIL_LAG_DAYS), i + 1)
                        .average()
                        .orElseThrow());
        double[] rain =
                run.stream().mapToDouble(day -> day.rainIn() * MM_PER_INCH).toArray();
        return Optional.of(new FieldClimate(
                Days.measured(first, soil, air, rain),
                Days.measured(first, soil, lows, rain),
                Days.measured(first, soil, highs, rain),
                List.of(),
                "measured days of " + place + ": " + run.get(0).source()));
    }

    private static double[] celsius(List<WeatherDay> days, ToDoubleFunction<WeatherDay> fahrenheit) {
        return days.stream().mapToDouble(fahrenheit).map(FieldClimate::celsius).toArray();
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /** The day of the year on which so many degree days (86/50, °F) are reached after a day; past the last where never. */
    int dayAfter(int dayOfYear, double degreeDays) {
        double sum = 0;
        int day = dayOfYear;
        while (sum < degreeDays && day < LAST_DAY) {
            day++;
            int index = day - days.first();
            sum += DegreeDays.modified(lows.airC(index) * 1.8 + 32, highs.airC(index) * 1.8 + 32, 50, 86);
        }
        return sum < degreeDays ? LAST_DAY + 1 : day;
    }

    /**
     * Days until enough rain has fallen, in a month of the normals.
     *
     * Rain comes by chance on n days of the month and brings an amount with an exponential spread of mean r: then the number
     * of rains needed for h is 1 + Poisson(h/r), and the wait has mean g(1 + h/r) and variance g²(1 + 2h/r), g = 30.4/n.
     * A Weibull law of that mean and spread stands for it.
     */
    Law rainAfter(int month) {
        MonthClimate normal = months.get(month - 1);
        double days = Math.max(.5, normal.rainDays());
        double each = Math.max(.1, normal.rainIn() * MM_PER_INCH / days);
        double rains = ACTIVATING_MM / each;
        double mean = DAYS_A_MONTH / days * (1 + rains);
        return new Law.Weibull(mean, Math.sqrt(1 + 2 * rains) / (1 + rains));
    }
}
