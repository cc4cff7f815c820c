package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.Tool;
import plumbrow.science.weedseason.Crop;
import plumbrow.science.weedseason.Tillage;
import plumbrow.science.weedseason.Uncertain;

/** Turns the passes of a program into those of the engine. */
final class ProgramPasses {
    private static final double CM_PER_INCH = 2.54;

    private final Season season;
    private final Field field;
    private final FieldClimate climate;
    private final SeasonInputs inputs;
    private final List<FieldWeed> weeds;
    private final Program program;
    private final List<Crop> crops;
    private final int weather;
    private final List<EngineColumn> columns = new ArrayList<>();
    private final List<MadePass> made = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final HerbicidePasses herbicides;

    ProgramPasses(
            Season season,
            Field field,
            FieldClimate climate,
            SeasonInputs inputs,
            int weather,
            List<FieldWeed> weeds,
            Program program,
            List<Crop> crops) {
        this.season = season;
        this.field = field;
        this.climate = climate;
        this.inputs = inputs;
        this.weeds = weeds;
        this.program = program;
        this.crops = crops;
        this.weather = weather;
        this.herbicides = new HerbicidePasses(season, field, climate, inputs, weeds, columns, notes);
    }

    ProgramSeason season() {
        List<Uncertain> shifts = new ArrayList<>();
        for (FieldWeed weed : weeds) {
            shifts.add(drawn(new EngineColumn.Times(weed.shift(), 1)));
        }
        program.passes().stream().sorted(Comparator.comparingInt(Pass::number)).forEach(this::read);
        return new ProgramSeason(
                program, climate, crops, weather, weeds, shifts, made, columns, herbicides.groups(), notes);
    }

    private Uncertain drawn(EngineColumn column) {
        return drawn(columns, column);
    }

    /** The engine's column for an input, the one that stands there already where there is one. */
    static Uncertain drawn(List<EngineColumn> columns, EngineColumn column) {
        int at = columns.indexOf(column);
        if (at < 0) {
            columns.add(column);
            at = columns.size() - 1;
        }
        return Uncertain.drawn(at);
    }

    private void read(Pass pass) {
        boolean herbicide = ProgramGaps.herbicide(season, pass);
        if (!herbicide && pass.kind() != PassKind.TILLAGE) {
            return;
        }
        LocalDate date = Objects.requireNonNull(pass.date());
        int day = DayOfYear.of(date);
        if (date.getYear() != season.year() || !climate.days().has(day)) {
            notes.add("Pass " + pass.number() + " of " + program.name() + " is on " + date
                    + ", outside the days that are followed: it is counted as doing nothing to weeds.");
        } else if (herbicide) {
            made.addAll(herbicides.of(pass, day, laterThanTillage(pass), daysLate(date)));
        } else {
            tillage(pass, day).ifPresent(made::add);
        }
    }

    /**
     * The engine takes any tillage of a spray's day as working it in. Where the tool runs before the sprayer, the spray is
     * laid the day after: the tool then leaves it alone.
     */
    private int laterThanTillage(Pass spray) {
        return program.passes().stream()
                        .anyMatch(pass -> pass.kind() == PassKind.TILLAGE
                                && pass.number() < spray.number()
                                && Objects.equals(pass.date(), spray.date()))
                ? 1
                : 0;
    }

    /** A spray after planting comes late, by the same draw for all of the season's sprays. */
    private Uncertain daysLate(LocalDate date) {
        Optional<LocalDate> planted = CropDays.planted(program);
        if (planted.isEmpty() || !date.isAfter(planted.get())) {
            return Uncertain.known(0);
        }
        Optional<CropTiming> typed = ProgramGaps.typed(season, field);
        Distribution distribution = typed.map(CropTiming::daysLate).orElse(CropTiming.USUALLY_LATE);
        int place = inputs.place(
                "late: sprayer",
                "days by which the sprayer comes late",
                "days",
                distribution,
                typed.map(CropTiming::source).orElse("common practice, no source"),
                "days late on " + field.name(),
                DoubtKind.YEAR);
        return drawn(new EngineColumn.Times(place, 1));
    }

    private Optional<MadePass> tillage(Pass pass, int day) {
        Optional<TillageWork> work = season.pests().weedBook().tillage().stream()
                .filter(row -> row.field().equals(field.name())
                        && row.program().equals(program.name())
                        && row.pass() == pass.number())
                .findFirst();
        if (work.isEmpty()) {
            notes.add("Tool and depth of tillage pass " + pass.number() + " of " + program.name()
                    + " are unknown (sheet tillage): it is counted as doing nothing to weeds.");
            return Optional.empty();
        }
        Tool tool = work.get().tool();
        OptionalDouble dug = FloorCheck.depthIn(season.pests().weedBook(), field.name(), tool);
        double inches = dug.orElse(work.get().depthIn());
        return Optional.of(new MadePass(
                pass.number(),
                new Tillage(
                        tool.word(),
                        day,
                        Uncertain.known(0),
                        inches * CM_PER_INCH,
                        tool.rotary(),
                        tool.killShare(),
                        tool.halfHeightCm(),
                        tool.broughtUpShare(),
                        worksIn(pass) ? unevenness(tool) : Uncertain.known(1)),
                0));
    }

    /** Whether it works in a herbicide, so that the depth of its floor counts. */
    private boolean worksIn(Pass tillage) {
        return program.passes().stream()
                .filter(pass -> ProgramGaps.herbicide(season, pass))
                .anyMatch(pass -> pass.date() != null
                        && tillage.date() != null
                        && (pass.date().isBefore(tillage.date())
                                || (pass.date().equals(tillage.date()) && pass.number() < tillage.number())));
    }

    /** How deep the floor lies under a place of the field: a draw is one place, so that the mean over draws is the field's. */
    private Uncertain unevenness(Tool tool) {
        FloorCheck.Spread spread = FloorCheck.spread(season.pests().weedBook(), field.name(), tool);
        if (spread.logSd() == 0) {
            return Uncertain.known(1);
        }
        int place = inputs.place(
                "floor: " + tool.word(),
                "depth of the floor of the " + tool.word() + " under a place of the field",
                "times its mean",
                new Distribution.Factor(1, spread.logSd()),
                spread.source(),
                "floor of the " + tool.word() + " on " + field.name(),
                DoubtKind.YEAR);
        return drawn(new EngineColumn.Times(place, 1));
    }
}
