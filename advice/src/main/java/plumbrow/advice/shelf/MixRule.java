package plumbrow.advice.shelf;

/**
 * What a label says of another product, kind or active ingredient in the same tank.
 *
 * @param partner a product of the shelf, an active ingredient, or a kind of product
 * @param word whether the label forbids it or asks for it
 * @param source the page of the label
 */
public record MixRule(String product, String partner, Word word, String source) {

    /** What the label says of the partner. */
    public enum Word {
        FORBIDDEN("forbidden"),
        REQUIRED("required");

        private final String word;

        Word(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
