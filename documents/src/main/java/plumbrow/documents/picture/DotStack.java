package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Twenty dots that stand for the draws: each is one season in twenty, at the middle of its share of the draws. Dots
 * that would touch, or fall into the same {@code reach}, are stacked, as in the dot plots of Wilkinson 1999, The American Statistician 53:276-281.
 */
final class DotStack {
    static final int DOTS = 20;

    /** A dot: its place from the left [px] and how many lie under it. */
    record Dot(double x, int level) {}

    private DotStack() {}

    static List<Dot> of(MarginPoints points, MoneyScale scale, double reach) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < DOTS; i++) {
            places.add(scale.x(points.at((i + 0.5) / DOTS)));
        }
        List<Dot> dots = new ArrayList<>();
        int first = 0;
        while (first < DOTS) {
            int past = first;
            while (past < DOTS && places.get(past) < places.get(first) + reach) {
                past++;
            }
            double middle = (places.get(first) + places.get(past - 1)) / 2;
            for (int i = first; i < past; i++) {
                dots.add(new Dot(middle, i - first));
            }
            first = past;
        }
        return dots;
    }

    static int tallest(List<Dot> dots) {
        return dots.stream().mapToInt(Dot::level).max().orElse(0) + 1;
    }
}
