package plumbrow.app.desk.shown;

import java.util.stream.Collectors;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.weighing.Odds;
import plumbrow.science.figure.Numbers;

/** Distributions in words: "0.4 to 2.1, likely 1.2". */
public final class Distributions {
    private Distributions() {}

    public static String words(Distribution distribution, String unit) {
        String tail = unit.isEmpty() ? "" : " " + unit;
        if (distribution instanceof Distribution.Fixed fixed) {
            return n(fixed.value()) + tail;
        }
        if (distribution instanceof Distribution.Pert pert) {
            return spread(pert.low(), pert.likely(), pert.high(), tail);
        }
        if (distribution instanceof Distribution.Triangular triangle) {
            return spread(triangle.low(), triangle.likely(), triangle.high(), tail);
        }
        if (distribution instanceof Distribution.Even even) {
            return n(even.low()) + " to " + n(even.high()) + tail + ", all as likely";
        }
        if (distribution instanceof Distribution.Normal normal) {
            return "about " + n(normal.mean()) + tail + ", spread " + n(normal.cv() * 100) + " %";
        }
        if (distribution instanceof Distribution.Weibull weibull) {
            return "about " + n(weibull.mean()) + tail + ", spread " + n(weibull.cv() * 100) + " %";
        }
        if (distribution instanceof Distribution.Lognormal price) {
            return n(price.price()) + tail + " today, moves " + n(price.volatility() * 100) + " % a year, known in "
                    + n(price.years()) + " years";
        }
        if (distribution instanceof Distribution.Factor factor) {
            return "about " + n(factor.median()) + tail + ", in 8 of 10 cases within "
                    + Numbers.fixed(factor.timesOfEight(), 1) + " times less or more";
        }
        if (distribution instanceof Distribution.LogOdds share) {
            return "about " + n(share.median()) + tail + ", in 8 of 10 cases " + Numbers.fixed(share.lowOfEight(), 2)
                    + " to " + Numbers.fixed(share.highOfEight(), 2);
        }
        if (distribution instanceof Distribution.Chance chance) {
            return "yes with a chance of " + Odds.words(chance.chance());
        }
        return ((Distribution.Past) distribution)
                        .values().stream().map(Numbers::read).collect(Collectors.joining("; "))
                + tail;
    }

    private static String spread(double low, double likely, double high, String tail) {
        return n(low) + " to " + n(high) + tail + ", likely " + n(likely);
    }

    private static String n(double value) {
        return Numbers.read(value);
    }
}
