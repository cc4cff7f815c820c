package plumbrow.advice.fieldplan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.calendar.LawfulWindows;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.done.TooFew;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.land.Nearness;
import plumbrow.advice.land.Zone;
import plumbrow.advice.land.Zones;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.trip.AtLatest;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.GainDoubt;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.Quantities;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.science.figure.Numbers;

/**
 * Makes field plans of a season. Nothing is reckoned here: loads, nozzles, gear and intervals are those of the {@link LoadCards load
 * cards}, windows and distances those of the gates, money that of the weighing. A plan says which of it matters.
 */
public final class FieldPlans {
    private static final int LOOK_BACK_DAYS = 14;
    private static final int LOOK_AHEAD_DAYS = 21;
    private static final int MOST_RANGES = 1;
    private static final int MOST_NEXT = 2;
    private static final int MOST_ASKS = 3;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);

    /** Told in the steps and distances of the plan itself. */
    private static final Set<String> TOLD_ABOVE = Set.of(
            "wear",
            "re-entry",
            "setback-water",
            "setback-people",
            "setback-wildlife",
            "setback-neighbours",
            "pre-harvest-interval");

    private final FieldSeasons own;

    /** Cuts a season once, to ask for field after field. */
    public FieldPlans(Season season) {
        this.own = FieldSeasons.of(season);
    }

    /**
     * The plan of a field.
     *
     * @param decision the program chosen; null where none was, then the advised one counts
     * @param advice its weighing; null where it can't be weighed, for the reason in {@code gap}
     * @param next what to tell or look up next, where it was asked for
     */
    public FieldPlan of(
            Field field,
            @Nullable Decision decision,
            @Nullable FieldAdvice advice,
            String gap,
            Optional<NextInputs> next) {
        return new Maker(own.of(field), field, decision, advice, gap, next.orElse(null)).plan();
    }

    /** Makes the plan of one field. */
    private static final class Maker {
        private final Season season;
        private final Field field;
        private final @Nullable Decision decision;
        private final @Nullable FieldAdvice advice;
        private final String gap;
        private final @Nullable NextInputs next;
        private final Gates gates;
        private final List<Program> programs;

        private Maker(
                Season season,
                Field field,
                @Nullable Decision decision,
                @Nullable FieldAdvice advice,
                String gap,
                @Nullable NextInputs next) {
            this.season = season;
            this.field = field;
            this.advice = advice;
            this.gap = gap;
            this.next = next;
            this.gates = Gates.of(season);
            this.programs = season.programs(field.name());
            this.decision = decision != null
                            && programs.stream()
                                    .anyMatch(program -> program.name().equals(decision.program()))
                    ? decision
                    : null;
        }

        FieldPlan plan() {
            String name = decision != null ? decision.program() : advice != null ? advice.advised() : null;
            Program program = programs.stream()
                    .filter(one -> one.name().equals(name))
                    .findFirst()
                    .orElse(null);
            return program == null ? nothing() : planOf(program);
        }

        private FieldPlan planOf(Program program) {
            ProgramCheck check = new ProgramCheck(field, program, gates.check(field, program));
            List<FieldPlan.Step> steps = steps(program);
            List<Zones> zones = gates.zones(field, program);
            WeighedProgram weighed =
                    advice == null ? null : advice.program(program.name()).orElse(null);
            List<Matter> matters = check.matters();
            return new FieldPlan(
                    season.year(),
                    season.asOf(),
                    season.adviser(),
                    field,
                    grower(),
                    program.name(),
                    decision != null ? FieldPlan.Basis.CHOSEN : FieldPlan.Basis.ADVISED,
                    check.standing(),
                    sentence(program, check.standing()),
                    steps,
                    keeps(zones),
                    season.ground().features(field.name()),
                    taking(zones).toList(),
                    unseen(zones),
                    weighed == null ? null : money(weighed),
                    moneySays(weighed),
                    doubts(program),
                    first(matters, steps),
                    annex(matters, check));
        }

        /** Nothing may be advised: what must be looked up first, and no pass that somebody could take for a plan. */
        private FieldPlan nothing() {
            List<ProgramCheck> checks = programs.stream()
                    .map(program -> new ProgramCheck(field, program, gates.check(field, program)))
                    .toList();
            List<Matter> matters = Matter.of(checks);
            String why = programs.isEmpty()
                    ? "No program has been entered for " + field.name() + "."
                    : advice == null ? gap : advice.sentence();
            return new FieldPlan(
                    season.year(),
                    season.asOf(),
                    season.adviser(),
                    field,
                    grower(),
                    null,
                    FieldPlan.Basis.NONE,
                    checks.stream().map(ProgramCheck::standing).reduce(Standing.NOTHING_ASKED, Standing::worse),
                    "Nothing to do yet. " + why,
                    List.of(),
                    List.of(),
                    season.ground().features(field.name()),
                    List.of(),
                    !season.ground().lookedForAll(field.name()),
                    null,
                    List.of(),
                    List.of(),
                    first(matters, List.of()),
                    annex(matters, null));
        }

        private String grower() {
            return season.farm(field.farm()).map(Farm::grower).orElse("");
        }

        private String sentence(Program program, Standing standing) {
            String name = "“" + program.name() + "”";
            String stands = standing == Standing.BARRED
                    ? " It is barred as planned: do not put it on before that is cleared below."
                    : standing == Standing.UNKNOWN
                            ? " Not all of it is known to be allowed: look up what stands below first."
                            : "";
            Decision chosen = decision;
            if (chosen == null) {
                FieldAdvice known = Objects.requireNonNull(advice);
                String first =
                        known.aboutEqual() == null ? "" : "This is the first of those about equal, " + name + ". ";
                return "Not decided yet. " + first + known.sentence() + stands;
            }
            String by = name + ", chosen" + (chosen.who().isBlank() ? "" : " by " + chosen.who()) + " on "
                    + DAY.format(chosen.day()) + ", " + chosen.day().getYear() + ".";
            FieldAdvice weighed = advice;
            if (weighed == null || program.name().equals(weighed.advised())) {
                return by + (weighed == null ? "" : " " + weighed.sentence()) + stands;
            }
            String other = weighed.advised();
            return by
                    + (other == null
                            ? " " + weighed.sentence()
                            : weighed.leading().contains(program.name())
                                    ? " It is about equal to the program advised, “" + other + "”."
                                    : " Advised is “" + other + "”.")
                    + stands;
        }

        // ---- passes ----

        private List<FieldPlan.Step> steps(Program program) {
            Map<Integer, Done> done = DoneWork.fulfilled(season, program, DoneWork.thisSeason(season, field))
                    .done();
            Map<Integer, SprayTrip> trips = new LinkedHashMap<>();
            SprayTrip.of(season, field, program)
                    .forEach(trip -> trip.passes().forEach(pass -> trips.put(pass.number(), trip)));
            List<FieldPlan.Step> steps = new ArrayList<>();
            Set<Integer> tooFew = TooFew.of(season, field, program).keySet();
            for (Pass pass : program.passes()) {
                SprayTrip trip = trips.get(pass.number());
                if (tooFew.contains(pass.number())
                        && (trip == null || trip.passes().size() == 1)) {
                    continue;
                }
                if (trip == null) {
                    steps.add(single(program, pass, done.get(pass.number())));
                } else if (trip.number() == pass.number()) {
                    steps.add(trip(trip, done));
                }
            }
            steps.sort(Comparator.comparing(
                    (FieldPlan.Step step) -> step.done() == null ? step.date() : step.done(),
                    Comparator.nullsLast(Comparator.naturalOrder())));
            return steps;
        }

        private FieldPlan.Step single(Program program, Pass pass, @Nullable Done done) {
            String product = pass.product();
            String verb = switch (pass.kind()) {
                case SEED -> "Plant";
                case SPRAY -> "Spray";
                case GRANULE -> "Put out";
                case TILLAGE -> "Till";
                case SCOUTING -> "Scout";
                case HAND_WORK -> "Work by hand";
                case HARVEST -> "Harvest";
            };
            double acres = field.acres() * pass.sharePct() / 100;
            Machine planter = pass.kind() == PassKind.SEED ? planter() : null;
            return new FieldPlan.Step(
                    List.of(pass.number()),
                    pass.kind(),
                    product == null ? verb : verb + " " + product,
                    pass.date(),
                    window(program, pass),
                    product == null ? List.of() : List.of(new FieldPlan.Line(product, rate(pass))),
                    acres,
                    planter == null ? null : planter.name(),
                    planter == null ? null : acres / planter.acresPerHour(),
                    waitsFor(pass),
                    null,
                    done == null ? null : done.date());
        }

        private static String rate(Pass pass) {
            Amount rate = pass.rate();
            if (rate == null) {
                return "rate unknown";
            }
            return rate.unit() == FarmUnit.THOUSAND_SEEDS
                    ? Numbers.fixed(rate.in(FarmUnit.SEEDS).value(), 0) + " seeds/ac"
                    : rate.text() + "/ac";
        }

        private @Nullable Machine planter() {
            List<Machine> planters = season.work().means().machines().stream()
                    .filter(machine -> machine.farm().equals(field.farm())
                            && machine.kind().does(PassKind.SEED))
                    .toList();
            return planters.size() == 1 ? planters.get(0) : null;
        }

        private FieldPlan.Step trip(SprayTrip trip, Map<Integer, Done> done) {
            LoadCard card = LoadCards.of(season, trip, null);
            LocalDate made = trip.passes().stream()
                    .flatMap(pass -> Stream.ofNullable(done.get(pass.number())))
                    .map(Done::date)
                    .max(Comparator.naturalOrder())
                    .orElse(null);
            boolean all = trip.passes().stream().allMatch(pass -> done.containsKey(pass.number()));
            LocalDate day = all && made != null ? made : trip.date();
            return new FieldPlan.Step(
                    trip.passes().stream().map(Pass::number).toList(),
                    trip.passes().get(0).kind(),
                    (trip.granules() ? "Put out " : trip.sprayed() ? "Spray " : "Apply ") + trip.words(),
                    trip.date(),
                    all ? null : window(trip.program(), trip.passes().get(0)),
                    card.lines().isEmpty()
                            ? trip.passes().stream()
                                    .map(pass -> new FieldPlan.Line(String.valueOf(pass.product()), rate(pass)))
                                    .toList()
                            : card.lines().stream()
                                    .map(line -> new FieldPlan.Line(line.product(), line.rate()))
                                    .toList(),
                    trip.acres(),
                    card.machine(),
                    trip.granules()
                            ? null
                            : trip.machines(season).stream()
                                    .filter(machine -> machine.name().equals(card.machine()))
                                    .findFirst()
                                    .map(machine -> TripHours.needed(season, trip, machine))
                                    .orElse(null),
                    trip.passes().stream()
                            .map(Maker::waitsFor)
                            .filter(Predicate.not(String::isEmpty))
                            .distinct()
                            .collect(Collectors.joining("; ")),
                    put(trip, card, day),
                    all ? made : null);
        }

        private static String waitsFor(Pass pass) {
            ScoutingTrigger trigger = pass.trigger();
            return trigger == null ? "" : "scout first: " + trigger.words();
        }

        private FieldPlan.Put put(SprayTrip trip, LoadCard card, @Nullable LocalDate day) {
            Integer reentry = card.reentryHours();
            Integer preHarvest = preHarvest(trip);
            String nozzle = card.nozzles().stream()
                    .filter(LoadCard.NozzleChoice::fits)
                    .findFirst()
                    .map(choice -> choice.nozzle() + " at " + Numbers.fixed(choice.psi(), 0) + " psi")
                    .orElse(null);
            return new FieldPlan.Put(
                    card.carrierGpa(),
                    trip.sprayed() ? droplets(trip.plan(), card.limits()) : "",
                    nozzle,
                    card.wear(),
                    reentry,
                    reentry == null || day == null ? null : AtLatest.over(day, reentry),
                    preHarvest,
                    preHarvest == null || day == null ? null : day.plusDays(preHarvest),
                    trip.sprayed(),
                    card.sentence(),
                    card.applicator());
        }

        /** The planned class, and what the labels of all partners allow. */
        private static String droplets(@Nullable SprayPlan plan, LoadCard.Limits limits) {
            Droplets planned = plan == null ? null : plan.droplets();
            String says = planned == null ? "droplet class not planned" : named(planned);
            Droplets finest = limits.finest();
            Droplets coarsest = limits.coarsest();
            if (finest == null || coarsest == null) {
                return says + "; what the labels ask is not read";
            }
            if (finest == Droplets.EXTREMELY_FINE && coarsest == Droplets.ULTRA_COARSE) {
                return says;
            }
            return says + "; labels: " + (finest == coarsest ? named(finest) : named(finest) + " or coarser")
                    + (coarsest == Droplets.ULTRA_COARSE || finest == coarsest ? "" : ", up to " + named(coarsest));
        }

        private static String named(Droplets droplets) {
            return droplets.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " (" + droplets.word() + ")";
        }

        /** The most of all partners; null where one was not read. */
        private @Nullable Integer preHarvest(SprayTrip trip) {
            Integer most = 0;
            for (String product : trip.products()) {
                Integer days = season.shelf()
                        .labelUse(product, field.crop())
                        .map(LabelUse::preHarvestDays)
                        .orElse(null);
                if (days == null) {
                    return null;
                }
                most = Math.max(most, days);
            }
            return most;
        }

        // ---- windows ----

        private FieldPlan.@Nullable Window window(Program program, Pass pass) {
            LocalDate day = pass.date();
            if (day == null) {
                return null;
            }
            LocalDate first = day.minusDays(LOOK_BACK_DAYS);
            LocalDate last = day.plusDays(LOOK_AHEAD_DAYS);
            WorkWindow work = season.work().means().windows().stream()
                    .filter(one -> one.farm().equals(field.farm())
                            && one.holds(day)
                            && one.kind().does(pass.kind()))
                    .findFirst()
                    .orElse(null);
            String farms = work == null ? "" : "the farm’s window “" + work.name() + "”";
            if (pass.kind() != PassKind.SPRAY && pass.kind() != PassKind.GRANULE) {
                return work == null ? null : new FieldPlan.Window(work.from(), work.until(), farms, "");
            }
            List<Window> windows = LawfulWindows.of(season, field, program, pass, first, last);
            int at = 0;
            while (at < windows.size() - 1 && windows.get(at).to().isBefore(day)) {
                at++;
            }
            if (windows.get(at).standing() == Standing.BARRED) {
                return new FieldPlan.Window(
                        null,
                        null,
                        "barred on the planned day: " + clause(windows.get(at).reason()),
                        "");
            }
            int low = at;
            while (low > 0 && windows.get(low - 1).standing() != Standing.BARRED) {
                low--;
            }
            int high = at;
            while (high < windows.size() - 1 && windows.get(high + 1).standing() != Standing.BARRED) {
                high++;
            }
            LocalDate from = low == 0 ? null : windows.get(low).from();
            LocalDate to = high == windows.size() - 1 ? null : windows.get(high).to();
            String ends = to == null
                    ? ""
                    : "then barred: " + clause(windows.get(high + 1).reason());
            if (work != null) {
                boolean later = from == null || from.isBefore(work.from());
                boolean earlier = to == null || to.isAfter(work.until());
                from = later ? work.from() : from;
                to = earlier ? work.until() : to;
                ends = earlier ? farms : ends;
            }
            String other = windows.subList(low, high + 1).stream()
                    .filter(window -> window.standing() == Standing.UNKNOWN
                            && !(window.from().equals(day) && window.to().equals(day)))
                    .map(window -> clause(window.reason()))
                    .findFirst()
                    .orElse("");
            return from == null && to == null && other.isEmpty() ? null : new FieldPlan.Window(from, to, ends, other);
        }

        /** A reason without its full stop, to stand in a sentence. */
        private static String clause(String reason) {
            String plain = reason.replaceFirst("\\.(?= \\(|$)", "");
            return plain.endsWith(".)") ? plain.substring(0, plain.length() - 2) + ")" : plain;
        }

        // ---- distances ----

        private static Stream<Zone> taking(List<Zones> zones) {
            return zones.stream()
                    .flatMap(one -> one.zones().stream())
                    .filter(zone -> zone.feet() > 0 && (zone.acres() == null || zone.acres() > 0));
        }

        /** Whether something is put out of doors and not all is known of what it must keep from. */
        private boolean unseen(List<Zones> zones) {
            return !zones.isEmpty()
                    && (!season.ground().lookedForAll(field.name())
                            || zones.stream().anyMatch(one -> !one.notRead().isEmpty()));
        }

        private List<FieldPlan.Keep> keeps(List<Zones> zones) {
            Map<String, FieldPlan.Keep> keeps = new LinkedHashMap<>();
            for (Zones of : zones) {
                taking(List.of(of)).forEach(zone -> {
                    String from =
                            zone.feature().kind().word() + " " + zone.feature().name();
                    keeps.merge(
                            from + "|" + zone.feet() + "|" + zone.downwindOnly(),
                            new FieldPlan.Keep(
                                    from,
                                    Nearness.of(field.boundary(), zone.feature())
                                            .feet(),
                                    zone.feet(),
                                    zone.downwindOnly(),
                                    zone.acres(),
                                    List.of(of.product())),
                            (one, other) -> new FieldPlan.Keep(
                                    from,
                                    one.lies(),
                                    one.feet(),
                                    one.downwindOnly(),
                                    one.acres(),
                                    Stream.concat(one.products().stream(), other.products().stream())
                                            .distinct()
                                            .toList()));
                });
            }
            return List.copyOf(keeps.values());
        }

        // ---- money ----

        private FieldPlan.Money money(WeighedProgram weighed) {
            return new FieldPlan.Money(
                    weighed.costUsdPerAcre(),
                    weighed.costUsdPerAcre() * field.acres(),
                    weighed.meanMarginUsdPerAcre(),
                    weighed.meanGainUsdPerAcre(),
                    weighed.chanceBeatsBaseline(),
                    weighed.shortfallUsdPerAcre());
        }

        private List<String> moneySays(@Nullable WeighedProgram weighed) {
            FieldAdvice known = advice;
            if (weighed == null || known == null) {
                return List.of("What it brings is unknown: " + gap);
            }
            double share = season.farm(field.farm()).map(Farm::costShare).orElse(1.0);
            String ahead = weighed.baseline()
                    ? "It is the baseline, with which the others are compared."
                    : "Against the baseline “" + known.baseline() + "”: "
                            + Quantities.gain(weighed.meanGainUsdPerAcre()) + "/ac on average, "
                            + Numbers.dollars(weighed.meanGainUsdPerAcre() * field.acres(), 0)
                            + " for the field; ahead in " + known.odds(weighed.chanceBeatsBaseline())
                            + (known.doubtEntered()
                                    ? " simulated seasons; 80 of 100 from "
                                            + Quantities.gain(weighed.gain().low()) + " to "
                                            + Quantities.gain(weighed.gain().high()) + "/ac."
                                    : ".");
            return List.of(
                    "Costs " + Numbers.dollars(weighed.costUsdPerAcre(), 2) + "/ac, "
                            + Numbers.dollars(weighed.costUsdPerAcre() * field.acres(), 0) + " for the field"
                            + (share < 1 ? ", your share by the lease" : "")
                            + (weighed.scouted().isEmpty() ? "." : ", on average over the seasons."),
                    ahead,
                    "Margin over these inputs " + Quantities.dollarsPerAcre(weighed.meanMarginUsdPerAcre())
                            + " on average, "
                            + Quantities.dollarsPerAcre(weighed.shortfallUsdPerAcre())
                            + " in the worst 10 of 100 seasons (expected shortfall).");
        }

        // ---- doubts and what comes first ----

        private List<String> doubts(Program program) {
            FieldAdvice known = advice;
            if (known == null) {
                return List.of();
            }
            List<String> doubts = new ArrayList<>();
            List<AdviceRange> turning = program.name().equals(known.advised())
                    ? known.ranges().stream().filter(AdviceRange::turns).toList()
                    : List.of();
            if (!known.doubt().isBlank() && !known.doubt().equals(FieldAdvice.NOTHING_TURNS)) {
                doubts.add(known.doubt());
            }
            turning.stream()
                    .map(AdviceRange::says)
                    .filter(says -> !known.doubt().contains(says))
                    .limit(MOST_RANGES)
                    .forEach(doubts::add);
            GainDoubt gain = known.gainDoubt();
            if (gain != null && gain.program().equals(program.name())) {
                doubts.add(gain.says());
            }
            return doubts;
        }

        private List<FieldPlan.First> first(List<Matter> matters, List<FieldPlan.Step> steps) {
            List<FieldPlan.First> first = new ArrayList<>();
            for (Matter matter : matters) {
                if (told(matter)) {
                    first.add(new FieldPlan.First(matter.kind(), says(matter)));
                }
            }
            NextInputs asked = next;
            if (asked != null) {
                asked.inputs().stream()
                        .filter(input -> input.kind() != NextInput.Kind.LOOK_UP)
                        .limit(MOST_NEXT)
                        .forEach(input -> first.add(new FieldPlan.First(MatterKind.LOOK_UP, input.says())));
            }
            steps.stream()
                    .filter(step -> step.done() == null && step.date() == null)
                    .forEach(step -> first.add(
                            new FieldPlan.First(MatterKind.PLAN, "Plan a day for this: " + step.what() + ".")));
            first.sort(Comparator.comparing(FieldPlan.First::kind));
            return first;
        }

        private static boolean told(Matter matter) {
            return matter.kind() == MatterKind.BARRED
                    || matter.kind() == MatterKind.LOOK_UP
                    || (!matter.kind().folded()
                            && !matter.findings().stream().map(Finding::gate).allMatch(TOLD_ABOVE::contains));
        }

        /** The line of a matter; of what is to be looked up, the first things, and how many more. */
        private static String says(Matter matter) {
            if (matter.kind() != MatterKind.LOOK_UP) {
                return matter.line();
            }
            List<String> asks =
                    matter.findings().stream().map(Finding::clears).distinct().toList();
            return matter.about() + ": "
                    + String.join(" ", asks.subList(0, Math.min(MOST_ASKS, asks.size())))
                    + (asks.size() > MOST_ASKS ? " And " + (asks.size() - MOST_ASKS) + " more." : "");
        }

        private static String annex(List<Matter> matters, @Nullable ProgramCheck check) {
            List<String> left = new ArrayList<>();
            for (MatterKind kind : List.of(MatterKind.STEWARDSHIP, MatterKind.GAP)) {
                long count =
                        matters.stream().filter(matter -> matter.kind() == kind).count();
                if (count > 0) {
                    left.add(count + " of " + kind.words().toLowerCase(Locale.ROOT));
                }
            }
            return left.isEmpty() || check == null ? "" : String.join(", ", left);
        }
    }
}
