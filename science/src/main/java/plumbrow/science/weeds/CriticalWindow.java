package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * From when to when a crop must be free of weeds.
 *
 *   begin: the weedy curve falls to 100 − AYL;  end: the weed-free curve reaches 100 − AYL
 *
 * AYL acceptable loss [%], 5 by convention. Where the end comes before the begin the period is empty: one weeding between
 * the two is enough. The curves are {@link CriticalCurves}.
 */
public final class CriticalWindow {
    public static final Figure FIGURE = Figure.declare("critical-window", Subject.WEEDS)
            .question("From when to when must this crop be free of weeds?")
            .input(number("c", "Rate of the weedy curve", "1/time", Range.above(0, 10), "0.01"))
            .input(number("d", "Inflection of the weedy curve", "time", Range.closed(-1000, 20_000), "500"))
            .input(number("f", "Shape of the weedy curve, more than 1", "", Range.above(1, 1000), "1.8"))
            .input(number("a", "Highest yield of the weed-free curve", "%", Range.above(0, 150), "100"))
            .input(number("b", "Shape of the weed-free curve", "", Range.above(0, 1000), "0.5"))
            .input(number("k", "Rate of the weed-free curve", "1/time", Range.above(0, 10), "0.008"))
            .input(number("acceptable_loss_pct", "Loss that is accepted", "%", Range.open(0, 100), "5")
                    .orElse("5"))
            .output("begin", "Weeds must be gone by", "time")
            .output("end", "Clean until", "time")
            .output("period", "In words", "")
            .formula(
                    "begin = d + ln(1 ÷ (Y − (f − 1) ÷ f) − f) ÷ c; end = −ln(−ln(Y ÷ a) ÷ b) ÷ k; Y = 100 − acceptable loss")
            .source("[hall-1992]; [knezevic-2002]", MEMORY)
            .validity(
                    "Where weeds never cost so much, or no cleaning is enough, the word never stands for the time. Time in the"
                            + " unit of the curves, since the crop emerged; begin is not before 0.")
            .caution("Curves differ by field, nitrogen, row width and year: show a band.")
            .example(
                    "c=.01 d=500 f=1.8 a=100 b=.5 k=.008",
                    "begin=327.415 end=284.631 period=empty: one weeding between the two is enough",
                    "independent arithmetic",
                    COMPUTED)
            .model(CriticalWindow::solve);

    private CriticalWindow() {}

    private static Outputs solve(Given given, Working working) {
        double c = given.number("c");
        double d = given.number("d");
        double f = given.number("f");
        double a = given.number("a");
        double b = given.number("b");
        double k = given.number("k");
        double yield = working.line(
                "yield wanted",
                100 - given.number("acceptable_loss_pct"),
                "%",
                "100 − {}",
                given.number("acceptable_loss_pct"));
        double exactBegin = CriticalCurves.removeBy(yield, c, d, f);
        double begin = Double.isNaN(exactBegin) ? 0 : Math.max(0, exactBegin);
        double end = CriticalCurves.cleanFor(yield, a, b, k);
        Outputs outputs = new Outputs();
        if (Double.isInfinite(begin)) {
            outputs.put("begin", "never");
        } else if (begin > 0) {
            outputs.put(
                    "begin",
                    working.line(
                            "weeds gone by",
                            begin,
                            "",
                            "{} + ln(1 ÷ ({} ÷ 100 − ({} − 1) ÷ {}) − {}) ÷ {}",
                            d,
                            yield,
                            f,
                            f,
                            f,
                            c));
        } else {
            outputs.put(
                    "begin",
                    working.line("weeds gone by", 0, "", "0, since weeds cost {} % from the start", 100 - yield));
        }
        if (Double.isInfinite(end)) {
            outputs.put("end", "never");
        } else if (end > 0) {
            outputs.put("end", working.line("clean until", end, "", "−ln(−ln({} ÷ {}) ÷ {}) ÷ {}", yield, a, b, k));
        } else {
            outputs.put(
                    "end",
                    working.line("clean until", 0, "", "0, since no cleaning costs less than {} %", 100 - yield));
        }
        return outputs.put("period", period(begin, end));
    }

    private static String period(double begin, double end) {
        if (Double.isInfinite(begin)) {
            return "none: weeds that stay never cost so much";
        }
        if (Double.isInfinite(end)) {
            return "never closes: keeping clean does not reach the yield wanted";
        }
        return end <= begin ? "empty: one weeding between the two is enough" : "from begin to end";
    }
}
