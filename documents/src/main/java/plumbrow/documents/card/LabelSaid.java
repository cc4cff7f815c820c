package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
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

    /** What a label that was read says of these topics. */
    public static LabelSaid of(LabelPaper label) {
        List<Value> values = new ArrayList<>();
        for (LabelReading.OnPaper reading : label.readings()) {
            topic(reading.kind()).ifPresent(topic -> values.add(value(topic, reading)));
        }
        return new LabelSaid(values);
    }

    private static Value value(Topic topic, LabelReading.OnPaper reading) {
        if (!(reading instanceof LabelReading.Stated stated)) {
            return new Value(topic, "", reading.words(), false, reading.quote());
        }
        LabelContent content = stated.content();
        if (content instanceof LabelContent.Gear gear) {
            return new Value(topic, gear.task().word(), gear.item(), true, stated.quote());
        }
        if (content instanceof LabelContent.FirstAid aid) {
            return new Value(topic, aid.route().word() + ", by the label", aid.text(), true, stated.quote());
        }
        return new Value(topic, "", content.words(), true, stated.quote());
    }

    private static Optional<Topic> topic(LabelKind kind) {
        return Optional.ofNullable(
                switch (kind) {
                    case PRODUCT_NAME -> Topic.PRODUCT_NAME;
                    case REGISTRATION -> Topic.REGISTRATION;
                    case LABEL_DATE -> Topic.DATE;
                    case SIGNAL_WORD -> Topic.SIGNAL_WORD;
                    case RESTRICTED_USE -> Topic.RESTRICTED_USE;
                    case GROUP -> Topic.GROUP;
                    case REENTRY -> Topic.REENTRY;
                    case GEAR -> Topic.GEAR;
                    case FIRST_AID -> Topic.FIRST_AID;
                    case BEES -> Topic.BEES;
                    default -> null;
                });
    }

    /** Every statement on a topic. */
    public List<Value> of(Topic topic) {
        return values.stream().filter(value -> value.topic() == topic).toList();
    }
}
