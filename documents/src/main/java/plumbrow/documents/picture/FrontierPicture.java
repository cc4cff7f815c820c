package plumbrow.documents.picture;

import java.util.List;
import java.util.function.ToDoubleFunction;
import plumbrow.advice.search.Found;
import plumbrow.advice.search.SearchAnswer;
import plumbrow.advice.weighing.Quantities;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * The programs a search found near the best, each a dot: mean margin to the right, and upwards what else counts. The line
 * joins those that no other beats in both; the diamond is the best of all by its mean.
 */
public final class FrontierPicture {
    /** What stands on the upright scale. */
    public enum Against {
        RISK("Worst tenth of seasons, $/ac", "margin against risk"),
        RESISTANCE("Plants that survive where one site of action fails, of 100", "margin against resistance");

        private final String scale;
        private final String words;

        Against(String scale, String words) {
            this.scale = scale;
            this.words = words;
        }
    }

    private static final double TOP = 28;
    private static final double HEIGHT = 250;
    private static final double LEFT = 56;
    private static final double RIGHT = 18;
    private static final String COLOUR = "#0072B2"; // blue of Okabe and Ito, as in ProgramPalette

    private FrontierPicture() {}

    /** The picture, {@code widthPx} wide; below 280 px it is drawn for 280 and scaled. */
    public static String svg(SearchAnswer answer, Against against, int widthPx) {
        double width = Math.max(StripPicture.NARROWEST, widthPx);
        boolean risk = against == Against.RISK;
        ToDoubleFunction<Found> up = risk ? Found::shortfallUsdPerAcre : one -> 100 * one.escapeShare();
        List<Found> frontier = risk ? answer.againstRisk() : answer.againstResistance();
        String title = "Programs for " + answer.field().name() + ": " + against.words;
        Canvas canvas = new Canvas();
        if (answer.near().isEmpty()) {
            canvas.text(4, 16, "No program to draw.", 13, Canvas.INK, false, Anchor.START);
            return canvas.svg(width, 28, title, "No program to draw.");
        }
        MoneyScale across = scale(answer.near(), Found::meanMarginUsdPerAcre, LEFT, width - RIGHT, width < 450 ? 3 : 6);
        MoneyScale upright = scale(answer.near(), up, TOP + HEIGHT, TOP, 5);
        frame(canvas, across, upright, against, width);
        for (Found program : answer.near()) {
            canvas.open(told(program, against));
            canvas.dot(
                    across.x(program.meanMarginUsdPerAcre()),
                    upright.x(up.applyAsDouble(program)),
                    3,
                    "#d0d0d0",
                    "#8a8a8a");
            canvas.close();
        }
        for (int i = 0; i < frontier.size(); i++) {
            Found program = frontier.get(i);
            double x = across.x(program.meanMarginUsdPerAcre());
            double y = upright.x(up.applyAsDouble(program));
            if (i > 0) {
                Found before = frontier.get(i - 1);
                canvas.line(
                        across.x(before.meanMarginUsdPerAcre()),
                        upright.x(up.applyAsDouble(before)),
                        x,
                        y,
                        COLOUR,
                        1.5);
            }
        }
        for (int i = 0; i < frontier.size(); i++) {
            Found program = frontier.get(i);
            double x = across.x(program.meanMarginUsdPerAcre());
            double y = upright.x(up.applyAsDouble(program));
            canvas.open(told(program, against));
            if (i == 0) {
                canvas.diamond(x, y, 7, Canvas.INK, Canvas.INK);
            } else {
                canvas.dot(x, y, 5, COLOUR, Canvas.INK);
            }
            canvas.labelled(
                    x - 9, y - 7, String.valueOf((char) ('A' + Math.min(i, 25))), 12, Canvas.INK, true, Anchor.END);
            canvas.close();
        }
        String finding = frontier.size() == 1
                ? frontier.get(0).name() + " is beaten in neither."
                : frontier.size() + " programs are beaten by none in both, from "
                        + frontier.get(0).name() + " to "
                        + frontier.get(frontier.size() - 1).name() + ".";
        return canvas.svg(width, TOP + HEIGHT + 40, title, finding);
    }

    private static MoneyScale scale(
            List<Found> programs, ToDoubleFunction<Found> value, double from, double to, int ticks) {
        return MoneyScale.holding(
                programs.stream().mapToDouble(value).min().orElse(0),
                programs.stream().mapToDouble(value).max().orElse(0),
                from,
                to,
                ticks);
    }

    private static void frame(Canvas canvas, MoneyScale across, MoneyScale upright, Against against, double width) {
        canvas.text(4, 14, against.scale, 12, Canvas.QUIET, false, Anchor.START);
        for (double tick : upright.ticks()) {
            double y = upright.x(tick);
            canvas.line(LEFT, y, width - RIGHT, y, Canvas.HAIRLINE, 1);
            canvas.text(LEFT - 6, y + 4, text(upright, tick, against), 12, Canvas.QUIET, false, Anchor.END);
        }
        for (double tick : across.ticks()) {
            double x = across.x(tick);
            canvas.line(x, TOP, x, TOP + HEIGHT, Canvas.HAIRLINE, 1);
            canvas.text(x, TOP + HEIGHT + 16, across.tickText(tick), 12, Canvas.QUIET, false, Anchor.MIDDLE);
        }
        canvas.text(width - RIGHT, TOP + HEIGHT + 34, "Mean margin, $/ac", 12, Canvas.QUIET, false, Anchor.END);
    }

    private static String text(MoneyScale scale, double tick, Against against) {
        return against == Against.RISK ? scale.tickText(tick) : Numbers.fixed(tick, scale.step() < 1 ? 1 : 0);
    }

    private static String told(Found program, Against against) {
        String mean = program.name() + ": mean " + Quantities.dollarsPerAcre(program.meanMarginUsdPerAcre());
        return against == Against.RISK
                ? mean + ", expected shortfall " + Quantities.dollarsPerAcre(program.shortfallUsdPerAcre())
                : mean + ", " + Numbers.fixed(100 * program.escapeShare(), 0) + " of 100 survive where one site fails";
    }
}
