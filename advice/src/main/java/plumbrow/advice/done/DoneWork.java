package plumbrow.advice.done;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.figure.Numbers;

/**
 * What was done on a field this season, and what it leaves of each of its programs. What is done is fact and sunk cost, the
 * same for every program: a program that planned it has it on the day, at the rate and on the share of the log; one that did
 * not plan it has it besides. Only the rest of the season is decided.
 */
public final class DoneWork {
    private static final Distribution NO_INJURY = new Distribution.Fixed(0);

    private final Season season;
    private final List<Program> programs;
    private final List<Done> lines;
    private final Map<Program, Fulfilled> fulfilled = new HashMap<>();
    private final Field field;

    private DoneWork(Season season, Field field, List<Program> programs, List<Done> lines) {
        this.season = season;
        this.field = field;
        this.programs = programs;
        this.lines = lines;
        programs.forEach(program -> fulfilled.put(program, fulfilled(season, program, lines)));
    }

    /** What was done on a field, with its programs in the order of the season, the baseline first. */
    public static DoneWork of(Season season, Field field) {
        List<Done> lines = thisSeason(season, field);
        List<Program> programs = lines.isEmpty()
                ? List.of()
                : season.programs(field.name()).stream()
                        .sorted(Comparator.comparing((Program program) -> !program.baseline()))
                        .toList();
        return new DoneWork(season, field, programs, lines);
    }

    /** Lines of the log that count for this season's crop, by day. */
    public static List<Done> thisSeason(Season season, Field field) {
        LocalDate from = seasonStart(season.year(), field.crop());
        return season.work().log(field.name()).stream()
                .filter(line -> !line.date().isBefore(from))
                .sorted(Comparator.comparing(Done::date).thenComparing(Done::product))
                .toList();
    }

    /**
     * From when on an application counts for a season's crop: 1 October before corn and soybean, 1 August before wheat, so
     * that autumn burndown counts. Common practice, no source; a label may count a calendar year.
     */
    public static LocalDate seasonStart(int year, Crop crop) {
        int month = crop == Crop.WHEAT ? 8 : 10;
        return LocalDate.of(year - 1, month, 1);
    }

    /** A program with what was done in the place of what it planned, and besides it what it did not plan. */
    public Program made(Program program) {
        if (lines.isEmpty()) {
            return program;
        }
        Fulfilled of = of(program);
        List<Done> further = of.further().stream().filter(this::weighs).toList();
        boolean planted = further.stream().anyMatch(this::seed);
        List<Pass> passes = new ArrayList<>();
        for (Pass pass : program.passes()) {
            Done line = of.done().get(pass.number());
            if (line != null) {
                passes.add(pass(pass.number(), line, pass));
            } else if (!planted || pass.kind() != PassKind.SEED || treatment(pass.product())) {
                passes.add(pass);
            }
        }
        int number = program.passes().stream().mapToInt(Pass::number).max().orElse(0);
        for (Done line : further) {
            number++;
            passes.add(pass(number, line, null));
        }
        return new Program(
                program.field(), program.name(), program.baseline(), program.refuge(), program.note(), passes);
    }

    private Fulfilled of(Program program) {
        Fulfilled known = fulfilled.get(program);
        return known == null ? fulfilled(season, program, lines) : known;
    }

    /**
     * What the log fulfils of a program, where a person may have said which pass of any program of the field a line was.
     *
     * @param lines of the log for this season's crop on the field of the program
     */
    public static Fulfilled fulfilled(Season season, Program program, List<Done> lines) {
        return Fulfilled.of(program, lines, line -> meantPass(season, line));
    }

    /** The pass that a person said a line was; empty where nobody did, it was none, or the season has no such pass any more. */
    public static Optional<Pass> meantPass(Season season, Done line) {
        MeantPass said = line.meant();
        return said == null || said.none()
                ? Optional.empty()
                : season.programs(line.field()).stream()
                        .filter(program -> program.name().equals(said.program()))
                        .flatMap(program -> program.passes().stream())
                        .filter(pass ->
                                pass.number() == said.pass() && line.product().equals(pass.product()))
                        .findFirst();
    }

    /** Whether a pass of a program is behind us: done, or not to be done since scouting found too few. */
    public boolean isDone(Program program, Pass pass) {
        return of(program).done().containsKey(pass.number()) || tooFew(program).containsKey(pass.number());
    }

    /** The passes of a program that scouting found too few for, each with its line of the log. */
    public Map<Integer, Done> tooFew(Program program) {
        return TooFew.of(season, field, program);
    }

    /** The passes of {@link #made} that are done: planned and done, or done besides the plan. What they cost is spent. */
    public List<Pass> donePasses(Program program) {
        if (lines.isEmpty()) {
            return List.of();
        }
        Set<Integer> open = program.passes().stream()
                .map(Pass::number)
                .filter(number -> !of(program).done().containsKey(number))
                .collect(Collectors.toSet());
        return made(program).passes().stream()
                .filter(pass -> !open.contains(pass.number()))
                .toList();
    }

    private Pass pass(int number, Done line, @Nullable Pass own) {
        Optional<Pass> like = meant(line);
        PassKind kind =
                own != null ? own.kind() : like.map(Pass::kind).orElse(seed(line) ? PassKind.SEED : PassKind.SPRAY);
        Optional<Pass> hurts = own == null ? like : Optional.of(own);
        return new Pass(
                number,
                kind,
                line.date(),
                line.product(),
                line.rate(),
                line.sharePct(),
                like.map(DoneWork::trip).orElse(own == null ? 0 : trip(own)),
                hurts.map(Pass::injuryPct).orElse(NO_INJURY),
                hurts.map(Pass::delayDays).orElse(0.0));
    }

    /** What a trip cost, with the scouting that went before it where it has a price of its own [$/ac covered]. */
    private static double trip(Pass pass) {
        ScoutingTrigger trigger = pass.trigger();
        Double scouting = trigger == null ? null : trigger.scoutingUsdPerAcre();
        return pass.chargeUsdPerAcre() + (scouting == null ? 0 : scouting * 100 / pass.sharePct());
    }

    /** The pass that a line fulfils in the first program in which it fulfils one: its trip is what the line cost in all. */
    private Optional<Pass> meant(Done line) {
        for (Program program : programs) {
            for (Pass pass : program.passes()) {
                if (line.equals(of(program).done().get(pass.number()))) {
                    return Optional.of(pass);
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Whether a line is weighed. What was put on before the assumptions were drawn up and is no pass of any program is behind the
     * pressures of that assumptions already; it counts against the limits of labels only.
     */
    private boolean weighs(Done line) {
        return !line.date().isBefore(season.asOf()) || meant(line).isPresent();
    }

    private boolean seed(Done line) {
        return kind(line.product()) == ProductKind.SEED;
    }

    private boolean treatment(@Nullable String product) {
        return product != null && kind(product) == ProductKind.SEED_TREATMENT;
    }

    private @Nullable ProductKind kind(String product) {
        return season.shelf().product(product).map(Product::kind).orElse(null);
    }

    /** What was done and how it was planned, what is not clear, and which programs it contradicts: a sentence each. */
    public List<String> sentences() {
        Set<String> said = new LinkedHashSet<>();
        for (Done line : lines.stream().filter(this::weighs).toList()) {
            meant(line)
                    .ifPresentOrElse(
                            pass -> said.add(done(line, pass)),
                            () -> said.add("Done and counted once in every program: " + what(line) + "."));
        }
        season.work().tooFew(field.name()).stream()
                .filter(line -> !line.date().isBefore(seasonStart(season.year(), field.crop())))
                .map(this::tooFew)
                .forEach(said::add);
        for (Done line : lines) {
            unclear(line).ifPresent(said::add);
        }
        for (Done line : lines) {
            without(line).ifPresent(said::add);
        }
        return List.copyOf(said);
    }

    private String tooFew(Done line) {
        Optional<Pass> answered = season.programs(field.name()).stream()
                .flatMap(program -> program.passes().stream()
                        .filter(pass -> line.equals(tooFew(program).get(pass.number()))))
                .findFirst();
        return answered.map(pass -> "Scouted on " + line.date() + ": fewer than "
                        + Objects.requireNonNull(pass.trigger()).limit() + ", so " + line.product()
                        + " is not put on. What scouting cost is spent, whatever is done, and stands in no program; the rest of the season is weighed on the simulated"
                        + " seasons in which so few are counted.")
                .orElse("The log says of " + line.date() + " that " + line.product()
                        + " was not made since scouting found too"
                        + " few, but no pass of " + field.name()
                        + " that puts it on waits for a count near that day: the line"
                        + " COUNTS AS NOTHING. Say which pass it was, or strike it.");
    }

    private static String what(Done line) {
        return line.product() + " on " + line.date() + ", " + line.rate().text() + "/ac"
                + (line.sharePct() == 100 ? "" : " on " + Numbers.plain(line.sharePct()) + " % of the acres");
    }

    private static String done(Done line, Pass planned) {
        List<String> otherwise = new ArrayList<>();
        LocalDate day = planned.date();
        if (day != null && !day.equals(line.date())) {
            long late = ChronoUnit.DAYS.between(day, line.date());
            otherwise.add(Math.abs(late) + (Math.abs(late) == 1 ? " day " : " days ") + (late > 0 ? "later" : "earlier")
                    + " than planned");
        }
        if (planned.rate() != null && !planned.rate().text().equals(line.rate().text())) {
            otherwise.add(planned.rate().text() + "/ac was planned");
        }
        if (planned.sharePct() != line.sharePct()) {
            otherwise.add(Numbers.plain(planned.sharePct()) + " % of the acres were planned");
        }
        return "Done: " + what(line) + (otherwise.isEmpty() ? ", as planned" : "; " + String.join(", ", otherwise))
                + ". Its cost is spent, whatever is done from here on.";
    }

    private Optional<String> unclear(Done line) {
        List<String> where = programs.stream()
                .filter(program -> of(program).unclear().containsKey(line))
                .map(program -> program.name() + " (pass "
                        + of(program).unclear().getOrDefault(line, List.of()).stream()
                                .map(pass -> pass.number() + (pass.date() == null ? "" : " of " + pass.date()))
                                .collect(Collectors.joining(" or "))
                        + ")")
                .toList();
        return where.isEmpty()
                ? Optional.empty()
                : Optional.of("NOT CLEAR which planned pass " + what(line) + " was, in " + String.join("; ", where)
                        + ": until somebody says so it counts besides the plan. Say which it was, or none of them, on the page"
                        + " of the log, with plumbrow log pass, or in the columns program and pass of the sheet log.");
    }

    private Optional<String> without(Done line) {
        List<String> others = programs.stream()
                .filter(program -> of(program).further().contains(line)
                        && !of(program).unclear().containsKey(line))
                .map(Program::name)
                .toList();
        if (others.isEmpty() || meant(line).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                seed(line)
                        ? "Can't be followed as written any more, since " + line.product() + " is in the ground: "
                                + String.join("; ", others) + ". What is planted stands in the place of their seed."
                        : "Has no such pass as " + what(line) + ": " + String.join("; ", others)
                                + ". It is done all the same and counts there too.");
    }
}
