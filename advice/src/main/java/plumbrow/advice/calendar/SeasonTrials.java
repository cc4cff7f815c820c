package plumbrow.advice.calendar;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Function;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.SeasonHours;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.OwnInputs;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.advice.weighing.ProgramTrial;
import plumbrow.advice.weighing.ProgramTrials;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;

/**
 * Tries changes to the programs of one season, on the draws and by the arithmetic of its weighing. What stays the same from try to
 * try is kept. Safe for several threads.
 */
public final class SeasonTrials {
    private static final int MOST_KEPT = 200;

    private final Season season;
    private final ProgramTrials trials;
    private final ConcurrentMap<List<String>, ProgramTrial> known = new ConcurrentHashMap<>();
    private final ConcurrentMap<List<Object>, List<Window>> lawful = new ConcurrentHashMap<>();

    private final ConcurrentMap<List<Object>, SeasonHours> hours = new ConcurrentHashMap<>();
    private final Function<Field, Optional<HourlyWeather>> weather;

    /** Of a season without hourly weather. */
    public SeasonTrials(Season season, WeighingOptions options) {
        this(season, options, field -> Optional.empty());
    }

    /** With the hourly weather of fields, where it is on file. */
    public SeasonTrials(Season season, WeighingOptions options, Function<Field, Optional<HourlyWeather>> weather) {
        this.season = season;
        this.weather = weather;
        this.trials = new ProgramTrials(options);
    }

    public Season season() {
        return season;
    }

    /** Whether the weeds of a field can be followed day by day. */
    public boolean followed(Field field) {
        return WeedSeasons.of(season, field, new OwnInputs()) instanceof FieldSeason;
    }

    /**
     * A program with changes, with all it takes for the picture but the lawful days.
     *
     * @throws ProgramChangeException where a change can't be made
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public SeasonTrial tried(Field field, String program, List<PassChange> changes) {
        ProgramChanges changer = new ProgramChanges(season, field);
        Program kept = changer.program(program);
        ChangedProgram changed = changer.of(kept, changes, kept.name());
        boolean same = changed.program().equals(kept);
        Season after = same ? season : SeasonParts.replaced(season, kept, changed);
        ProgramTrial before = kept(field, program);
        ProgramTrial now = same ? before : trials.of(after, field, program);
        List<Finding> findings =
                Gates.of(SeasonParts.alone(after, field, List.of(changed))).check(field, changed.program());
        return new SeasonTrial(
                field.name(),
                program,
                !same,
                trials.options().draws(),
                trials.options().seed(),
                now.numbers(),
                before.numbers(),
                now.against(before),
                now.against(kept(field, baseline(field))),
                Gates.standing(findings),
                findings,
                changed.renumbered(),
                withHours(
                        after,
                        field,
                        changed.program(),
                        new CalendarDays(after, field, now, changed.keptNumbers()).calendar()));
    }

    /** Fit hours by the rules of the program as it is tried; what is the same is not asked twice. */
    private SeasonCalendar withHours(Season after, Field field, Program program, SeasonCalendar calendar) {
        if (hours.size() > MOST_KEPT) {
            hours.clear();
        }
        return calendar.with(hours.computeIfAbsent(
                List.of(field.name(), program, after.work().sprayPlans().hashCode(), calendar.first(), calendar.last()),
                key -> weather.apply(field)
                        .map(file -> SeasonHours.of(after, field, program, file, calendar.first(), calendar.last()))
                        .orElse(SeasonHours.UNKNOWN)));
    }

    /** The same with the days on which the gates let each pass be made. */
    public SeasonTrial whole(Field field, String program, List<PassChange> changes) {
        SeasonTrial tried = tried(field, program, changes);
        SeasonCalendar calendar = tried.calendar();
        if (lawful.size() > MOST_KEPT) {
            lawful.clear();
        }
        return tried.with(lawful.computeIfAbsent(List.of(field.name(), program, List.copyOf(changes)), key -> {
            ProgramChanges changer = new ProgramChanges(season, field);
            Program asKept = changer.program(program);
            ChangedProgram changed = changer.of(asKept, changes, program);
            Season after = SeasonParts.replaced(season, asKept, changed);
            return new LawfulDays(after, field)
                    .of(changed.program(), calendar.first(), calendar.last()).stream()
                            .map(window -> window.of(changed.keptNumbers().getOrDefault(window.pass(), window.pass())))
                            .toList();
        }));
    }

    /**
     * The same with the lawful days of the program as kept: those of a pass being moved do not change while it is.
     *
     * @param other trials of this season that may know them already
     */
    public SeasonTrial moving(Field field, String program, List<PassChange> changes, SeasonTrials other) {
        return tried(field, program, changes)
                .with(other.lawful.getOrDefault(List.of(field.name(), program, List.of()), List.of()));
    }

    /** The season with a program changed in its place. */
    public Season keptChanged(Field field, String program, List<PassChange> changes) {
        return new ProgramChanges(season, field).changed(program, changes);
    }

    /** The season with the changed program as one more. */
    public Season keptAdded(Field field, String program, List<PassChange> changes, String name) {
        return new ProgramChanges(season, field).added(program, changes, name);
    }

    /** The season without a program that is no baseline. */
    public Season without(Field field, String program) {
        return new ProgramChanges(season, field).without(program);
    }

    private ProgramTrial kept(Field field, String program) {
        return known.computeIfAbsent(List.of(field.name(), program), key -> trials.of(season, field, program));
    }

    private String baseline(Field field) {
        return season.programs(field.name()).stream()
                .filter(Program::baseline)
                .map(Program::name)
                .findFirst()
                .orElseThrow(() -> new SeasonGapException(
                        field.name() + " can't be weighed: exactly one of its programs must be the baseline."));
    }
}
