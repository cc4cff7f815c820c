package plumbrow.documents.card;

import java.util.List;
import plumbrow.documents.paper.Quote;

/**
 * What a card takes from a label.
 *
 * @param values in the order of the label
 */
public record LabelSaid(List<Value> values) {
    /** What of. */
    public enum Topic {
        PRODUCT_NAME,
        REGISTRATION,
        DATE,
        SIGNAL_WORD,
        RESTRICTED_USE,
        GROUP,
        REENTRY,
        GEAR,
        FIRST_AID,
        WORKING_IN,
        BEES
    }

    /**
     * One statement.
     *
     * @param about what it is about within its topic, such as "mixers and loaders"; may be empty
     * @param clear whether it can be read in one way only
     */
    public record Value(Topic topic, String about, String words, boolean clear, Quote quote) {}

    public LabelSaid {
        values = List.copyOf(values);
    }

    /** Every statement on a topic. */
    public List<Value> of(Topic topic) {
        return values.stream().filter(value -> value.topic() == topic).toList();
    }
}
