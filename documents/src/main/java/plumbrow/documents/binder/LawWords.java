package plumbrow.documents.binder;

import java.util.stream.Collectors;
import plumbrow.advice.outlook.Law;
import plumbrow.science.figure.Numbers;

/** How an uncertain input is spread, as a person says it. */
final class LawWords {
    private LawWords() {}

    static String of(Law law) {
        if (law instanceof Law.Fixed fixed) {
            return "taken as " + Numbers.plain(fixed.value());
        }
        if (law instanceof Law.Pert pert) {
            return between(pert.low(), pert.likely(), pert.high()) + " (smooth peak)";
        }
        if (law instanceof Law.Triangular three) {
            return between(three.low(), three.likely(), three.high()) + " (straight sides)";
        }
        if (law instanceof Law.Even even) {
            return Numbers.plain(even.low()) + " to " + Numbers.plain(even.high()) + ", all as likely";
        }
        if (law instanceof Law.Normal normal) {
            return about(normal.mean(), normal.cv()) + " (bell-shaped)";
        }
        if (law instanceof Law.Weibull yield) {
            return about(yield.mean(), yield.cv()) + " (yield-like)";
        }
        if (law instanceof Law.Lognormal price) {
            return Numbers.plain(price.price()) + " today, moving " + percent(price.volatility()) + " a year for "
                    + Numbers.plain(price.years()) + " years";
        }
        if (law instanceof Law.Factor factor) {
            return "about " + Numbers.plain(factor.median()) + ", in 8 of 10 cases within "
                    + Numbers.fixed(factor.timesOfEight(), 1) + " times less or more";
        }
        if (law instanceof Law.LogOdds share) {
            return "about " + Numbers.plain(share.median()) + ", in 8 of 10 cases "
                    + Numbers.fixed(share.lowOfEight(), 2) + " to " + Numbers.fixed(share.highOfEight(), 2);
        }
        if (law instanceof Law.Past past) {
            return "as in the past: "
                    + past.values().stream().map(Numbers::plain).collect(Collectors.joining("; "));
        }
        if (law instanceof Law.Chance chance) {
            return "yes with a chance of " + percent(chance.chance());
        }
        throw new IllegalArgumentException("no words for " + law);
    }

    private static String about(double mean, double cv) {
        return "about " + Numbers.plain(mean) + ", ± " + percent(cv);
    }

    private static String between(double low, double likely, double high) {
        return Numbers.plain(low) + " to " + Numbers.plain(high) + ", likely " + Numbers.plain(likely);
    }

    private static String percent(double share) {
        return Numbers.plain(share * 100) + " %";
    }
}
