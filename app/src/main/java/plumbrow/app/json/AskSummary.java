package plumbrow.app.json;

import java.util.List;
import plumbrow.advice.ask.Box;
import plumbrow.advice.ask.Question;

/** A question and its boxes. */
public record AskSummary(String question, String asks, String about, List<OfBox> boxes) {
    /**
     * One box.
     *
     * @param expects what can be typed
     */
    public record OfBox(String box, String label, String unit, String hint, String expects) {}

    public static AskSummary of(Question question) {
        return new AskSummary(
                question.id(),
                question.asks(),
                question.about(),
                question.boxes().stream()
                        .map(box -> new OfBox(box.id(), box.label(), box.unit(), box.hint(), expects(box)))
                        .toList());
    }

    /** What can be typed into a box, in words. */
    public static String expects(Box box) {
        if (box.range() != null) {
            return "a number, " + box.range().words();
        }
        return box.day()
                ? "a day, month/day"
                : box.options().size() > 12
                        ? "a two-letter postal code"
                        : String.join(
                                ", ",
                                box.options().stream().map(Box.Option::word).toList());
    }
}
