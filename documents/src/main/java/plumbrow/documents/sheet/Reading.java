package plumbrow.documents.sheet;

import java.util.List;
import plumbrow.documents.paper.Quote;

/** What the sheet has to say of one thing. */
public sealed interface Reading {
    ValueKind kind();

    /** In the words of a person: the value, or why there is none. */
    String words();

    /** A reading that stands somewhere on the paper. */
    sealed interface OnPaper extends Reading {
        Quote quote();
    }

    /** The sheet says it, and it can be read in one way only. */
    record Stated(ValueKind kind, Content content, Quote quote) implements OnPaper {
        @Override
        public String words() {
            return content.words();
        }
    }

    /** The sheet has the line and says itself that there is nothing to say: "not determined". Never zero. */
    record NoData(ValueKind kind, Quote quote) implements OnPaper {
        @Override
        public String words() {
            return "the sheet says: " + quote.words();
        }
    }

    /**
     * Something stands there that can't be read, or can be read in more than one way.
     *
     * @param why what is unclear, as a sentence's end: "5.000 may be five or five thousand"
     */
    record Unclear(ValueKind kind, String why, Quote quote) implements OnPaper {
        @Override
        public String words() {
            return "unclear: " + why;
        }
    }

    /** The sheet contradicts itself. */
    record Differing(ValueKind kind, List<Stated> statements) implements Reading {
        public Differing {
            statements = List.copyOf(statements);
        }

        @Override
        public String words() {
            return "stated more than once and differing: "
                    + String.join(" / ", statements.stream().map(Stated::words).toList());
        }
    }

    /** The sheet does not speak of it. */
    record NotStated(ValueKind kind) implements Reading {
        @Override
        public String words() {
            return "not stated";
        }
    }
}
