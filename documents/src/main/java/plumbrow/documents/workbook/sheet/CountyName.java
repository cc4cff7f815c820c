package plumbrow.documents.workbook.sheet;

import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;

/** A county's name alone, so that it can be compared with labels. */
record CountyName() implements Kind<String> {
    @Override
    public String words() {
        return "a county's name, without the word County";
    }

    @Override
    public String read(Cell cell) throws Misread {
        String name = TextKind.NAME.read(cell);
        if (name.matches("(?i).*\\bcounty")) {
            throw new Misread(words());
        }
        return name;
    }

    @Override
    public Cell show(String value) {
        return TextKind.NAME.show(value);
    }

    @Override
    public Storage<String> storage() {
        return Storage.TEXT;
    }
}
