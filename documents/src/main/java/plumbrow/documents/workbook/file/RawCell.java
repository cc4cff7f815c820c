package plumbrow.documents.workbook.file;

import org.xml.sax.Attributes;
import plumbrow.documents.workbook.form.Cell;

/**
 * One cell of a sheet's XML while it streams by. Of a formula only the value is taken that the spreadsheet program
 * worked out and saved with it.
 */
final class RawCell {
    private static final String WORK_OUT =
            "a value; open the workbook in a spreadsheet program, let it work out the formula and save it";

    private final SharedText texts;
    private final Formats formats;
    private final StringBuilder value = new StringBuilder();
    private String type = "n";
    private String style = "";
    private boolean formula;
    private boolean inValue;
    private boolean inReadingAid;

    RawCell(SharedText texts, Formats formats) {
        this.texts = texts;
        this.formats = formats;
    }

    void start(Attributes attributes) {
        String kind = attributes.getValue("t");
        String look = attributes.getValue("s");
        type = kind == null ? "n" : kind;
        style = look == null ? "" : look;
        formula = false;
        value.setLength(0);
    }

    void open(String element) {
        switch (element) {
            case "v", "t" -> inValue = !inReadingAid;
            case "f" -> formula = true;
            case "rPh" -> inReadingAid = true;
            default -> {}
        }
    }

    void close(String element) {
        switch (element) {
            case "v", "t" -> inValue = false;
            case "rPh" -> inReadingAid = false;
            default -> {}
        }
    }

    void characters(char[] characters, int start, int length) {
        // One more than a cell may hold, so that the cell is refused rather than cut.
        if (inValue && value.length() <= Limits.CELL_CHARACTERS) {
            value.append(characters, start, Math.min(length, Limits.CELL_CHARACTERS + 1 - value.length()));
        }
    }

    Cell end() {
        String raw = value.toString();
        if (formula && raw.isEmpty() && !type.equals("str")) {
            return new Cell.Broken("a formula without a value", WORK_OUT);
        }
        return switch (type) {
            case "s" ->
                raw.isEmpty()
                        ? Cell.BLANK
                        : texts.get(raw.strip()).map(RawCell::text).orElseGet(RawCell::lost);
            case "str", "inlineStr" -> text(raw);
            case "b" -> new Cell.Truth(raw.strip().equals("1"));
            case "e" -> new Cell.Broken(raw, "a value; the formula in this cell failed");
            case "d" -> text(raw.replaceFirst("T00:00:00.*", ""));
            default -> number(raw.strip());
        };
    }

    private Cell number(String raw) {
        if (raw.isEmpty()) {
            return Cell.BLANK;
        }
        try {
            double number = Double.parseDouble(raw);
            return Double.isFinite(number) ? formats.cell(number, style) : lost();
        } catch (NumberFormatException none) {
            return lost();
        }
    }

    private static Cell text(String raw) {
        String tidy = raw.replace("\r\n", "\n").strip();
        return tidy.isEmpty() ? Cell.BLANK : new Cell.Text(tidy);
    }

    private static Cell lost() {
        return new Cell.Broken("a broken cell", "a value; type it again");
    }
}
