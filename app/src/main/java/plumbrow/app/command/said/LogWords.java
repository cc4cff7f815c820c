package plumbrow.app.command.said;

import java.util.List;
import plumbrow.advice.program.Done;
import plumbrow.app.book.LogLine;
import plumbrow.science.figure.Numbers;

/** Lines of the log in words. */
public final class LogWords {
    private LogWords() {}

    public static String lines(List<LogLine> lines) {
        if (lines.isEmpty()) {
            return "The log has no line yet.";
        }
        Paper paper = new Paper();
        lines.forEach(line -> paper.prose("  " + line.number() + "  ", line(line)));
        return paper.text();
    }

    /** "2026-05-04, South Slough: Ironweir 4L, 1 qt/ac, by S. Lind (log book)", and that it was struck, and why. */
    public static String line(LogLine line) {
        Done done = line.done();
        String share = done.sharePct() == 100 ? "" : " on " + Numbers.read(done.sharePct()) + " % of the field";
        String by = done.applicator() == null ? "" : ", by " + done.applicator();
        LogLine.Strike strike = line.strike();
        return done.date() + ", " + done.field() + ": " + done.words() + share + by
                + " (" + done.source() + ")"
                + (done.meant() == null ? "" : ", said to be " + done.meant().words())
                + (strike == null ? "." : ". STRUCK by " + strike.who() + ": " + strike.why());
    }
}
