package plumbrow.documents.paper;

/**
 * A rectangle on a page.
 *
 * @param left, top, right, bottom in points of 1/72 inch from the upper left corner of the page
 */
public record Box(double left, double top, double right, double bottom) {

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public double middle() {
        return (top + bottom) / 2;
    }

    /** The smallest box around both. */
    public Box around(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }
}
