package plumbrow.documents.label.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Row;

/** Tells the Spanish half of a label from the English one: what it says is said in English too, and only that is the law. */
final class Foreign {
    private static final Pattern SPANISH = Pattern.compile(
            "(?i)(?<![\\p{L}])(?:de|del|la|las|el|los|que|en|y|con|por|para|una|un|su|se|al|si|solo|sin|lea|use|llame)(?![\\p{L}])");
    private static final Pattern ACCENT = Pattern.compile("(?i)\\p{L}*[áéíóúñ¿¡]\\p{L}*");
    private static final Pattern ENGLISH = Pattern.compile(
            "(?i)(?<![\\p{L}])(?:the|of|and|or|to|with|for|is|are|not|this|if|when|from|by|be|before|after|keep|use)(?![\\p{L}])");
    /** Words that stand on labels of either language and say the signal. */
    private static final Pattern SIGNAL = Pattern.compile("(?i)\\b(?:caution|warning|danger)\\b");

    private Foreign() {}

    /** The rows without what is Spanish; a short line between Spanish ones is too, where no English word stands in it. */
    static List<Row> without(List<Row> rows) {
        List<Row> left = new ArrayList<>();
        boolean before = false;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            List<Row> own = without(row);
            boolean between = before
                    && row.cells().size() == 1
                    && count(ENGLISH, row.text()) == 0
                    && !SIGNAL.matcher(row.text()).find()
                    && (count(SPANISH, row.text()) > 0
                            || (i + 1 < rows.size() && isSpanish(rows.get(i + 1).text())))
                    && !row.text().equals(row.text().toUpperCase(java.util.Locale.ROOT));
            before = own.isEmpty() || between;
            if (!before) {
                left.addAll(own);
            }
        }
        return left;
    }

    /** The row without its Spanish cells; empty where nothing is left. */
    private static List<Row> without(Row row) {
        if (row.cells().stream().noneMatch(cell -> isSpanish(cell.text()))) {
            return List.of(row);
        }
        List<Cell> cells = new ArrayList<>(row.cells());
        cells.removeIf(cell -> isSpanish(cell.text()));
        return cells.isEmpty() ? List.of() : List.of(new Row(row.page(), cells));
    }

    /** Whether more words of a text are plainly Spanish than plainly English, and at least two are. */
    static boolean isSpanish(String text) {
        int spanish = count(SPANISH, text) + count(ACCENT, text);
        return spanish >= 2
                && spanish > count(ENGLISH, text)
                && !SIGNAL.matcher(text).find();
    }

    private static int count(Pattern words, String text) {
        Matcher matcher = words.matcher(text);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }
}
