package plumbrow.science.economics;

import static plumbrow.science.Printed.numbers;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import plumbrow.science.chance.EmpiricalDistribution;
import plumbrow.science.chance.LognormalDistribution;
import plumbrow.science.chance.PertDistribution;
import plumbrow.science.chance.RankCorrelation;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Prices, yields, draws and the value of information: values from outside, worked with numpy and scipy. */
public final class EconomicsChecks {
    private static final double[] PRICES = numbers("3.1 3.5 3.8 4.0 4.2 4.4 4.7 5.0 5.4 6.2");
    private static final double[] YIELDS = numbers("172 205 120 188 196 150 181 212 165 177");
    private static final double[] TEN = numbers("-42 -18 -5 3 8 12 15 21 30 46");
    private static final double[] CARROT = sorted("292 179 114 247 426 259");
    private static final double[] CELERY = sorted("-128 560 648 544 182 850");
    private static final double[] CUCUMBER = sorted("420 187 366 249 322 159");
    private static final double[] PEPPER = sorted("579 639 379 924 5 569");
    /** States: pest at low and high price, no pest at low and high price. */
    private static final double[][] SEES_PEST = {{1, 1, 0, 0}, {0, 0, 1, 1}};

    private static final double[][] SEES_PRICE = {{1, 0, 1, 0}, {0, 1, 0, 1}};

    private EconomicsChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.ECONOMICS);
        seed(checks);
        prices(checks);
        yields(checks);
        likelies(checks);
        together(checks);
        draws(checks);
        knowing(checks);
        return checks.all();
    }

    private static void seed(CheckList checks) {
        checks.from("[cropquest-wheat-seed]", VERIFIED)
                .differs(
                        "more seed at 70 % germination instead of 90 %, %",
                        "20.0",
                        () -> GerminationCorrection.FIGURE
                                .answer(Map.of("germination_pct", "70", "usual_germination_pct", "90"))
                                .number("extra_seed_pct"),
                        "the page subtracts the percents; 90/70 − 1 is 28.6 %");
    }

    private static void prices(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("price-quantile", """
                        futures_usd=4.50 volatility=.25 years=.5 probability=.5 | price_usd=4.4302
                        futures_usd=4.50 volatility=.25 years=.5 probability=.9 | price_usd=5.5567
                        futures_usd=11.00 volatility=.18 years=.8 probability=.1 | price_usd=8.8340
                        futures_usd=11.00 volatility=.18 years=.8 probability=.9 | price_usd=13.3466
                        futures_usd=6.00 volatility=.32 years=.25 probability=.1 | price_usd=4.8255
                        futures_usd=6.00 volatility=.32 years=.25 probability=.5 | price_usd=5.9237
                        """)
                .value("σ√T of 4.50, .25, .5", ".17678", () -> logSd(4.50, .25, .5))
                .value("σ√T of 11.00, .18, .8", ".16100", () -> logSd(11.00, .18, .8))
                .value("σ√T of 6.00, .32, .25", ".16000", () -> logSd(6.00, .32, .25));
    }

    private static void yields(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("yield-beta", """
                        mean=180 cv=.20 low=0 high=250 probability=.5 | quantile=184.35
                        mean=180 cv=.20 low=0 high=250 probability=.9 | quantile=223.76
                        mean=50 cv=.18 low=0 high=75 probability=.1 | quantile=37.870
                        mean=50 cv=.18 low=0 high=75 probability=.9 | quantile=61.314
                        mean=55 cv=.30 low=0 high=110 probability=.1 | beta=5.0556 quantile=33.222
                        mean=55 cv=.30 low=0 high=110 probability=.5 | quantile=55.000
                        """)
                .figure("yield-weibull", """
                        mean=180 cv=.20 probability=.5 | quantile=182.486
                        mean=180 cv=.20 probability=.9 | quantile=224.474
                        mean=50 cv=.25 probability=.1 | quantile=33.366
                        mean=50 cv=.25 probability=.9 | quantile=65.798
                        mean=55 cv=.35 probability=.1 | quantile=29.945
                        mean=55 cv=.35 probability=.5 | quantile=54.678
                        """);
    }

    private static void likelies(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("pert", """
                        low=90 likely=160 high=200 probability=.5 | quantile=156.18
                        low=90 likely=160 high=200 probability=.9 | quantile=181.42
                        low=10 likely=15 high=35 probability=.1 | quantile=12.248
                        low=10 likely=15 high=35 probability=.9 | quantile=23.633
                        low=0 likely=15 high=30 probability=.1 | quantile=7.399
                        low=0 likely=15 high=30 probability=.5 | quantile=15.000
                        """)
                .figure("triangular", """
                        low=90 likely=160 high=200 probability=.5 | quantile=152.05
                        low=90 likely=160 high=200 probability=.9 | quantile=179.02
                        low=10 likely=15 high=35 probability=.1 | quantile=13.536
                        low=10 likely=15 high=35 probability=.9 | quantile=27.928
                        low=0 likely=15 high=30 probability=.1 | quantile=6.708
                        low=0 likely=15 high=30 probability=.5 | quantile=15.000
                        """)
                .value("α of the smooth curve 90, 160, 200", "3.5455", () -> new PertDistribution(90, 160, 200).alpha())
                .value("β of the smooth curve 90, 160, 200", "2.4545", () -> new PertDistribution(90, 160, 200).beta())
                .value("α of the smooth curve 10, 15, 35", "1.8", () -> new PertDistribution(10, 15, 35).alpha())
                .value("β of the smooth curve 10, 15, 35", "4.2", () -> new PertDistribution(10, 15, 35).beta());
    }

    private static void together(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value("normal correlation of rank correlation −.30", "-.31287", () -> normal(-.30))
                .value("normal correlation of rank correlation −.50", "-.51764", () -> normal(-.50))
                .value("normal correlation of rank correlation .80", ".81347", () -> normal(.80))
                .value(
                        "σ of ln yield at CV .20",
                        ".19804",
                        () -> LognormalDistribution.ofMeanAndCv(180, .20).logSd())
                .value("straight-line correlation of the ten prices and yields rearranged to −.6", "-.642", () -> {
                    double[][] moved = RankCorrelation.reordered(
                            new double[][] {PRICES, YIELDS}, new double[][] {{1, -.6}, {-.6, 1}});
                    return RankCorrelation.pearson(moved[0], moved[1]);
                });
    }

    private static void draws(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value("mean of ten gains −42 … 46", "7.0", () -> SortedDraws.mean(TEN))
                .value("share of the ten above 0", ".70", () -> SortedDraws.shareAbove(TEN, 0))
                .value("median of the ten", "10.0", () -> SortedDraws.quantile(TEN, .5))
                .value(
                        "standard error of a share of .5 in 10,000 draws",
                        ".0050",
                        () -> SortedDraws.shareError(.5, 10_000))
                .from("[hazell-1971], table of returns", VERIFIED)
                .value("mean return of carrot, six years", "252.8333", () -> SortedDraws.mean(CARROT))
                .value("mean return of celery", "442.6667", () -> SortedDraws.mean(CELERY))
                .value("mean return of cucumber", "283.8333", () -> SortedDraws.mean(CUCUMBER))
                .value("mean return of pepper", "515.8333", () -> SortedDraws.mean(PEPPER))
                .from("on the returns of [hazell-1971]", COMPUTED)
                .value("spread of carrot", "106.13", () -> new EmpiricalDistribution(CARROT).sd())
                .value("spread of celery", "353.76", () -> new EmpiricalDistribution(CELERY).sd())
                .value("spread of cucumber", "102.88", () -> new EmpiricalDistribution(CUCUMBER).sd())
                .value("spread of pepper", "306.03", () -> new EmpiricalDistribution(PEPPER).sd())
                .value("mean of the worst third, carrot", "146.5", () -> worstThird(CARROT))
                .value("mean of the worst third, celery", "27.0", () -> worstThird(CELERY))
                .value("mean of the worst third, cucumber", "173.0", () -> worstThird(CUCUMBER))
                .value("mean of the worst third, pepper", "192.0", () -> worstThird(PEPPER))
                .figure("dominance", """
                        a=-128,560,648,544,182,850 b=579,639,379,924,5,569 | first=none second=b
                        a=292,179,114,247,426,259 b=-128,560,648,544,182,850 | first=none second=none
                        a=420,187,366,249,322,159 b=579,639,379,924,5,569 | first=none second=none
                        """);
    }

    private static void knowing(CheckList checks) {
        double[] rare = {.15, .15, .35, .35};
        double[][] rarePays = {{0, 0, 0, 0}, {10 * 3.5 - 18, 10 * 5.5 - 18, 3.5 - 18, 5.5 - 18}};
        double[] even = {.25, .25, .25, .25};
        double[][] evenPays = {{0, 0, 0, 0}, {5 * 3.5 - 18, 5 * 5.5 - 18, 3.5 - 18, 5.5 - 18}};
        checks.from("pest .3, saves 10 or 1 bu, price 3.50 or 5.50, cost $18", COMPUTED)
                .value("spraying always", "-1.35", () -> PerfectInformation.expected(rare, rarePays[1]))
                .value("value of information all", "8.10", () -> PerfectInformation.withInformation(rare, rarePays))
                .value(
                        "value of information on the pest",
                        "8.10",
                        () -> SampleInformation.withSignal(rare, rarePays, SEES_PEST))
                .value(
                        "value of information on the price",
                        "1.175",
                        () -> SampleInformation.withSignal(rare, rarePays, SEES_PRICE))
                .from("pest .5, saves 5 or 1 bu, the same prices and cost", COMPUTED)
                .value("spraying always", "-4.50", () -> PerfectInformation.expected(even, evenPays[1]))
                .value("value of information all", "2.375", () -> PerfectInformation.withInformation(even, evenPays))
                .value(
                        "value of information on the pest",
                        "2.25",
                        () -> SampleInformation.withSignal(even, evenPays, SEES_PEST))
                .value(
                        "value of information on the price",
                        "0.00",
                        () -> SampleInformation.withSignal(even, evenPays, SEES_PRICE))
                .from("textbook solution, [questionai-22]", VERIFIED)
                .value(
                        "expected payoff of 55 43 29 15 at .4 .1 .3 .2",
                        "38",
                        () -> PerfectInformation.expected(numbers(".4 .1 .3 .2"), numbers("55 43 29 15")))
                .value(
                        "expected payoff of 26 38 43 51 at .4 .1 .3 .2",
                        "37.3",
                        () -> PerfectInformation.expected(numbers(".4 .1 .3 .2"), numbers("26 38 43 51")));
    }

    private static double logSd(double futures, double volatility, double years) {
        return LognormalDistribution.ofPrice(futures, volatility, years).logSd();
    }

    private static double normal(double spearman) {
        return RankCorrelation.normalFromSpearman(spearman);
    }

    private static double worstThird(double[] sorted) {
        return SortedDraws.worstShareMean(sorted, 1 / 3.0);
    }

    private static double[] sorted(String row) {
        double[] values = numbers(row);
        Arrays.sort(values);
        return values;
    }
}
