package plumbrow.science.weedseason;

/**
 * How a soil herbicide behaves.
 *
 * @param halfLifeDays DT50 in soil at 20 °C [d]; one from the field already holds its own weather
 * @param kocMlG sorption to organic carbon [mL/g]
 * @param solubilityMgL in water [mg/L]
 * @param vapourPa vapour pressure at 25 °C [Pa]
 */
public record Chemistry(double halfLifeDays, double kocMlG, double solubilityMgL, double vapourPa) {
    public Chemistry {
        Limits.positive("half-life", halfLifeDays);
        Limits.positive("Koc", kocMlG);
        Limits.positive("solubility", solubilityMgL);
        Limits.positive("vapour pressure", vapourPa);
    }
}
