package plumbrow.documents.workbook.form;

import java.util.ArrayList;
import java.util.List;

/**
 * Several entries in one cell, parted by semicolons; the word "none" is a list without entries.
 *
 * @param entry what each entry is
 * @param words what belongs in the cell
 */
public record ListKind<T>(Kind<T> entry, String words) implements Kind<List<T>> {
    private static final String NONE = "none";

    @Override
    public List<T> read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        if (cell.found().strip().equalsIgnoreCase(NONE)) {
            return List.of();
        }
        List<T> entries = new ArrayList<>();
        for (String part : cell.found().split(";", -1)) {
            T read = entry(part.strip());
            if (entries.contains(read)) {
                throw new Misread(words + ", each once; " + part.strip() + " stands there twice");
            }
            entries.add(read);
        }
        return List.copyOf(entries);
    }

    private T entry(String part) throws Misread {
        if (part.isEmpty()) {
            throw new Misread(words);
        }
        try {
            return entry.read(new Cell.Written(part));
        } catch (Misread misread) {
            throw new Misread(words + "; \"" + part + "\" is not " + entry.words());
        }
    }

    @Override
    public Cell show(List<T> value) {
        return new Cell.Text(
                value.isEmpty()
                        ? NONE
                        : String.join(
                                "; ",
                                value.stream()
                                        .map(each -> entry.show(each).found())
                                        .toList()));
    }

    @Override
    public Storage<List<T>> storage() {
        return new Storage.Many<>((Storage.Plain<T>) entry.storage(), entries -> entries, entries -> entries);
    }
}
