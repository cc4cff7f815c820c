package plumbrow.documents.workbook.form;

/**
 * Words without a list.
 *
 * @param longest most characters
 * @param lines whether line breaks may stand in it
 */
public record TextKind(int longest, boolean lines) implements Kind<String> {
    /** A name by which other rows refer to this one. */
    public static final TextKind NAME = new TextKind(80, false);

    /** A remark or a source. */
    public static final TextKind PROSE = new TextKind(1000, true);

    @Override
    public String words() {
        return "text of up to " + longest + " characters";
    }

    @Override
    public String read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        if (cell instanceof Cell.Day) {
            throw new Misread(
                    "text; the spreadsheet turned this cell into a date, set its format to text and type it again");
        }
        String text = cell.found();
        if (text.length() > longest) {
            throw new Misread(words() + ", not " + text.length());
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && !(lines && (c == '\n' || c == '\t')))) {
            throw new Misread(lines ? "text without control characters" : "text on one line");
        }
        // A spreadsheet that opens a CSV file takes such text for a formula and runs it.
        if (!text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0) {
            throw new Misread("text that does not begin with = + - or @");
        }
        return text;
    }

    @Override
    public Cell show(String value) {
        return new Cell.Text(value);
    }
}
