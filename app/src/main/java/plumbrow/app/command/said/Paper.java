package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Lines of text as they will be shown, prose broken to a readable width. Strong type only where a terminal can. */
public final class Paper {
    /** Characters on a line of prose. */
    private static final int WIDTH = 96;

    private final StringBuilder text = new StringBuilder();

    public Paper line(String line) {
        text.append(line.stripTrailing()).append('\n');
        return this;
    }

    /** An empty line, but never two, and none at the top. */
    public Paper gap() {
        if (text.length() > 0 && !text.toString().endsWith("\n\n")) {
            text.append('\n');
        }
        return this;
    }

    /** What is read first, broken like prose. */
    public Paper heading(String words) {
        gap();
        broken(words, WIDTH).forEach(line -> line(strong(line)));
        return this;
    }

    public Paper prose(String sentences) {
        return prose("", sentences);
    }

    /** Prose whose first line starts with a mark, and whose other lines stand in below it. */
    public Paper prose(String mark, String sentences) {
        String indent = " ".repeat(length(mark));
        String start = mark;
        for (String line : broken(sentences, WIDTH - indent.length())) {
            line(start + line);
            start = indent;
        }
        return this;
    }

    public Paper table(TextTable table) {
        table.lines().forEach(this::line);
        return this;
    }

    public String text() {
        return text.toString();
    }

    /** Words that carry the answer. */
    static String strong(String words) {
        return Ansi.AUTO.enabled() ? "\u001B[1m" + words + "\u001B[0m" : words;
    }

    static int length(String shown) {
        return shown.codePointCount(0, shown.length());
    }

    private static List<String> broken(String sentences, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentences.strip().split("\\s+", -1)) {
            if (line.length() > 0 && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
