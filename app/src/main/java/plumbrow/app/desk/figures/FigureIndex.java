package plumbrow.app.desk.figures;

import java.util.Arrays;
import java.util.List;
import plumbrow.science.FigureSearch;
import plumbrow.science.Figures;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Subject;

/**
 * The figures by subject, or those that answer a question.
 *
 * @param asked the question as typed, blank for none
 * @param nearest the figures that answer it, nearest first; empty where none is asked
 */
public record FigureIndex(String asked, List<Figure> nearest) {

    /** The figures of one subject. */
    public record Shelf(Subject subject, List<Figure> figures) {}

    static FigureIndex of(String asked) {
        return new FigureIndex(asked, asked.isBlank() ? List.of() : FigureSearch.find(asked));
    }

    /** How many figures there are. */
    public int of() {
        return Figures.all().size();
    }

    /** Every figure under its subject. */
    public List<Shelf> shelves() {
        return Arrays.stream(Subject.values())
                .map(subject -> new Shelf(
                        subject,
                        Figures.all().stream()
                                .filter(figure -> figure.subject() == subject)
                                .toList()))
                .toList();
    }
}
