package plumbrow.science.economics;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.chance.PertLaw;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** The PERT law as a figure: mean, spread and a quantile of low, likely and high. The law is {@link PertLaw}. */
public final class Pert {
    public static final Figure FIGURE = Figure.declare("pert", Subject.ECONOMICS)
            .question("What do low, likely and high say together, as a smooth curve?")
            .input(Asked.LOW)
            .input(Asked.LIKELY)
            .input(Asked.HIGH)
            .input(Asked.PROBABILITY)
            .output("mean", "Mean", "")
            .output("sd", "Standard deviation", "")
            .sometimes("quantile", "Value not passed with the given chance", "")
            .formula(
                    "mean = (low + 4 × likely + high) ÷ 6; sd = √((mean − low)(high − mean) ÷ 7); beta curve between the ends")
            .source("Beta law with shapes 1 + 4(m−a)/(b−a) and 1 + 4(b−m)/(b−a)", MEMORY)
            .validity(
                    "low ≤ likely ≤ high and low < high, else refused. Low and high are absolute ends. The quantile is given"
                            + " only when a probability is.")
            .caution("People who say low and high often mean one year in twenty, not the end of the world.")
            .example(
                    "low=90 likely=160 high=200 probability=.1",
                    "mean=155.0 sd=20.442 quantile=126.80",
                    "reference 2.3",
                    COMPUTED)
            .example(
                    "low=10 likely=15 high=35 probability=.5",
                    "mean=17.50 sd=4.3301 quantile=16.917",
                    "reference 2.3",
                    COMPUTED)
            .example(
                    "low=0 likely=15 high=30 probability=.9",
                    "mean=15.0 sd=5.6695 quantile=22.601",
                    "reference 2.3",
                    COMPUTED)
            .model(Pert::solve);

    private Pert() {}

    private static Outputs solve(Given given, Working working) {
        Asked.rising(given);
        double low = given.number("low");
        double likely = given.number("likely");
        double high = given.number("high");
        PertLaw law = new PertLaw(low, likely, high);
        double mean = working.line("mean", law.mean(), "", "({} + 4 × {} + {}) ÷ 6", low, likely, high);
        double sd =
                working.line("standard deviation", law.sd(), "", "√(({} − {}) × ({} − {}) ÷ 7)", mean, low, high, mean);
        Outputs outputs = new Outputs().put("mean", mean).put("sd", sd);
        if (given.has("probability")) {
            double chance = given.number("probability");
            working.line("first shape", law.alpha(), "", "1 + 4 × ({} − {}) ÷ ({} − {})", likely, low, high, low);
            working.line("second shape", law.beta(), "", "1 + 4 × ({} − {}) ÷ ({} − {})", high, likely, high, low);
            outputs.put(
                    "quantile",
                    working.line(
                            "quantile",
                            law.quantile(chance),
                            "",
                            "{} + ({} − {}) × beta quantile at {}",
                            low,
                            high,
                            low,
                            chance));
        }
        return outputs;
    }
}
