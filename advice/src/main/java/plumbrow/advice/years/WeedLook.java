package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.ProductGroups;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.CourseSeason;
import plumbrow.advice.weighing.CourseSeason.PassOnWeed;
import plumbrow.advice.weighing.CourseSeason.WeedOn;
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
 * <p>Followed are the groups that work on it in some course looked at, those that take most of it first, up to four; not those
 * that the field's plants are known to resist already: what a product does to them stands in the control sheet as it is.
 */
final class WeedLook {
    private static final double SQUARE_METRES_PER_ACRE = 4_046.856_422_4;
    private static final double COST_OF_ONE_COPY = .5;

    private final String weed;
    private final Field field;
    private final YearDraws draws;
    private final @Nullable SeedLife life;
    private final List<String> groups;
    private final List<String> left;
    private final Map<CourseSeason, WeedOn> under = new IdentityHashMap<>();
    private final Map<CourseSeason, WeedResponse> responses = new IdentityHashMap<>();
    private final double[] density;
    private final List<Gene> genes;

    /** The draws of a gene. */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    private record Gene(double[] frequency, double[] fold, double[] cost, double[] mutation) {}

    WeedLook(Season season, Field field, String weed, List<CourseSeason> courses, YearDraws draws) {
        this.weed = weed;
        this.field = field;
        this.draws = draws;
        this.life = SeedLife.of(weed).orElse(null);
        for (CourseSeason course : courses) {
            course.weeds().stream().filter(one -> one.weed().equals(weed)).forEach(one -> under.put(course, one));
        }
        List<String> working = life == null ? List.of() : working(season, courses);
        groups = List.copyOf(working.subList(0, Math.min(Genotypes.MOST_GENES, working.size())));
        left = List.copyOf(working.subList(groups.size(), working.size()));
        under.forEach((course, one) -> responses.put(
                course, Responses.of(course, one, groups, seeds(course.field()), life == null ? 0 : life.crowdingM2())));
        density = courses.stream()
                .map(under::get)
                .filter(Objects::nonNull)
                .findFirst()
                .map(WeedOn::densityM2)
                .orElseThrow();
        genes = groups.stream().map(this::gene).toList();
    }

    private Gene gene(String group) {
        String name = weed + " and group " + group + " on " + field.name();
        return new Gene(
                draws.of(name, Assumption.HERBICIDE_GENE),
                draws.of(name, Assumption.ONE_COPY),
                draws.of(name, Assumption.COST),
                draws.of(name, Assumption.MUTATION));
    }

    String weed() {
        return weed;
    }

    /** Null where nothing is known of its seed. */
    @Nullable SeedLife life() {
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

    /** Groups that take some of it in a course, most first. */
    private List<String> working(Season season, List<CourseSeason> courses) {
        Set<String> resisted = season.pests().resistance().stream()
                .filter(one -> one.field().equals(field.name()) && one.weed().equals(weed))
                .map(one -> ProductGroups.today(one.group()))
                .collect(Collectors.toSet());
        Map<String, Double> taken = new TreeMap<>();
        for (CourseSeason course : courses) {
            WeedOn one = under.get(course);
            for (PassOnWeed pass : one == null ? List.<PassOnWeed>of() : one.passes()) {
                Optional<Set<String>> of = Responses.groups(course, pass);
                double mean = 1 - Arrays.stream(pass.left()).average().orElse(1);
                of.stream()
                        .flatMap(Set::stream)
                        .filter(group -> mean > 0 && !resisted.contains(group))
                        .forEach(group -> taken.merge(group, mean, Math::max));
            }
        }
        List<String> order = new ArrayList<>(taken.keySet());
        order.sort(Comparator.comparingDouble((String group) -> -taken.get(group)));
        return order;
    }

    /** Follows it through the years; a year without a course leaves everything as it was. */
    WeedRun run(List<@Nullable CourseSeason> years) {
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

    private void stay(List<@Nullable CourseSeason> years, WeedRun run, int k) {
        for (int y = 0; y < years.size(); y++) {
            run.seedsM2()[y][k] = density[k];
            CourseSeason course = years.get(y);
            if (course != null) {
                WeedResponse response = response(course);
                int row = draws.rows(y)[k];
                run.loadPct()[y][k] = density[k] * response.load()[0][row];
                run.lossPct()[y][k] = HyperbolicLoss.ofLoad(run.loadPct()[y][k], mostLossPct(course));
                run.removedPct()[y][k] = 100 * (1 - response.survive()[0][row]);
            }
        }
    }

    private void follow(WeedLife seed, List<@Nullable CourseSeason> years, WeedRun run, int k) {
        WeedBank bank = new WeedBank(genes(k), seed, Inflow.NONE, field.acres() * SQUARE_METRES_PER_ACRE);
        bank.start(density[k] / seed.germination(), draws.random(weed, k, -1));
        for (int y = 0; y < years.size(); y++) {
            run.seedsM2()[y][k] = bank.seedsM2();
            for (int l = 0; l < groups.size(); l++) {
                run.resistant()[l][y][k] = bank.resistantShare(l);
            }
            CourseSeason course = years.get(y);
            if (course != null) {
                bank.year(response(course), draws.rows(y)[k], draws.random(weed, k, y));
                run.loadPct()[y][k] = bank.loadPct();
                run.lossPct()[y][k] = HyperbolicLoss.ofLoad(bank.loadPct(), mostLossPct(course));
                run.removedPct()[y][k] = bank.upM2() == 0 ? 100 : 100 * (1 - bank.loadPct() / untreated(course, bank));
            }
        }
    }

    private double untreated(CourseSeason course, WeedBank bank) {
        WeedOn one = under.get(course);
        return one == null ? 1 : bank.upM2() * one.firstPlantLossPct();
    }

    private WeedResponse response(CourseSeason course) {
        WeedResponse response = responses.get(course);
        if (response == null) {
            throw new IllegalStateException(weed + " has no response to " + course.course().name());
        }
        return response;
    }

    private List<ResistanceGene> genes(int k) {
        return genes.stream()
                .map(gene -> new ResistanceGene(
                        gene.frequency()[k],
                        gene.fold()[k],
                        gene.fold()[k] * gene.fold()[k],
                        gene.cost()[k],
                        COST_OF_ONE_COPY,
                        gene.mutation()[k],
                        0))
                .toList();
    }

    /** The highest loss that the weed goes to in the crop of a course [%]; 0 where it does not stand there. */
    double mostLossPct(CourseSeason course) {
        WeedOn one = under.get(course);
        return one == null ? 0 : one.mostLossPct();
    }
}
