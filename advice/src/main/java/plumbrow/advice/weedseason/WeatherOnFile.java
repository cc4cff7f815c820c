package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.science.weatheryears.SeasonSet;
import plumbrow.science.weatheryears.WeatherYear;

/**
 * Measured years of places: those that run from 1 March to 30 September without a gap, by place.
 *
 * Years of one place are put in the order of how wet their springs were over all places that have the year, so that a season that
 * is drawn is one and the same year on all fields of a region.
 */
final class WeatherOnFile {
    /** So many past years stand for the years to come by themselves. */
    static final int ENOUGH = 10;

    static final int LAST_DAY = 273;
    private static final int FIRST_NEEDED = 60;
    private static final double MM_PER_INCH = 25.4;

    private static volatile WeatherOnFile last = new WeatherOnFile(List.of());

    private final List<WeatherDay> read;
    private final Map<String, TreeMap<Integer, WeatherYear>> places = new HashMap<>();
    private final Map<String, String> sources = new HashMap<>();
    private final Map<Integer, Double> wetness = new HashMap<>();

    private WeatherOnFile(List<WeatherDay> days) {
        this.read = days;
        Map<String, Map<Integer, TreeMap<Integer, WeatherDay>>> rows = new HashMap<>();
        for (WeatherDay day : days) {
            String place = key(day.place());
            sources.putIfAbsent(place, day.source());
            rows.computeIfAbsent(place, key -> new HashMap<>())
                    .computeIfAbsent(day.date().getYear(), key -> new TreeMap<>())
                    .put(DayOfYear.of(day.date()), day);
        }
        rows.forEach((place, years) -> years.forEach((year, byDay) -> whole(byDay)
                .ifPresent(found ->
                        places.computeIfAbsent(place, key -> new TreeMap<>()).put(year, found))));
        Map<Integer, List<Double>> springs = new HashMap<>();
        for (TreeMap<Integer, WeatherYear> years : places.values()) {
            double mean = years.values().stream()
                    .mapToDouble(WeatherYear::springRainMm)
                    .average()
                    .orElse(0);
            years.forEach((year, days2) -> springs.computeIfAbsent(year, key -> new ArrayList<>())
                    .add(mean == 0 ? 1 : days2.springRainMm() / mean));
        }
        springs.forEach((year, all) -> wetness.put(
                year,
                all.stream().sorted().mapToDouble(Double::doubleValue).average().orElse(1)));
    }

    /** Of these days; read once for the same list. */
    static WeatherOnFile of(List<WeatherDay> days) {
        WeatherOnFile known = last;
        if (known.read != days) {
            known = new WeatherOnFile(days);
            last = known;
        }
        return known;
    }

    private static String key(String place) {
        return place.toLowerCase(Locale.ROOT);
    }

    private static Optional<WeatherYear> whole(Map<Integer, WeatherDay> byDay) {
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
        return Optional.of(new WeatherYear(
                first,
                celsius(run, WeatherDay::highF),
                celsius(run, WeatherDay::lowF),
                run.stream().mapToDouble(day -> day.rainIn() * MM_PER_INCH).toArray()));
    }

    private static double[] celsius(List<WeatherDay> days, ToDoubleFunction<WeatherDay> fahrenheit) {
        return days.stream()
                .mapToDouble(fahrenheit)
                .map(value -> (value - 32) / 1.8)
                .toArray();
    }

    /** The year that a season of weeds is in, where its days are all on file: then its weather is known. */
    Optional<WeatherYear> ofYear(String place, int year) {
        return Optional.ofNullable(
                places.getOrDefault(key(place), new TreeMap<>()).get(year));
    }

    /** Past years of a place that are whole, from the driest spring to the wettest, all from the same day of the year on. */
    List<WeatherYear> past(String place, int before) {
        SortedMap<Integer, WeatherYear> years =
                places.getOrDefault(key(place), new TreeMap<>()).headMap(before);
        int first = years.values().stream().mapToInt(WeatherYear::first).max().orElse(1);
        List<WeatherYear> all = new ArrayList<>();
        List<Double> wet = new ArrayList<>();
        years.forEach((year, days) -> {
            all.add(from(days, first));
            wet.add(wetness.getOrDefault(year, 1.0));
        });
        double[] order = wet.stream().mapToDouble(Double::doubleValue).toArray();
        return all.isEmpty() ? all : SeasonSet.ordered(all, SeasonSet.order(all, order));
    }

    private static WeatherYear from(WeatherYear year, int first) {
        int skip = first - year.first();
        int to = year.highC().length;
        return new WeatherYear(
                first,
                Arrays.copyOfRange(year.highC(), skip, to),
                Arrays.copyOfRange(year.lowC(), skip, to),
                Arrays.copyOfRange(year.rainMm(), skip, to));
    }

    /** Where a place's days come from. */
    String source(String place) {
        return sources.getOrDefault(key(place), "");
    }

    /** First and last of the past years of a place, "1996 to 2025", or the only one. */
    String named(String place, int before) {
        List<Integer> named = places.getOrDefault(key(place), new TreeMap<>()).keySet().stream()
                .filter(year -> year < before)
                .toList();
        return named.size() == 1 ? "" + named.get(0) : named.get(0) + " to " + named.get(named.size() - 1);
    }
}
