package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.ProductGroups;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weighing.ProgramYears;
import plumbrow.advice.weighing.WeedOn;
import plumbrow.science.weeds.HyperbolicLoss;
import plumbrow.science.years.Genotypes;
import plumbrow.science.years.Inflow;
import plumbrow.science.years.ResistanceGene;
import plumbrow.science.years.WeedBank;
import plumbrow.science.years.WeedLife;
import plumbrow.science.years.WeedResponse;

/**
 * One weed of a field through the years. A weed of whose seed nothing is known comes each year as thick as this season.
 *
 * <p>Followed are the groups of passes that take some of it in a program looked at, those of most passes first, up to four; not those
 * that the field's plants are known to resist already, where the control sheet says what a product does to them as it is.
 */
final class WeedLook {
    private static final double SQUARE_METRES_PER_ACRE = 4_046.856_422_4;

    private final String weed;
    private final Field field;
    private final YearDraws draws;
    private final @Nullable SeedLife life;
    private final List<String> groups;
    private final List<String> left;
    private final IdentityHashMap<ProgramYears, @Nullable Under[]> under = new IdentityHashMap<>();
    private final double[] seedlings;
    private final List<Gene> genes;

    /** The weed under a program. */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    private record Under(WeedResponse response, double[] untreated, double mostLossPct) {}

    /** The draws of a gene. */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    private record Gene(double[] frequency, double[] fold, double[] cost, double[] costOfOneCopy, double[] mutation) {}

    WeedLook(Season season, Field field, String weed, List<ProgramYears> programs, YearDraws draws) {
        this.weed = weed;
        this.field = field;
        this.draws = draws;
        this.life = SeedLife.of(weed).orElse(null);
        List<ProgramYears> with =
                programs.stream().filter(program -> on(program).isPresent()).toList();
        WeedOn first = on(with.get(0)).orElseThrow();
        seedlings = first.seedlingsM2();
        Map<String, double[]> known = first.ratedOnSusceptible() ? resisted(season, with.get(0)) : Map.of();
        List<String> working = life == null
                ? List.of()
                : working(
                        with,
                        first.ratedOnSusceptible()
                                ? Set.of()
                                : resisted(season, with.get(0)).keySet());
        groups = List.copyOf(working.subList(0, Math.min(Genotypes.MOST_GENES, working.size())));
        left = List.copyOf(working.subList(groups.size(), working.size()));
        for (ProgramYears program : with) {
            under.put(program, new Under[draws.seasons()]);
        }
        genes = groups.stream().map(group -> gene(group, known.get(group))).toList();
    }

    private Optional<WeedOn> on(ProgramYears program) {
        return program.weeds().stream().filter(one -> one.weed().equals(weed)).findFirst();
    }

    /** Groups that the field's plants are known to resist, with the share of plants that do, draw by draw as the weighing has it. */
    private Map<String, double[]> resisted(Season season, ProgramYears program) {
        Map<String, double[]> known = new TreeMap<>();
        season.pests().resistance().stream()
                .filter(one -> one.field().equals(field.name()) && one.weed().equals(weed))
                .forEach(one -> {
                    Double pct = one.sharePct();
                    double[] typed = new double[draws.draws()];
                    Arrays.fill(typed, pct == null ? 1 : pct / 100);
                    known.merge(
                            ProductGroups.today(one.group()),
                            program.drawn(FieldSeason.resistant(weed, one.group()))
                                    .orElse(typed),
                            WeedLook::larger);
                });
        return known;
    }

    private static double[] larger(double[] one, double[] other) {
        double[] larger = one.clone();
        Arrays.setAll(larger, k -> Math.max(one[k], other[k]));
        return larger;
    }

    /** @param resistant share of the plants that are known to resist the group, draw by draw; null where nobody has said */
    private Gene gene(String group, double @Nullable [] resistant) {
        String name = weed + " and group " + group + " on " + field.name();
        double[] frequency = draws.of(name, Assumption.HERBICIDE_GENE);
        if (resistant != null && life != null) {
            double inbreeding = life.selfing() / (2 - life.selfing());
            double[] least = Arrays.stream(resistant)
                    .map(share -> frequency(share, inbreeding))
                    .toArray();
            frequency = larger(frequency, least);
        }
        return new Gene(
                frequency,
                draws.of(name, Assumption.ONE_COPY),
                draws.of(name, Assumption.COST),
                draws.of(name, Assumption.COST_OF_ONE_COPY),
                draws.of(name, Assumption.MUTATION));
    }

    String weed() {
        return weed;
    }

    /** Null where nothing is known of its seed. */
    @Nullable
    SeedLife life() {
        return life;
    }

    /** Groups that work on it, but are one too many to be followed. */
    List<String> notFollowed() {
        return left;
    }

    private double[] seeds(Field grown) {
        SeedLife known = life;
        return known == null ? new double[draws.draws()] : draws.of("seed of " + weed, known.seedsIn(grown.crop()));
    }

    /** The frequency at which a share of the plants has a resistant copy: (1 − p)²(1 − F) + (1 − p)F = 1 − share. */
    static double frequency(double share, double inbreeding) {
        double none = 1 - share;
        double free = inbreeding == 1
                ? none
                : (Math.sqrt(inbreeding * inbreeding + 4 * (1 - inbreeding) * none) - inbreeding)
                        / (2 * (1 - inbreeding));
        return 1 - free;
    }

    /** Groups that take some of it in a program: those of most passes first, of as many in the order of their numbers. */
    private List<String> working(List<ProgramYears> programs, Set<String> without) {
        Map<String, Integer> times = new TreeMap<>();
        for (ProgramYears program : programs) {
            on(program).orElseThrow().sites().stream()
                    .flatMap(Set::stream)
                    .filter(group -> !without.contains(group))
                    .forEach(group -> times.merge(group, 1, Integer::sum));
        }
        List<String> order = new ArrayList<>(times.keySet());
        order.sort(Comparator.comparingInt((String group) -> -times.getOrDefault(group, 0)));
        return order;
    }

    /** Follows it through the years; a year without a program leaves everything as it was. */
    WeedRun run(List<@Nullable ProgramYears> years) {
        WeedRun run = new WeedRun(weed, life != null, groups, years.size(), draws.draws());
        SeedLife known = life;
        if (known == null) {
            for (int k = 0; k < draws.draws(); k++) {
                stay(years, run, k);
            }
            return run;
        }
        double[] germination = draws.of("germination of " + weed, known.germination());
        double[] mortality = draws.of("mortality of " + weed, known.mortality());
        double[] kept = draws.of("seed kept of " + weed, known.kept());
        for (int k = 0; k < draws.draws(); k++) {
            follow(new WeedLife(germination[k], mortality[k], kept[k], known.selfing()), years, run, k);
        }
        return run;
    }

    private void stay(List<@Nullable ProgramYears> years, WeedRun run, int k) {
        for (int y = 0; y < years.size(); y++) {
            run.seedsM2()[y][k] = seedlings[k];
            ProgramYears program = years.get(y);
            if (program != null) {
                Under one = under(program, y);
                run.loadPct()[y][k] = seedlings[k] * one.response().load()[0][k];
                lost(run, one, seedlings[k], y, k);
            }
        }
    }

    private void lost(WeedRun run, Under one, double up, int y, int k) {
        double untreated = up * one.untreated()[k];
        run.lossPct()[y][k] = HyperbolicLoss.ofLoad(run.loadPct()[y][k], one.mostLossPct());
        run.removedPct()[y][k] = untreated == 0 ? 100 : 100 * (1 - run.loadPct()[y][k] / untreated);
    }

    private void follow(WeedLife seed, List<@Nullable ProgramYears> years, WeedRun run, int k) {
        WeedBank bank = new WeedBank(genes(k), seed, Inflow.NONE, field.acres() * SQUARE_METRES_PER_ACRE);
        bank.start(seedlings[k] / seed.germination(), draws.random(weed, k, -1));
        for (int y = 0; y < years.size(); y++) {
            run.seedsM2()[y][k] = bank.seedsM2();
            for (int l = 0; l < groups.size(); l++) {
                run.resistant()[l][y][k] = bank.resistantShare(l);
            }
            ProgramYears program = years.get(y);
            if (program != null) {
                Under one = under(program, y);
                bank.year(one.response(), k, draws.random(weed, k, y));
                run.loadPct()[y][k] = bank.loadPct();
                lost(run, one, bank.upM2(), y, k);
            }
        }
    }

    /** The weed under a program in a year, worked out when it is first asked for. */
    private Under under(ProgramYears program, int y) {
        @Nullable Under[] years = under.get(program);
        if (years == null) {
            throw new IllegalStateException(
                    weed + " has no response to " + program.program().name());
        }
        Under known = years[y];
        if (known == null) {
            WeedOn one = program.weeds(draws.year(y)).stream()
                    .filter(on -> on.weed().equals(weed))
                    .findFirst()
                    .orElseThrow();
            known = new Under(
                    one.response(groups, seeds(program.field()), life == null ? 0 : life.crowdingM2()),
                    one.untreatedLoad(),
                    one.mostLossPct());
            years[y] = known;
        }
        return known;
    }

    private List<ResistanceGene> genes(int k) {
        return genes.stream()
                .map(gene -> new ResistanceGene(
                        gene.frequency()[k],
                        gene.fold()[k],
                        gene.fold()[k] * gene.fold()[k],
                        gene.cost()[k],
                        gene.costOfOneCopy()[k],
                        gene.mutation()[k],
                        0))
                .toList();
    }

    /** The highest loss that the weed goes to in the crop of a program [%]; 0 where it does not stand there. */
    double mostLossPct(ProgramYears program) {
        return on(program).map(WeedOn::mostLossPct).orElse(0.0);
    }
}
