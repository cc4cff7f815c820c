package plumbrow.advice.lookback;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.season.Season;

/** Assumptions of a crop multiplied by what looking back offers. */
public final class Scaled {
    private Scaled() {}

    /** The season with every line of the quantity, of the crop and of its fields, times the factor that is offered. */
    public static Season by(Season season, AssumptionBias bias) {
        AssumptionQuantity quantity =
                bias.of() == AssumptionBias.Of.YIELD ? AssumptionQuantity.YIELD : AssumptionQuantity.PRICE;
        double factor = bias.offered();
        String mark = "Times " + rounded(factor, 3) + " by looking back over " + bias.fields()
                + (bias.fields() == 1 ? " field of " : " fields of ") + bias.seasons() + " seasons. ";
        List<AssumptionLine> lines = season.assumptions().stream()
                .map(line -> line.quantity() == quantity && holds(season, line, bias)
                        ? new AssumptionLine(
                                line.crop(),
                                line.field(),
                                quantity,
                                times(line.distribution(), factor),
                                shortened(mark + line.source()))
                        : line)
                .toList();
        return season.withAssumptions(lines);
    }

    private static boolean holds(Season season, AssumptionLine line, AssumptionBias bias) {
        String field = line.field();
        return field == null
                ? line.crop() == bias.crop()
                : season.field(field).map(one -> one.crop() == bias.crop()).orElse(false);
    }

    private static String shortened(String text) {
        return text.substring(0, Math.min(1000, text.length()));
    }

    private static Distribution times(Distribution of, double factor) {
        if (of instanceof Distribution.Fixed fixed) {
            return new Distribution.Fixed(at(fixed.value(), factor));
        }
        if (of instanceof Distribution.Pert pert) {
            return new Distribution.Pert(at(pert.low(), factor), at(pert.likely(), factor), at(pert.high(), factor));
        }
        if (of instanceof Distribution.Triangular triangular) {
            return new Distribution.Triangular(
                    at(triangular.low(), factor), at(triangular.likely(), factor), at(triangular.high(), factor));
        }
        if (of instanceof Distribution.Even even) {
            return new Distribution.Even(at(even.low(), factor), at(even.high(), factor));
        }
        if (of instanceof Distribution.Normal normal) {
            return new Distribution.Normal(at(normal.mean(), factor), normal.cv());
        }
        if (of instanceof Distribution.Weibull weibull) {
            return new Distribution.Weibull(at(weibull.mean(), factor), weibull.cv());
        }
        if (of instanceof Distribution.Lognormal price) {
            return new Distribution.Lognormal(at(price.price(), factor), price.volatility(), price.years());
        }
        if (of instanceof Distribution.Past past) {
            return new Distribution.Past(
                    past.values().stream().map(value -> at(value, factor)).toList());
        }
        return of;
    }

    private static double at(double value, double factor) {
        return rounded(value * factor, 5);
    }

    private static double rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits)).doubleValue();
    }
}
