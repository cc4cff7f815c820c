package plumbrow.advice.gates;

import java.util.List;

/**
 * Whether what the label asks of whoever handles the product was read.
 *
 * <p>Protects people. One finding for each product of which nothing of it was read, in place of one from every gate that
 * needs it.
 *
 * <p>Source: the label. Needs: a row of care for each product.
 */
final class CareRead extends Question {
    private static final String LIST =
            "restricted use, protective equipment, endangered-species bulletin, ground water, bees, "
                    + "saturated ground, rain ahead, and on which day a person held the values against the label";

    CareRead() {
        super("care-read", Protects.PEOPLE, "Has been read what the label asks of whoever handles it?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.byProduct().keySet().stream()
                .filter(product -> at.care(product).isEmpty())
                .map(product -> unknown(
                        product,
                        "What the label asks of whoever handles " + product + " has not been read.",
                        "Look up on the " + product + " label: " + LIST + "."))
                .toList();
    }
}
