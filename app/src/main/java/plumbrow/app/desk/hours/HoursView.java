package plumbrow.app.desk.hours;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.documents.picture.HoursPicture;

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
    public record Stretch(int begin, int end, SprayHour hour) {}

    public List<Stretch> stretches(List<SprayHour> day) {
        List<Stretch> all = new ArrayList<>();
        for (SprayHour hour : day) {
            int begin = hour.begin().atZone(zone()).getHour();
            Stretch last = all.isEmpty() ? null : all.get(all.size() - 1);
            if (last != null
                    && last.hour().standing() == hour.standing()
                    && last.hour().reasons().equals(hour.reasons())) {
                all.set(all.size() - 1, new Stretch(last.begin(), begin + 1, last.hour()));
            } else {
                all.add(new Stretch(begin, begin + 1, hour));
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
