package plumbrow.advice.hours;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.SprayHour.Said;
import plumbrow.science.figure.Numbers;
import plumbrow.science.weather.Inversion;
import plumbrow.science.weather.RainFree;
import plumbrow.science.weather.WetBulb;
import plumbrow.science.weatheryears.GroundDays;
import plumbrow.science.weatheryears.GroundDays.Ground;

/**
 * Holds hours of weather to rules. Every rule is asked of every hour, and each that rules it out is told. What is missing leaves an
 * hour unknown, and an unknown hour is not a fit one.
 *
 * Wind and gusts are taken to the boom by the logarithmic profile, which does not hold in an inversion. An hour must lie within the
 * daylight that a rule leaves from its first to its last minute. Rain after it is looked for in the hours that follow; where the
 * weather on file ends sooner, that is unknown.
 */
public final class SprayHours {
    private static final double RAIN_CHANCE_PCT = 40;
    private static final double RAIN_FORECAST_IN = 0.02;
    private static final double MM_PER_INCH = 25.4;
    private static final double HIGHEST_HUMIDITY_PCT = 99;
    private static final double MINUTES_PER_HOUR = 60;

    private final HourlyWeather weather;
    private final Site site;
    private final List<HourRule> rules;
    private final Map<Instant, WeatherHour> byBegin = new HashMap<>();
    private final Map<Instant, Ground> ground;
    private final Map<LocalDate, Site.Sunlight> sun = new HashMap<>();
    private final double windFactor;

    /** To hold any hours of the weather to the rules. */
    public SprayHours(HourlyWeather weather, Site site, List<HourRule> rules) {
        this.weather = weather;
        this.site = site;
        this.rules = rules;
        weather.hours().forEach(hour -> byBegin.put(hour.begin(), hour));
        this.windFactor = site.windFactor(weather.windHeightM());
        this.ground = grounds();
    }

    /** The hours from one moment to another, each held to the rules; those without weather are there too, unknown. */
    public List<SprayHour> between(Instant from, Instant until) {
        List<SprayHour> hours = new ArrayList<>();
        Instant first = from.truncatedTo(ChronoUnit.HOURS);
        for (Instant at = first.isBefore(from) ? first.plus(1, ChronoUnit.HOURS) : first;
                at.isBefore(until);
                at = at.plus(1, ChronoUnit.HOURS)) {
            hours.add(hour(at));
        }
        return hours;
    }

    /** The hours of whole days by the clock of the place, the last one included. */
    public List<SprayHour> days(LocalDate first, LocalDate last) {
        return between(
                first.atStartOfDay(site.zone()).toInstant(),
                last.plusDays(1).atStartOfDay(site.zone()).toInstant());
    }

    private SprayHour hour(Instant begin) {
        WeatherHour air = byBegin.getOrDefault(begin, WeatherHour.unknown(begin));
        Double wind = air.windMph() == null ? null : Double.valueOf(air.windMph() * windFactor);
        Double gust = air.gustMph() == null ? null : Double.valueOf(air.gustMph() * windFactor);
        Double delta = deltaT(air.temperatureC(), air.humidityPct());
        Now now = new Now(begin, air, wind, gust, delta);
        List<Said> out = new ArrayList<>();
        List<Said> unknown = new ArrayList<>();
        for (HourRule rule : rules) {
            Verdict verdict = judge(rule, now);
            if (verdict.words() != null) {
                (verdict.out() ? out : unknown).add(new Said(rule, verdict.words()));
            }
        }
        return new SprayHour(begin, air, wind, gust, delta, inversion(now), out, unknown);
    }

    /** An hour with what is worked out of it. */
    private record Now(
            Instant begin,
            WeatherHour air,
            @Nullable Double wind,
            @Nullable Double gust,
            @Nullable Double delta) {}

    /** What a rule says: nothing where the hour passes. */
    private record Verdict(boolean out, @Nullable String words) {
        static final Verdict PASSES = new Verdict(false, null);

        static Verdict out(String words) {
            return new Verdict(true, words);
        }

        static Verdict unknown(String words) {
            return new Verdict(false, words);
        }
    }

    private Verdict judge(HourRule rule, Now now) {
        if (!rule.unread().isEmpty()) {
            return Verdict.unknown("not read: " + rule.unread());
        }
        return switch (rule.kind()) {
            case WIND -> wind(rule, now);
            case AIR -> within(rule, fahrenheit(now.air().temperatureC()), "air", "°F", 0);
            case DELTA_T -> within(rule, now.delta(), "delta T", "°C", 1);
            case DEW -> within(rule, now.air().humidityPct(), "leaves wet with dew, humidity", "%", 0);
            case DARK -> sun(rule, now.begin(), "dark");
            case INVERSION -> inversions(rule, now);
            case RAIN_NOW ->
                switch (rain(now.air())) {
                    case WET -> Verdict.out("rain");
                    case DRY -> Verdict.PASSES;
                    case UNKNOWN -> Verdict.unknown("rain not known");
                };
            case RAIN_FREE -> rainFree(rule, now.begin());
            case GROUND ->
                switch (ground.getOrDefault(now.begin(), Ground.UNKNOWN)) {
                    case FIT -> Verdict.PASSES;
                    case WET -> Verdict.out("ground too wet");
                    case UNKNOWN -> Verdict.unknown("rain of the days before not known, so the ground is not");
                };
        };
    }

    private static Verdict wind(HourRule rule, Now now) {
        Verdict mean = within(rule, now.wind(), "wind", "mph at the boom", 1);
        Double most = rule.most();
        Double gust = now.gust();
        if (!mean.out() && most != null && gust != null && gust > most) {
            return Verdict.out("gusts " + Numbers.fixed(gust, 1) + " mph at the boom, most " + Numbers.plain(most));
        }
        return mean;
    }

    private static Verdict within(HourRule rule, @Nullable Double found, String what, String unit, int decimals) {
        if (found == null) {
            return Verdict.unknown(what + " not known");
        }
        Double least = rule.least();
        Double most = rule.most();
        if (least != null && found < least) {
            return Verdict.out(what + " " + shown(found, decimals) + " " + unit + ", least " + Numbers.plain(least));
        }
        if (most != null && found > most) {
            return Verdict.out(what + " " + shown(found, decimals) + " " + unit + ", most " + Numbers.plain(most));
        }
        return Verdict.PASSES;
    }

    private static String shown(double value, int decimals) {
        return Numbers.fixed(value, decimals);
    }

    private Verdict sun(HourRule rule, Instant begin, String dark) {
        Double after = rule.least();
        Double before = rule.most();
        Hours light = light(begin);
        if (light == null) {
            return Verdict.out("no sunrise or sunset that day");
        }
        if (after != null && light.sinceRise() < after) {
            return Verdict.out(after == 0 ? dark : "less than " + Numbers.plain(after) + " h after sunrise");
        }
        if (before != null && light.toSet() < before) {
            return Verdict.out(before == 0 ? dark : "less than " + Numbers.plain(before) + " h before sunset");
        }
        return Verdict.PASSES;
    }

    /** Hours from sunrise to the begin of an hour, and from its end to sunset. */
    private record Hours(double sinceRise, double toSet) {}

    private @Nullable Hours light(Instant begin) {
        LocalDate day = begin.atZone(site.zone()).toLocalDate();
        Site.Sunlight light = sun.computeIfAbsent(day, site::sunlight);
        OptionalDouble rise = light.rise();
        OptionalDouble set = light.set();
        if (rise.isEmpty() || set.isEmpty()) {
            return null;
        }
        double minute = Duration.between(day.atStartOfDay(ZoneOffset.UTC).toInstant(), begin)
                        .toSeconds()
                / 60.0;
        return new Hours(
                (minute - rise.getAsDouble()) / MINUTES_PER_HOUR,
                (set.getAsDouble() - minute - MINUTES_PER_HOUR) / MINUTES_PER_HOUR);
    }

    private Verdict inversions(HourRule rule, Now now) {
        Verdict verdict = sun(rule, now.begin(), "dark");
        return verdict.out() ? Verdict.out("time of inversions, one is " + inversion(rule, now)) : verdict;
    }

    private String inversion(Now now) {
        return rules.stream()
                .filter(rule -> rule.kind() == HourRule.Kind.INVERSION)
                .findFirst()
                .map(rule -> inversion(rule, now))
                .orElse("");
    }

    private String inversion(HourRule rule, Now now) {
        Hours light = light(now.begin());
        Double after = rule.least();
        Double before = rule.most();
        boolean window = light == null
                || (after != null && light.sinceRise() < after)
                || (before != null && light.toSet() < before);
        return Inversion.unmeasured(
                window, zeroIfUnknown(now.wind()), zeroIfUnknown(now.air().cloudPct()));
    }

    private static double zeroIfUnknown(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    /** Whether it rains. */
    private enum Rain {
        DRY,
        WET,
        UNKNOWN
    }

    private static Rain rain(WeatherHour hour) {
        Double amount = hour.rainIn();
        Double chance = hour.rainChancePct();
        if (hour.forecast()) {
            if (amount == null && chance == null) {
                return Rain.UNKNOWN;
            }
            boolean wet =
                    RainFree.rains(zeroIfUnknown(chance), zeroIfUnknown(amount), RAIN_CHANCE_PCT, RAIN_FORECAST_IN);
            return wet ? Rain.WET : Rain.DRY;
        }
        if (hour.trace()) {
            return Rain.WET;
        }
        return amount == null ? Rain.UNKNOWN : amount > 0 ? Rain.WET : Rain.DRY;
    }

    private Verdict rainFree(HourRule rule, Instant begin) {
        Double least = rule.least();
        int needed = least == null ? 0 : (int) Math.ceil(least);
        boolean unknown = false;
        for (int i = 1; i <= needed; i++) {
            WeatherHour later = byBegin.get(begin.plus(i, ChronoUnit.HOURS));
            Rain rain = later == null ? Rain.UNKNOWN : rain(later);
            if (rain == Rain.WET) {
                return Verdict.out("rain after " + (i - 1) + " h, " + needed + " h without are asked for");
            }
            unknown |= rain == Rain.UNKNOWN;
        }
        return unknown ? Verdict.unknown("rain of the " + needed + " h after not known") : Verdict.PASSES;
    }

    private static @Nullable Double fahrenheit(@Nullable Double celsius) {
        return celsius == null ? null : Double.valueOf(celsius * 9 / 5 + 32);
    }

    /** Delta T [°C]; null where air or humidity is not known or the wet bulb does not hold for it. Saturated air counts as 99 %. */
    static @Nullable Double deltaT(@Nullable Double celsius, @Nullable Double humidityPct) {
        if (celsius == null || humidityPct == null) {
            return null;
        }
        double humidity = Math.min(humidityPct, HIGHEST_HUMIDITY_PCT);
        return WetBulb.holds(celsius, humidity) ? Double.valueOf(celsius - WetBulb.celsius(celsius, humidity)) : null;
    }

    /** The ground at the end of every hour on file. Hours that are missing between them may have been wet. */
    private Map<Instant, Ground> grounds() {
        Map<Instant, Ground> all = new HashMap<>();
        GroundDays days = new GroundDays();
        ZoneId zone = site.zone();
        LocalDate today = null;
        Instant next = null;
        for (WeatherHour hour : weather.hours()) {
            LocalDate day = hour.begin().atZone(zone).toLocalDate();
            if (next != null && !next.equals(hour.begin())) {
                days.rain(Double.NaN);
            }
            while (today != null && today.isBefore(day)) {
                days.endOfDay(today.getDayOfYear());
                today = today.plusDays(1);
            }
            days.rain(fallen(hour));
            all.put(hour.begin(), days.now());
            today = day;
            next = hour.begin().plus(1, ChronoUnit.HOURS);
        }
        return all;
    }

    /** Rain that fell or is forecast [mm]; a forecast without an amount that is no rain counts as none. */
    private static double fallen(WeatherHour hour) {
        Double amount = hour.rainIn();
        if (amount != null) {
            return amount * MM_PER_INCH;
        }
        return hour.forecast() && rain(hour) == Rain.DRY ? 0 : Double.NaN;
    }
}
