package plumbrow.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** Draws of single values from a seed; the odd ones too: blanks, accents, quotes, long and tiny numbers. */
final class Chances {
    private static final String[] PIECES = {
        "North",
        "é",
        "O'Dell",
        "\"80\"",
        "; DROP TABLE field",
        "日本",
        "🌽",
        "\t",
        "line\nbreak",
        "%",
        "?",
        "\\",
        "-0",
        " "
    };

    private final Random random;

    Chances(long seed) {
        this.random = new Random(seed);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    boolean yes() {
        return random.nextBoolean();
    }

    <T> @Nullable T maybe(Supplier<T> value) {
        return random.nextInt(3) == 0 ? null : value.get();
    }

    <T> List<T> some(int most, IntFunction<T> value) {
        List<T> list = new ArrayList<>();
        int size = random.nextInt(most + 1);
        for (int i = 0; i < size; i++) {
            list.add(value.apply(i));
        }
        return list;
    }

    <T> T of(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    <E extends Enum<E>> E of(Class<E> list) {
        E[] constants = list.getEnumConstants();
        return constants[random.nextInt(constants.length)];
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(4); i > 0; i--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return text.toString();
    }

    LocalDate date() {
        return LocalDate.of(1900, 1, 1).plusDays(random.nextInt(80_000));
    }

    /** A finite number of any size, whole or broken, of either sign. */
    double number() {
        return switch (random.nextInt(5)) {
            case 0 -> random.nextInt(2000) - 1000;
            case 1 -> random.nextDouble();
            case 2 -> 0;
            case 3 ->
                List.of(Double.MAX_VALUE, Double.MIN_VALUE, 0.1 + 0.2, 9007199254740992.0, -1e-300)
                        .get(below(5));
            default -> finite();
        };
    }

    Amount amount() {
        return new Amount(Math.abs(number()), of(FarmUnit.class));
    }

    Distribution distribution() {
        return switch (random.nextInt(8)) {
            case 0 -> new Distribution.Fixed(number());
            case 1 -> new Distribution.Pert(number(), number(), number());
            case 2 -> new Distribution.Triangular(number(), number(), number());
            case 3 -> new Distribution.Normal(number(), number());
            case 4 -> new Distribution.Weibull(number(), number());
            case 5 -> new Distribution.Lognormal(number(), number(), number());
            case 6 -> new Distribution.Past(some(6, i -> number()));
            default -> new Distribution.Chance(random.nextDouble());
        };
    }

    private double finite() {
        double number = Double.longBitsToDouble(random.nextLong());
        return Double.isFinite(number) && number != 0 ? number : 1;
    }
}
