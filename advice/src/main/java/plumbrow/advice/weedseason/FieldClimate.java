package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.science.weatheryears.MonthCurve;
import plumbrow.science.weatheryears.SeasonSet;
import plumbrow.science.weatheryears.SiteNormals;
import plumbrow.science.weatheryears.WeatherGenerator;
import plumbrow.science.weatheryears.WeatherYear;
import plumbrow.science.weedseason.Days;
import plumbrow.science.weedseason.Surface;

/**
 * The weather that a field's season may bring: seasons as likely as each other, from the driest spring to the wettest.
 *
 * Past years of the field or its county where ten or more run from 1 March to the end of September without a gap; else seasons
 * made from its twelve months and the spread between years of its state; else made about the few years there are. A past year is
 * never the season by itself. Where the season's own year is on file whole, it is the only one: its weather is known.
 *
 * @param seasons one at least
 * @param days the usual season: means of the months, or of the years, without rain
 * @param source who says so
 * @param says what must be said of it, in sentences
 */
record FieldClimate(List<SeasonDays> seasons, Days days, String source, List<String> says) {
    private static final int CERTAIN_YEARS = 30;
    private static final int MONTHS = 12;
    private static final double DRY_SHARE = .2;
    private static final double DAYS_A_MONTH = 30.4;
    private static final double MM_PER_INCH = 25.4;
    private static final int MOST_KEPT = 64;

    /** Seasons made before, by what they were made from: a search asks for them with every program. */
    private static final ConcurrentMap<Made, List<SeasonDays>> KNOWN = new ConcurrentHashMap<>();

    private record Made(SiteNormals normals, String state, int years) {}

    static Optional<FieldClimate> of(Season season, Field field) {
        for (String place : List.of(field.name(), field.state() + ": " + field.county())) {
            Optional<FieldClimate> found = of(season, field, place);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<FieldClimate> of(Season season, Field field, String place) {
        List<WeatherDay> rows = season.pests().weedBook().days();
        WeatherOnFile file = WeatherOnFile.of(rows);
        Optional<WeatherYear> own = file.ofYear(place, season.year());
        if (own.isPresent()) {
            return Optional.of(known(
                    own.get(), "the measured days of " + place + " in " + season.year() + ": " + file.source(place)));
        }
        List<WeatherYear> past = file.past(place, season.year());
        if (past.size() >= WeatherOnFile.ENOUGH) {
            List<SeasonDays> seasons = past.stream().map(FieldClimate::days).toList();
            return Optional.of(new FieldClimate(
                    seasons,
                    usual(seasons),
                    past.size() + " past years of " + place + ", " + file.named(place, season.year()) + ": "
                            + file.source(place),
                    List.of()));
        }
        Optional<FieldClimate> made = normals(season, field, place);
        if (past.isEmpty()) {
            return made;
        }
        String few = past.size() == 1
                ? "One past year of " + place + " is on file (" + file.named(place, season.year())
                        + "): a season like it is one of many"
                : past.size() + " past years of " + place + " are on file (" + file.named(place, season.year())
                        + "): too few to stand for the years to come";
        return Optional.of(made.map(normal -> normal.saying(few
                        + ", so seasons are made from the normals instead. Ten whole years or"
                        + " more would be taken as they were."))
                .orElseGet(() -> about(past, field, place, file)
                        .saying(few
                                + ", so seasons are made about "
                                + (past.size() == 1 ? "it" : "them")
                                + ", spread wider for want of normals. Twelve months in the"
                                + " sheet climate would narrow it.")));
    }

    private FieldClimate saying(String sentence) {
        List<String> all = new ArrayList<>(says);
        all.add(0, sentence);
        return new FieldClimate(seasons, days, source, List.copyOf(all));
    }

    private static FieldClimate known(WeatherYear year, String source) {
        SeasonDays days = days(year);
        return new FieldClimate(List.of(days), days.days(), source, List.of());
    }

    private static SeasonDays days(WeatherYear year) {
        return SeasonDays.of(year, WeatherOnFile.LAST_DAY);
    }

    private static Optional<FieldClimate> normals(Season season, Field field, String place) {
        List<MonthClimate> months = season.pests().weedBook().climate().stream()
                .filter(month -> month.place().equalsIgnoreCase(place))
                .sorted(Comparator.comparingInt(MonthClimate::month))
                .toList();
        if (months.size() != MONTHS) {
            return Optional.empty();
        }
        SiteNormals normals = SiteNormals.of(
                each(months, month -> celsius(month.meanF()) + halfRangeC(month)),
                each(months, month -> celsius(month.meanF()) - halfRangeC(month)),
                each(months, month -> month.rainIn() * MM_PER_INCH),
                each(months, MonthClimate::rainDays));
        double wet = months.subList(3, 6).stream()
                        .mapToDouble(MonthClimate::rainDays)
                        .sum()
                / (3 * DAYS_A_MONTH);
        Days usual = Days.ofMonths(
                each(months, month -> celsius(month.meanF())),
                1,
                WeatherOnFile.LAST_DAY,
                wet < DRY_SHARE ? Surface.DRY : Surface.MOIST);
        return Optional.of(made(
                normals,
                field.state(),
                CERTAIN_YEARS,
                usual,
                "the normals of " + place + " (" + months.get(0).source() + ")"));
    }

    private static FieldClimate made(SiteNormals normals, String state, int years, Days usual, String from) {
        if (KNOWN.size() > MOST_KEPT) {
            KNOWN.clear();
        }
        List<SeasonDays> seasons = KNOWN.computeIfAbsent(
                new Made(normals, state, years),
                key -> SeasonSet.made(normals, state, years).stream()
                        .map(FieldClimate::days)
                        .toList());
        List<String> says = WeatherGenerator.knows(state)
                ? List.of()
                : List.of("How years differ in " + state
                        + " is not kept: the mean of seven Corn Belt states is taken. Past years in"
                        + " the sheet of weather days would tell.");
        return new FieldClimate(
                seasons, usual, seasons.size() + " seasons made from " + from + " and the spread between years", says);
    }

    /** Made about a few measured years: their means, the more doubtful the fewer they are. */
    private static FieldClimate about(List<WeatherYear> past, Field field, String place, WeatherOnFile file) {
        int[] known = IntStream.range(0, MONTHS)
                .filter(month ->
                        MonthCurve.month(past.get(0).first() + MonthCurve.days(month) - 1) <= month && month < 9)
                .toArray();
        SiteNormals station = SiteNormals.station();
        double[] high = new double[MONTHS];
        double[] low = new double[MONTHS];
        double[] rain = new double[MONTHS];
        double[] wet = new double[MONTHS];
        double warmer = 0;
        double wetter = 0;
        for (int month : known) {
            high[month] = mean(past, year -> year.monthHighC(month));
            low[month] = mean(past, year -> year.monthLowC(month));
            rain[month] = mean(past, year -> year.monthRainMm(month));
            wet[month] = mean(past, year -> year.monthWetDays(month));
            warmer += (high[month]
                            + low[month]
                            - station.highC().get(month)
                            - station.lowC().get(month))
                    / 2
                    / known.length;
            wetter += rain[month] / station.rainMm().get(month) / known.length;
        }
        for (int month = 0; month < MONTHS; month++) {
            int other = month;
            if (IntStream.of(known).noneMatch(one -> one == other)) {
                high[month] = station.highC().get(month) + warmer;
                low[month] = station.lowC().get(month) + warmer;
                rain[month] = station.rainMm().get(month) * wetter;
                wet[month] = station.wetDays().get(month);
            }
        }
        double[] air = new double[MONTHS];
        for (int month = 0; month < MONTHS; month++) {
            air[month] = (high[month] + low[month]) / 2;
        }
        return made(
                SiteNormals.of(high, low, rain, wet),
                field.state(),
                past.size(),
                Days.ofMonths(air, 1, WeatherOnFile.LAST_DAY, Surface.MOIST),
                "the measured days of " + place + " (" + file.source(place) + ")");
    }

    private static double mean(List<WeatherYear> years, ToDoubleFunction<WeatherYear> of) {
        return years.stream().mapToDouble(of).average().orElseThrow();
    }

    /** Means over the years, day by day; no rain, as no single year's is usual. */
    private static Days usual(List<SeasonDays> seasons) {
        int count = seasons.get(0).days().count();
        double[] soil = new double[count];
        double[] air = new double[count];
        for (SeasonDays season : seasons) {
            for (int i = 0; i < count; i++) {
                soil[i] += season.days().soilC(i) / seasons.size();
                air[i] += season.days().airC(i) / seasons.size();
            }
        }
        return Days.measured(seasons.get(0).days().first(), soil, air, new double[count])
                .with(Surface.MOIST);
    }

    private static double[] each(List<MonthClimate> months, ToDoubleFunction<MonthClimate> of) {
        return months.stream().mapToDouble(of).toArray();
    }

    private static double halfRangeC(MonthClimate month) {
        Double low = month.lowF();
        Double high = month.highF();
        return low == null || high == null ? SiteNormals.usualHalfRangeC(month.month() - 1) : (high - low) / 2 / 1.8;
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /** The season in the middle, which stands for all where one is shown. */
    SeasonDays middle() {
        return seasons.get(seasons.size() / 2);
    }

    /** The season of a draw: how many in a hundred have a drier spring [0 to 100]. */
    int at(double drierPct) {
        int place = (int) Math.floor(drierPct / 100 * seasons.size() + 1e-9);
        return Math.min(seasons.size() - 1, Math.max(0, place));
    }

    /**
     * What each season has for the yield of a crop: rain less warmth of July for corn, of August for soybeans; only the order
     * counts. Empty for wheat, which is ripe by then, and where the season is known.
     */
    double[] summer(Crop crop) {
        if (seasons.size() == 1 || crop == Crop.WHEAT) {
            return new double[0];
        }
        return SeasonSet.summer(seasons.stream().map(SeasonDays::weather).toList(), crop == Crop.CORN ? 6 : 7);
    }
}
