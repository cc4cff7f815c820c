package plumbrow.advice.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * The units in which farmers write amounts. Factors come from the units library; nothing else in Plumbrow converts.
 *
 * <p>Liquid units are US customary. An "oz" is a weight and a "fl oz" a volume: the two are never mixed up silently.
 */
public enum FarmUnit {
    FL_OZ("fl oz", Dimension.VOLUME, volume(USCustomary.FLUID_OUNCE), "floz|fl. oz|fl.oz.|fluid oz"),
    PT("pt", Dimension.VOLUME, volume(USCustomary.PINT), "pint|pints|pts"),
    QT("qt", Dimension.VOLUME, volume(USCustomary.PINT) * 2, "quart|quarts|qts"),
    GAL("gal", Dimension.VOLUME, 1, "gallon|gallons|gals"),
    ML("mL", Dimension.VOLUME, volume(Units.LITRE) / 1000, "ml|millilitre|milliliter"),
    L("L", Dimension.VOLUME, volume(Units.LITRE), "l|litre|liter|litres|liters"),
    OZ("oz", Dimension.MASS, mass(USCustomary.OUNCE), "ounce|ounces|oz wt|dry oz"),
    LB("lb", Dimension.MASS, 1, "lbs|pound|pounds"),
    G("g", Dimension.MASS, mass(Units.GRAM), "gram|grams"),
    KG("kg", Dimension.MASS, mass(Units.KILOGRAM), "kilogram|kilograms"),
    SEEDS("seeds", Dimension.SEEDS, 1, "seed|kernels|kernel"),
    THOUSAND_SEEDS("1000 seeds", Dimension.SEEDS, 1000, "k seeds|thousand seeds|m seeds"),
    UNIT("unit", Dimension.UNITS, 1, "units|bag|bags"),
    BU("bu", Dimension.BUSHELS, 1, "bushel|bushels");

    private final String symbol;
    private final Dimension dimension;
    private final double perBase;
    private final String aliases;

    FarmUnit(String symbol, Dimension dimension, double perBase, String aliases) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.perBase = perBase;
        this.aliases = aliases;
    }

    /** The unit as it is written: "fl oz". */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How much of the dimension's base unit one of this is: a fluid ounce is 1/128 gal. */
    public double inBase() {
        return perBase;
    }

    /** The unit a person wrote, whatever its case; empty where it is none of ours. */
    public static Optional<FarmUnit> parse(String written) {
        String text = written.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.toLowerCase(Locale.ROOT).equals(text)
                        || List.of(unit.aliases.split("\\|")).contains(text))
                .findFirst();
    }

    private static double volume(Unit<Volume> unit) {
        return unit.getConverterTo(USCustomary.GALLON_LIQUID).convert(1.0);
    }

    private static double mass(Unit<Mass> unit) {
        return unit.getConverterTo(USCustomary.POUND).convert(1.0);
    }
}
