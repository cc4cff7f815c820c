package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;

import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Range;

/** Inputs that several figures of this subject ask for, in the same words. */
final class Asked {
    static final Input VOLUME = number("gpa", "Spray volume on the treated area", "gal/ac", Range.POSITIVE, "15");
    static final Input SPEED = number("mph", "Ground speed", "mph", Range.POSITIVE, "10");
    static final Input SPACING = number(
            "spacing_in", "Nozzle spacing; for bands the band width; boomless the swath", "in", Range.POSITIVE, "20");
    static final Input ROW_SPACING = number("row_spacing_in", "Row spacing", "in", Range.POSITIVE, "30");
    static final Input RATED_FLOW =
            number("rated_gpm", "Flow of the nozzle at its rated pressure", "gal/min", Range.POSITIVE, "0.4");
    static final Input RATED_PRESSURE = number("rated_psi", "Pressure of the rated flow", "psi", Range.POSITIVE, "40")
            .orElse("40");
    static final String LABEL_RULES =
            "The label's volume, pressure, droplet class and speed are the law; this is arithmetic.";

    private Asked() {}

    static double whole(Given given, String key) {
        double value = given.number(key);
        if (value != Math.rint(value)) {
            throw given.refuse(key, "a whole number");
        }
        return value;
    }
}
