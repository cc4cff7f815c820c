package plumbrow.documents.workbook.file;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Sheet;

/** Takes the filled cells out of one sheet's XML as it streams by. */
final class SheetReader extends DefaultHandler {
    private final String name;
    private final CellBudget budget;
    private final Objections objections;
    private final RawCell cell;
    private final List<Grid.Line> lines = new ArrayList<>();
    private List<Cell> header = List.of();
    private List<Cell> cells = new ArrayList<>();
    private int row;
    private int column;

    SheetReader(String name, SharedText texts, Formats formats, CellBudget budget, Objections objections) {
        this.name = name;
        this.budget = budget;
        this.objections = objections;
        this.cell = new RawCell(texts, formats);
    }

    Grid grid() {
        return new Grid(name, name, header, lines);
    }

    @Override
    public void startElement(String uri, String element, String prefixed, Attributes attributes) {
        switch (element) {
            case "row" -> {
                String number = attributes.getValue("r");
                row = number != null && number.matches("\\d{1,7}") ? Integer.parseInt(number) : row + 1;
                cells = new ArrayList<>();
                column = -1;
            }
            case "c" -> {
                String reference = attributes.getValue("r");
                column = reference == null ? column + 1 : column(reference);
                cell.start(attributes);
            }
            default -> cell.open(element);
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        cell.characters(characters, start, length);
    }

    @Override
    public void endElement(String uri, String element, String prefixed) throws SAXException {
        switch (element) {
            case "row" -> endRow();
            case "c" -> endCell(cell.end());
            default -> cell.close(element);
        }
    }

    private void endCell(Cell read) throws SAXException {
        if (read instanceof Cell.Blank) {
            return;
        }
        if (!budget.take()) {
            TooMany.cells(name, objections);
            throw new EnoughRead();
        }
        if (column >= Limits.COLUMNS) {
            objections.at(name, row, "number " + (column + 1), read.found(), "nothing so far to the right");
            return;
        }
        while (cells.size() <= column) {
            cells.add(Cell.BLANK);
        }
        cells.set(column, read);
    }

    private void endRow() throws SAXException {
        if (row == 1) {
            header = cells;
        } else if (!cells.isEmpty()) {
            if (lines.size() == Sheet.MOST_ROWS) {
                TooMany.rows(name, objections);
                throw new EnoughRead();
            }
            lines.add(new Grid.Line(row, cells));
        }
    }

    /** The index of the column in a cell's reference: A1 is 0, AB7 is 27. */
    private static int column(String reference) {
        int index = 0;
        for (int i = 0; i < Math.min(reference.length(), 4); i++) {
            char letter = reference.charAt(i);
            if (letter < 'A' || letter > 'Z') {
                break;
            }
            index = index * 26 + (letter - 'A' + 1);
        }
        return Math.max(0, index - 1);
    }
}
