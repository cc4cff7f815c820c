package plumbrow.advice.weighing;

import java.util.Comparator;
import java.util.List;
import plumbrow.science.figure.Numbers;

/**
 * What could still be told or looked up on a field, what is worth most first; nothing that is worth less than finding it out costs.
 *
 * @param inputs by what they are worth, less what they cost
 * @param says what they come to, in one sentence
 */
public record NextInputs(List<NextInput> inputs, String says) {
    /** What is worth less than this is not asked [$/ac]. */
    public static final double LEAST_USD_PER_ACRE = 0.25;

    public NextInputs {
        inputs = List.copyOf(inputs);
    }

    /** Those that are worth asking, in the order of asking. */
    public static NextInputs of(List<NextInput> all) {
        List<NextInput> inputs = all.stream()
                .filter(one -> one.usdPerAcre() >= LEAST_USD_PER_ACRE && one.netUsd() > 0)
                .sorted(Comparator.comparingDouble(NextInput::netUsd).reversed())
                .toList();
        if (inputs.isEmpty()) {
            return new NextInputs(
                    inputs,
                    "Nothing you could still tell would change this by " + Numbers.dollars(LEAST_USD_PER_ACRE, 2)
                            + "/ac or more, or by as much as finding it out costs.");
        }
        NextInput first = inputs.get(0);
        return new NextInputs(
                inputs,
                "Most is to be gained by knowing this: " + first.asks() + " Up to "
                        + Numbers.dollars(first.usdPerAcre(), 2) + "/ac, " + Numbers.dollars(first.usdField(), 0)
                        + " for the field. Values don’t add up.");
    }
}
