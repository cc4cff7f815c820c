package plumbrow.documents.workbook.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.names.Near;

/** Reads the cells of a grid as the rows of a sheet, and objects to each cell that is not what its column asks for. */
public final class TableReader {
    private final Sheet<?> sheet;
    private final Objections objections;

    public TableReader(Sheet<?> sheet, Objections objections) {
        this.sheet = sheet;
        this.objections = objections;
    }

    public List<Row> read(Grid grid) {
        Map<Integer, Column<?>> columns = header(grid);
        List<Row> rows = new ArrayList<>();
        if (columns.isEmpty()) {
            return rows;
        }
        for (Grid.Line line : grid.rows()) {
            strays(grid, line, columns);
            rows.add(row(grid, line, columns));
        }
        if (rows.size() < sheet.fewest() || rows.size() > sheet.most()) {
            objections.at(grid.place(), 0, "", count(rows.size()), rowsWanted());
        }
        return rows;
    }

    private String rowsWanted() {
        return sheet.most() == sheet.fewest()
                ? "exactly " + count(sheet.most())
                : sheet.fewest() == 0 ? "at most " + count(sheet.most()) : "at least " + count(sheet.fewest());
    }

    private static String count(int rows) {
        return rows == 0 ? "no row" : rows == 1 ? "one row" : rows + " rows";
    }

    private Map<Integer, Column<?>> header(Grid grid) {
        Map<Integer, Column<?>> columns = new HashMap<>();
        for (int i = 0; i < grid.header().size(); i++) {
            String found = grid.header().get(i).found().strip();
            if (found.isEmpty()) {
                continue;
            }
            Column<?> column = named(found);
            if (column == null) {
                String near = Near.to(
                                found, sheet.columns().stream().map(Column::key).toList())
                        .map(name -> "; did you mean " + name + "?")
                        .orElse("");
                objections.at(grid.place(), 1, found, found, "a column name of this sheet" + near);
            } else if (columns.containsValue(column)) {
                objections.at(grid.place(), 1, column.key(), found, "each column once");
            } else {
                columns.put(i, column);
            }
        }
        if (columns.isEmpty()) {
            objections.at(grid.place(), 1, "", "no column names", "the column names in the first row");
            return columns;
        }
        for (Column<?> column : sheet.columns()) {
            if (column.required() && !columns.containsValue(column)) {
                objections.at(grid.place(), 1, column.key(), "no such column", "this column: " + column.meaning());
            }
        }
        return columns;
    }

    private @Nullable Column<?> named(String found) {
        String tidy = found.toLowerCase(Locale.ROOT);
        return sheet.columns().stream()
                .filter(column -> column.isCalled(tidy))
                .findFirst()
                .orElse(null);
    }

    private void strays(Grid grid, Grid.Line line, Map<Integer, Column<?>> columns) {
        for (int i = 0; i < line.cells().size(); i++) {
            boolean unnamed =
                    i >= grid.header().size() || grid.header().get(i).found().isBlank();
            if (unnamed && !line.cell(i).found().isBlank() && !columns.containsKey(i)) {
                objections.at(
                        line.place(grid),
                        line.number(),
                        "number " + (i + 1),
                        line.cell(i).found(),
                        "nothing, since this column has no name in the first row");
            }
        }
    }

    private Row row(Grid grid, Grid.Line line, Map<Integer, Column<?>> columns) {
        Map<String, Cell> cells = new HashMap<>();
        Map<String, Object> values = new HashMap<>();
        columns.forEach((index, column) -> {
            Cell cell = line.cell(index);
            if (!(cell instanceof Cell.Blank)) {
                cells.put(column.key(), cell);
                value(grid, line, column, cell, values);
            } else if (column.required()) {
                objections.at(
                        line.place(grid),
                        line.number(),
                        column.key(),
                        "",
                        column.kind().words());
            }
        });
        Row row = new Row(line.place(grid), line.number(), cells, values);
        sheet.checks().forEach(check -> check.check(row, objections));
        return row;
    }

    private void value(Grid grid, Grid.Line line, Column<?> column, Cell cell, Map<String, Object> values) {
        try {
            values.put(column.key(), column.kind().read(cell));
        } catch (Misread misread) {
            objections.at(line.place(grid), line.number(), column.key(), cell.found(), misread.expected());
        }
    }
}
