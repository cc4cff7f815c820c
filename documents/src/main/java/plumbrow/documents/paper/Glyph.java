package plumbrow.documents.paper;

/**
 * A letter as a PDF places it.
 *
 * @param text one letter, or several where the font joins them
 * @param left, right where it begins and ends [pt]
 * @param baseline of its line, from the top of the page [pt]
 * @param size of its font [pt]
 * @param blank width of a blank in its font [pt]
 */
record Glyph(String text, float left, float right, float baseline, float size, float blank) {
    private static final double ABOVE = .75;
    private static final double BELOW = .22;

    boolean isBlank() {
        return text.isBlank();
    }

    /** The same on another line. */
    Glyph on(float otherBaseline) {
        return new Glyph(text, left, right, otherBaseline, size, blank);
    }

    Box box() {
        return new Box(left, baseline - ABOVE * size, right, baseline + BELOW * size);
    }
}
