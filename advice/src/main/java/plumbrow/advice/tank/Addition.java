package plumbrow.advice.tank;

import org.jspecify.annotations.Nullable;

/**
 * What goes into the tank with a product: an adjuvant, a conditioner. It takes no trip and no part in the money of the comparison.
 *
 * @param product the product with which it goes
 * @param field the only field for which that holds; null for all
 * @param addition what it is called on the shelf
 * @param rate how much
 * @param basis of what
 */
public record Addition(
        String product, @Nullable String field, String addition, double rate, Basis basis, String source) {
    /** What a rate is of. */
    public enum Basis {
        PERCENT("% v/v", "gal"),
        LB_PER_100_GAL("lb/100 gal", "lb"),
        GAL_PER_100_GAL("gal/100 gal", "gal"),
        QT_PER_100_GAL("qt/100 gal", "qt"),
        FL_OZ_PER_ACRE("fl oz/ac", "fl oz"),
        PT_PER_ACRE("pt/ac", "pt"),
        LB_PER_ACRE("lb/ac", "lb");

        private final String word;
        private final String unit;

        Basis(String word, String unit) {
            this.word = word;
            this.unit = unit;
        }

        public String word() {
            return word;
        }

        /** The unit of an amount at such a rate. */
        public String unit() {
            return unit;
        }

        /** Whether it goes by the acre and not by the volume of the spray. */
        public boolean perAcre() {
            return this == FL_OZ_PER_ACRE || this == PT_PER_ACRE || this == LB_PER_ACRE;
        }
    }
}
