package plumbrow.advice.field;

/** The twelve soil texture classes of the USDA triangle. */
public enum Texture {
    SAND("sand"),
    LOAMY_SAND("loamy sand"),
    SANDY_LOAM("sandy loam"),
    LOAM("loam"),
    SILT_LOAM("silt loam"),
    SILT("silt"),
    SANDY_CLAY_LOAM("sandy clay loam"),
    CLAY_LOAM("clay loam"),
    SILTY_CLAY_LOAM("silty clay loam"),
    SANDY_CLAY("sandy clay"),
    SILTY_CLAY("silty clay"),
    CLAY("clay");

    private final String word;

    Texture(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
