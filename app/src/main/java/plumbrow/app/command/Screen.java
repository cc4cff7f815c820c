package plumbrow.app.command;

import java.io.PrintWriter;

/**
 * Where a command speaks to.
 *
 * @param out answers
 * @param err what went wrong, and progress
 * @param terminal whether a person looks on: only then is there progress
 */
public record Screen(PrintWriter out, PrintWriter err, boolean terminal) {
    void say(String text) {
        out.print(Terminal.plain(text));
        out.print(text.endsWith("\n") ? "" : "\n");
    }

    /** What went wrong, on a line of its own. */
    void complain(String sentence) {
        err.println(Terminal.plain(sentence));
    }
}
