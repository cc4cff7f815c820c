package plumbrow.advice.shelf;

/** How a product is put on the field. */
public enum Method {
    GROUND_BROADCAST("ground broadcast"),
    BAND("band"),
    IN_FURROW("in furrow"),
    DIRECTED("directed"),
    SPOT("spot"),
    AERIAL("aerial"),
    CHEMIGATION("chemigation"),
    ON_SEED("on seed");

    private final String word;

    Method(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether it is sprayed through air, so that droplets, boom and wind matter. */
    public boolean sprayed() {
        return this == GROUND_BROADCAST || this == BAND || this == DIRECTED || this == AERIAL;
    }
}
