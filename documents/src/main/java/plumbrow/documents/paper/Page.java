package plumbrow.documents.paper;

import java.util.List;

/**
 * A page in reading order.
 *
 * @param number from 1
 * @param width, height in points
 * @param rows without running heads and page numbers; empty where the page has no text, as a scanned one
 */
public record Page(int number, double width, double height, List<Row> rows) {

    public Page {
        rows = List.copyOf(rows);
    }
}
