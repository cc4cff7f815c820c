package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.weighing.ProgramYears;
import plumbrow.advice.weighing.ProgramYears.LotOf;
import plumbrow.advice.weighing.ProgramYears.TraitOn;
import plumbrow.science.insects.InsectResistance;
import plumbrow.science.years.Genotypes;
import plumbrow.science.years.TraitInsects;
import plumbrow.science.years.TraitLot;

/**
 * One insect of a field through the years, where some program carries a trait against it.
 *
 * <p>What a trait lets through of the injury is taken as the share of susceptible insects that live on it. Where the trait has
 * failed already in a draw, so many copies resist that it prevents what the trait doubt says. In a year in which the insect's
 * crop is not grown nothing is selected.
 */
final class InsectLook {
    private static final double[] UNTOUCHED = {1, 1, 1};

    private final String insect;
    private final YearDraws draws;
    private final List<String> groups;
    private final List<TraitOn> traits = new ArrayList<>();
    private final double[] dominance;
    private final double[] moving;
    private final double[] dose;
    private final double[] cost;
    private final double[] costOfOneCopy;
    private final double[] mixing;
    private final List<double[]> rare;

    InsectLook(String insect, String fieldName, List<ProgramYears> programs, YearDraws draws) {
        this.insect = insect;
        this.draws = draws;
        TreeSet<String> named = new TreeSet<>();
        for (ProgramYears program : programs) {
            program.lots().forEach(lot -> named.addAll(lot.groups().getOrDefault(insect, List.of())));
        }
        groups = named.stream().limit(Genotypes.MOST_GENES).toList();
        for (String group : groups) {
            traits.add(programs.stream()
                    .map(program -> program.trait(group, insect))
                    .flatMap(Optional::stream)
                    .findFirst()
                    .orElseThrow());
        }
        dominance = draws.of(fieldName, Assumption.dominance(insect));
        moving = draws.of(insect, Assumption.MOVING);
        dose = draws.of(insect, Assumption.DOSE);
        cost = draws.of(insect + " on " + fieldName, Assumption.INSECT_COST);
        costOfOneCopy = draws.of(insect + " on " + fieldName, Assumption.INSECT_COST_OF_ONE_COPY);
        mixing = draws.of(insect + " on " + fieldName, Assumption.MIXING);
        rare = groups.stream()
                .map(group -> draws.of(group + " and " + insect + " on " + fieldName, Assumption.insectGene(insect)))
                .toList();
    }

    String insect() {
        return insect;
    }

    List<String> groups() {
        return groups;
    }

    /** Two a year in the Corn Belt for the borer, else one. */
    int generations() {
        return insect.equals("European corn borer") ? 2 : 1;
    }

    /** Whether its eggs lie in the field from one year to the next, and wait for its crop in vain. */
    static boolean waitsInTheField(String insect) {
        return insect.contains("rootworm");
    }

    InsectRun run(List<@Nullable ProgramYears> years) {
        InsectRun run = new InsectRun(insect, groups, years.size(), draws.draws());
        for (int y = 0; y < years.size(); y++) {
            ProgramYears program = years.get(y);
            run.aimed()[y] = program != null && program.lots().stream().anyMatch(this::carries);
        }
        for (int k = 0; k < draws.draws(); k++) {
            double[] costs = new double[groups.size()];
            Arrays.fill(costs, cost[k]);
            TraitInsects insects = new TraitInsects(costs, costOfOneCopy[k]);
            insects.start(start(k));
            IdentityHashMap<ProgramYears, double[][]> fitness = new IdentityHashMap<>();
            for (int y = 0; y < years.size(); y++) {
                note(run, insects, years.get(y), y, k);
                ProgramYears program = years.get(y);
                if (program != null && program.insects().contains(insect)) {
                    double[] shares =
                            program.lots().stream().mapToDouble(LotOf::share).toArray();
                    double[][] fit = fitness.get(program);
                    if (fit == null) {
                        fit = insects.fitness(lots(program, k));
                        fitness.put(program, fit);
                    }
                    for (int generation = 0; generation < generations(); generation++) {
                        insects.generation(shares, fit, shares.length == 1 ? 1 : mixing[k]);
                    }
                }
            }
        }
        return run;
    }

    private void note(InsectRun run, TraitInsects insects, @Nullable ProgramYears program, int y, int k) {
        for (int l = 0; l < groups.size(); l++) {
            run.frequency()[l][y][k] = insects.frequency(l);
            run.holds()[l][y][k] = 1 - insects.resistantShare(l, dominance[k]);
        }
        if (program != null && run.aimed()[y]) {
            LotOf lot =
                    program.lots().stream().filter(this::carries).findFirst().orElseThrow();
            double through = 1;
            for (int l = 0; l < groups.size(); l++) {
                if (lot.groups().getOrDefault(insect, List.of()).contains(groups.get(l))) {
                    through *= 1 - traits.get(l).control()[k] * run.holds()[l][y][k];
                }
            }
            run.preventedPct()[y][k] = 100 * (1 - through);
        }
    }

    private boolean carries(LotOf lot) {
        return lot.groups().getOrDefault(insect, List.of()).stream().anyMatch(groups::contains);
    }

    private double[] start(int k) {
        double[] start = new double[groups.size()];
        for (int l = 0; l < start.length; l++) {
            TraitOn trait = traits.get(l);
            double few = rare.get(l)[k];
            start[l] = trait.works()[k] > 0 || trait.control()[k] == 0
                    ? few
                    : Math.max(few, frequency(1 - Math.min(1, trait.ifFailed() / trait.control()[k]), dominance[k]));
        }
        return start;
    }

    /** The frequency at which a share of the insects resists: p² + 2p(1 − p)h = share. */
    static double frequency(double share, double dominance) {
        double bend = 1 - 2 * dominance;
        return Math.abs(bend) < 1e-9 ? share : (Math.sqrt(dominance * dominance + bend * share) - dominance) / bend;
    }

    private List<TraitLot> lots(ProgramYears program, int k) {
        List<TraitLot> lots = new ArrayList<>();
        for (LotOf lot : program.lots()) {
            double[][] survival = new double[groups.size()][];
            for (int l = 0; l < survival.length; l++) {
                survival[l] = lot.groups().getOrDefault(insect, List.of()).contains(groups.get(l))
                        ? onTrait(1 - traits.get(l).control()[k], dominance[k])
                        : UNTOUCHED;
            }
            boolean blend = carries(lot) && lot.unprotected() > 0;
            lots.add(new TraitLot(
                    lot.share(),
                    carries(lot) ? lot.unprotected() : 1,
                    survival,
                    blend ? moving[k] : 0,
                    blend ? dose[k] : 1));
        }
        return lots;
    }

    private static double[] onTrait(double susceptible, double dominance) {
        return new double[] {susceptible, InsectResistance.mixedSurvival(susceptible, 1, dominance), 1};
    }
}
