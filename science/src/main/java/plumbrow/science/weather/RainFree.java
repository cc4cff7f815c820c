package plumbrow.science.weather;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether the spray dries before rain, by the forecast and the label.
 *
 *   rain hour = first hour with chance ≥ p or amount ≥ a;  spare = hour − label's rain-free hours
 *
 *   p, a  chance [%] and amount [in] that count as rain
 *
 * A forecast that ends before the label's hours leaves the answer unknown.
 *
 * Source: the label for the rain-free hours; 40 % and 0.02 in common practice.
 */
public final class RainFree {
    public static final Figure FIGURE = Figure.declare("rain-free", Subject.WEATHER)
            .question("Does the forecast leave the rain-free hours the label asks for?")
            .input(list(
                    "chance_pct",
                    "Chance of rain in each hour after the spray ends",
                    "%",
                    Range.PERCENT,
                    "10,20,20,30,50"))
            .input(list(
                    "amount_in",
                    "Rain forecast for each of these hours",
                    "in",
                    Range.closed(0, 20),
                    "0,0,0.01,0.01,0.1"))
            .input(number("label_h", "Rain-free hours of the label", "h", Range.closed(0, 72), "4"))
            .input(number("limit_pct", "Chance that counts as rain", "%", Range.above(0, 100), "40")
                    .orElse("40"))
            .input(number("limit_in", "Amount that counts as rain", "in", Range.above(0, 5), "0.02")
                    .orElse("0.02"))
            .output("verdict", "In words", "")
            .output("dry_h", "Hours before the first that counts", "h")
            .output("spare_h", "Hours to spare; negative are missing", "h")
            .formula("dry hours = hours before the first with its chance or amount at the limit; spare = dry − label")
            .source("Limits common practice; the hours are the label's", PRACTICE)
            .validity(
                    "Whole hours of one forecast. Where the forecast ends sooner than the label's hours: unknown, not dry.")
            .caution("A forecast is not a promise. The label's hours are the law; some products wash off for longer.")
            .example(
                    "chance_pct=10,20,20,30,50 amount_in=0,0,0.01,0.01,0.1 label_h=4",
                    "verdict=long enough dry_h=4 spare_h=0",
                    "fifth hour counts, by hand",
                    COMPUTED)
            .example(
                    "chance_pct=10,60,20 amount_in=0,0,0 label_h=2",
                    "verdict=too short dry_h=1 spare_h=-1",
                    "by hand",
                    COMPUTED)
            .example(
                    "chance_pct=10,10 amount_in=0,0 label_h=4",
                    "verdict=unknown dry_h=2",
                    "the forecast ends",
                    COMPUTED)
            .model(RainFree::solve);

    private RainFree() {}

    /** Whether an hour counts as rain: its chance [%] or its amount [in] reaches the limit. */
    public static boolean rains(double chancePct, double amountIn, double limitPct, double limitIn) {
        return chancePct >= limitPct || amountIn >= limitIn;
    }

    private static Outputs solve(Given given, Working working) {
        double[] chances = given.list("chance_pct");
        double[] amounts = given.list("amount_in");
        if (chances.length != amounts.length) {
            throw given.refuse("amount_in", "as many hours as chance_pct (" + chances.length + ")");
        }
        int dry = 0;
        while (dry < chances.length
                && !rains(chances[dry], amounts[dry], given.number("limit_pct"), given.number("limit_in"))) {
            dry++;
        }
        double label = given.number("label_h");
        double spare = working.line("hours to spare", dry - label, "h", "{} − {}", dry, label);
        boolean ends = dry == chances.length;
        String verdict = spare >= 0 ? "long enough" : ends ? "unknown" : "too short";
        return new Outputs().put("verdict", verdict).put("dry_h", dry).put("spare_h", spare);
    }
}
