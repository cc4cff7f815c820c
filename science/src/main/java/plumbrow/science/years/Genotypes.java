package plumbrow.science.years;

import plumbrow.science.weeds.GenotypeShares;

/**
 * Genotypes at a few genes on chromosomes of their own, two copies each, and what comes of crossing them.
 *
 *   a genotype is numbered Σ copies_l·3^l, a gamete Σ bit_l·2^l: bit 1 is the resistant copy of gene l
 *   a plant with one copy passes it to half of its gametes; genes are passed on independently
 *
 * Source: Mendel; shares at the start are {@link GenotypeShares}.
 */
public final class Genotypes {
    /** More genes than this are not followed: 81 genotypes. */
    public static final int MOST_GENES = 4;

    private static final Genotypes[] ALL = {
        new Genotypes(0), new Genotypes(1), new Genotypes(2), new Genotypes(3), new Genotypes(4)
    };

    private final int genes;
    private final int[][] copies;
    private final double[][] gametes;
    private final int[][] zygote;

    private Genotypes(int genes) {
        this.genes = genes;
        int count = (int) Math.round(Math.pow(3, genes));
        int kinds = 1 << genes;
        copies = new int[count][genes];
        gametes = new double[count][kinds];
        zygote = new int[kinds][kinds];
        for (int g = 0; g < count; g++) {
            for (int l = 0, rest = g; l < genes; l++, rest /= 3) {
                copies[g][l] = rest % 3;
            }
            for (int x = 0; x < kinds; x++) {
                double share = 1;
                for (int l = 0; l < genes; l++) {
                    share *= (x >> l & 1) == 1 ? copies[g][l] / 2.0 : 1 - copies[g][l] / 2.0;
                }
                gametes[g][x] = share;
            }
        }
        for (int x = 0; x < kinds; x++) {
            for (int y = 0; y < kinds; y++) {
                for (int l = genes - 1; l >= 0; l--) {
                    zygote[x][y] = zygote[x][y] * 3 + (x >> l & 1) + (y >> l & 1);
                }
            }
        }
    }

    /** The genotypes of so many genes, 0 to {@link #MOST_GENES}. */
    public static Genotypes of(int genes) {
        if (genes < 0 || genes > MOST_GENES) {
            throw new IllegalArgumentException(genes + " genes; expected 0 to " + MOST_GENES);
        }
        return ALL[genes];
    }

    public int genes() {
        return genes;
    }

    /** Number of genotypes, 3^genes. */
    public int count() {
        return copies.length;
    }

    /** Number of kinds of gamete, 2^genes; of biotypes as well: bit l of a biotype is "resists at gene l". */
    public int kinds() {
        return zygote.length;
    }

    /** Resistant copies that a genotype has of a gene, 0 to 2. */
    public int copies(int genotype, int gene) {
        return copies[genotype][gene];
    }

    /** Shares of the gametes of a genotype; not to be written to. */
    double[] gametes(int genotype) {
        return gametes[genotype];
    }

    /** The genotype of two gametes. */
    int zygote(int mother, int father) {
        return zygote[mother][father];
    }

    /**
     * Shares of the genotypes where genes are independent.
     *
     * @param frequency of the resistant copy of each gene
     * @param inbreeding 0 where all cross, 1 where all pollinate themselves
     */
    public void shares(double[] frequency, double inbreeding, double[] out) {
        for (int g = 0; g < out.length; g++) {
            double share = 1;
            for (int l = 0; l < genes; l++) {
                share *= GenotypeShares.of(copies[g][l], frequency[l], inbreeding);
            }
            out[g] = share;
        }
    }

    /** Frequency of the resistant copy of a gene among genotypes that need not sum to 1; 0 where there are none. */
    public double frequency(double[] amounts, int gene) {
        double resistant = 0;
        double all = 0;
        for (int g = 0; g < amounts.length; g++) {
            resistant += amounts[g] * copies[g][gene] / 2;
            all += amounts[g];
        }
        return all == 0 ? 0 : resistant / all;
    }

    /** Turns susceptible copies into resistant ones: each gene by its own share of gametes. */
    void mutate(double[] ofKinds, double[] mutation) {
        for (int l = 0; l < genes; l++) {
            for (int x = 0; x < ofKinds.length; x++) {
                if ((x >> l & 1) == 0) {
                    double moved = ofKinds[x] * mutation[l];
                    ofKinds[x] -= moved;
                    ofKinds[x | 1 << l] += moved;
                }
            }
        }
    }
}
