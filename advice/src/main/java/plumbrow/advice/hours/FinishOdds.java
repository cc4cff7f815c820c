package plumbrow.advice.hours;

import java.time.LocalDate;
import java.time.Year;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import plumbrow.science.figure.Numbers;

/**
 * The chance of finishing a job between two days, from the hours of past years. A year whose fit hours are enough did it; one whose
 * fit and unknown hours together are not, did not; any other is not known. Years that lack every hour of the days are not counted.
 *
 * @param years the calendar years that were looked at, in order
 */
public record FinishOdds(LocalDate from, LocalDate until, double neededHours, List<OfYear> years) {
    public FinishOdds {
        years = List.copyOf(years);
    }

    /** One past year: its fit and unknown hours in the window. */
    public record OfYear(int year, long fitHours, long unknownHours) {}

    /**
     * Looks at the same days of every year of which weather was measured before a day.
     *
     * @param before only hours before this day count as past
     */
    public static FinishOdds of(
            HourlyWeather weather,
            Site site,
            List<HourRule> rules,
            LocalDate from,
            LocalDate until,
            double neededHours,
            LocalDate before) {
        ZoneId zone = site.zone();
        TreeSet<Integer> calendar = new TreeSet<>();
        weather.hours().stream()
                .filter(hour -> !hour.forecast())
                .forEach(hour -> calendar.add(hour.begin().atZone(zone).getYear()));
        SprayHours held = new SprayHours(weather, site, rules);
        List<OfYear> years = new ArrayList<>();
        for (int year : calendar) {
            LocalDate first = on(from, year);
            LocalDate last = on(until, year + until.getYear() - from.getYear());
            if (!last.isBefore(before)) {
                continue;
            }
            List<SprayHour> hours = held.days(first, last);
            boolean any = hours.stream()
                    .anyMatch(hour -> hour.weather().temperatureC() != null
                            || hour.weather().windMph() != null);
            if (any) {
                JobHours job = new JobHours(hours, neededHours);
                years.add(new OfYear(year, job.fit(), job.count(SprayHour.Standing.UNKNOWN)));
            }
        }
        return new FinishOdds(from, until, neededHours, years);
    }

    private static LocalDate on(LocalDate day, int year) {
        return day.getMonthValue() == 2 && day.getDayOfMonth() == 29 && !Year.isLeap(year)
                ? LocalDate.of(year, 2, 28)
                : day.withYear(year);
    }

    /** Years in which the fit hours were enough. */
    public long finished() {
        return years.stream().filter(year -> year.fitHours() >= neededHours).count();
    }

    /** Years in which unknown hours decide it. */
    public long unknown() {
        return years.stream()
                .filter(year -> year.fitHours() < neededHours && year.fitHours() + year.unknownHours() >= neededHours)
                .count();
    }

    /** In words, as counts. */
    public String words() {
        if (years.isEmpty()) {
            return "unknown: no past year of hourly weather is on file for these days";
        }
        String text = "enough fit hours (" + Numbers.fixed(neededHours, 1) + " h) in " + finished() + " of "
                + years.size() + (years.size() == 1 ? " past year" : " past years");
        return unknown() == 0
                ? text
                : text + "; in " + unknown() + " more it is not known, since rain or wind is missing";
    }
}
