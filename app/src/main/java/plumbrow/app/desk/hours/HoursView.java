package plumbrow.app.desk.hours;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.documents.picture.HoursPicture;
import plumbrow.science.figure.Numbers;

/**
 * The page of a trip's hours.
 *
 * @param trips the trips of the program through the air, to choose among
 * @param hours null where no weather is on file, or what was asked can't be
 * @param fault what of the address can't be, else empty
 * @param told what was done just now, else empty
 */
public record HoursView(
        Season season,
        Field field,
        List<SprayTrip> trips,
        @Nullable SprayTrip trip,
        LocalDate from,
        @Nullable TripHours hours,
        String fault,
        List<String> told) {
    private static final int WIDE = 1000;
    private static final int NARROW = 340;

    public String wide() {
        return hours == null ? "" : HoursPicture.svg(hours, WIDE);
    }

    public String narrow() {
        return hours == null ? "" : HoursPicture.svg(hours, NARROW);
    }

    /** Hours after one another that are told alike. */
    public record Stretch(int begin, int end, List<SprayHour> hours) {
        public SprayHour hour() {
            return hours.get(0);
        }

        /** Wind over the stretch at the boom and at the station: "wind 4 to 7 mph at the boom, 9 to 14 at the station". */
        public String wind() {
            DoubleSummaryStatistics boom = new DoubleSummaryStatistics();
            DoubleSummaryStatistics station = new DoubleSummaryStatistics();
            for (SprayHour hour : hours) {
                Double at = hour.windBoomMph();
                Double high = hour.weather().windMph();
                if (at != null && high != null) {
                    boom.accept(at);
                    station.accept(high);
                }
            }
            return boom.getCount() == 0
                    ? ""
                    : "wind " + range(boom) + " mph at the boom, " + range(station) + " at the station";
        }

        /** What must be minded of them. */
        public String mind() {
            return hours.stream()
                    .map(SprayHour::mind)
                    .filter(words -> !words.isEmpty())
                    .distinct()
                    .collect(Collectors.joining("; "));
        }

        private static String range(DoubleSummaryStatistics winds) {
            String low = Numbers.fixed(winds.getMin(), 0);
            String high = Numbers.fixed(winds.getMax(), 0);
            return low.equals(high) ? low : low + " to " + high;
        }
    }

    public List<Stretch> stretches(List<SprayHour> day) {
        List<Stretch> all = new ArrayList<>();
        for (SprayHour hour : day) {
            int begin = hour.begin().atZone(zone()).getHour();
            Stretch last = all.isEmpty() ? null : all.get(all.size() - 1);
            if (last != null
                    && last.hour().standing() == hour.standing()
                    && last.hour().reasons().equals(hour.reasons())) {
                List<SprayHour> longer = new ArrayList<>(last.hours());
                longer.add(hour);
                all.set(all.size() - 1, new Stretch(last.begin(), begin + 1, longer));
            } else {
                all.add(new Stretch(begin, begin + 1, List.of(hour)));
            }
        }
        return all;
    }

    private ZoneId zone() {
        TripHours known = hours;
        if (known == null) {
            throw new IllegalStateException("no hours");
        }
        return known.zone();
    }
}
