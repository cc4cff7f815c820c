package plumbrow.advice.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.text.TextRule;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weedseason.CropStage;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.OwnInputs;
import plumbrow.advice.weedseason.WeedSeasons;

/**
 * Moves passes of a field's programs to other days and rates.
 *
 * Passes keep the order of their days: a pass that is moved past another changes numbers with it, and so do its spray plan and
 * tillage row. What goes out in one tank moves together. A spray that is moved no longer knows the crop's height (but 0 before it is up), the
 * weeds' height and the bloom of its day: they become unknown. The crop's stage is reckoned from degree days where there is a table
 * for it, else it becomes unknown too: a stage seen in the
 * field goes before it.
 */
public final class ProgramChanges {
    private static final double ROUNDING = 1e-6;

    private final Season season;
    private final Field field;
    private final Optional<FieldSeason> followed;
    private final Map<LocalDate, List<CropStage>> stages = new ConcurrentHashMap<>();

    public ProgramChanges(Season season, Field field) {
        this.season = season;
        this.field = field;
        this.followed = WeedSeasons.of(season, field, new OwnInputs()) instanceof FieldSeason known
                ? Optional.of(known)
                : Optional.empty();
    }

    /** The program of a name. */
    public Program program(String name) {
        return season.programs(field.name()).stream()
                .filter(program -> program.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new ProgramChangeException(
                        0,
                        field.name() + " has no program '" + name + "'; it has "
                                + String.join(
                                        ", ",
                                        season.programs(field.name()).stream()
                                                .map(Program::name)
                                                .toList())
                                + "."));
    }

    /** The season with the program changed. */
    public Season changed(String program, List<PassChange> changes) {
        Program kept = program(program);
        ChangedProgram changed = of(kept, changes, kept.name());
        return SeasonParts.replaced(season, kept, changed);
    }

    /** The season with the changed program beside the one it was made from. */
    public Season added(String program, List<PassChange> changes, String name) {
        String told = name.strip();
        if (told.isEmpty()) {
            throw new ProgramChangeException(0, "Give the new program a name: " + TextRule.NAME.words() + ".");
        }
        TextRule.NAME.objection(told).ifPresent(expected -> {
            throw new ProgramChangeException(0, "The name of the new program can't be so: expected " + expected + ".");
        });
        if (season.programs(field.name()).stream()
                .anyMatch(known -> known.name().equalsIgnoreCase(told))) {
            throw new ProgramChangeException(
                    0, field.name() + " has a program '" + told + "' already: take another name.");
        }
        return SeasonParts.added(season, of(program(program), changes, told));
    }

    /** The season without a program that is no baseline. */
    public Season without(String program) {
        Program gone = program(program);
        if (gone.baseline()) {
            throw new ProgramChangeException(0, "'" + program + "' is the baseline of " + field.name() + " and stays.");
        }
        return SeasonParts.without(season, gone);
    }

    /** The season with a program, and the rows that hang on it, as another season has them; both have rows for the same passes. */
    public Season asIn(Season other, String program) {
        Program was = new ProgramChanges(other, field).program(program);
        return SeasonParts.replaced(
                season,
                program(program),
                new ChangedProgram(
                        was,
                        other.work().sprayPlans().stream()
                                .filter(plan -> plan.field().equals(field.name())
                                        && plan.program().equals(program))
                                .toList(),
                        other.pests().weedBook().tillage().stream()
                                .filter(work -> work.field().equals(field.name())
                                        && work.program().equals(program))
                                .toList(),
                        Map.of()));
    }

    ChangedProgram of(Program kept, List<PassChange> changes, String name) {
        Map<Integer, Pass> byNumber = new HashMap<>();
        kept.passes().forEach(pass -> byNumber.put(pass.number(), pass));
        for (PassChange change : changes) {
            Pass pass = byNumber.get(change.pass());
            if (pass == null) {
                throw new ProgramChangeException(
                        change.pass(), "'" + kept.name() + "' has no pass " + change.pass() + ".");
            }
            byNumber.put(change.pass(), changed(pass, change));
        }
        withTank(kept, changes, byNumber);
        return renumbered(kept, byNumber, name);
    }

    private Pass changed(Pass pass, PassChange change) {
        LocalDate date = change.date() == null ? pass.date() : inSeason(pass, change.date());
        Amount rate = change.rate() == null ? pass.rate() : allowed(pass, change.rate());
        return pass.on(date, rate);
    }

    private LocalDate inSeason(Pass pass, LocalDate date) {
        LocalDate first = LocalDate.of(season.year() - 1, 7, 1);
        LocalDate last = LocalDate.of(season.year(), 12, 31);
        if (date.isBefore(first) || date.isAfter(last)) {
            throw new ProgramChangeException(
                    pass.number(),
                    "Pass " + pass.number() + " can't be on " + date + ": expected a day between " + first + " and "
                            + last + ".");
        }
        return date;
    }

    private Amount allowed(Pass pass, double rate) {
        Amount planned = pass.rate();
        if (planned == null) {
            throw new ProgramChangeException(
                    pass.number(), "Pass " + pass.number() + " puts nothing out, so it has no rate to change.");
        }
        if (!Double.isFinite(rate) || rate <= 0) {
            throw new ProgramChangeException(
                    pass.number(),
                    "The rate of pass " + pass.number() + " must be more than 0 "
                            + planned.unit().symbol() + "/ac.");
        }
        Amount amount = new Amount(rate, planned.unit());
        Optional<Amount> highest = highest(season, field, pass);
        if (highest.isPresent() && rate > highest.get().value() * (1 + ROUNDING)) {
            throw new ProgramChangeException(
                    pass.number(),
                    "Pass " + pass.number() + " can't be " + amount.text() + "/ac: expected no more than the label's "
                            + highest.get().text() + "/ac on " + field.crop().word() + "; the label is the law.");
        }
        return rate == planned.value() ? planned : amount;
    }

    /** The label's highest rate for a pass, in the unit of the pass. */
    static Optional<Amount> highest(Season season, Field field, Pass pass) {
        return labelled(season, field, pass, LabelUse::highRate);
    }

    /** The label's lowest rate for a pass, in the unit of the pass. */
    static Optional<Amount> lowest(Season season, Field field, Pass pass) {
        return labelled(season, field, pass, LabelUse::lowRate);
    }

    private static Optional<Amount> labelled(
            Season season, Field field, Pass pass, java.util.function.Function<LabelUse, @Nullable Amount> end) {
        Amount planned = pass.rate();
        String product = pass.product();
        if (planned == null || product == null) {
            return Optional.empty();
        }
        return season.shelf()
                .labelUse(product, field.crop())
                .flatMap(use -> Optional.ofNullable(end.apply(use)))
                .filter(planned::comparableWith)
                .map(rate -> rate.in(planned.unit()));
    }

    /** What shares a tank with a moved pass moves along, unless it is told a day of its own. */
    private void withTank(Program kept, List<PassChange> changes, Map<Integer, Pass> byNumber) {
        for (PassChange change : changes) {
            Pass before = kept.passes().stream()
                    .filter(pass -> pass.number() == change.pass())
                    .findFirst()
                    .orElseThrow();
            Optional<String> tank = tank(kept, before);
            for (Pass other : kept.passes()) {
                boolean told = changes.stream()
                        .anyMatch(one -> one.pass() == other.number()
                                && one.date() != null
                                && !one.date().equals(other.date()));
                if (change.date() != null
                        && !change.date().equals(before.date())
                        && other.number() != before.number()
                        && !told
                        && tank.isPresent()
                        && tank.equals(tank(kept, other))
                        && Objects.equals(other.date(), before.date())) {
                    byNumber.put(
                            other.number(),
                            changed(
                                    Objects.requireNonNull(byNumber.get(other.number())),
                                    new PassChange(other.number(), change.date(), null)));
                }
            }
        }
    }

    private Optional<String> tank(Program program, Pass pass) {
        return season.work().sprayPlan(program, pass).flatMap(plan -> Optional.ofNullable(plan.tank()));
    }

    private ChangedProgram renumbered(Program kept, Map<Integer, Pass> byNumber, String name) {
        List<Integer> numbers =
                kept.passes().stream().map(Pass::number).sorted().toList();
        Map<Integer, LocalDate> days = new HashMap<>();
        LocalDate before = LocalDate.MIN;
        for (int number : numbers) {
            LocalDate own = Objects.requireNonNull(byNumber.get(number)).date();
            before = own == null ? before : own;
            days.put(number, before);
        }
        List<Integer> order = numbers.stream()
                .sorted(Comparator.comparing((Integer number) -> Objects.requireNonNull(days.get(number))))
                .toList();
        Map<Integer, Integer> now = new HashMap<>();
        for (int i = 0; i < order.size(); i++) {
            now.put(order.get(i), numbers.get(i));
        }
        List<Pass> passes = new ArrayList<>();
        for (int number : order) {
            passes.add(Objects.requireNonNull(byNumber.get(number)).numbered(now.getOrDefault(number, number)));
        }
        Program program = new Program(
                kept.field(), name, kept.baseline() && name.equals(kept.name()), kept.refuge(), kept.note(), passes);
        boolean same = passes.equals(kept.passes());
        return new ChangedProgram(
                same && name.equals(kept.name()) ? kept : program,
                plans(kept, program, now),
                tillage(kept, name, now),
                now.entrySet().stream()
                        .collect(java.util.stream.Collectors.toMap(Map.Entry::getValue, Map.Entry::getKey)));
    }

    private List<SprayPlan> plans(Program kept, Program program, Map<Integer, Integer> now) {
        boolean planting = !Objects.equals(planted(kept), planted(program));
        List<SprayPlan> plans = new ArrayList<>();
        for (SprayPlan plan : season.work().sprayPlans()) {
            if (plan.field().equals(kept.field()) && plan.program().equals(kept.name())) {
                int number = now.getOrDefault(plan.pass(), plan.pass());
                LocalDate day = day(program, number);
                boolean sameDay = Objects.equals(day(kept, plan.pass()), day);
                plans.add(
                        sameDay && !planting
                                ? plan.forPass(plan.field(), program.name(), number, plan.tank())
                                : onAnotherDay(plan, program, number, day, sameDay));
            }
        }
        return plans;
    }

    /** With only the planting moved, weeds are as high as before, and a crop that is not up does not bloom. */
    private SprayPlan onAnotherDay(
            SprayPlan plan, Program program, int number, @Nullable LocalDate day, boolean sameDay) {
        String stage = day == null ? null : stageOn(program, day).orElse(null);
        return new SprayPlan(
                plan.field(),
                program.name(),
                number,
                plan.tank(),
                plan.method(),
                plan.carrierGalPerAcre(),
                plan.droplets(),
                plan.boomIn(),
                plan.driftReductionPct(),
                stage,
                GrowthStage.PRE.equals(stage) ? 0.0 : null,
                sameDay ? plan.weedHeightIn() : null,
                sameDay && GrowthStage.PRE.equals(stage) ? plan.bloom() : Ask.UNKNOWN,
                plan.applicator());
    }

    /** The crop's stage on a day by degree days; not up yet on the day of planting and before. */
    private Optional<String> stageOn(Program program, LocalDate day) {
        LocalDate planted = planted(program);
        if (planted == null) {
            return Optional.empty();
        }
        if (!day.isAfter(planted)) {
            return Optional.of(GrowthStage.PRE);
        }
        List<CropStage> known = stages.computeIfAbsent(
                planted, key -> followed.map(season -> season.stages(program)).orElse(List.of()));
        if (known.isEmpty()) {
            return Optional.empty();
        }
        String reached = GrowthStage.PRE;
        for (CropStage stage : known) {
            if (!FieldSeason.date(season.year(), stage.day()).isAfter(day)) {
                reached = stage.word();
            }
        }
        return Optional.of(reached);
    }

    private List<TillageWork> tillage(Program kept, String name, Map<Integer, Integer> now) {
        return season.pests().weedBook().tillage().stream()
                .filter(work ->
                        work.field().equals(kept.field()) && work.program().equals(kept.name()))
                .map(work -> new TillageWork(
                        work.field(),
                        name,
                        now.getOrDefault(work.pass(), work.pass()),
                        work.tool(),
                        work.depthIn(),
                        work.source()))
                .toList();
    }

    private static @Nullable LocalDate planted(Program program) {
        return program.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .map(Pass::date)
                .filter(Objects::nonNull)
                .min(LocalDate::compareTo)
                .orElse(null);
    }

    private static @Nullable LocalDate day(Program program, int number) {
        return program.passes().stream()
                .filter(pass -> pass.number() == number)
                .findFirst()
                .map(Pass::date)
                .orElse(null);
    }
}
