package plumbrow.science.years;

/**
 * One gene that makes a weed resist one site of action.
 *
 * @param frequency of the resistant copy in the seed at the start [-]
 * @param oneCopyFold Φ of a plant with one copy, see {@link Expression}; 1 and more, may be +∞
 * @param twoCopyFold Φ of a plant with two copies
 * @param cost share of its seed that a plant with two copies loses by being resistant
 * @param costDominance part of that cost borne by one copy, 0 to 1
 * @param mutation share of susceptible copies that turn resistant from one generation to the next
 * @param outside frequency of the resistant copy in pollen and seed that come in from outside
 */
public record ResistanceGene(
        double frequency,
        double oneCopyFold,
        double twoCopyFold,
        double cost,
        double costDominance,
        double mutation,
        double outside) {
    public ResistanceGene {
        if (!(frequency >= 0 && frequency <= 1)
                || !(cost >= 0 && cost <= 1)
                || !(costDominance >= 0 && costDominance <= 1)
                || !(mutation >= 0 && mutation <= 1)
                || !(outside >= 0 && outside <= 1)) {
            throw new IllegalArgumentException("a share of a resistance gene lies outside 0 to 1");
        }
        if (!(oneCopyFold >= 1 && twoCopyFold >= oneCopyFold)) {
            throw new IllegalArgumentException(
                    "folds of resistance are " + oneCopyFold + " and " + twoCopyFold + "; expected 1 or more, rising");
        }
    }

    /** Full resistance with one copy, no cost, nothing new from outside or by mutation. */
    public static ResistanceGene dominant(double frequency) {
        return new ResistanceGene(frequency, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0, 0, 0, 0);
    }

    double fold(int copies) {
        return copies == 0 ? 1 : copies == 1 ? oneCopyFold : twoCopyFold;
    }

    double seedKept(int copies) {
        return copies == 0 ? 1 : copies == 1 ? 1 - cost * costDominance : 1 - cost;
    }
}
