package plumbrow.app.desk.shown;

import java.util.stream.Collectors;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.weighing.Odds;
import plumbrow.science.figure.Numbers;

/** Laws in words: "0.4 to 2.1, likely 1.2". */
public final class Laws {
    private Laws() {}

    public static String words(Law law, String unit) {
        String tail = unit.isEmpty() ? "" : " " + unit;
        if (law instanceof Law.Fixed fixed) {
            return n(fixed.value()) + tail;
        }
        if (law instanceof Law.Pert pert) {
            return spread(pert.low(), pert.likely(), pert.high(), tail);
        }
        if (law instanceof Law.Triangular triangle) {
            return spread(triangle.low(), triangle.likely(), triangle.high(), tail);
        }
        if (law instanceof Law.Even even) {
            return n(even.low()) + " to " + n(even.high()) + tail + ", all as likely";
        }
        if (law instanceof Law.Normal normal) {
            return "about " + n(normal.mean()) + tail + ", spread " + n(normal.cv() * 100) + " %";
        }
        if (law instanceof Law.Weibull weibull) {
            return "about " + n(weibull.mean()) + tail + ", spread " + n(weibull.cv() * 100) + " %";
        }
        if (law instanceof Law.Lognormal price) {
            return n(price.price()) + tail + " today, moves " + n(price.volatility() * 100) + " % a year, known in "
                    + n(price.years()) + " years";
        }
        if (law instanceof Law.Factor factor) {
            return "about " + n(factor.median()) + tail + ", in 8 of 10 cases within "
                    + Numbers.fixed(factor.timesOfEight(), 1) + " times less or more";
        }
        if (law instanceof Law.LogOdds share) {
            return "about " + n(share.median()) + tail + ", in 8 of 10 cases " + Numbers.fixed(share.lowOfEight(), 2)
                    + " to " + Numbers.fixed(share.highOfEight(), 2);
        }
        if (law instanceof Law.Chance chance) {
            return "yes with a chance of " + Odds.words(chance.chance());
        }
        return ((Law.Past) law).values().stream().map(Numbers::plain).collect(Collectors.joining("; ")) + tail;
    }

    private static String spread(double low, double likely, double high, String tail) {
        return n(low) + " to " + n(high) + tail + ", likely " + n(likely);
    }

    private static String n(double value) {
        return Numbers.plain(value);
    }
}
