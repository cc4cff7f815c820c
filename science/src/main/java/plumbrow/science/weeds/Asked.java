package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;

import java.util.List;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Working;

/** Inputs that several figures of this subject ask for, in the same words, and the curve they share. */
final class Asked {
    static final Input DENSITY =
            number("density_m2", "Weeds that compete all season", "plants/m²", Range.NOT_NEGATIVE, "5");
    static final Input LOSS_PER_PLANT =
            number("i_pct", "Loss per plant as the density goes to 0", "% per plant/m²", Range.POSITIVE, "3.2");
    static final Input HIGHEST_LOSS = number("a_pct", "Loss at very high density", "%", Range.above(0, 100), "56");
    static final String WIDE_BAND =
            "Weed-loss parameters differ between sites by a factor of several: show a band, not one number.";

    private Asked() {}

    /** Refuses a call that lacks an input its kind needs, or has one that belongs to another kind. */
    static void onlyFor(Given given, String kindKey, List<String> needed, List<String> foreign) {
        for (String key : needed) {
            if (!given.has(key)) {
                throw new FigureInputException(
                        kindKey,
                        kindKey + " is '" + given.word(kindKey) + "', which needs " + String.join(", ", needed) + "; "
                                + key + " is missing");
            }
        }
        for (String key : foreign) {
            if (given.has(key)) {
                throw given.refuse(key, "nothing: it has no part in " + kindKey + "=" + given.word(kindKey));
            }
        }
    }

    static double showLoss(Working working, double load, double highest) {
        return working.line(
                "yield lost", HyperbolicLoss.ofLoad(load, highest), "%", "{} % ÷ (1 + {} ÷ {})", load, load, highest);
    }
}
