package plumbrow.science.economics;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.chance.PertDistribution;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** The PERT distribution as a figure: mean, spread and a quantile of low, likely and high. The distribution is {@link PertDistribution}. */
public final class Pert {
    public static final Figure FIGURE = Figure.declare("pert", Subject.ECONOMICS)
            .question("What do low, likely and high say together, as a smooth curve?")
            .input(Asked.LOW)
            .input(Asked.LIKELY)
            .input(Asked.HIGH)
            .input(Asked.PROBABILITY)
            .input(word("meaning", "What low and high mean", List.of("ends", "one-in-twenty"), "ends")
                    .orElse("ends"))
            .output("mean", "Mean", "")
            .output("sd", "Standard deviation", "")
            .output("low_end", "Absolute lower end", "")
            .output("high_end", "Absolute upper end", "")
            .sometimes("quantile", "Value not passed with the given chance", "")
            .formula(
                    "mean = (low + 4 × likely + high) ÷ 6; sd = √((mean − low)(high − mean) ÷ 7); beta curve between the ends")
            .source("Beta distribution with shapes 1 + 4(m−a)/(b−a) and 1 + 4(b−m)/(b−a), as in [mc2d]", VERIFIED)
            .validity("low ≤ likely ≤ high and low < high, else refused. Low and high are absolute ends, or with"
                    + " meaning=one-in-twenty the values passed one year in twenty. The quantile is given only when a"
                    + " probability is.")
            .caution("People who say low and high often mean one year in twenty, not the end of the world.")
            .example(
                    "low=90 likely=160 high=200 probability=.1",
                    "mean=155.0 sd=20.442 quantile=126.80",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "low=10 likely=15 high=35 probability=.5",
                    "mean=17.50 sd=4.3301 quantile=16.917",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "low=0 likely=15 high=30 probability=.9",
                    "mean=15.0 sd=5.6695 quantile=22.601",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "low=90 likely=160 high=200 probability=.1 meaning=one-in-twenty",
                    "low_end=36.5906 high_end=219.3489 mean=149.3232 sd=33.5818 quantile=102.6740",
                    "ends solved with scipy 1.17 (fsolve on beta.ppf)",
                    COMPUTED)
            .example(
                    "low=0 likely=0.5 high=30 probability=.1 meaning=one-in-twenty",
                    "low_end=-0.88745 high_end=64.64257 mean=10.95919 quantile=0.83470",
                    "ends solved with scipy 1.17 (fsolve on beta.ppf)",
                    COMPUTED)
            .model(Pert::solve);

    private Pert() {}

    private static Outputs solve(Given given, Working working) {
        Asked.rising(given);
        double likely = given.number("likely");
        PertDistribution distribution = distribution(given, working);
        double a = distribution.low();
        double b = distribution.high();
        double mean = working.line("mean", distribution.mean(), "", "({} + 4 × {} + {}) ÷ 6", a, likely, b);
        double sd = working.line(
                "standard deviation", distribution.sd(), "", "√(({} − {}) × ({} − {}) ÷ 7)", mean, a, b, mean);
        Outputs outputs =
                new Outputs().put("mean", mean).put("sd", sd).put("low_end", a).put("high_end", b);
        if (given.has("probability")) {
            double chance = given.number("probability");
            working.line("first shape", distribution.alpha(), "", "1 + 4 × ({} − {}) ÷ ({} − {})", likely, a, b, a);
            working.line("second shape", distribution.beta(), "", "1 + 4 × ({} − {}) ÷ ({} − {})", b, likely, b, a);
            outputs.put(
                    "quantile",
                    working.line(
                            "quantile",
                            distribution.quantile(chance),
                            "",
                            "{} + ({} − {}) × beta quantile at {}",
                            a,
                            b,
                            a,
                            chance));
        }
        return outputs;
    }

    private static PertDistribution distribution(Given given, Working working) {
        double low = given.number("low");
        double likely = given.number("likely");
        double high = given.number("high");
        if (given.word("meaning").equals("ends")) {
            return new PertDistribution(low, likely, high);
        }
        PertDistribution distribution = PertDistribution.ofOneInTwenty(low, likely, high);
        working.line("lower end", distribution.low(), "", "moved until {} is undercut once in twenty", low);
        working.line("upper end", distribution.high(), "", "moved until {} is passed once in twenty", high);
        return distribution;
    }
}
