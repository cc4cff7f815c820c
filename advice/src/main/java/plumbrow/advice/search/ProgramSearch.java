package plumbrow.advice.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.advice.weighing.ProgramDraws;
import plumbrow.advice.weighing.ProgramDraws.Weighed;

/**
 * Searches all programs of a {@link SearchRoom} by branch and bound over the mean margin on the draws of the weighing.
 *
 * <pre>
 *   a node is a program; its children add one tank in a later window
 *   bound of all below a node = mean over the draws of max(0, margin + cost of the node with every dose of the later
 *                               windows at once, no injury from them) − cost of the node
 * bound of a child and all below it   = that − cost of the child's tank
 * </pre>
 *
 * <p>It holds since each dose only takes from what weeds and insects are left, since a pass adds its own cost and no
 * yield by itself, and since a yield is never below 0. A node below the best by more than the width is cut with all below
 * it. A barred node goes with all below it as well: whatever is added in later windows, no gate that bars takes its word
 * back. Both are held by tests against weighing every program.
 */
final class ProgramSearch {
    private static final double EPS = 1e-9;

    private final SearchOptions options;
    private final SearchRoom room;
    private final Gates gates;
    private final ProgramDraws draws;
    private final Set<String> drivers;
    private final List<Candidate> advisable = new ArrayList<>();
    private final Map<String, Candidate> told = new HashMap<>();
    private @Nullable Candidate open;
    private Map<String, Integer> needed = new TreeMap<>();
    private double best = Double.NEGATIVE_INFINITY;
    private double second = Double.NEGATIVE_INFINITY;
    private long weighed;
    private long barred;
    private long cut;
    private long left;
    private double bestLeft = Double.NEGATIVE_INFINITY;

    /** A program that was weighed and has the sites it needs. */
    record Candidate(
            Frame frame,
            List<Tank> tanks,
            double mean,
            double cost,
            double yield,
            double shortfall,
            Standing standing,
            Map<String, Integer> sites) {}

    /** What is left of a frame once tanks barred by themselves are out. */
    private record Branch(Frame frame, List<List<Tank>> tanks, List<List<Dose>> doses, Map<Tank, Double> costs) {
        /** Programs below and with a node whose last tank is in window {@code w}. */
        long subtree(int w) {
            long programs = 1;
            for (int later = w + 1; later < tanks.size(); later++) {
                programs = Math.multiplyExact(programs, 1L + tanks.get(later).size());
            }
            return programs;
        }
    }

    ProgramSearch(Season season, Field field, SearchOptions options) {
        this.options = options;
        this.room = new SearchRoom(season, field, options.mates());
        Season searched = followed(season, field) ? room.searchedSeason() : unfollowed(room.searchedSeason());
        this.gates = Gates.of(searched);
        this.draws = new ProgramDraws(searched, field, new DrawSource(options.draws(), options.seed()));
        this.drivers = Drivers.of(season, field);
    }

    /**
     * Weeds are followed through the season under all programs or under none, as the weighing does: where one of the field's own
     * programs lacks what that needs, none is.
     */
    private static boolean followed(Season season, Field field) {
        return WeedSeasons.lacks(season, field).isEmpty();
    }

    private static Season unfollowed(Season season) {
        return season.withPests(season.pests().withoutWeedBook());
    }

    ProgramSearch run() {
        List<Branch> branches = new ArrayList<>();
        for (int f = 0; f < room.frames().size(); f++) {
            Branch branch = branch(f);
            if (branch != null) {
                branches.add(branch);
            }
        }
        needed = needed(branches);
        branches.forEach(this::search);
        return this;
    }

    /** The tanks of a frame that are not barred by themselves, the most promising first; null where the frame is barred. */
    private @Nullable Branch branch(int f) {
        Frame frame = room.frames().get(f);
        List<List<Tank>> all = room.tanks(f);
        long programs = programs(all);
        Program bare = room.program(frame, List.of());
        if (Gates.standing(gates.check(room.field(), bare)) == Standing.BARRED) {
            barred += programs;
            return null;
        }
        double frameCost = draws.weigh(bare).costUsdPerAcre();
        List<List<Tank>> kept = new ArrayList<>();
        List<List<Dose>> doses = new ArrayList<>();
        Map<Tank, Double> costs = new HashMap<>();
        for (int w = 0; w < all.size(); w++) {
            Map<Tank, Double> means = new HashMap<>();
            for (Tank tank : all.get(w)) {
                Program alone = room.program(frame, List.of(tank));
                if (Gates.standing(gates.check(room.field(), alone)) != Standing.BARRED) {
                    Weighed one = draws.weigh(alone);
                    means.put(tank, one.meanMarginUsdPerAcre());
                    costs.put(tank, one.costUsdPerAcre() - frameCost);
                }
            }
            kept.add(means.keySet().stream()
                    .sorted(Comparator.comparingDouble((Tank tank) -> -means.getOrDefault(tank, 0.0))
                            .thenComparing(Tank::text))
                    .toList());
            doses.add(distinct(kept.get(w)));
        }
        barred += programs - programs(kept);
        return new Branch(frame, kept, doses, costs);
    }

    /** Each product and rate of a window once, in whichever way it is sprayed: that does not change what it does. */
    private static List<Dose> distinct(List<Tank> tanks) {
        Map<String, Dose> some = new LinkedHashMap<>();
        tanks.forEach(tank -> tank.doses().forEach(dose -> some.putIfAbsent(dose.text(), dose)));
        return List.copyOf(some.values());
    }

    private static long programs(List<List<Tank>> tanks) {
        return tanks.stream().mapToLong(window -> 1L + window.size()).reduce(1, Math::multiplyExact);
    }

    /** So many sites as asked for each driver weed, or as many as everything together has on it. */
    private Map<String, Integer> needed(List<Branch> branches) {
        Map<String, Integer> most = new TreeMap<>();
        drivers.forEach(weed -> most.put(weed, 0));
        for (Branch branch : branches) {
            List<Dose> all = branch.doses().stream().flatMap(List::stream).toList();
            List<Finding> findings = gates.check(room.field(), room.withAll(branch.frame(), List.of(), all));
            Drivers.sites(drivers, findings)
                    .forEach((weed, sites) -> most.merge(weed, Math.min(sites, options.sites()), Math::max));
        }
        return most;
    }

    private void search(Branch branch) {
        visit(branch, List.of(), -1);
    }

    /** Weighs a node, unless it is barred, and goes on below it as far as the bound allows. */
    private void visit(Branch branch, List<Tank> chosen, int window) {
        long subtree = branch.subtree(window);
        Program program = room.program(branch.frame(), chosen);
        List<Finding> findings = gates.check(room.field(), program);
        Standing standing = Gates.standing(findings);
        if (standing == Standing.BARRED) {
            barred += subtree;
            return;
        }
        Weighed own = draws.weigh(program);
        weighed++;
        offer(branch.frame(), chosen, own, standing, Drivers.sites(drivers, findings));
        if (subtree == 1) {
            return;
        }
        List<Dose> later = new ArrayList<>();
        for (int w = window + 1; w < branch.doses().size(); w++) {
            later.addAll(branch.doses().get(w));
        }
        double gross = gross(draws.weigh(room.withAll(branch.frame(), chosen, later)));
        for (int w = window + 1; w < branch.tanks().size(); w++) {
            for (Tank tank : branch.tanks().get(w)) {
                double bound = gross - own.costUsdPerAcre() - branch.costs().getOrDefault(tank, 0.0);
                long below = branch.subtree(w);
                if (bound < threshold() - EPS) {
                    cut += below;
                } else if (weighed >= options.mostWeighed()) {
                    left += below;
                    bestLeft = Math.max(bestLeft, bound);
                } else {
                    List<Tank> with = new ArrayList<>(chosen);
                    with.add(tank);
                    visit(branch, with, w);
                }
            }
        }
    }

    private static double gross(Weighed all) {
        double sum = 0;
        for (double margin : all.margins()) {
            sum += Math.max(0, margin + all.costUsdPerAcre());
        }
        return sum / all.margins().length;
    }

    /** Below this a program is of no interest: it is neither near the best nor the runner-up. */
    private double threshold() {
        return Math.min(best - options.widthUsdPerAcre(), second);
    }

    private void offer(Frame frame, List<Tank> tanks, Weighed own, Standing standing, Map<String, Integer> sites) {
        if (!Drivers.enough(sites, needed)) {
            return;
        }
        double mean = own.meanMarginUsdPerAcre();
        Candidate candidate = new Candidate(
                frame,
                tanks,
                mean,
                own.costUsdPerAcre(),
                own.meanYieldBuPerAcre(),
                own.shortfallUsdPerAcre(),
                standing,
                sites);
        if (standing == Standing.UNKNOWN) {
            Candidate known = open;
            open = known == null || mean > known.mean() + EPS ? candidate : known;
            return;
        }
        if (known(candidate)) {
            return;
        }
        if (mean > best) {
            second = best;
            best = mean;
        } else if (mean > second) {
            second = mean;
        }
        if (mean >= threshold() - EPS) {
            advisable.add(candidate);
        }
    }

    /**
     * Whether the same program is known in another way of spraying it, which changes no money. The way that the gates like
     * better is kept.
     */
    private boolean known(Candidate candidate) {
        String key = key(candidate);
        Candidate before = told.get(key);
        if (before == null) {
            told.put(key, candidate);
            return false;
        }
        int at = advisable.indexOf(before);
        if (candidate.standing() == Standing.CLEAR && before.standing() != Standing.CLEAR && at >= 0) {
            advisable.set(at, candidate);
            told.put(key, candidate);
        }
        return true;
    }

    /** The frame, and what goes out in each trip of each day. */
    private String key(Candidate candidate) {
        return candidate.frame().from() + ": "
                + candidate.tanks().stream()
                        .map(tank -> {
                            Window window = room.windows().get(tank.window());
                            return window.kind() + " " + window.date() + " " + tank.text();
                        })
                        .sorted()
                        .toList();
    }

    /** Advisable programs within the width, and the runner-up; highest mean margin first, the cheaper of equals first. */
    List<Candidate> advisable() {
        return advisable.stream()
                .filter(one -> one.mean() >= threshold() - EPS)
                .sorted(Comparator.comparingDouble((Candidate one) -> -one.mean())
                        .thenComparingDouble(Candidate::cost)
                        .thenComparing(one -> one.tanks().toString()))
                .toList();
    }

    @Nullable
    Candidate open() {
        return open;
    }

    SearchRoom room() {
        return room;
    }

    Gates gates() {
        return gates;
    }

    ProgramDraws draws() {
        return draws;
    }

    Set<String> drivers() {
        return drivers;
    }

    Map<String, Integer> needed() {
        return needed;
    }

    /** What became of every program; {@code says} is left to the teller. */
    Proof proof(String says) {
        return new Proof(
                weighed + barred + cut + left,
                weighed,
                barred,
                cut,
                left,
                options.widthUsdPerAcre(),
                left == 0 ? Double.NaN : bestLeft,
                says);
    }
}
