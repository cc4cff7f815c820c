package plumbrow.documents.paper;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.util.ArrayList;
import java.util.List;

/** The dark dots of a page drawn in shades of grey. */
final class Ink {
    private static final int DARK = 128;
    /** A page with fewer dark dots than this share is empty. */
    private static final double EMPTY = .0004;
    /** A gap between two digits that a point may have stood in, as a share of their height; wider beside a slim digit. */
    private static final double GAP = .36;

    private static final double GAP_BY_SLIM = .62;
    private static final double GAP_BY_TWO_SLIM = .85;
    private static final double SLIM = .36;

    private final Raster dots;
    private final int width;
    private final int height;

    Ink(BufferedImage page) {
        this.dots = page.getRaster();
        this.width = page.getWidth();
        this.height = page.getHeight();
    }

    private boolean dark(int x, int y) {
        return dots.getSample(x, y, 0) < DARK;
    }

    boolean isEmpty() {
        long dark = 0;
        long seen = 0;
        for (int y = 0; y < height; y += 2) {
            for (int x = 0; x < width; x += 2) {
                seen++;
                dark += dark(x, y) ? 1 : 0;
            }
        }
        return dark < EMPTY * seen;
    }

    /**
     * Whether a point may be lost between two digits of a word: "42.2" whose point a fax has swallowed reads as "422", but its
     * gap is still there.
     */
    boolean mayLackPoint(OpticalWord word) {
        if (!word.text().matches(".*\\d\\d.*")) {
            return false;
        }
        List<int[]> signs = signs(word);
        double tall = word.bottom() - word.top();
        if (tall <= 0 || signs.size() != word.text().length()) {
            return false; // signs that touch, or stand in parts: what goes with what can't be told
        }
        for (int i = 0; i + 1 < signs.size(); i++) {
            if (Character.isDigit(word.text().charAt(i))
                    && Character.isDigit(word.text().charAt(i + 1))) {
                double gap = (signs.get(i + 1)[0] - signs.get(i)[1]) / tall;
                int slim = slim(signs.get(i), tall) + slim(signs.get(i + 1), tall);
                if (gap > (slim == 0 ? GAP : slim == 1 ? GAP_BY_SLIM : GAP_BY_TWO_SLIM)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int slim(int[] sign, double tall) {
        return sign[1] - sign[0] < SLIM * tall ? 1 : 0;
    }

    /** Where the signs of a word begin and end, by columns that hold no ink. */
    private List<int[]> signs(OpticalWord word) {
        List<int[]> signs = new ArrayList<>();
        int from = -1;
        int right = Math.min(width - 1, word.right());
        for (int x = Math.max(0, word.left()); x <= right + 1; x++) {
            boolean ink = x <= right && inked(x, word);
            if (ink && from < 0) {
                from = x;
            } else if (!ink && from >= 0) {
                signs.add(new int[] {from, x});
                from = -1;
            }
        }
        return signs;
    }

    private boolean inked(int x, OpticalWord word) {
        for (int y = Math.max(0, word.top()); y < Math.min(height, word.bottom()); y++) {
            if (dark(x, y)) {
                return true;
            }
        }
        return false;
    }
}
