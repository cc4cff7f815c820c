package plumbrow.science.fate;

/**
 * What birds and mammals eat in a sprayed field, with the residue that one pound per acre leaves on it.
 *
 * Source: Fletcher, Nellessen & Pfleeger 1994 after Hoerger & Kenaga 1972, SERA worksheet A04; the mean of seeds, 7, and
 * the water contents: values from memory.
 */
public enum Food {
    SHORT_GRASS("short_grass", "short grass", 240, 85, 0.80),
    TALL_GRASS("tall_grass", "tall grass", 110, 36, 0.80),
    BROADLEAF("broadleaf", "broadleaf plants and small insects", 135, 45, 0.80),
    SEEDS("seeds", "fruits, pods, seeds and large insects", 15, 7, 0.10);

    private final String key;
    private final String words;
    private final double upperPpm;
    private final double meanPpm;
    private final double waterShare;

    Food(String key, String words, double upperPpm, double meanPpm, double waterShare) {
        this.key = key;
        this.words = words;
        this.upperPpm = upperPpm;
        this.meanPpm = meanPpm;
        this.waterShare = waterShare;
    }

    String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** Upper residue of one pound per acre [ppm wet weight]. */
    public double upperPpm() {
        return upperPpm;
    }

    /** Mean residue of one pound per acre [ppm wet weight]. */
    public double meanPpm() {
        return meanPpm;
    }

    /** Water as a share of the wet weight. */
    public double waterShare() {
        return waterShare;
    }
}
