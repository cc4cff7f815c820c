package plumbrow.science.fate;

/**
 * A rate of one pound per acre in the units of other trades.
 *
 *   1 lb = 453.59237 g;  1 acre = 43,560 ft² = 4046.8564224 m² (international)
 */
public final class FieldRate {
    private static final double GRAMS_PER_POUND = 453.59237;
    private static final double FT2_PER_ACRE = 43_560;
    private static final double M2_PER_ACRE = 4046.8564224;
    private static final double LITRES_PER_FT3 = 28.316846592;
    private static final double INCHES_PER_FOOT = 12;

    /** 1 lb/ac [kg/ha]. */
    public static final double KG_PER_HA = GRAMS_PER_POUND / M2_PER_ACRE * 10;

    /** 1 lb/ac [µg/m²]. */
    public static final double UG_PER_M2 = GRAMS_PER_POUND * 1e6 / M2_PER_ACRE;

    /** 1 lb/ac [mg/ft²]. */
    public static final double MG_PER_FT2 = GRAMS_PER_POUND * 1e3 / FT2_PER_ACRE;

    /** 1 lb/ac mixed into water one inch deep [µg/L]. */
    public static final double UG_PER_LITRE_INCH =
            GRAMS_PER_POUND * 1e6 / (FT2_PER_ACRE / INCHES_PER_FOOT * LITRES_PER_FT3);

    private FieldRate() {}
}
