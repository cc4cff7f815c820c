package plumbrow.advice.hours;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The hours held against what a job needs.
 *
 * @param hours in order, one after the other
 * @param neededHours hours of spraying and filling that the job takes [h]
 */
public record JobHours(List<SprayHour> hours, double neededHours) {
    public JobHours {
        hours = List.copyOf(hours);
    }

    /** Fit hours one after the other. */
    public record Run(Instant from, int hours) {
        public Instant until() {
            return from.plus(hours, ChronoUnit.HOURS);
        }
    }

    /** All runs of fit hours, in order. */
    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (SprayHour hour : hours) {
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (!hour.fit()) {
                continue;
            }
            if (last != null && last.until().equals(hour.begin())) {
                runs.set(runs.size() - 1, new Run(last.from(), last.hours() + 1));
            } else {
                runs.add(new Run(hour.begin(), 1));
            }
        }
        return runs;
    }

    public Optional<Run> longest() {
        return runs().stream().reduce((one, other) -> other.hours() > one.hours() ? other : one);
    }

    public long fit() {
        return count(SprayHour.Standing.FIT);
    }

    public long count(SprayHour.Standing standing) {
        return hours.stream().filter(hour -> hour.standing() == standing).count();
    }

    /** When the job is done if every fit hour is used; empty where they are too few. */
    public Optional<Instant> done() {
        double left = neededHours;
        for (SprayHour hour : hours) {
            if (hour.fit()) {
                left -= 1;
                if (left <= 1e-9) {
                    return Optional.of(hour.begin().plusSeconds(Math.round(3600 * (1 + Math.min(0, left)))));
                }
            }
        }
        return Optional.empty();
    }

    /** The first run that is long enough by itself. */
    public Optional<Run> enough() {
        return runs().stream().filter(run -> run.hours() >= neededHours).findFirst();
    }
}
