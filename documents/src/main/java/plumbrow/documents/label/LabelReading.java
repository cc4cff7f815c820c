package plumbrow.documents.label;

import java.util.List;
import plumbrow.documents.paper.Quote;

/** What a label has to say of one thing. */
public sealed interface LabelReading {
    LabelKind kind();

    /** In the words of a person: the value, or why there is none. */
    String words();

    /** A reading that stands somewhere on the paper. */
    sealed interface OnPaper extends LabelReading {
        Quote quote();
    }

    /** The label says it, and it can be read in one way only. */
    record Stated(LabelKind kind, LabelContent content, Quote quote) implements OnPaper {
        @Override
        public String words() {
            return content.words();
        }
    }

    /**
     * Something stands there that can't be read, or can be read in more than one way.
     *
     * @param why what is unclear, as a sentence's end
     */
    record Unclear(LabelKind kind, String why, Quote quote) implements OnPaper {
        @Override
        public String words() {
            return "unclear: " + why;
        }
    }

    /** The label contradicts itself. */
    record Differing(LabelKind kind, List<Stated> statements) implements LabelReading {
        public Differing {
            statements = List.copyOf(statements);
        }

        @Override
        public String words() {
            return "stated more than once and differing: "
                    + String.join(" / ", statements.stream().map(Stated::words).toList());
        }
    }

    /** The label, as far as it was read, does not speak of it. */
    record NotStated(LabelKind kind) implements LabelReading {
        @Override
        public String words() {
            return "not stated";
        }
    }
}
