package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import plumbrow.science.figure.Example;

/** Compares with a number as its source prints it: within one in the last printed digit. */
public final class Printed {
    private static final double ROUNDING = 1e-9;

    private Printed() {}

    public static void assertPrinted(double found, String printed) {
        double expected = Double.parseDouble(printed);
        double slack = Example.lastDigit(printed) * (1 + ROUNDING);
        assertThat(found).as("printed %s", printed).isCloseTo(expected, within(slack));
    }

    /** Numbers with blanks between, as a table prints them. */
    public static double[] numbers(String row) {
        String[] cells = row.strip().split("\\s+", -1);
        double[] values = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            values[i] = Double.parseDouble(cells[i]);
        }
        return values;
    }
}
