package plumbrow.science.years;

import java.util.Arrays;
import java.util.List;

/**
 * The insects of one field that a trait selects, genotype by genotype, from generation to generation.
 *
 *   adults of lot i     n_ig = share_i·x_g·W_ig
 *   mating              a share μ of all adults at random over the field, the rest each in its own lot
 *   eggs                of every female alike over the whole field: x' = Σ over mating places of adults·(gametes × gametes)
 *
 *   x  genotype shares among eggs;  W  fitness, block or blend;  μ  mixing, 1 is the model of {@link
 *   plumbrow.science.insects.InsectResistance}
 *
 * A block refuge works only by its adults meeting those of the trait corn: less mixing never buys time.
 *
 * Source: Comins 1977; Alstad & Andow 1995 (lineage from memory); two toxins as {@link
 * plumbrow.science.insects.PyramidResistance}. For one thread.
 */
public final class TraitInsects {
    private final Genotypes genotypes;
    private final double[] withoutTrait;
    private final double[] eggs;
    private final double[] next;
    private final double[] gametes;
    private final double[] adults;
    private final double[] everywhere;

    /**
     * @param cost share of its fitness on plants without the trait that each gene costs an insect with two copies
     * @param costDominance part of that cost borne by one copy
     */
    public TraitInsects(double[] cost, double costDominance) {
        genotypes = Genotypes.of(cost.length);
        int count = genotypes.count();
        withoutTrait = new double[count];
        for (int g = 0; g < count; g++) {
            withoutTrait[g] = 1;
            for (int l = 0; l < cost.length; l++) {
                int copies = genotypes.copies(g, l);
                withoutTrait[g] *= copies == 0 ? 1 : copies == 1 ? 1 - cost[l] * costDominance : 1 - cost[l];
            }
        }
        eggs = new double[count];
        next = new double[count];
        gametes = new double[genotypes.kinds()];
        adults = new double[count];
        everywhere = new double[count];
    }

    /** Begins with genes at these frequencies, mated at random. */
    public void start(double[] frequency) {
        genotypes.shares(frequency, 0, eggs);
    }

    /** Fitness of every genotype on every lot, to be worked once a program and handed to {@link #generation}. */
    public double[][] fitness(List<TraitLot> lots) {
        return lots.stream().map(lot -> lot.fitness(genotypes, withoutTrait)).toArray(double[][]::new);
    }

    /**
     * One generation.
     *
     * @param shares of the lots, in the order of their fitness; they sum to 1
     * @param mixing share of adults that mate anywhere in the field, 0 to 1
     */
    public void generation(double[] shares, double[][] fitness, double mixing) {
        Arrays.fill(next, 0);
        Arrays.fill(everywhere, 0);
        double mean = 0;
        for (int i = 0; i < shares.length; i++) {
            for (int g = 0; g < eggs.length; g++) {
                double grown = shares[i] * eggs[g] * fitness[i][g];
                adults[g] = (1 - mixing) * grown;
                everywhere[g] += mixing * grown;
                mean += grown;
            }
            mate(adults);
        }
        mate(everywhere);
        if (mean > 0) {
            for (int g = 0; g < eggs.length; g++) {
                eggs[g] = next[g] / mean;
            }
        }
    }

    private void mate(double[] stock) {
        double all = 0;
        Arrays.fill(gametes, 0);
        for (int g = 0; g < stock.length; g++) {
            all += stock[g];
            double[] own = genotypes.gametes(g);
            for (int x = 0; x < gametes.length; x++) {
                gametes[x] += stock[g] * own[x];
            }
        }
        if (all == 0) {
            return;
        }
        for (int x = 0; x < gametes.length; x++) {
            for (int y = 0; y < gametes.length; y++) {
                next[genotypes.zygote(x, y)] += gametes[x] * gametes[y] / all;
            }
        }
    }

    /** Frequency of the resistant copy of a gene among the eggs now. */
    public double frequency(int gene) {
        return genotypes.frequency(eggs, gene);
    }

    /** Share of the insects that a trait no longer holds: with one copy in part, by dominance; with two wholly. */
    public double resistantShare(int gene, double dominance) {
        double share = 0;
        for (int g = 0; g < eggs.length; g++) {
            int copies = genotypes.copies(g, gene);
            share += eggs[g] * (copies == 2 ? 1 : copies == 1 ? dominance : 0);
        }
        return share;
    }
}
