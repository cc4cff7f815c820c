package plumbrow.documents.binder;

import java.util.stream.Collectors;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.science.figure.Numbers;

/** How an uncertain input is spread, as a person says it. */
final class DistributionWords {
    private DistributionWords() {}

    static String of(Distribution distribution) {
        if (distribution instanceof Distribution.Fixed fixed) {
            return "taken as " + Numbers.read(fixed.value());
        }
        if (distribution instanceof Distribution.Pert pert) {
            return between(pert.low(), pert.likely(), pert.high()) + " (smooth peak)";
        }
        if (distribution instanceof Distribution.Triangular three) {
            return between(three.low(), three.likely(), three.high()) + " (straight sides)";
        }
        if (distribution instanceof Distribution.Even even) {
            return Numbers.read(even.low()) + " to " + Numbers.read(even.high()) + ", all as likely";
        }
        if (distribution instanceof Distribution.Normal normal) {
            return about(normal.mean(), normal.cv()) + " (bell-shaped)";
        }
        if (distribution instanceof Distribution.Weibull yield) {
            return about(yield.mean(), yield.cv()) + " (yield-like)";
        }
        if (distribution instanceof Distribution.Lognormal price) {
            return Numbers.read(price.price()) + " today, moving " + percent(price.volatility()) + " a year for "
                    + Numbers.read(price.years()) + " years";
        }
        if (distribution instanceof Distribution.Factor factor) {
            return "about " + Numbers.read(factor.median()) + ", in 8 of 10 cases within "
                    + Numbers.fixed(factor.timesOfEight(), 1) + " times less or more";
        }
        if (distribution instanceof Distribution.LogOdds share) {
            return "about " + Numbers.read(share.median()) + ", in 8 of 10 cases "
                    + Numbers.fixed(share.lowOfEight(), 2) + " to " + Numbers.fixed(share.highOfEight(), 2);
        }
        if (distribution instanceof Distribution.Past past) {
            return "as in the past: "
                    + past.values().stream().map(Numbers::read).collect(Collectors.joining("; "));
        }
        if (distribution instanceof Distribution.Chance chance) {
            return "yes with a chance of " + percent(chance.chance());
        }
        throw new IllegalArgumentException("no words for " + distribution);
    }

    private static String about(double mean, double cv) {
        return "about " + Numbers.read(mean) + ", ± " + percent(cv);
    }

    private static String between(double low, double likely, double high) {
        return Numbers.read(low) + " to " + Numbers.read(high) + ", likely " + Numbers.read(likely);
    }

    private static String percent(double share) {
        return Numbers.read(share * 100) + " %";
    }
}
