package plumbrow.advice.today;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.calendar.LawfulWindows;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.done.Fulfilled;
import plumbrow.advice.done.TooFew;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.HoursAsked;
import plumbrow.advice.hours.JobHours;
import plumbrow.advice.hours.Practice;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.records.Reentry;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.trip.AtLatest;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.science.figure.Numbers;

/**
 * Puts a day together: of each field's program what is planned near it and not in the log, with its hours and the days the gates
 * leave; and of the log what must still be waited for.
 *
 * A record knows when an application ended; the log knows days, and an interval runs from the end of the day at the latest.
 */
public final class Days {
    private static final int LOOK_BACK_DAYS = 21;
    private static final int LOOK_AHEAD_DAYS = 10;
    private static final int WINDOW_DAYS = 21;
    private static final int OTHER_BACK_DAYS = 3;
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE, MMM d, HH:mm", Locale.US);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.US);

    private final Season season;
    private final LocalDate day;
    private final Function<Field, @Nullable String> chosen;
    private final Function<Field, Optional<HourlyWeather>> weather;
    private final List<ApplicationRecord> records;

    private Days(
            Season season,
            LocalDate day,
            Function<Field, @Nullable String> chosen,
            Function<Field, Optional<HourlyWeather>> weather,
            List<ApplicationRecord> records) {
        this.season = season;
        this.day = day;
        this.chosen = chosen;
        this.weather = weather;
        this.records = records;
    }

    /**
     * A day on all fields of a season.
     *
     * @param chosen name of the program that was chosen for a field; null where none was, then the baseline counts
     * @param weather hourly weather of a field
     * @param records application records that count; what they say of the end of an application goes before the log, which knows days
     */
    public static Today of(
            Season season,
            LocalDate day,
            Function<Field, @Nullable String> chosen,
            Function<Field, Optional<HourlyWeather>> weather,
            List<ApplicationRecord> records) {
        return new Days(season, day, chosen, weather, records).today();
    }

    private Today today() {
        List<OfField> fields = season.fields().parallelStream().map(this::field).toList();
        List<Today.Due> due = new ArrayList<>();
        List<Today.Wait> waits = new ArrayList<>();
        List<LocalDate> planned = new ArrayList<>();
        for (OfField field : fields) {
            due.addAll(field.due());
            waits.addAll(field.waits());
            planned.addAll(field.planned());
        }
        due.sort(Comparator.comparingInt(Days::rank)
                .thenComparing(one -> one.daysLeft() == null ? Long.MAX_VALUE : one.daysLeft())
                .thenComparing(Today.Due::planned)
                .thenComparing(Today.Due::field));
        LocalDate nearest = due.isEmpty()
                ? planned.stream()
                        .min(Comparator.comparingLong(one -> Math.abs(ChronoUnit.DAYS.between(one, day))))
                        .orElse(null)
                : null;
        return new Today(day, due, waits, machines(due), nearest, sentence(due, waits));
    }

    /** What the day has for one field. */
    private record OfField(List<Today.Due> due, List<Today.Wait> waits, List<LocalDate> planned) {}

    private OfField field(Field field) {
        OfField of = new OfField(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        waits(field, of.waits());
        String name = chosen.apply(field);
        season.programs(field.name()).stream()
                .filter(program ->
                        name == null ? program.baseline() : program.name().equals(name))
                .findFirst()
                .ifPresent(program -> {
                    due(field, program, name != null, of.due());
                    program.passes().stream()
                            .flatMap(pass -> Optional.ofNullable(pass.date()).stream())
                            .forEach(of.planned()::add);
                });
        return of;
    }

    /** What presses most: what is going to close, then what is barred by now, then what is late, then what comes. */
    private static int rank(Today.Due due) {
        if (due.daysLeft() != null) {
            return 0;
        }
        return due.standing() == Standing.BARRED ? 1 : due.daysLate() >= 0 ? 2 : 3;
    }

    private void due(Field field, Program program, boolean decided, List<Today.Due> due) {
        Set<Integer> behind = new HashSet<>(
                Fulfilled.of(program, DoneWork.thisSeason(season, field)).done().keySet());
        behind.addAll(TooFew.of(season, field, program).keySet());
        for (SprayTrip trip : SprayTrip.of(season, field, program)) {
            LocalDate planned = trip.date();
            boolean done = trip.passes().stream().allMatch(pass -> behind.contains(pass.number()));
            if (planned != null && !done && near(planned, LOOK_BACK_DAYS)) {
                due.add(trip(trip, planned, decided));
            }
        }
        for (Pass pass : program.passes()) {
            LocalDate planned = pass.date();
            boolean goesOut = pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE;
            if (!goesOut && planned != null && near(planned, OTHER_BACK_DAYS) && !behind.contains(pass.number())) {
                due.add(other(field, program, decided, pass, planned));
            }
        }
    }

    private boolean near(LocalDate planned, int back) {
        return !planned.isBefore(day.minusDays(back)) && !planned.isAfter(day.plusDays(LOOK_AHEAD_DAYS));
    }

    private Today.Due other(Field field, Program program, boolean decided, Pass pass, LocalDate planned) {
        String what = pass.product() == null ? pass.kind().word() : pass.kind().word() + " " + pass.product();
        return new Today.Due(
                field.name(),
                field.farm(),
                program.name(),
                decided,
                pass.number(),
                false,
                false,
                what,
                field.acres() * pass.sharePct() / 100,
                planned,
                ChronoUnit.DAYS.between(planned, day),
                null,
                "",
                null,
                null,
                null,
                null,
                "",
                "",
                null,
                null);
    }

    private Today.Due trip(SprayTrip trip, LocalDate planned, boolean decided) {
        Field field = trip.field();
        // What shares the tank moves with its first pass, so one asks for all.
        List<Window> windows =
                LawfulWindows.of(season, field, trip.program(), trip.passes().get(0), day, day.plusDays(WINDOW_DAYS));
        Optional<Window> now = windows.stream()
                .filter(window -> !window.from().isAfter(day) && !window.to().isBefore(day))
                .min(Comparator.comparingInt(window -> order(window.standing())));
        Standing standing = now.map(Window::standing).orElse(Standing.CLEAR);
        LocalDate last = windows.stream()
                .filter(window ->
                        window.standing() == Standing.BARRED && window.from().isAfter(day))
                .map(window -> window.from().minusDays(1))
                .min(Comparator.naturalOrder())
                .orElse(null);
        TripHours hours = trip.sprayed() ? hours(trip, last) : null;
        JobHours job = hours == null ? null : hours.job();
        return new Today.Due(
                field.name(),
                field.farm(),
                trip.program().name(),
                decided,
                trip.number(),
                true,
                trip.sprayed(),
                trip.words() + waitsFor(trip),
                trip.acres(),
                planned,
                ChronoUnit.DAYS.between(planned, day),
                standing,
                standing == Standing.BARRED || standing == Standing.UNKNOWN
                        ? now.map(Window::reason).orElse("")
                        : "",
                standing == Standing.BARRED ? null : last,
                standing == Standing.BARRED || last == null ? null : Long.valueOf(ChronoUnit.DAYS.between(day, last)),
                job == null ? null : Integer.valueOf((int) job.fit()),
                job == null ? null : Integer.valueOf((int) job.count(SprayHour.Standing.UNKNOWN)),
                !trip.sprayed() ? "" : hours == null ? "hours unknown: no hourly weather on file" : when(hours, job),
                hours == null || hours.odds() == null || hours.odds().years().isEmpty()
                        ? ""
                        : hours.odds().words(),
                hours == null
                        ? trip.machines(season).stream()
                                .map(one -> one.name())
                                .findFirst()
                                .orElse(null)
                        : hours.machine(),
                hours == null ? null : hours.neededHours());
    }

    /** What scouting must find before it goes out. */
    private static String waitsFor(SprayTrip trip) {
        return trip.passes().stream()
                .flatMap(pass -> Optional.ofNullable(pass.trigger()).stream())
                .map(trigger -> ", " + trigger.words() + ": scout first")
                .findFirst()
                .orElse("");
    }

    private static int order(Standing standing) {
        return standing == Standing.BARRED ? 0 : standing == Standing.UNKNOWN ? 1 : 2;
    }

    private @Nullable TripHours hours(SprayTrip trip, @Nullable LocalDate last) {
        LocalDate until = last == null ? day.plusDays(LOOK_AHEAD_DAYS) : last;
        return weather.apply(trip.field())
                .flatMap(file ->
                        TripHours.of(season, trip, file, new HoursAsked(day, day, null, day, until, Practice.DEFAULT)))
                .orElse(null);
    }

    private static String when(TripHours hours, @Nullable JobHours job) {
        if (job == null || job.fit() == 0) {
            return hours.hours().stream().anyMatch(hour -> hour.standing() == SprayHour.Standing.UNKNOWN)
                    ? "no hour known to be fit"
                    : "no fit hour";
        }
        JobHours.Run run = job.enough().orElse(job.runs().get(0));
        String clock = CLOCK.format(run.from().atZone(hours.zone())) + " to "
                + CLOCK.format(run.until().atZone(hours.zone()));
        return "fit " + clock + (job.fit() > run.hours() ? ", " + job.fit() + " h in all" : "");
    }

    /** What records and log leave to be waited for on the day: restricted entry and rain-free hours; of the log at the latest. */
    private void waits(Field field, List<Today.Wait> waits) {
        Set<String> recorded = new HashSet<>();
        for (ApplicationRecord record : records) {
            if (record.field().equals(field.name())) {
                record.lines().forEach(line -> recorded.add(line.date() + "|" + line.product()));
                if (recent(record.date())) {
                    waits(field, record, waits);
                }
            }
        }
        for (Done done : season.work().log(field.name())) {
            if (!recent(done.date()) || recorded.contains(done.date() + "|" + done.product())) {
                continue;
            }
            UseTerms terms =
                    season.shelf().labels().terms(done.product(), field.crop()).orElse(null);
            Integer reentry = terms == null ? null : terms.reentryHours();
            String went = done.product() + " went on " + done.date();
            if (reentry == null) {
                waits.add(new Today.Wait(
                        field.name(),
                        "nobody goes in",
                        "unknown",
                        went + ", and its restricted-entry interval has not been read"));
            } else if (lasts(AtLatest.over(done.date(), reentry))) {
                waits.add(new Today.Wait(
                        field.name(),
                        "nobody goes in",
                        MOMENT.format(AtLatest.over(done.date(), reentry)) + " at the latest",
                        went + "; the restricted-entry interval is " + reentry + " h from the end of it"));
            }
            rain(field, done.product(), terms, hours -> AtLatest.over(done.date(), hours), true, waits);
        }
    }

    private boolean recent(LocalDate date) {
        return !date.isAfter(day) && !date.isBefore(day.minusDays(7));
    }

    private boolean lasts(LocalDateTime over) {
        return over.isAfter(day.atStartOfDay());
    }

    /** What a record leaves, from the end that it says. */
    private void waits(Field field, ApplicationRecord record, List<Today.Wait> waits) {
        Reentry reentry = Reentry.of(record);
        LocalDateTime allowed = reentry.allowedFrom();
        if (allowed == null) {
            waits.add(new Today.Wait(field.name(), "nobody goes in", "unknown", withoutStop(reentry.sentence())));
        } else if (lasts(allowed) && !Integer.valueOf(0).equals(reentry.hours())) {
            waits.add(new Today.Wait(
                    field.name(),
                    "nobody goes in",
                    MOMENT.format(allowed) + (reentry.atLatest() ? " at the latest" : ""),
                    record.words() + "; " + reentry.hours() + " h from the "
                            + (reentry.atLatest() ? "end of the day" : "end of it")));
        }
        ZonedDateTime end = record.end();
        for (RecordedProduct one : record.products()) {
            rain(
                    field,
                    one.product(),
                    season.shelf().labels().terms(one.product(), field.crop()).orElse(null),
                    hours -> end == null
                            ? AtLatest.over(record.date(), hours)
                            : end.plusHours(hours).toLocalDateTime(),
                    end == null,
                    waits);
        }
    }

    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private void rain(
            Field field,
            String product,
            @Nullable UseTerms terms,
            IntFunction<LocalDateTime> over,
            boolean atLatest,
            List<Today.Wait> waits) {
        Double rain = terms == null ? null : terms.rainFreeHours();
        if (rain != null && rain > 0 && lasts(over.apply((int) Math.ceil(rain)))) {
            waits.add(new Today.Wait(
                    field.name(),
                    "no rain wanted",
                    MOMENT.format(over.apply((int) Math.ceil(rain))) + (atLatest ? " at the latest" : ""),
                    product + " needs " + Numbers.plain(rain) + " h without rain after it"));
        }
    }

    private static List<Today.OfMachine> machines(List<Today.Due> due) {
        Map<String, List<Today.Due>> by = new TreeMap<>();
        due.stream()
                .filter(one -> one.sprayed() && one.machine() != null)
                .forEach(one -> by.computeIfAbsent(one.farm() + ", " + one.machine(), first -> new ArrayList<>())
                        .add(one));
        return by.values().stream()
                .map(all -> new Today.OfMachine(
                        all.get(0).farm(),
                        Objects.requireNonNull(all.get(0).machine()),
                        all.stream().map(Today.Due::field).distinct().toList(),
                        all.size(),
                        all.stream()
                                .map(Today.Due::neededHours)
                                .filter(Objects::nonNull)
                                .mapToDouble(Double::doubleValue)
                                .sum(),
                        all.stream()
                                .map(Today.Due::fitHours)
                                .filter(Objects::nonNull)
                                .max(Comparator.naturalOrder())
                                .orElse(null)))
                .toList();
    }

    private static String sentence(List<Today.Due> due, List<Today.Wait> waits) {
        List<Today.Due> all = due.stream().filter(Today.Due::sprayed).toList();
        List<Today.Due> sprays =
                all.stream().filter(one -> one.standing() != Standing.BARRED).toList();
        List<Today.Due> go = sprays.stream().filter(Today.Due::canGo).toList();
        long closing = sprays.stream()
                .filter(one -> one.daysLeft() != null && one.daysLeft() <= 5)
                .count();
        String sayDue = sprays.size() == 1 ? "One spray is due" : sprays.size() + " sprays are due";
        String first;
        if (all.isEmpty()) {
            first = due.isEmpty() ? "Nothing is due." : "No spray is due.";
        } else if (sprays.isEmpty()) {
            first = "";
        } else if (go.isEmpty()) {
            Optional<Today.Due> hours =
                    sprays.stream().filter(Today.Due::hoursEnough).findFirst();
            first = hours.map(one -> sayDue + "; " + one.field() + " has the hours, " + one.hours()
                            + ", once what is unknown of it has been looked at.")
                    .orElse(sayDue + ", and none is known to be fit.");
        } else {
            first = sayDue + "; " + go.get(0).field() + " can go, " + go.get(0).hours()
                    + (go.size() == 1 ? "." : ", and " + (go.size() - 1) + " more.");
        }
        int barred = all.size() - sprays.size();
        if (barred > 0) {
            first += (first.isEmpty() ? "" : " ")
                    + (barred == 1
                            ? "One planned spray is barred that day."
                            : barred + " planned sprays are barred that day.");
        }
        String close = closing == 0
                ? ""
                : closing == 1
                        ? " One window closes within five days."
                        : " " + closing + " windows close within five days.";
        long kept = waits.stream()
                .filter(wait -> wait.what().startsWith("nobody"))
                .map(Today.Wait::field)
                .distinct()
                .count();
        return first
                + close
                + (kept == 0
                        ? ""
                        : kept == 1 ? " Nobody goes into one field." : " Nobody goes into " + kept + " fields.");
    }
}
