package plumbrow.documents.workbook.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TableReader;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.Sheets;

/** The tables of a season as the sheets of a workbook show them. */
public final class SeasonTables {
    private final Map<String, List<Line>> lines = new HashMap<>();

    /** One row; two rows that read the same are still two. */
    static final class Line {
        private final Sheet<?> sheet;
        private final Map<String, Cell> cells;

        private Line(Sheet<?> sheet, Map<String, Cell> cells) {
            this.sheet = sheet;
            this.cells = cells;
        }

        /** The texts of the cells that are not blank, by column. */
        Map<String, String> texts() {
            Map<String, String> texts = new LinkedHashMap<>();
            for (Column<?> column : sheet.columns()) {
                Cell cell = cells.get(column.key());
                if (cell != null) {
                    texts.put(column.key(), text(cell));
                }
            }
            return texts;
        }

        /** This row with other texts; cells whose text stays keep what they hold. */
        Line with(Map<String, String> texts) {
            return new Line(sheet, cells(sheet, texts, this));
        }
    }

    private SeasonTables() {}

    /** Tables without a row. */
    static SeasonTables empty() {
        SeasonTables tables = new SeasonTables();
        Sheets.ALL.forEach(sheet -> tables.lines.put(sheet.name(), new ArrayList<>()));
        return tables;
    }

    public static SeasonTables of(Season season) {
        SeasonTables tables = new SeasonTables();
        for (Sheet<?> sheet : Sheets.ALL) {
            List<Line> rows = new ArrayList<>();
            for (List<Cell> row : sheet.cells(season)) {
                Map<String, Cell> cells = new HashMap<>();
                for (int i = 0; i < row.size(); i++) {
                    if (!(row.get(i) instanceof Cell.Blank)) {
                        cells.put(sheet.columns().get(i).key(), row.get(i));
                    }
                }
                rows.add(new Line(sheet, cells));
            }
            tables.lines.put(sheet.name(), rows);
        }
        return tables;
    }

    /** The rows of a table, each as the texts of its cells that are not blank. */
    public List<Map<String, String>> rows(Sheet<?> sheet) {
        return lines(sheet).stream().map(Line::texts).toList();
    }

    /** One row of a table, counted from 0; empty where there is none. */
    public Optional<Map<String, String>> row(Sheet<?> sheet, int at) {
        List<Line> rows = lines(sheet);
        return at < 0 || at >= rows.size()
                ? Optional.empty()
                : Optional.of(rows.get(at).texts());
    }

    public int size(Sheet<?> sheet) {
        return lines(sheet).size();
    }

    List<Line> lines(Sheet<?> sheet) {
        List<Line> rows = lines.get(sheet.name());
        return rows == null ? Collections.emptyList() : rows;
    }

    static Line line(Sheet<?> sheet, Map<String, String> texts) {
        return new Line(sheet, cells(sheet, texts, null));
    }

    /** All rows read again by their columns, with what is wrong with them. */
    Tables read(Objections objections) {
        Map<String, List<Row>> rows = new HashMap<>();
        for (Sheet<?> sheet : Sheets.ALL) {
            rows.put(sheet.name(), new TableReader(sheet, objections).read(grid(sheet)));
        }
        return new Tables(rows);
    }

    private Grid grid(Sheet<?> sheet) {
        List<Cell> header = new ArrayList<>();
        sheet.columns().forEach(column -> header.add(new Cell.Text(column.key())));
        List<Grid.Line> grid = new ArrayList<>();
        for (Line line : lines(sheet)) {
            List<Cell> cells = new ArrayList<>();
            sheet.columns().forEach(column -> cells.add(line.cells.getOrDefault(column.key(), Cell.BLANK)));
            grid.add(new Grid.Line(grid.size() + 2, cells));
        }
        return new Grid(sheet.name(), sheet.name(), header, grid);
    }

    private static Map<String, Cell> cells(Sheet<?> sheet, Map<String, String> texts, @Nullable Line before) {
        Map<String, Cell> cells = new HashMap<>();
        for (Column<?> column : sheet.columns()) {
            String text =
                    texts.getOrDefault(column.key(), "").replace("\r\n", "\n").strip();
            Cell old = before == null ? null : before.cells.get(column.key());
            if (old != null && text(old).equals(text)) {
                cells.put(column.key(), old);
            } else if (!text.isEmpty()) {
                cells.put(column.key(), new Cell.Written(text));
            }
        }
        return cells;
    }

    /** As a person sees it, with the sign of a negative zero, which is kept as any other number. */
    private static String text(Cell cell) {
        boolean negativeZero = cell instanceof Cell.Numeral number
                && number.value() == 0
                && Double.doubleToRawLongBits(number.value()) != 0;
        return negativeZero ? "-0" : cell.found();
    }
}
