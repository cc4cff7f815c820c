package plumbrow.documents.card;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import plumbrow.advice.quantity.Amount;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Numbers;

/** A spill in words: what one container is of the quantity, and how much reaches it. */
final class SpillWords {
    private SpillWords() {}

    static String of(Answer spill, Optional<Amount> container) {
        boolean dry = spill.outputs().containsKey("lb_to_rq");
        String needed = two(spill.number(dry ? "lb_to_rq" : "gal_to_rq")) + (dry ? " lb" : " gal") + " of product";
        if (container.isEmpty()) {
            return needed + " reach it";
        }
        String share = two(spill.number("share_of_rq"));
        if (spill.word("reaches_rq").equals("yes")) {
            return "one container holds " + share + " times the quantity: REPORT it; " + needed + " reach it";
        }
        double containers = spill.number("containers_to_rq");
        return "one container holds " + share + " of the quantity; " + Numbers.plain(containers)
                + " containers reach it (" + needed + ")";
    }

    private static String two(double value) {
        return Numbers.plain(new BigDecimal(value).round(new MathContext(2)).doubleValue());
    }
}
