package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;

/**
 * A web page as paper: one page, each block and each table row one row, each table cell one cell of its column.
 *
 * Nothing is fetched and no script is run. Boxes say only the order: a web page has no fixed places.
 */
final class HtmlPaper {
    private static final double COLUMN = 200;
    private static final double DOWN = 12;
    private static final double WIDTH = 612;

    private HtmlPaper() {}

    static Paper read(String html, Predicate<String> landmark) {
        Document document = Jsoup.parse(html);
        List<String> notices = document.select("script").isEmpty()
                ? List.of()
                : List.of("The page carries a script. It was not run; what it would have shown is not here.");
        document.select("script,style,template,noscript,head,[hidden]").remove();
        Blocks blocks = new Blocks();
        document.body().traverse(blocks);
        blocks.endRow();
        double height = (blocks.rows.size() + 1) * DOWN;
        return Leaf.bind(Paper.Kind.HTML, List.of(new Leaf(WIDTH, height, blocks.rows)), notices, landmark);
    }

    /** Gathers the rows while walking through the page. */
    private static final class Blocks implements NodeVisitor {
        final List<Row> rows = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();
        private final List<Cell> cells = new ArrayList<>();
        private int column;

        @Override
        public void head(Node node, int depth) {
            if (node instanceof TextNode words) {
                text.append(words.getWholeText());
            } else if (node instanceof Element element) {
                if (isCell(element)) {
                    endCell();
                } else if (element.isBlock() || element.normalName().equals("br")) {
                    if (!inTableRow(element)) {
                        endRow();
                    } else {
                        text.append(' ');
                    }
                }
            }
        }

        @Override
        public void tail(Node node, int depth) {
            if (!(node instanceof Element element)) {
                return;
            }
            if (isCell(element)) {
                endCell();
                column += span(element);
            } else if (element.normalName().equals("tr") || (element.isBlock() && !inTableRow(element))) {
                endRow();
            } else if (element.isBlock()) {
                text.append(' ');
            }
        }

        private static boolean isCell(Element element) {
            String name = element.normalName();
            return name.equals("td") || name.equals("th") || name.equals("dd");
        }

        /** What stands inside a cell without a table of its own stays in that cell. */
        private static boolean inTableRow(Element element) {
            Element cell = element.closest("td,th");
            return cell != null && !isCell(element) && cell.select("table").isEmpty();
        }

        private static int span(Element cell) {
            String span = cell.attr("colspan");
            return span.matches("\\d{1,2}") ? Math.max(1, Integer.parseInt(span)) : 1;
        }

        private void endCell() {
            String[] words = text.toString().strip().split("\\s+", -1);
            text.setLength(0);
            if (words[0].isEmpty()) {
                return;
            }
            double step = (COLUMN - 2 * DOWN) / words.length;
            double top = rows.size() * DOWN;
            List<Word> cell = new ArrayList<>();
            for (int i = 0; i < words.length; i++) {
                double left = column * COLUMN + i * step;
                cell.add(new Word(words[i], new Box(left, top, left + step, top + DOWN)));
            }
            cells.add(new Cell(cell));
        }

        void endRow() {
            if (!cells.isEmpty() && text.toString().isBlank()) {
                text.setLength(0);
            }
            endCell();
            if (!cells.isEmpty()) {
                rows.add(new Row(1, cells));
                cells.clear();
            }
            column = 0;
        }
    }
}
