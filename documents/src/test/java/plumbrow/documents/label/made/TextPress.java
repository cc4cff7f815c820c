package plumbrow.documents.label.made;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Prints a draft as plain text of 78 columns. */
final class TextPress {
    private static final int WIDTH = 78;

    private TextPress() {}

    static byte[] print(Draft draft) {
        StringBuilder text = new StringBuilder();
        for (Block block : draft.blocks) {
            if (block instanceof Block.Heading heading) {
                text.append('\n').append(heading.text()).append('\n');
            } else if (block instanceof Block.Name name) {
                text.append('\n').append(name.text()).append("\n\n");
            } else if (block instanceof Block.Subheading sub) {
                text.append(sub.text()).append('\n');
            } else if (block instanceof Block.Paragraph paragraph) {
                wrap(paragraph.text(), WIDTH).forEach(line -> text.append(line).append('\n'));
            } else if (block instanceof Block.Bullets bullets) {
                for (String item : bullets.items()) {
                    List<String> lines = wrap(item, WIDTH - 2);
                    for (int i = 0; i < lines.size(); i++) {
                        text.append(i == 0 ? "- " : "  ").append(lines.get(i)).append('\n');
                    }
                }
            } else if (block instanceof Block.Dotted dotted) {
                text.append(dotted.label())
                        .append(' ')
                        .append(".".repeat(Math.max(4, 50 - dotted.label().length())))
                        .append(' ')
                        .append(dotted.value())
                        .append('\n');
            } else if (block instanceof Block.Boxed boxed) {
                text.append(String.join("      ", boxed.words())).append('\n');
            } else if (block instanceof Block.Table table) {
                table(table, text);
            }
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void table(Block.Table table, StringBuilder text) {
        List<List<String>> rows = new ArrayList<>();
        if (!table.heads().isEmpty()) {
            rows.add(table.heads());
        }
        rows.addAll(table.rows());
        text.append('\n');
        for (List<String> row : rows) {
            List<List<String>> cells = new ArrayList<>();
            int lines = 1;
            for (int i = 0; i < row.size(); i++) {
                List<String> cell = wrap(row.get(i), table.columns().get(i) * WIDTH / 100 - 3);
                cells.add(cell);
                lines = Math.max(lines, cell.size());
            }
            for (int line = 0; line < lines; line++) {
                StringBuilder printed = new StringBuilder();
                int start = 0;
                for (int i = 0; i < cells.size(); i++) {
                    printed.append(" ".repeat(Math.max(0, start - printed.length())));
                    printed.append(line < cells.get(i).size() ? cells.get(i).get(line) : "");
                    start += table.columns().get(i) * WIDTH / 100;
                }
                text.append(printed.toString().stripTrailing()).append('\n');
            }
        }
        text.append('\n');
    }

    private static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
