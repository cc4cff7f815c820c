package plumbrow.advice.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.SeasonHours;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.OwnInputs;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.advice.weedseason.SeasonAnswer;
import plumbrow.advice.weedseason.SeasonLacks;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.advice.weighing.ProgramTrial;
import plumbrow.science.figure.Numbers;
import plumbrow.science.weedseason.Residual;
import plumbrow.science.weedseason.SeasonTrace;

/** Puts the days of a program together: one walk through the season at the means of the draws, and what stands around it. */
final class CalendarDays {
    /** Accepted by convention in the definition of the critical period. */
    private static final double ACCEPTED_LOSS_PCT = 5;

    private static final int BEFORE_PLANTING_DAYS = 42;
    private static final int AFTER_LAST_DAYS = 6;
    private static final int LEAST_DAYS = 120;

    private final Season season;
    private final Field field;
    private final ProgramTrial trial;
    private final Map<Integer, Integer> keptNumbers;
    private final Program program;
    private final LocalDate first;
    private final LocalDate last;

    CalendarDays(Season season, Field field, ProgramTrial trial, Map<Integer, Integer> keptNumbers) {
        this.season = season;
        this.field = field;
        this.trial = trial;
        this.keptNumbers = keptNumbers;
        this.program = trial.program();
        this.first = first();
        this.last = last();
    }

    SeasonCalendar calendar() {
        SeasonAnswer answer = WeedSeasons.of(season, field, new OwnInputs());
        ProgramSeason followed = trial.season().orElse(null);
        if (followed == null) {
            List<String> missing =
                    answer instanceof SeasonLacks lacks ? lacks.missing() : List.of("a weed in the weeds sheet");
            return calendar(List.of(), null, null, List.of(), List.of(), null, null, null, missing, List.of());
        }
        SeasonTrace trace = followed.traceAt(trial.means());
        List<SeasonCalendar.Stage> stages = answer instanceof FieldSeason known
                ? known.stages(program).stream()
                        .map(stage -> new SeasonCalendar.Stage(
                                stage.word(), date(stage.day()), date(stage.early()), date(stage.late())))
                        .toList()
                : List.of();
        SeasonCalendar.Canopy canopy = new SeasonCalendar.Canopy(
                date(followed.crop().emergenceDay()), date(followed.crop().closedDay()));
        SeasonCalendar.Critical critical = followed.critical(trial.means(), ACCEPTED_LOSS_PCT)
                .map(days -> new SeasonCalendar.Critical(date(days.begin()), date(days.end()), ACCEPTED_LOSS_PCT))
                .orElse(null);
        return calendar(
                stages,
                canopy,
                critical,
                trace.species().stream().map(weed -> weed(trace, weed)).toList(),
                residuals(followed, trace),
                trace.lossPct(),
                followed,
                trace,
                List.of(),
                lines(answer, followed, trace, stages));
    }

    /** The days in words: which season is shown, what it was, and how far other seasons lie from it. */
    private List<String> lines(
            SeasonAnswer answer, ProgramSeason followed, SeasonTrace trace, List<SeasonCalendar.Stage> stages) {
        List<String> lines = new ArrayList<>();
        if (answer instanceof FieldSeason known) {
            lines.add(known.shownSeason());
        }
        lines.addAll(new DayWords(season, followed, trace, followed.storyAt(trial.means())).lines());
        if (followed.seasons() > 1) {
            double[] losses = followed.lossBySeason(trial.means());
            Arrays.sort(losses);
            int off = losses.length / 10;
            lines.add("In eight seasons of ten weeds take " + Numbers.fixed(losses[off], 1) + " to "
                    + Numbers.fixed(losses[losses.length - 1 - off], 1)
                    + " %, by the weather alone, every other input at its mean.");
            stages.stream()
                    .filter(stage -> stage.word().equals("V6"))
                    .findFirst()
                    .ifPresent(stage -> lines.add("The crop reaches V6 between " + stage.early() + " and "
                            + stage.late() + " in eight seasons of ten."));
        }
        return lines;
    }

    private SeasonCalendar calendar(
            List<SeasonCalendar.Stage> stages,
            SeasonCalendar.@Nullable Canopy canopy,
            SeasonCalendar.@Nullable Critical critical,
            List<SeasonCalendar.Weed> weeds,
            List<SeasonCalendar.Residual> residuals,
            @Nullable Double lossPct,
            @Nullable ProgramSeason followed,
            @Nullable SeasonTrace trace,
            List<String> missing,
            List<String> days) {
        String finding = followed == null
                ? "The weeds of " + field.name() + " can't be followed day by day: missing is "
                        + String.join("; ", missing) + "."
                : trial.weeds();
        return new SeasonCalendar(
                field.name(),
                program.name(),
                first,
                last,
                program.passes().stream()
                        .map(pass -> mark(pass, followed, trace))
                        .sorted(Comparator.comparingInt(SeasonCalendar.Mark::pass))
                        .toList(),
                stages,
                canopy,
                critical,
                weeds,
                residuals,
                List.of(),
                lossPct,
                SeasonHours.UNKNOWN,
                missing,
                finding,
                days);
    }

    private SeasonCalendar.Mark mark(Pass pass, @Nullable ProgramSeason followed, @Nullable SeasonTrace trace) {
        return new SeasonCalendar.Mark(
                keptNumbers.getOrDefault(pass.number(), pass.number()),
                pass.kind(),
                pass.date(),
                followed == null || trace == null
                        ? null
                        : made(pass, followed, trace).orElse(null),
                pass.product(),
                pass.rate(),
                ProgramChanges.lowest(season, field, pass).orElse(null),
                ProgramChanges.highest(season, field, pass).orElse(null),
                pass.trigger() == null ? "" : pass.trigger().words());
    }

    private Optional<LocalDate> made(Pass pass, ProgramSeason followed, SeasonTrace trace) {
        int place = followed.passNumbers().indexOf(pass.number());
        return place < 0 ? Optional.empty() : Optional.of(date(trace.made().get(place)));
    }

    private SeasonCalendar.Weed weed(SeasonTrace trace, SeasonTrace.OfSpecies weed) {
        double[] sprouted = weed.brokenDormancy().clone();
        for (int i = sprouted.length - 1; i > 0; i--) {
            sprouted[i] -= sprouted[i - 1];
        }
        return new SeasonCalendar.Weed(
                weed.name(),
                shown(trace, sprouted, false),
                shown(trace, weed.emerged(), false),
                shown(trace, weed.left(), false),
                shown(trace, weed.standing(), true),
                weed.brokenDormancy()[sprouted.length - 1],
                weed.standing()[sprouted.length - 1],
                weed.seedsM2());
    }

    private List<SeasonCalendar.Residual> residuals(ProgramSeason followed, SeasonTrace trace) {
        List<SeasonCalendar.Residual> all = new ArrayList<>();
        int next = 0;
        int end = trace.firstDay() + trace.species().get(0).emerged().length;
        for (int p = 0; p < followed.passNumbers().size(); p++) {
            if (followed.season().passes().get(p) instanceof Residual
                    && trace.made().get(p) < end) {
                SeasonTrace.ControlLeft left = trace.controls().get(next++);
                all.add(new SeasonCalendar.Residual(
                        keptNumbers.getOrDefault(
                                followed.passNumbers().get(p),
                                followed.passNumbers().get(p)),
                        left.name(),
                        shown(trace, left.dose(), false),
                        Stream.of(left.controlPct())
                                .map(control -> shown(trace, control, false))
                                .toList()));
            }
        }
        return all;
    }

    /** The days shown of a row of all days; past its end the last value stays, or nothing. */
    private double[] shown(SeasonTrace trace, double[] days, boolean stays) {
        int count = (int) (last.toEpochDay() - first.toEpochDay()) + 1;
        double[] shown = new double[count];
        LocalDate begins = date(trace.firstDay());
        for (int i = 0; i < count; i++) {
            long place = first.toEpochDay() + i - begins.toEpochDay();
            if (place >= 0 && place < days.length) {
                shown[i] = days[(int) place];
            } else if (stays && place >= days.length) {
                shown[i] = days[days.length - 1];
            }
        }
        return shown;
    }

    private LocalDate date(int dayOfYear) {
        return FieldSeason.date(season.year(), dayOfYear);
    }

    private LocalDate first() {
        LocalDate earliest = dates().min(LocalDate::compareTo).orElse(LocalDate.of(season.year(), 4, 1));
        LocalDate planting = program.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .map(Pass::date)
                .flatMap(Stream::ofNullable)
                .min(LocalDate::compareTo)
                .orElse(earliest);
        LocalDate before = planting.minusDays(BEFORE_PLANTING_DAYS);
        return before.isBefore(earliest) ? before : earliest.minusDays(AFTER_LAST_DAYS);
    }

    private LocalDate last() {
        LocalDate latest = dates().max(LocalDate::compareTo).orElse(first).plusDays(AFTER_LAST_DAYS);
        LocalDate least = first.plusDays(LEAST_DAYS);
        LocalDate end = LocalDate.of(season.year(), 12, 31);
        LocalDate wanted = latest.isAfter(least) ? latest : least;
        return wanted.isAfter(end) ? end : wanted;
    }

    private Stream<LocalDate> dates() {
        return program.passes().stream().map(Pass::date).filter(Objects::nonNull);
    }
}
