package plumbrow.app.book;

import java.util.Arrays;
import java.util.Optional;

/** What is written down for good: only ever added to, and linked in the chain. */
enum RecordKind {
    LOG_LINE("log line", "log_line", "number", "Line %d of the log"),
    STRIKE("strike", "log_strike", "line", "The strike of line %d of the log"),
    LOG_PASS("pass of a log line", "log_pass", "number", "Answer %d on which pass a line of the log was"),
    CHOICE("choice", "choice", "number", "Choice %d"),
    PAPER("paper", "paper", "number", "Paper %d"),
    TYPED("typed value", "paper_typed", "number", "Typed value %d"),
    LABEL_VALUE("label value", "label_decision", "number", "Label value %d"),
    EXPECTATION("expectation", "expectation", "number", "Expectation %d"),
    HARVEST("harvest", "harvest", "number", "Harvest %d"),
    MEND("mended value", "paper_mend", "number", "Mended value %d"),
    RECORD("application record", "application_record", "number", "Application record %d"),
    RECORD_PRODUCT(
            "product of a record", "record_product", "line", "What line %d of the log has of its application record"),
    RECORD_VOID("void of a record", "record_void", "record", "The voiding of application record %d");

    private final String word;
    private final String table;
    private final String key;
    private final String words;

    RecordKind(String word, String table, String key, String words) {
        this.word = word;
        this.table = table;
        this.key = key;
        this.words = words;
    }

    /** As the chain names it. */
    String word() {
        return word;
    }

    String table() {
        return table;
    }

    /** The column that numbers its rows. */
    String key() {
        return key;
    }

    /** "Line 3 of the log". */
    String words(int entry) {
        return words.formatted(entry);
    }

    static Optional<RecordKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
