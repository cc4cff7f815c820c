package plumbrow.documents.card;

import java.util.List;

/**
 * A product among everyday substances, by the dose that kills half of the rats that swallow it once.
 *
 * @param entries from the least dose to the largest; empty where the product's own is unknown
 */
public record EverydayScale(List<Entry> entries) {
    public static final String CAUTION =
            "It speaks of one dose swallowed, and of rats: not of skin, eyes or lungs, not of years of use, of cancer, birth or"
                    + " nerves, not of wildlife, not of how much a person meets. It is no safety rating.";

    /**
     * One substance on the scale.
     *
     * @param ld50MgPerKg half-lethal dose [mg/kg]
     * @param atLeast whether the dose is a limit that was not reached
     * @param own whether it is the product
     * @param says the comparison in words; empty for the product itself
     * @param source where the dose stands
     */
    public record Entry(String name, double ld50MgPerKg, boolean atLeast, boolean own, String says, String source) {}

    public EverydayScale {
        entries = List.copyOf(entries);
    }
}
