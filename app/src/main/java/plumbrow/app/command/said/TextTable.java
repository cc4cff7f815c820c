package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.List;

/** A table of text: words to the left, numbers to the right, a unit under each heading. */
public final class TextTable {
    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    private record Column(boolean right, String head, String unit) {}

    private TextTable(List<Column> columns) {
        this.columns = columns;
    }

    public static TextTable empty() {
        return new TextTable(new ArrayList<>());
    }

    TextTable words(String head) {
        columns.add(new Column(false, head, ""));
        return this;
    }

    TextTable numbers(String head, String unit) {
        columns.add(new Column(true, head, unit));
        return this;
    }

    TextTable row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    boolean hasRows() {
        return !rows.isEmpty();
    }

    /** Headings only where a column has one, units only where a column has one. */
    List<String> lines() {
        List<List<String>> all = new ArrayList<>();
        List<String> heads = columns.stream().map(Column::head).toList();
        List<String> units = columns.stream().map(Column::unit).toList();
        for (List<String> above : List.of(heads, units)) {
            if (above.stream().anyMatch(cell -> !cell.isEmpty())) {
                all.add(above);
            }
        }
        all.addAll(rows);
        return all.stream().map(row -> line(row, all)).toList();
    }

    private String line(List<String> row, List<List<String>> all) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            int width = all.stream()
                    .mapToInt(cells -> Paper.length(cells.get(column)))
                    .max()
                    .orElse(0);
            String blanks = " ".repeat(width - Paper.length(row.get(i)));
            line.append(i == 0 ? "  " : "   ")
                    .append(columns.get(i).right() ? blanks + row.get(i) : row.get(i) + blanks);
        }
        return line.toString();
    }
}
