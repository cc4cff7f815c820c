package plumbrow.documents.label.text;

import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;

/**
 * One sentence of a label, or one item of a list.
 *
 * @param crop the crops it stands under, as printed; empty for none
 * @param under the nearest heading or line that ends with a colon above it; may be empty
 */
public record Sentence(Passage passage, Topic topic, String crop, String under) {
    public String text() {
        return passage.text();
    }

    public Quote quote() {
        return passage.quote();
    }
}
