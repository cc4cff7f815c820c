package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide text comes out, so that labels can be laid out before anything draws them.
 *
 * <p>Widths of the printable ASCII characters in thousandths of the letter size, from Adobe's published metrics of
 * Helvetica (Core 14 AFM files). Arial and Liberation Sans, which the pictures ask for, have the same widths. Other
 * sans-serif faces run wider: {@link #ALLOWANCE} is kept for them.
 */
final class Lettering {
    static final String FAMILY = "Liberation Sans, Arial, Helvetica, DejaVu Sans Condensed, sans-serif";

    private static final double ALLOWANCE = 1.08;
    private static final double BOLD = 1.07;
    private static final int OTHER = 600;
    private static final int WIDE = 1000;
    private static final int FIRST_WIDE = 0x2E80;

    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, // p to ~
    };

    private Lettering() {}

    /** Width of one line [px], with the allowance. */
    static double width(String text, double size, boolean bold) {
        int thousandths = text.codePoints().map(Lettering::thousandths).sum();
        return thousandths / 1000.0 * size * ALLOWANCE * (bold ? BOLD : 1);
    }

    static int thousandths(int point) {
        if (point >= ' ' && point <= '~') {
            return WIDTHS[point - ' '];
        }
        return point >= FIRST_WIDE ? WIDE : OTHER;
    }

    /** The text in lines no wider than given; what does not fit in the last of them ends in "…". */
    static List<String> wrap(String text, double size, boolean bold, double widest, int mostLines) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip().replaceAll("\\s+", " ");
        while (!rest.isEmpty()) {
            if (width(rest, size, bold) <= widest) {
                lines.add(rest);
                return lines;
            }
            if (lines.size() == mostLines - 1) {
                lines.add(rest.substring(0, fitting(rest, size, bold, widest - width("…", size, bold)))
                                .stripTrailing() + "…");
                return lines;
            }
            int most = Math.max(fitting(rest, size, bold, widest), rest.offsetByCodePoints(0, 1));
            int space = rest.lastIndexOf(' ', most);
            int cut = space > 0 ? space : most;
            lines.add(rest.substring(0, cut).stripTrailing());
            rest = rest.substring(cut).strip();
        }
        return lines;
    }

    /** How many chars of the text fit, never cutting a code point in two. */
    private static int fitting(String text, double size, boolean bold, double widest) {
        int end = 0;
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            if (width(text.substring(0, next), size, bold) > widest) {
                break;
            }
            end = next;
        }
        return end;
    }
}
