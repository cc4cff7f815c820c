package plumbrow.science.years;

import plumbrow.science.insects.BlendResistance;

/**
 * One seed lot of a field, as its insects feel it.
 *
 * @param share share of the field's acres
 * @param refugeInBag share of its plants without the trait; 1 where the lot carries none
 * @param survival on the trait, gene by copies 0, 1, 2; 1, 1, 1 at a gene that the lot does not select
 * @param movingShare share of larvae that leave their first plant once
 * @param doseShare share of the dose that a mover takes from it
 */
@SuppressWarnings("ArrayRecordComponent") // Read into fitness once; never handed out.
public record TraitLot(double share, double refugeInBag, double[][] survival, double movingShare, double doseShare) {

    /** Fitness of each genotype on the lot, from its fitness on plants without the trait. */
    double[] fitness(Genotypes genotypes, double[] withoutTrait) {
        double[] fitness = new double[genotypes.count()];
        for (int g = 0; g < fitness.length; g++) {
            double onTrait = 1;
            for (int l = 0; l < genotypes.genes(); l++) {
                onTrait *= survival[l][genotypes.copies(g, l)];
            }
            fitness[g] = BlendResistance.fitness(refugeInBag, withoutTrait[g], onTrait, movingShare, doseShare);
        }
        return fitness;
    }
}
