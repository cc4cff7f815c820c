package plumbrow.documents.picture;

import plumbrow.advice.gates.Standing;
import plumbrow.documents.picture.Canvas.Anchor;

/**
 * Marks of the standings, drawn as a field gate: closed with all its rails, closed by a question, ajar, open, or two posts
 * where nothing is asked.
 * They differ in shape, not in colour, and stay apart in greyscale.
 */
public final class StandingMark {
    private StandingMark() {}

    /** The word that always stands beside the mark. */
    public static String word(Standing standing) {
        return standing.word();
    }

    /** The mark as a picture of its own, to stand in a line of text. */
    public static String svg(Standing standing, int sizePx) {
        Canvas canvas = new Canvas();
        draw(canvas, standing, 0, 0, sizePx);
        return canvas.svg(sizePx, sizePx, standing.word(), "");
    }

    /** The marks of all standings, drawn once for a page that shows many: each is the symbol {@code mark-} and its word. */
    public static String symbols(int sizePx) {
        StringBuilder symbols = new StringBuilder();
        for (Standing standing : Standing.values()) {
            Canvas canvas = new Canvas();
            draw(canvas, standing, 0, 0, sizePx);
            symbols.append("<symbol id=\"")
                    .append(symbol(standing))
                    .append("\" viewBox=\"0 0 ")
                    .append(sizePx)
                    .append(' ')
                    .append(sizePx)
                    .append("\">")
                    .append(canvas.marks())
                    .append("</symbol>");
        }
        return symbols.toString();
    }

    /** The id of a standing's mark among the {@link #symbols}. */
    public static String symbol(Standing standing) {
        return "mark-" + standing.word().replace(' ', '-');
    }

    /** The mark within a picture, in a square whose upper left corner is given [px]. */
    static void draw(Canvas canvas, Standing standing, double x, double y, double size) {
        double post = size * 0.14;
        double left = x + post / 2 + size * 0.04;
        double right = x + size - post / 2 - size * 0.04;
        double top = y + size * 0.08;
        double foot = y + size * 0.95;
        canvas.line(left, top, left, foot, Canvas.INK, post);
        canvas.line(right, top, right, foot, Canvas.INK, post);
        switch (standing) {
            case BARRED -> {
                for (double rail : new double[] {0.24, 0.5, 0.76}) {
                    canvas.line(left, y + size * rail, right, y + size * rail, Canvas.INK, size * 0.15);
                }
            }
            case UNKNOWN ->
                canvas.text(x + size / 2, y + size * 0.82, "?", size * 0.92, Canvas.INK, true, Anchor.MIDDLE);
            case CONDITIONAL -> {
                canvas.line(left, y + size * 0.28, x + size * 0.62, y + size * 0.42, Canvas.INK, size * 0.11);
                canvas.line(left, y + size * 0.72, x + size * 0.62, y + size * 0.9, Canvas.INK, size * 0.11);
                canvas.line(x + size * 0.6, y + size * 0.38, x + size * 0.6, y + size * 0.92, Canvas.INK, size * 0.09);
            }
            case NOTHING_ASKED ->
                canvas.text(x + size / 2, y + size * 0.74, "–", size * 0.8, Canvas.INK, false, Anchor.MIDDLE);
            case CLEAR -> canvas.line(left, y + size * 0.92, right, y + size * 0.92, Canvas.INK, size * 0.06);
        }
    }
}
