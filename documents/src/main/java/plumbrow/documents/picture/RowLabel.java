package plumbrow.documents.picture;

import plumbrow.documents.picture.Canvas.Anchor;

/** What a row of the season is called: beside it where there is room, else above it. */
final class RowLabel {
    private RowLabel() {}

    /**
     * Draws it.
     *
     * @param room width of the column of labels; 0 where there is none
     * @return where the row itself begins
     */
    static double draw(Canvas canvas, String name, String more, double room, double y) {
        if (room > 0) {
            double at = y + 14;
            for (String line : Lettering.wrap(name, 12.5, true, room - 8, 2)) {
                canvas.text(4, at, line, 12.5, Canvas.INK, true, Anchor.START);
                at += 15;
            }
            for (String line : Lettering.wrap(more, SeasonPicture.SMALL, false, room - 8, 2)) {
                canvas.text(4, at, line, SeasonPicture.SMALL, Canvas.QUIET, false, Anchor.START);
                at += 14;
            }
            return y;
        }
        String whole = more.isEmpty() ? name : name + ": " + more;
        double at = y + 14;
        for (String line : Lettering.wrap(whole, 12, false, 330, 2)) {
            canvas.labelled(4, at, line, 12, Canvas.INK, false, Anchor.START);
            at += 15;
        }
        return at - 9;
    }
}
