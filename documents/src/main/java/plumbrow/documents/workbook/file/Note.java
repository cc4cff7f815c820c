package plumbrow.documents.workbook.file;

import plumbrow.documents.workbook.form.Column;

/** The note on a column's name: what it means, unit, range, an example, and whether it may be left blank. */
final class Note {
    private Note() {}

    static String of(Column<?> column) {
        StringBuilder note = new StringBuilder(sentence(column.meaning()));
        if (!column.unit().isEmpty()) {
            note.append("\nUnit: ").append(column.unit());
        }
        note.append("\nHolds: ").append(column.kind().words());
        Column.Reference reference = column.reference();
        if (reference != null) {
            note.append("\nMust stand in: sheet ")
                    .append(reference.sheet().name())
                    .append(", column ")
                    .append(reference.column().key());
        }
        note.append("\nExample: ").append(column.example());
        note.append('\n').append(column.required() ? "Required." : blank(column));
        return note.toString();
    }

    private static String blank(Column<?> column) {
        return column.blank().isEmpty() ? "May be blank." : sentence(column.blank());
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
