package plumbrow.documents.paper;

import java.util.List;
import java.util.stream.Collectors;

/** Words that stand together on one line, set off from their neighbours by a wide gap; at least one. */
public record Cell(List<Word> words) {

    public Cell {
        if (words.isEmpty()) {
            throw new IllegalArgumentException("a cell without a word");
        }
        words = List.copyOf(words);
    }

    public String text() {
        return words.stream().map(Word::text).collect(Collectors.joining(" "));
    }

    public Box box() {
        return words.get(0).box().around(words.get(words.size() - 1).box());
    }

    public double left() {
        return words.get(0).box().left();
    }

    public double right() {
        return words.get(words.size() - 1).box().right();
    }
}
