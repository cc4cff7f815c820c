package plumbrow.science.economics;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import plumbrow.science.chance.LognormalDistribution;
import plumbrow.science.chance.RankCorrelation;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** How two lists move together, as figures. The arithmetic is {@link RankCorrelation}. */
public final class MovingTogether {
    public static final Figure FIGURE = Figure.declare("rank-correlation", Subject.ECONOMICS)
            .question("How do two variables move together, and how is the second arranged to move as wished?")
            .input(list("x", "First variable, such as price", "", Range.ANY, "3.1,3.5,3.8,4.0"))
            .input(list("y", "Second variable, such as yield", "", Range.ANY, "172,205,120,188"))
            .input(number("target", "Correlation wished", "", Range.open(-1, 1), "-0.3")
                    .optional())
            .output("spearman", "Rank correlation as given", "")
            .output("pearson", "Straight-line correlation as given", "")
            .sometimes("reordered", "Second variable, rearranged", "")
            .sometimes("spearman_after", "Rank correlation after rearranging", "")
            .formula(
                    "scores Φ⁻¹(rank/(n+1)); E = QQᵀ, target C = PPᵀ; R = S(Q⁻¹)ᵀPᵀ; each variable in the order of its column of R")
            .source("[iman-conover-1982]", VERIFIED)
            .validity(
                    "Both lists of one length, at least 3 numbers, neither all equal. Rearranged only where a target is given.")
            .example(
                    "x=3.1,3.5,3.8,4.0,4.2,4.4,4.7,5.0,5.4,6.2 y=172,205,120,188,196,150,181,212,165,177 target=-.6",
                    "spearman=.0182 reordered=196,212,172,181,188,165,177,205,120,150 spearman_after=-.600",
                    "independent arithmetic",
                    COMPUTED)
            .model(MovingTogether::solve);

    public static final Figure REVENUE = Figure.declare("revenue-together", Subject.ECONOMICS)
            .question("What is revenue worth on average when price and yield move against each other?")
            .input(Asked.FUTURES)
            .input(Asked.VOLATILITY)
            .input(Asked.YEARS)
            .input(number("yield_bu_ac", "Mean yield", "bu/ac", Range.POSITIVE, "180"))
            .input(number(
                    "yield_cv", "Coefficient of variation of the yield, as a share", "", Range.closed(0, 3), "0.20"))
            .input(number("rank_correlation", "Rank correlation of price and yield", "", Range.closed(-1, 1), "-0.3"))
            .output("mean_usd_ac", "Mean revenue", "$/ac")
            .output("if_independent_usd_ac", "Mean revenue if they moved apart", "$/ac")
            .output("normal_correlation", "Correlation of the normals behind them", "")
            .formula("mean = price × yield × exp(r σP σY), r = 2 sin(π ρ/6), σY² = ln(1 + CV²)")
            .source("Both lognormal, Gaussian copula", MEMORY)
            .validity(
                    "Both above 0 and lognormal. Correlation of Illinois counties −0.72 to −0.31, weaker at one farm.")
            .example(
                    "futures_usd=4.50 volatility=.25 years=.5 yield_bu_ac=180 yield_cv=.20 rank_correlation=-.30",
                    "mean_usd_ac=801.18 if_independent_usd_ac=810.00 normal_correlation=-.31287",
                    "independent arithmetic",
                    COMPUTED)
            .model(MovingTogether::solveRevenue);

    private static final int FEWEST = 3;

    private MovingTogether() {}

    private static Outputs solve(Given given, Working working) {
        double[] x = given.list("x");
        double[] y = given.list("y");
        if (x.length < FEWEST) {
            throw given.refuse("x", "at least 3 numbers");
        }
        if (y.length != x.length) {
            throw given.refuse("y", "as many numbers as x has (" + x.length + ")");
        }
        requireSpread(given, "x", x);
        requireSpread(given, "y", y);
        double spearman = working.line(
                "rank correlation",
                RankCorrelation.spearman(x, y),
                "",
                "correlation of the ranks of {} pairs",
                x.length);
        double pearson = working.line(
                "straight-line correlation", RankCorrelation.pearson(x, y), "", "correlation of {} pairs", x.length);
        Outputs outputs = new Outputs().put("spearman", spearman).put("pearson", pearson);
        if (given.has("target")) {
            double target = given.number("target");
            double[] arranged = arranged(given, x, y, target);
            outputs.put("reordered", arranged)
                    .put(
                            "spearman_after",
                            working.line(
                                    "rank correlation after rearranging",
                                    RankCorrelation.spearman(x, arranged),
                                    "",
                                    "scores drawn together to {}",
                                    target));
        }
        return outputs;
    }

    private static double[] arranged(Given given, double[] x, double[] y, double target) {
        try {
            return RankCorrelation.reordered(new double[][] {x, y}, new double[][] {{1, target}, {target, 1}})[1];
        } catch (IllegalArgumentException e) {
            throw given.refuse("y", "a list that does not rise or fall exactly with x: it can't be told apart from it");
        }
    }

    private static void requireSpread(Given given, String key, double[] values) {
        double low = Arrays.stream(values).min().orElseThrow();
        double high = Arrays.stream(values).max().orElseThrow();
        if (low == high) {
            throw given.refuse(key, "numbers that are not all equal");
        }
    }

    private static Outputs solveRevenue(Given given, Working working) {
        double price = given.number("futures_usd");
        double yield = given.number("yield_bu_ac");
        double cv = given.number("yield_cv");
        double rank = given.number("rank_correlation");
        double volatility = given.number("volatility");
        double years = given.number("years");
        double priceSpread = working.line(
                "spread of log price", volatility * Math.sqrt(years), "", "{} × √{} yr", volatility, years);
        double yieldSpread = working.line(
                "spread of log yield",
                LognormalDistribution.ofMeanAndCv(yield, cv).logSd(),
                "",
                "√ln(1 + {}²)",
                cv);
        double r = working.line(
                "correlation of the normals",
                RankCorrelation.normalFromSpearman(rank),
                "",
                "2 × sin(π × {} ÷ 6)",
                rank);
        double apart = working.line("if independent", price * yield, "$/ac", "{} $/bu × {} bu/ac", price, yield);
        double together = working.line(
                "mean revenue",
                apart * Math.exp(r * priceSpread * yieldSpread),
                "$/ac",
                "{} $/ac × exp({} × {} × {})",
                apart,
                r,
                priceSpread,
                yieldSpread);
        return new Outputs()
                .put("mean_usd_ac", together)
                .put("if_independent_usd_ac", apart)
                .put("normal_correlation", r);
    }
}
