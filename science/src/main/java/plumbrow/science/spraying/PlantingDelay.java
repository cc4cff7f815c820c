package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What waiting with planting costs, by single slopes.
 *
 *   loss = slope·days late;  soybean [bu/ac/d]: Nebraska 0.25 (2003) to 0.63 (2004) after 1 May, Illinois 0.5 in June,
 *   Minnesota 0.33 in late May;  corn: Iowa 1 % a day after 10 May
 *
 * Slopes differ by a factor of two between years: show both ends. For corn the tables are better than any slope.
 *
 * Source: Corn & Soybean Digest (Nebraska); Illinois Bulletin 5 June 2009; farms.com 123149 (Minnesota); ISU 2009 (corn).
 */
public final class PlantingDelay {
    private static final List<String> RULES =
            List.of("nebraska-2003", "nebraska-2004", "illinois-june", "minnesota-late-may", "iowa-corn");
    private static final double[] PER_DAY = {0.25, 0.63, 0.5, 1.0 / 3, Double.NaN};
    private static final double CORN_PCT_PER_DAY = 1;

    public static final Figure FIGURE = Figure.declare("planting-delay", Subject.SPRAYING)
            .question("What do so many days of waiting with planting cost?")
            .input(word("rule", "Slope of the state and crop", RULES, "nebraska-2004"))
            .input(number("days", "Days late", "d", Range.closed(0, 45), "10"))
            .input(number("yield_bu_ac", "Yield if on time", "bu/ac", Range.POSITIVE, "60"))
            .input(number("price_usd_bu", "Crop price received", "$/bu", Range.POSITIVE, "10.50"))
            .output("loss_bu_ac", "Yield lost", "bu/ac")
            .output("loss_usd_ac", "Worth of it", "$/ac")
            .formula("loss = bushels a day × days; corn: 1 % of the yield a day")
            .source("[delay-digest]", VERIFIED)
            .validity(
                    "Nebraska counts from 1 May, Illinois in June, Minnesota in late May, Iowa corn from about 10 May.")
            .caution(
                    "One slope of one year: in Nebraska the next year was two and a half times as steep. Try both ends.")
            .example(
                    "rule=nebraska-2004 days=10 yield_bu_ac=60 price_usd_bu=10.50",
                    "loss_bu_ac=6.3 loss_usd_ac=66.15",
                    "0.63 a day",
                    COMPUTED)
            .example(
                    "rule=nebraska-2003 days=10 yield_bu_ac=60 price_usd_bu=10.50",
                    "loss_bu_ac=2.5",
                    "0.25 a day",
                    COMPUTED)
            .example(
                    "rule=iowa-corn days=5 yield_bu_ac=200 price_usd_bu=4.50",
                    "loss_bu_ac=10 loss_usd_ac=45",
                    "1 % a day",
                    COMPUTED)
            .model(PlantingDelay::solve);

    private PlantingDelay() {}

    private static Outputs solve(Given given, Working working) {
        int rule = RULES.indexOf(given.word("rule"));
        double days = given.number("days");
        double yield = given.number("yield_bu_ac");
        double lost = Double.isNaN(PER_DAY[rule])
                ? working.line(
                        "yield lost",
                        yield * CORN_PCT_PER_DAY * days / 100,
                        "bu/ac",
                        "{} × {} ÷ 100 × {}",
                        yield,
                        CORN_PCT_PER_DAY,
                        days)
                : working.line("yield lost", PER_DAY[rule] * days, "bu/ac", "{} × {}", PER_DAY[rule], days);
        if (lost > yield) {
            throw given.refuse("days", "days that leave some yield: the slope holds for a few weeks only");
        }
        double price = given.number("price_usd_bu");
        return new Outputs()
                .put("loss_bu_ac", lost)
                .put("loss_usd_ac", working.line("worth of it", lost * price, "$/ac", "{} × {}", lost, price));
    }
}
