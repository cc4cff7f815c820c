package plumbrow.documents.picture;

import java.util.List;
import java.util.Locale;

/** SVG 1.1 written mark by mark, with attributes only: what both browsers and the PDF writer draw alike. */
final class Canvas {
    static final String INK = "#1a1a1a";
    static final String QUIET = "#595959";
    static final String HAIRLINE = "#d0d0d0";
    static final String PAPER = "#ffffff";

    /** Where a text is held. */
    enum Anchor {
        START,
        MIDDLE,
        END;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final StringBuilder marks = new StringBuilder();

    Canvas line(double x1, double y1, double x2, double y2, String stroke, double width) {
        marks.append("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%s\"/>"
                .formatted(px(x1), px(y1), px(x2), px(y2), stroke, px(width)));
        return this;
    }

    Canvas dashed(double x1, double y1, double x2, double y2, String stroke, double width, String dashes) {
        marks.append(("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%s\""
                        + " stroke-dasharray=\"%s\"/>")
                .formatted(px(x1), px(y1), px(x2), px(y2), stroke, px(width), dashes));
        return this;
    }

    Canvas rect(double x, double y, double width, double height, String fill, double opacity) {
        marks.append("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" fill-opacity=\"%s\"/>"
                .formatted(px(x), px(y), px(Math.max(0, width)), px(height), fill, px(opacity)));
        return this;
    }

    Canvas frame(double x, double y, double width, double height, String stroke, double thickness) {
        marks.append(("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"none\" stroke=\"%s\""
                        + " stroke-width=\"%s\"/>")
                .formatted(px(x), px(y), px(Math.max(0, width)), px(height), stroke, px(thickness)));
        return this;
    }

    Canvas dot(double x, double y, double radius, String fill, String stroke) {
        marks.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1\"/>"
                .formatted(px(x), px(y), px(radius), fill, stroke));
        return this;
    }

    /** What lies between two lines over the same places, filled. */
    Canvas area(double[] xs, double[] tops, double[] bottoms, String fill, double opacity) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < xs.length; i++) {
            path.append(i == 0 ? "M" : " L").append(px(xs[i])).append(' ').append(px(tops[i]));
        }
        for (int i = xs.length - 1; i >= 0; i--) {
            path.append(" L").append(px(xs[i])).append(' ').append(px(bottoms[i]));
        }
        marks.append("<path d=\"%s Z\" fill=\"%s\" fill-opacity=\"%s\"/>".formatted(path, fill, px(opacity)));
        return this;
    }

    /** A line through points; dashes may be empty for a line without gaps. */
    Canvas program(double[] xs, double[] ys, String stroke, double width, String dashes) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < xs.length; i++) {
            path.append(i == 0 ? "M" : " L").append(px(xs[i])).append(' ').append(px(ys[i]));
        }
        marks.append("<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\" stroke-linejoin=\"round\"%s/>"
                .formatted(path, stroke, px(width), dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\""));
        return this;
    }

    Canvas diamond(double x, double y, double reach, String fill, String stroke) {
        marks.append("<path d=\"M%s %s L%s %s L%s %s L%s %s Z\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1\"/>"
                .formatted(
                        px(x),
                        px(y - reach),
                        px(x + reach),
                        px(y),
                        px(x),
                        px(y + reach),
                        px(x - reach),
                        px(y),
                        fill,
                        stroke));
        return this;
    }

    /** A closed area through points x, y, x, y … */
    Canvas area(List<double[]> points, String fill, double opacity) {
        if (points.size() > 1) {
            marks.append(
                    "<path d=\"%sZ\" fill=\"%s\" fill-opacity=\"%s\"/>".formatted(path(points), fill, px(opacity)));
        }
        return this;
    }

    /** A line through points. */
    Canvas trail(List<double[]> points, String stroke, double width, String dashes) {
        if (points.size() > 1) {
            marks.append("<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"%s/>"
                    .formatted(
                            path(points),
                            stroke,
                            px(width),
                            dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\""));
        }
        return this;
    }

    /** Slanted lines in a box, as on what is barred or not known. */
    Canvas hatch(double x, double y, double width, double height, String stroke, double step) {
        StringBuilder lines = new StringBuilder();
        for (double at = x - height; at < x + width; at += step) {
            double from = Math.max(at, x);
            double to = Math.min(at + height, x + width);
            if (to > from) {
                lines.append("M%s %sL%s %s"
                        .formatted(px(from), px(y + height - (from - at)), px(to), px(y + height - (to - at))));
            }
        }
        if (!lines.isEmpty()) {
            marks.append("<path d=\"%s\" stroke=\"%s\" stroke-width=\"1\"/>".formatted(lines, stroke));
        }
        return this;
    }

    /** A shape in the words of an SVG path, holes left out of the fill. */
    Canvas shape(String path, String fill, double opacity, String stroke, double width, String dashes) {
        marks.append(
                "<path d=\"%s\" fill=\"%s\" fill-opacity=\"%s\" fill-rule=\"evenodd\" stroke=\"%s\" stroke-width=\"%s\"%s/>"
                        .formatted(
                                path,
                                fill,
                                px(opacity),
                                stroke,
                                px(width),
                                dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\""));
        return this;
    }

    private static String path(List<double[]> points) {
        StringBuilder path = new StringBuilder();
        for (double[] point : points) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(px(point[0]))
                    .append(' ')
                    .append(px(point[1]));
        }
        return path.toString();
    }

    Canvas text(double x, double y, String text, double size, String fill, boolean bold, Anchor anchor) {
        marks.append("<text x=\"%s\" y=\"%s\" font-size=\"%s\" fill=\"%s\" text-anchor=\"%s\"%s>%s</text>"
                .formatted(
                        px(x),
                        px(y),
                        px(size),
                        fill,
                        anchor.word(),
                        bold ? " font-weight=\"bold\"" : "",
                        Markup.escape(text)));
        return this;
    }

    /** Text on a strip of paper, so that a line behind it does not cut through the letters. */
    Canvas labelled(double x, double y, String text, double size, String fill, boolean bold, Anchor anchor) {
        double width = Lettering.width(text, size, bold);
        double left = switch (anchor) {
            case START -> x;
            case MIDDLE -> x - width / 2;
            case END -> x - width;
        };
        rect(left - 1, y - size * 0.85, width + 2, size * 1.1, PAPER, 0.9);
        return text(x, y, text, size, fill, bold, anchor);
    }

    /** Begins a group that tells its full text to whoever points at it. */
    Canvas open(String title) {
        marks.append("<g><title>").append(Markup.escape(title)).append("</title>");
        return this;
    }

    Canvas close() {
        marks.append("</g>");
        return this;
    }

    /** Lays another canvas on top of this one. */
    Canvas include(Canvas other) {
        marks.append(other.marks);
        return this;
    }

    /** What was drawn, without a picture around it. */
    String marks() {
        return marks.toString();
    }

    /** The whole picture. The finding stands in title and description, for whoever hears it instead of seeing it. */
    String svg(double width, double exactHeight, String title, String description) {
        double height = Math.ceil(exactHeight); // the PDF writer takes whole sizes only
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"%s\" width=\"%s\" height=\"%s\""
                        + " viewBox=\"0 0 %s %s\" font-family=\"%s\"><title>%s</title><desc>%s</desc>%s</svg>")
                .formatted(
                        Markup.escape(description.isEmpty() ? title : title + ". " + description),
                        px(width),
                        px(height),
                        px(width),
                        px(height),
                        Lettering.FAMILY,
                        Markup.escape(title),
                        Markup.escape(description),
                        marks);
    }

    /** At most two decimals, which is finer than any screen or printer shows. */
    private static String px(double value) {
        long hundredths = Math.round(value * 100);
        String sign = hundredths < 0 ? "-" : "";
        long size = Math.abs(hundredths);
        long rest = size % 100;
        String fraction = rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : rest < 10 ? ".0" + rest : "." + rest;
        return sign + size / 100 + fraction;
    }
}
