package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;

import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Range;

/** Inputs that several figures of this subject ask for, in the same words. */
final class Asked {
    static final Input HALF_LIFE = number("half_life_d", "Half-life in soil", "d", Range.POSITIVE, "60");
    static final Input KOC = number("koc_ml_g", "Sorption to organic carbon, Koc", "mL/g", Range.POSITIVE, "100");
    static final Input RATE = number("rate_lb_ac", "Rate of active ingredient", "lb/ac", Range.NOT_NEGATIVE, "1");
    static final Input VAPOUR_PRESSURE =
            number("vapour_pressure_pa", "Vapour pressure at 20 to 25 °C", "Pa", Range.POSITIVE, "0.00418");
    static final Input SOLUBILITY = number("solubility_mg_l", "Solubility in water", "mg/L", Range.POSITIVE, "530");
    static final Input FIELD_CAPACITY =
            number("field_capacity", "Water at field capacity, share of the volume", "", Range.above(0, 1), "0.25");

    static final String SCREEN =
            "A screen to compare choices, not an assessment: a result below its level is not flagged by this screen, never safe. The label rules.";

    private Asked() {}

    static double whole(Given given, String key) {
        double value = given.number(key);
        if (value != Math.rint(value)) {
            throw given.refuse(key, "a whole number");
        }
        return value;
    }
}
