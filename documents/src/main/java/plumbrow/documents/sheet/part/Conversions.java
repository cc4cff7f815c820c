package plumbrow.documents.sheet.part;

import plumbrow.science.safety.VapourPressure;

/** Units of one quantity in one of them, only to see whether two statements agree. */
final class Conversions {
    private static final double PASCALS_PER_PSI = 6894.757;
    private static final double KELVIN = 273.15;
    private static final double G_ML_PER_LB_GAL = 1 / 8.345404;
    private static final double G_ML_PER_LB_FT3 = .01601846;
    private static final double LB_PER_KG = 2.2046226;

    private Conversions() {}

    /** What a unit measures; the unit itself where it has no other. */
    static String quantity(String unit) {
        return switch (unit) {
            case "mmHg", "torr", "hPa", "kPa", "mPa", "MPa", "Pa", "µPa", "mbar", "bar", "atm", "psi" -> "pressure";
            case "°C", "°F", "K" -> "temperature";
            case "g/mL", "kg/L", "kg/m³", "lb/gal", "lb/ft³", "" -> "density";
            case "lb", "kg" -> "weight";
            case "mg/kg", "g/kg", "µg/kg" -> "dose";
            case "mg/L", "µg/L", "ng/L", "g/L", "mg/m³", "ppm", "ppb", "g/100 mL", "%" -> "concentration";
            default -> unit;
        };
    }

    /** Pascals, kelvins, grams per millilitre, pounds, mg/kg or mg/L. */
    static double base(double value, String unit) {
        return switch (unit) {
            case "mmHg", "torr", "hPa", "kPa", "mPa", "MPa", "Pa", "mbar", "atm" ->
                value * VapourPressure.pascalsPer(unit);
            case "bar" -> value * 1e5;
            case "psi" -> value * PASCALS_PER_PSI;
            case "µPa" -> value * 1e-6;
            case "°C" -> value + KELVIN;
            case "°F" -> (value - 32) / 1.8 + KELVIN;
            case "kg/m³", "mg/m³", "µg/L", "ppb" -> value / 1000;
            case "lb/gal" -> value * G_ML_PER_LB_GAL;
            case "lb/ft³" -> value * G_ML_PER_LB_FT3;
            case "kg" -> value * LB_PER_KG;
            case "g/kg", "g/L" -> value * 1000;
            case "µg/kg" -> value / 1000;
            case "ng/L" -> value * 1e-6;
            case "g/100 mL", "%" -> value * 10_000;
            default -> value;
        };
    }
}
