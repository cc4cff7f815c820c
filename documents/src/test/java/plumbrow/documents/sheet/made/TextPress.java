package plumbrow.documents.sheet.made;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Prints a draft as plain text of 78 columns. */
final class TextPress {
    private static final int WIDTH = 78;

    private TextPress() {}

    static byte[] print(Draft draft) {
        StringBuilder text = new StringBuilder("                      MATERIAL SAFETY DATA SHEET\r\n\r\n");
        for (Block block : draft.blocks) {
            if (block instanceof Block.Heading heading) {
                text.append("\r\n")
                        .append("-".repeat(WIDTH))
                        .append("\r\n")
                        .append(heading.text())
                        .append("\r\n")
                        .append("-".repeat(WIDTH))
                        .append("\r\n");
            } else if (block instanceof Block.Subheading sub) {
                text.append(sub.text()).append("\r\n");
            } else if (block instanceof Block.Paragraph paragraph) {
                wrap(plain(paragraph.text()), WIDTH)
                        .forEach(line -> text.append(line).append("\r\n"));
            } else if (block instanceof Block.Pair pair) {
                wrap(pair.label() + ": " + plain(pair.value()), WIDTH)
                        .forEach(line -> text.append(line).append("\r\n"));
            } else if (block instanceof Block.Table table) {
                table(table, text);
            }
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void table(Block.Table table, StringBuilder text) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.heads());
        rows.addAll(table.rows());
        for (List<String> row : rows) {
            List<List<String>> cells = new ArrayList<>();
            int lines = 1;
            for (int i = 0; i < row.size(); i++) {
                List<String> cell = wrap(plain(row.get(i)), table.columns().get(i) * WIDTH / 100 - 3);
                cells.add(cell);
                lines = Math.max(lines, cell.size());
            }
            for (int line = 0; line < lines; line++) {
                StringBuilder printed = new StringBuilder();
                for (int i = 0; i < cells.size(); i++) {
                    int start = table.columns().subList(0, i).stream()
                                    .mapToInt(Integer::intValue)
                                    .sum()
                            * WIDTH
                            / 100;
                    printed.append(" ".repeat(Math.max(0, start - printed.length())));
                    printed.append(line < cells.get(i).size() ? cells.get(i).get(line) : "");
                }
                text.append(printed.toString().stripTrailing()).append("\r\n");
            }
        }
    }

    static String plain(String text) {
        return text.replaceAll("\\^\\{([^}]*)\\}", "$1");
    }

    static List<String> wrap(String text, int width) {
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
