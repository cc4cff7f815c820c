package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.TillageWork;

/**
 * All programs that a search looks at: a frame and, in each window, no trip or one tank. Every program of the room is told
 * once; their number is the sum over the frames of Π (1 + tanks of a window).
 */
final class SearchRoom {
    /** The name that every program of the room goes by while it is searched, so that one season holds all their plans. */
    static final String SEARCHED = "searched";

    private static final int BLOCK = 100_000;
    private static final int DOSES_FROM = 50_000;
    private static final int WORKED_IN_FROM = 90_000;

    private final Season season;
    private final Field field;
    private final List<Window> windows;
    private final List<Frame> frames;
    private final Map<String, Dose> doses = new LinkedHashMap<>();
    private final List<List<List<Tank>>> tanks = new ArrayList<>();
    private final Set<String> notTried = new LinkedHashSet<>();
    private final List<TillageWork> tillage = new ArrayList<>();

    SearchRoom(Season season, Field field, int mates) {
        this.season = season;
        this.field = field;
        this.windows = Windows.of(season, field);
        this.frames = readFrames();
        Pairings pairings = new Pairings(season, field);
        for (Frame frame : frames) {
            List<List<Tank>> ofFrame = new ArrayList<>();
            for (int w = 0; w < windows.size(); w++) {
                List<Tank> ofWindow = new ArrayList<>();
                for (Way way : windows.get(w).ways()) {
                    ofWindow.addAll(tanks(pairings, w, way, frame, mates));
                }
                ofFrame.add(ofWindow);
            }
            tanks.add(ofFrame);
        }
    }

    /** What may go out in one trip of a window over a frame, sprayed in one of its ways. */
    private List<Tank> tanks(Pairings pairings, int w, Way way, Frame frame, int mates) {
        Window window = windows.get(w);
        if (!way.planted().contains(frame.planted())) {
            notTried.add("Spraying on " + day(window.date()) + " as planned over seed that goes in on "
                    + way.planted().stream()
                            .map(planted -> day(planted.orElse(null)))
                            .sorted()
                            .collect(Collectors.joining(" and "))
                    + " is not tried over seed of " + day(frame.planted().orElse(null))
                    + ": the crop would stand at another growth stage.");
            return List.of();
        }
        List<List<Dose>> choices = new ArrayList<>();
        for (String product : pairings.products(window, way, frame)) {
            choices.add(doses(pairings, w, way, product));
        }
        pairings.notOver(window, way, frame)
                .forEach(product -> notTried.add(product + " after emergence over "
                        + String.join(" and ", new TreeSet<>(frame.seeds()))
                        + ": no program of this season plans it so."));
        // Granules go out one by one: there is no tank to mix them in.
        return mixed(w, choices, window.kind() == PassKind.GRANULE ? 1 : mates);
    }

    private static String day(@Nullable LocalDate day) {
        return day == null ? "a day that is not planned" : day.getMonthValue() + "/" + day.getDayOfMonth();
    }

    private List<Frame> readFrames() {
        Map<List<Object>, Frame> found = new LinkedHashMap<>();
        List<Program> programs = new ArrayList<>(season.programs(field.name()));
        programs.sort(Comparator.comparing(program -> !program.baseline()));
        int passes = 0; // numbers differ between frames, so that one season holds how all of them till
        for (Program program : programs) {
            List<Pass> kept = program.passes().stream()
                    .filter(pass -> !Pairings.searched(season, pass))
                    .toList();
            program.passes().stream()
                    .filter(pass -> Pairings.searched(season, pass) && pass.trigger() != null)
                    .forEach(
                            pass -> notTried.add(
                                    pass.product() + " after scouting, as in '" + program.name()
                                            + "': the search plans passes that are made in any case. That program is compared as it stands."));
            List<Object> alike = new ArrayList<>(List.of(program.refuge()));
            List<Pass> numbered = new ArrayList<>();
            List<TillageWork> works = new ArrayList<>();
            for (Pass pass : kept) {
                int block = BLOCK * windowsBefore(pass.date()) + (worksIn(season, program, pass) ? WORKED_IN_FROM : 0);
                int number = block + passes + numbered.size() + 1;
                numbered.add(pass.numbered(number));
                alike.add(pass.numbered(block));
                work(program, pass).ifPresent(work -> {
                    works.add(new TillageWork(
                            field.name(), SEARCHED, number, work.tool(), work.depthIn(), work.source()));
                    alike.add(List.of(work.tool(), work.depthIn()));
                });
            }
            if (!found.containsKey(alike)) {
                found.put(
                        alike,
                        new Frame(
                                program.name(),
                                program.refuge(),
                                numbered,
                                Pairings.seeds(kept),
                                Windows.planted(kept)));
                tillage.addAll(works);
                passes += numbered.size();
            }
        }
        return List.copyOf(found.values());
    }

    /** How a tillage pass of a program is run, where the book says so. */
    private Optional<TillageWork> work(Program program, Pass pass) {
        return season.pests().weedBook().tillage().stream()
                .filter(work -> work.field().equals(field.name())
                        && work.program().equals(program.name())
                        && work.pass() == pass.number())
                .findFirst();
    }

    /** Whether a tillage pass comes after a spray of its day, which it then works in. */
    private static boolean worksIn(Season season, Program program, Pass tillage) {
        return tillage.kind() == PassKind.TILLAGE
                && tillage.date() != null
                && program.passes().stream()
                        .anyMatch(pass -> Pairings.searched(season, pass)
                                && tillage.date().equals(pass.date())
                                && pass.number() < tillage.number());
    }

    private int windowsBefore(@Nullable LocalDate day) {
        return (int) windows.stream()
                .filter(window ->
                        day == null || (window.date() != null && window.date().isBefore(day)))
                .count();
    }

    private List<Dose> doses(Pairings pairings, int w, Way way, String product) {
        List<Amount> rates = pairings.rates(product);
        if (rates.isEmpty()) {
            notTried.add(product + ": its labelled rates on " + field.crop().word() + " are not in the book.");
        }
        Distribution injury = pairings.injury(windows.get(w), way, product);
        SprayPlan plan = way.planFor(product);
        int number = windows.get(w).ways().indexOf(way);
        return rates.stream()
                .map(rate -> doses.computeIfAbsent(
                        w + " " + number + " " + product + " " + rate,
                        key -> new Dose(BLOCK * w + DOSES_FROM + dosesOf(w) + 1, product, rate, injury, plan)))
                .toList();
    }

    private int dosesOf(int w) {
        return (int) doses.values().stream()
                .filter(dose -> dose.number() / BLOCK == w)
                .count();
    }

    /** One product at one of its rates, and each with more of the products after it, up to so many in a tank. */
    private static List<Tank> mixed(int w, List<List<Dose>> choices, int mates) {
        List<Tank> mixed = new ArrayList<>();
        mix(w, choices, 0, List.of(), mates, mixed);
        return mixed;
    }

    private static void mix(int w, List<List<Dose>> choices, int from, List<Dose> so, int mates, List<Tank> mixed) {
        for (int p = from; p < choices.size(); p++) {
            for (Dose dose : choices.get(p)) {
                List<Dose> with = new ArrayList<>(so);
                with.add(dose);
                mixed.add(new Tank(w, with));
                if (with.size() < mates) {
                    mix(w, choices, p + 1, with, mates, mixed);
                }
            }
        }
    }

    Field field() {
        return field;
    }

    List<Window> windows() {
        return windows;
    }

    List<Frame> frames() {
        return frames;
    }

    /** The tanks of a frame, by window. */
    List<List<Tank>> tanks(int frame) {
        return tanks.get(frame);
    }

    List<String> notTried() {
        return List.copyOf(notTried);
    }

    /** The program of a frame with some tanks, under {@link #SEARCHED}. */
    Program program(Frame frame, List<Tank> chosen) {
        List<Pass> passes = new ArrayList<>(frame.passes());
        for (Tank tank : chosen) {
            double charge = windows.get(tank.window()).chargeUsdPerAcre();
            for (Dose dose : tank.doses()) {
                passes.add(pass(dose, windows.get(tank.window()), charge));
                charge = 0;
            }
        }
        return new Program(field.name(), SEARCHED, true, frame.refuge(), "", passes);
    }

    /** The program with every dose of some windows besides, at no injury: nothing that adds to it controls more. */
    Program withAll(Frame frame, List<Tank> chosen, List<Dose> more) {
        List<Pass> passes = new ArrayList<>(program(frame, chosen).passes());
        for (Dose dose : more) {
            passes.add(pass(
                    new Dose(dose.number(), dose.product(), dose.rate(), new Distribution.Fixed(0), dose.plan()),
                    windows.get(dose.number() / BLOCK),
                    0));
        }
        return new Program(field.name(), SEARCHED, true, frame.refuge(), "", passes);
    }

    private static Pass pass(Dose dose, Window window, double charge) {
        return new Pass(
                dose.number(),
                window.kind(),
                window.date(),
                dose.product(),
                dose.rate(),
                100,
                charge,
                dose.injuryPct(),
                0);
    }

    /** The season in which the gates find the plans of every program of the room. */
    Season searchedSeason() {
        List<SprayPlan> plans = doses.values().stream()
                .flatMap(dose -> plan(dose, SEARCHED, dose.number(), "window " + dose.number() / BLOCK).stream())
                .toList();
        return season.withPrograms(List.of(), season.work().withSprayPlans(plans))
                .withPests(season.pests().withTillage(tillage));
    }

    private Optional<SprayPlan> plan(Dose dose, String program, int pass, @Nullable String tank) {
        return Optional.ofNullable(dose.plan()).map(plan -> plan.forPass(field.name(), program, pass, tank));
    }

    /** A program as it goes into a season: passes by day and numbered from 1, with its spray plans. */
    Proposal proposal(Frame frame, List<Tank> chosen, String name, String note) {
        List<Pass> passes = new ArrayList<>();
        List<SprayPlan> plans = new ArrayList<>();
        List<TillageWork> works = new ArrayList<>();
        List<Pass> sorted = new ArrayList<>(program(frame, chosen).passes());
        sorted.sort(Comparator.comparingInt(Pass::number));
        for (Pass pass : sorted) {
            Pass last = pass.numbered(passes.size() + 1);
            passes.add(last);
            tillage.stream()
                    .filter(work -> work.pass() == pass.number())
                    .forEach(work -> works.add(new TillageWork(
                            field.name(), name, last.number(), work.tool(), work.depthIn(), work.source())));
            for (Tank tank : chosen) {
                String word = tank.doses().size() > 1 ? "tank " + (tank.window() + 1) : null;
                tank.doses().stream()
                        .filter(dose -> dose.number() == pass.number())
                        .flatMap(dose -> plan(dose, name, last.number(), word).stream())
                        .forEach(plans::add);
            }
        }
        return new Proposal(new Program(field.name(), name, false, frame.refuge(), note, passes), plans, works);
    }

    /** A program, how its passes are sprayed, and how it tills. */
    record Proposal(Program program, List<SprayPlan> plans, List<TillageWork> tillage) {}
}
