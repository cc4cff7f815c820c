package plumbrow.science.trials;

import plumbrow.science.figure.Working;

/**
 * Yields of a trial in complete blocks, and how their spread divides.
 *
 *   SS_block = t·Σ(ȳ_i. − ȳ)²;  SS_treatment = b·Σ(ȳ_.j − ȳ)²;  SS_error = Σ(y_ij − ȳ_i. − ȳ_.j + ȳ)²
 *
 * Rows are blocks, columns are treatments, all of one length.
 */
final class BlockTable {
    /** Rice, kg/ha, six seeding rates in four blocks: Gomez & Gomez 1984 p. 26 (agridat gomez.seedrate). */
    static final String RICE = "5113,5346,5272,5164,4804,5254;5398,5952,5713,4831,4848,4542;"
            + "5307,4719,5483,4986,4432,4919;4678,4264,4749,4410,4748,4098";

    private final double[][] yields;
    private final double[] blockMeans;
    private final double[] treatmentMeans;
    private final double mean;

    BlockTable(double[][] yields) {
        int blocks = yields.length;
        int treatments = yields[0].length;
        this.yields = yields;
        blockMeans = new double[blocks];
        treatmentMeans = new double[treatments];
        for (int i = 0; i < blocks; i++) {
            blockMeans[i] = Asked.mean(yields[i]);
            for (int j = 0; j < treatments; j++) {
                treatmentMeans[j] += yields[i][j] / blocks;
            }
        }
        mean = Asked.mean(blockMeans);
    }

    double mean() {
        return mean;
    }

    double[] blockMeans() {
        return blockMeans.clone();
    }

    double[] treatmentMeans() {
        return treatmentMeans.clone();
    }

    int blocks() {
        return yields.length;
    }

    int treatments() {
        return yields[0].length;
    }

    double errorSquares() {
        double sum = 0;
        for (int i = 0; i < yields.length; i++) {
            for (int j = 0; j < treatments(); j++) {
                double left = yields[i][j] - blockMeans[i] - treatmentMeans[j] + mean;
                sum += left * left;
            }
        }
        return sum;
    }

    /** Writes the division of the squares and hands back those of blocks, treatments and error. */
    double[] show(Working working) {
        double block = working.step(
                "squares between blocks",
                treatments() + " × (" + Asked.squareTerms(blockMeans, mean) + ")",
                treatments() * Asked.squares(blockMeans, mean),
                "");
        double treatment = working.step(
                "squares between treatments",
                blocks() + " × (" + Asked.squareTerms(treatmentMeans, mean) + ")",
                blocks() * Asked.squares(treatmentMeans, mean),
                "");
        double error = working.step(
                "squares left as error",
                "sum over all plots of (yield − block mean − treatment mean + mean)²",
                errorSquares(),
                "");
        return new double[] {block, treatment, error};
    }
}
