package plumbrow.documents.label.text;

import java.util.List;
import plumbrow.documents.paper.Passage;

/**
 * A table under heads.
 *
 * @param heads the words above each column
 * @param columns what each column holds
 * @param records each with a passage, maybe an empty one, for every column
 * @param crop the crops the table stands under, as printed
 * @param caption the line above it, where it seems to be one
 */
public record Grid(
        List<String> heads,
        List<Column> columns,
        List<List<Passage>> records,
        Topic topic,
        String crop,
        String caption) {

    public Grid {
        heads = List.copyOf(heads);
        columns = List.copyOf(columns);
        records = List.copyOf(records);
    }

    /** The first column that holds something; -1 without one. */
    public int column(Column column) {
        return columns.indexOf(column);
    }
}
