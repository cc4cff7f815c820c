package plumbrow.advice.ratemap;

import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;

/**
 * What a machine meters by area: an entry of the data dictionary of ISO 11783-11. A value in a file is a whole number of the
 * entry's steps.
 *
 * <p>Source: ISO 11783-11 data dictionary, entries 1, 6 and 11 (set points), 2, 7 and 12 (actual).
 */
public enum Metering {
    VOLUME("volume", "0001", "0002", "mm³/m²", 0.01, FarmUnit.GAL, 1e6, FarmUnit.L),
    MASS("mass", "0006", "0007", "mg/m²", 1, FarmUnit.LB, 1e3, FarmUnit.G),
    COUNT("count", "000B", "000C", "1/m²", 0.001, FarmUnit.SEEDS, 1, FarmUnit.SEEDS);

    public static final double M2_PER_ACRE = 10_000 / Amount.ACRES_PER_HECTARE;

    private final String word;
    private final String setPoint;
    private final String actual;
    private final String unit;
    private final double step;
    private final FarmUnit farmUnit;
    private final double perMetric;
    private final FarmUnit metric;

    Metering(
            String word,
            String setPoint,
            String actual,
            String unit,
            double step,
            FarmUnit farmUnit,
            double perMetric,
            FarmUnit metric) {
        this.word = word;
        this.setPoint = setPoint;
        this.actual = actual;
        this.unit = unit;
        this.step = step;
        this.farmUnit = farmUnit;
        this.perMetric = perMetric;
        this.metric = metric;
    }

    /** What meters amounts of a dimension. */
    public static Metering of(Dimension dimension) {
        return switch (dimension) {
            case VOLUME -> VOLUME;
            case MASS, BUSHELS -> MASS;
            case SEEDS, UNITS -> COUNT;
        };
    }

    public String word() {
        return word;
    }

    /** The dictionary entry of the rate asked for, four hexadecimal digits. */
    public String setPointDdi() {
        return setPoint;
    }

    /** The entry of the rate that was put on. */
    public String actualDdi() {
        return actual;
    }

    /** The standard's unit. */
    public String unit() {
        return unit;
    }

    /** One step of the value in a file [{@link #unit()}]. */
    public double step() {
        return step;
    }

    /** The unit in which people here say it. */
    public FarmUnit farmUnit() {
        return farmUnit;
    }

    /** A rate per acre in steps of the standard's unit, not rounded. */
    public double steps(Amount perAcre) {
        return perAcre.in(metric).value() * perMetric / M2_PER_ACRE / step;
    }

    /** The rate per acre that so many steps are. */
    public Amount perAcre(double steps) {
        return new Amount(steps * step * M2_PER_ACRE / perMetric, metric).in(farmUnit);
    }
}
