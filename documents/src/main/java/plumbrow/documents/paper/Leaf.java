package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A page as it was printed, its rows from top to bottom, before heads are taken off and columns put in order. */
record Leaf(double width, double height, List<Row> rows) {

    /** Puts the pages of a file together. */
    static Paper bind(Paper.Kind kind, List<Leaf> leaves, List<String> notices, Predicate<String> landmark) {
        return bind(kind, leaves, notices, Optical.NONE, landmark);
    }

    /** The same where pages were made out by OCR. */
    static Paper bind(
            Paper.Kind kind, List<Leaf> leaves, List<String> notices, Optical optical, Predicate<String> landmark) {
        List<List<Row>> printed = leaves.stream().map(Leaf::rows).toList();
        RunningHeads heads = new RunningHeads(printed, landmark);
        List<List<Row>> bodies = printed.stream().map(heads::without).toList();
        Columns columns = new Columns(bodies, landmark);
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < leaves.size(); i++) {
            Leaf leaf = leaves.get(i);
            pages.add(new Page(i + 1, leaf.width, leaf.height, columns.inOrder(bodies.get(i))));
        }
        return new Paper(kind, pages, heads.found(), notices, optical);
    }
}
