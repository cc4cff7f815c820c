package plumbrow.advice.shelf;

import java.util.Arrays;
import java.util.List;

/**
 * What a label says of another product, kind or active ingredient in the same tank.
 *
 * @param partner a product of the shelf, an active ingredient, or a kind of product; several parted by semicolons: of those asked
 *     for one must be in, of those forbidden none may be
 * @param word whether the label forbids it, asks for it, or allows nothing else
 * @param source the page of the label
 */
public record MixRule(String product, String partner, Word word, String source) {

    /** The partners one by one. */
    public List<String> partners() {
        return Arrays.stream(partner.split(";"))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /** What the label says of the partner. */
    public enum Word {
        FORBIDDEN("forbidden"),
        REQUIRED("required"),
        /** Nothing but these may be in the tank. */
        ONLY("only");

        private final String word;

        Word(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
