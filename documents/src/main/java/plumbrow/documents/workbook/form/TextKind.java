package plumbrow.documents.workbook.form;

import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.advice.text.TextRule;

/**
 * Words without a list, as {@link TextRule} lets them in. Words of an older book that begin like a formula are written with an
 * apostrophe before them, which a spreadsheet program takes for text, and read without it.
 */
public record TextKind(TextRule rule) implements Kind<String> {
    /** A name by which other rows refer to this one. */
    public static final TextKind NAME = new TextKind(TextRule.NAME);

    /** A remark or a source. */
    public static final TextKind PROSE = new TextKind(TextRule.PROSE);

    private static final Pattern FORMULA = Pattern.compile("'*[=+@-]");
    private static final String APOSTROPHE = "'";

    @Override
    public String words() {
        return rule.words();
    }

    /** Whether line breaks may stand in it. */
    public boolean lines() {
        return rule.lines();
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
        boolean marked = text.startsWith(APOSTROPHE) && FORMULA.matcher(text).lookingAt();
        String meant = marked ? text.substring(1) : text;
        Optional<String> objection = marked ? rule.unreadable(meant) : rule.objection(meant);
        if (objection.isPresent()) {
            throw new Misread(objection.get());
        }
        return meant;
    }

    @Override
    public Cell show(String value) {
        String seen = rule.seen(value);
        return new Cell.Text(FORMULA.matcher(seen).lookingAt() ? APOSTROPHE + seen : seen);
    }

    @Override
    public Storage<String> storage() {
        return Storage.TEXT;
    }
}
