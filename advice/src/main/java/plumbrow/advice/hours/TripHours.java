package plumbrow.advice.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.means.Machine;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.tank.Sprayer;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.science.figure.Numbers;
import plumbrow.science.spraying.FieldTime;

/**
 * Whether, and when, a trip may be sprayed: its hours held to all rules, and what the job needs.
 *
 * @param zone the clock in which hours are told
 * @param windowFrom first day of the window in which it must be done, {@code windowUntil} last one
 * @param neededHours hours that the job takes [h]; null where no sprayer is on file
 * @param odds chance of finishing within the window, by past years; null where the hours needed are not known
 * @param sentence the answer
 * @param cautions what else must be known, a sentence each
 * @param source whose weather it is
 */
public record TripHours(
        String field,
        String program,
        List<String> products,
        @Nullable LocalDate planned,
        LocalDate first,
        LocalDate last,
        LocalDate windowFrom,
        LocalDate windowUntil,
        ZoneId zone,
        double acres,
        @Nullable String machine,
        @Nullable Double acresPerHour,
        @Nullable Double neededHours,
        List<HourRule> rules,
        List<SprayHour> hours,
        @Nullable FinishOdds odds,
        String sentence,
        List<String> cautions,
        String source) {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEEE, MMMM d, HH:mm", Locale.US);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.US);

    public TripHours {
        products = List.copyOf(products);
        rules = List.copyOf(rules);
        hours = List.copyOf(hours);
        cautions = List.copyOf(cautions);
    }

    /** The hours of a trip; empty where it is not known where the sun stands there. */
    public static Optional<TripHours> of(Season season, SprayTrip trip, HourlyWeather weather, HoursAsked asked) {
        SprayPlan plan = trip.plan();
        Double boom = plan == null ? null : plan.boomIn();
        Double crop = plan == null ? null : plan.cropHeightIn();
        return Site.of(trip.field(), weather, boom, crop).map(site -> of(season, trip, weather, asked, site));
    }

    private static TripHours of(Season season, SprayTrip trip, HourlyWeather weather, HoursAsked asked, Site site) {
        List<HourRule> rules = SprayRules.of(season, trip.field(), trip.products(), trip.leaves(), asked.practice());
        List<SprayHour> hours = new SprayHours(weather, site, rules).days(asked.first(), asked.last());
        Machine machine = trip.machines(season).stream()
                .filter(one -> asked.machine() == null || one.name().equals(asked.machine()))
                .findFirst()
                .orElse(null);
        Double needed = machine == null ? null : Double.valueOf(needed(season, trip, machine));
        LocalDate from = asked.windowFrom() == null ? asked.first() : asked.windowFrom();
        LocalDate until = asked.windowUntil() == null ? asked.last() : asked.windowUntil();
        FinishOdds odds =
                needed == null ? null : FinishOdds.of(weather, site, rules, from, until, needed, asked.first());
        return new TripHours(
                trip.field().name(),
                trip.program().name(),
                trip.products(),
                trip.date(),
                asked.first(),
                asked.last(),
                from,
                until,
                site.zone(),
                trip.acres(),
                machine == null ? null : machine.name(),
                machine == null || needed == null ? null : Double.valueOf(trip.acres() / needed),
                needed,
                rules,
                hours,
                odds,
                sentence(hours, needed, site.zone()),
                cautions(trip, site, machine, hours),
                weather.source());
    }

    /** Hours of spraying and filling: by tank and filling time where they are on file, else by the machine's efficiency. */
    public static double needed(Season season, SprayTrip trip, Machine machine) {
        SprayPlan plan = trip.plan();
        Double carrier = plan == null ? null : plan.carrierGalPerAcre();
        Sprayer sprayer = season.work()
                .means()
                .tank()
                .sprayer(machine.farm(), machine.name())
                .orElse(null);
        Double fill = sprayer == null ? null : sprayer.fillMinutes();
        return sprayer == null || fill == null || carrier == null
                ? trip.acres() / machine.acresPerHour()
                : FieldTime.hours(
                        trip.acres(), machine.speedMph(), machine.widthFt(), carrier, sprayer.tankGal(), fill, 0);
    }

    private static String sentence(List<SprayHour> hours, @Nullable Double needed, ZoneId zone) {
        JobHours job = new JobHours(hours, needed == null ? 1 : needed);
        long unknown = job.count(SprayHour.Standing.UNKNOWN);
        String days = hours.size() / 24 == 1 ? "that day" : "these days";
        if (job.fit() == 0) {
            return unknown > 0
                    ? "No hour of " + days + " is known to be fit: of " + count(unknown)
                            + " it is unknown. Unknown is not fit."
                    : "No hour of " + days + " is fit for spraying: " + ruledOut(hours) + ".";
        }
        JobHours.Run first = job.runs().get(0);
        String fit = "Fit: " + count(job.fit()) + " of " + days + (unknown > 0 ? ", unknown " + count(unknown) : "")
                + "; the first " + moment(first.from(), zone) + " to " + clock(first.until(), zone);
        if (needed == null) {
            return fit + ". What the job takes is unknown: no sprayer of the farm is on file.";
        }
        String need = "The job takes " + Numbers.fixed(needed, 1) + " h";
        String done = job.enough()
                .map(run -> need + ", in one go from " + moment(run.from(), zone) + ".")
                .or(() -> job.done().map(end -> need + ", in several goes, done by " + moment(end, zone) + "."))
                .orElse(need + ": more than is fit.");
        return fit + ". " + done;
    }

    private static String count(long hours) {
        return hours + (hours == 1 ? " hour" : " hours");
    }

    /** What rules out most hours, first. */
    private static String ruledOut(List<SprayHour> hours) {
        Map<String, Long> kinds = hours.stream()
                .flatMap(hour -> hour.out().stream()
                        .map(said -> said.rule().kind().word())
                        .distinct())
                .collect(Collectors.groupingBy(word -> word, TreeMap::new, Collectors.counting()));
        return kinds.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder()))
                .limit(3)
                .map(kind -> kind.getKey() + " " + count(kind.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String moment(Instant at, ZoneId zone) {
        return MOMENT.format(at.atZone(zone));
    }

    private static String clock(Instant at, ZoneId zone) {
        return CLOCK.format(at.atZone(zone));
    }

    private static List<String> cautions(SprayTrip trip, Site site, @Nullable Machine machine, List<SprayHour> hours) {
        List<String> cautions = new ArrayList<>();
        SprayPlan plan = trip.plan();
        if (plan == null || plan.boomIn() == null) {
            cautions.add("The boom is not planned; the wind is calculated at " + Numbers.plain(Site.USUAL_BOOM_IN)
                    + " in over the target.");
        }
        if (plan == null || plan.cropHeightIn() == null) {
            cautions.add("The height of the crop is not planned; the wind is calculated over bare ground.");
        }
        if (machine == null) {
            cautions.add("No sprayer of the farm is on file: enter it on the sheet machines.");
        }
        if (hours.stream().allMatch(hour -> hour.weather().gustMph() == null)) {
            cautions.add("The weather has no gusts: measure them at the boom.");
        }
        if (hours.stream().anyMatch(hour -> hour.weather().forecast())) {
            cautions.add("Hours ahead are a forecast, which is no promise. Measure wind and temperature in the field.");
        }
        cautions.add(
                "Wind at the boom is calculated from the wind at the station, which does not hold in an inversion. Smoke"
                        + " or dust that lies flat: do not spray, whatever stands here.");
        cautions.add("Sun times are those of " + site.sunSource() + ".");
        return cautions;
    }

    /** The hours of each day by the clock there. */
    public Map<LocalDate, List<SprayHour>> byDay() {
        return hours.stream()
                .collect(Collectors.groupingBy(
                        hour -> hour.begin().atZone(zone).toLocalDate(), TreeMap::new, Collectors.toList()));
    }

    public JobHours job() {
        Double needed = neededHours;
        return new JobHours(hours, needed == null ? 1 : needed);
    }
}
