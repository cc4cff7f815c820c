package plumbrow.documents.card;

import java.util.LinkedHashMap;
import java.util.Map;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;

/** Asks a figure. */
final class Worked {
    private final Figure figure;
    private final Map<String, String> typed = new LinkedHashMap<>();

    private Worked(Figure figure) {
        this.figure = figure;
    }

    static Worked out(Figure figure) {
        return new Worked(figure);
    }

    Worked with(String key, double value) {
        typed.put(key, Double.toString(value));
        return this;
    }

    Worked with(String key, String word) {
        typed.put(key, word);
        return this;
    }

    Answer answer() {
        return figure.answer(typed);
    }
}
