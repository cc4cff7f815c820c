package plumbrow.advice.shelf;

/** Droplet classes from fine to coarse (ASABE S572.3; ISO 25358), as the nozzle maker's chart gives them. */
public enum Droplets {
    EXTREMELY_FINE("XF"),
    VERY_FINE("VF"),
    FINE("F"),
    MEDIUM("M"),
    COARSE("C"),
    VERY_COARSE("VC"),
    EXTREMELY_COARSE("XC"),
    ULTRA_COARSE("UC");

    private final String word;

    Droplets(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
