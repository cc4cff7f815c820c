package plumbrow.science.safety;

import java.util.OptionalDouble;

/**
 * What one unit of a sheet is worth in the unit that the figures work in. A unit that can't be turned without knowing more,
 * such as ppm of a vapour, has no worth here: the value is then unknown and never guessed.
 *
 * Source: definitions of the units; 1 lb = 0.45359237 kg.
 */
public final class PaperUnits {
    private static final double LB_PER_KG = 1 / .45359237;

    private PaperUnits() {}

    /** A dose in mg per kg of body weight. */
    public static OptionalDouble mgPerKg(String unit) {
        return switch (unit) {
            case "mg/kg" -> OptionalDouble.of(1);
            case "g/kg" -> OptionalDouble.of(1000);
            case "µg/kg" -> OptionalDouble.of(.001);
            default -> OptionalDouble.empty();
        };
    }

    /** A concentration in air in mg/L. */
    public static OptionalDouble mgPerLitreOfAir(String unit) {
        return switch (unit) {
            case "mg/L" -> OptionalDouble.of(1);
            case "mg/m³", "µg/L" -> OptionalDouble.of(.001);
            case "g/m³" -> OptionalDouble.of(1);
            case "µg/m³" -> OptionalDouble.of(1e-6);
            default -> OptionalDouble.empty();
        };
    }

    /** A concentration in water in mg/L; ppm in water by weight is mg/L. */
    public static OptionalDouble mgPerLitreOfWater(String unit) {
        return switch (unit) {
            case "mg/L", "ppm" -> OptionalDouble.of(1);
            case "µg/L", "ppb" -> OptionalDouble.of(.001);
            case "ng/L" -> OptionalDouble.of(1e-6);
            case "g/L" -> OptionalDouble.of(1000);
            default -> OptionalDouble.empty();
        };
    }

    /** The weight of a gallon [lb] of a liquid of this density; a bare number is a specific gravity. */
    public static OptionalDouble poundsPerGallon(double density, String unit) {
        return switch (unit) {
            case "", "g/mL", "kg/L" -> OptionalDouble.of(density * IngredientPerGallon.LB_GAL_PER_KG_L);
            case "kg/m³", "g/L" -> OptionalDouble.of(density / 1000 * IngredientPerGallon.LB_GAL_PER_KG_L);
            case "lb/gal" -> OptionalDouble.of(density);
            default -> OptionalDouble.empty();
        };
    }

    /** A pressure in pascals; MPa is a slip of the pen for mPa or the other way round, and has no worth. */
    public static OptionalDouble pascals(String unit) {
        return switch (unit) {
            case "mmHg", "torr", "Pa", "kPa", "hPa", "mPa", "mbar", "atm" ->
                OptionalDouble.of(VapourPressure.pascalsPer(unit));
            case "µPa" -> OptionalDouble.of(1e-6);
            case "bar" -> OptionalDouble.of(100_000);
            default -> OptionalDouble.empty();
        };
    }

    /** A weight in pounds. */
    public static OptionalDouble pounds(String unit) {
        return switch (unit) {
            case "lb" -> OptionalDouble.of(1);
            case "kg" -> OptionalDouble.of(LB_PER_KG);
            default -> OptionalDouble.empty();
        };
    }
}
