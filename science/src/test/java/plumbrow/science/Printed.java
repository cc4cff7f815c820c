package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Example;

/** Compares with a number as its source prints it: within one in the last printed digit. */
public final class Printed {
    private static final double ROUNDING = 1e-9;

    private Printed() {}

    public static void assertPrinted(double found, String printed) {
        assertThat(found).as("printed %s", printed).isCloseTo(Double.parseDouble(printed), within(slack(printed, 0)));
    }

    /** Whether an answer, a number, a list or a word, is the one printed; a slack of 0 is one in the last digit. */
    public static boolean agrees(@Nullable Object found, String printed, double slack) {
        if (found instanceof Double number) {
            return Math.abs(number - Double.parseDouble(printed)) <= slack(printed, slack);
        }
        if (found instanceof List<?> list && isNumeric(list)) {
            String[] cells = printed.split(",", -1);
            return list.size() == cells.length
                    && IntStream.range(0, cells.length).allMatch(i -> agrees(list.get(i), cells[i], slack));
        }
        return String.valueOf(found).equals(printed);
    }

    /** An answer as it stands beside the printed one: with one digit more. */
    public static String beside(@Nullable Object found, String printed) {
        if (found instanceof Double number) {
            BigDecimal digit = BigDecimal.valueOf(Example.lastDigit(printed));
            return new BigDecimal(number)
                    .setScale(Math.max(digit.stripTrailingZeros().scale(), 0) + 1, RoundingMode.HALF_UP)
                    .toPlainString();
        }
        if (found instanceof List<?> list && isNumeric(list)) {
            String[] cells = printed.split(",", -1);
            return IntStream.range(0, list.size())
                    .mapToObj(i -> beside(list.get(i), cells[Math.min(i, cells.length - 1)]))
                    .collect(Collectors.joining(","));
        }
        return String.valueOf(found);
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

    private static double slack(String printed, double allowed) {
        return (allowed == 0 ? Example.lastDigit(printed) : allowed) * (1 + ROUNDING);
    }

    private static boolean isNumeric(List<?> list) {
        return !list.isEmpty() && list.get(0) instanceof Double;
    }
}
