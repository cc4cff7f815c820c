package plumbrow.app.desk.figures;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Subject;

/** The figures that hold every word asked for, by subject. */
public record FigureIndex(String asked, int of, List<Shelf> shelves) {

    /** The figures of one subject. */
    public record Shelf(Subject subject, List<Figure> figures) {}

    static FigureIndex of(List<Figure> all, String asked) {
        List<String> words =
                Arrays.asList(asked.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        List<Shelf> shelves = new ArrayList<>();
        for (Subject subject : Subject.values()) {
            List<Figure> found = all.stream()
                    .filter(figure -> figure.subject() == subject && holds(figure, words))
                    .toList();
            if (!found.isEmpty()) {
                shelves.add(new Shelf(subject, found));
            }
        }
        return new FigureIndex(asked, all.size(), List.copyOf(shelves));
    }

    public int found() {
        return shelves.stream().mapToInt(shelf -> shelf.figures().size()).sum();
    }

    private static boolean holds(Figure figure, List<String> words) {
        String text =
                (figure.question() + " " + figure.id() + " " + figure.subject().title()).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(text::contains);
    }
}
