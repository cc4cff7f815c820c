package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Injury level and threshold of bean leaf beetle on seedling soybean.
 *
 *   EIL = 4.145·C/V beetles per plant;  ET = 0.75·EIL
 *
 *   C cost of control [$/ac];  V soybean price [$/bu]
 *
 * The constant was recovered from two published table entries; seedling soybean rarely pays to treat at all.
 *
 * Source: Hunt, Higley & Witkowski 1995, Agron. J. 87:183; entries on bulletin.ipm.illinois.edu id=1645 and id=529.
 */
public final class BeanLeafBeetle {
    /** Beetles per plant for a dollar of cost at a dollar of price, fitted to the published entries. */
    private static final double BEETLES_PER_COST_RATIO = 4.145;

    private static final double THRESHOLD_SHARE = 0.75;

    public static final Figure FIGURE = Figure.declare("bean-leaf-beetle", Subject.INSECTS)
            .question("At how many bean leaf beetles a seedling does control pay?")
            .input(number("cost_usd_ac", "Cost of control, product and pass", "$/ac", Range.NOT_NEGATIVE, "10"))
            .input(number("price_usd_bu", "Soybean price", "$/bu", Range.POSITIVE, "6"))
            .output("injury_level", "Economic injury level", "beetles/plant")
            .output("threshold", "Threshold to act on", "beetles/plant")
            .formula("injury level = 4.145 × cost ÷ price; threshold = 0.75 × injury level")
            .source("[hunt-1995]; [illinois-bean-leaf-1645]; [illinois-bean-leaf-529]", VERIFIED)
            .validity("V1 soybean. The constant is fitted to two published entries, not printed there.")
            .example("cost_usd_ac=11 price_usd_bu=7.50", "injury_level=6.08", "[illinois-bean-leaf-1645]", VERIFIED)
            .example(
                    "cost_usd_ac=10 price_usd_bu=6",
                    "injury_level=6.91 threshold=5.18",
                    "the table prints 5.2",
                    COMPUTED)
            .example(
                    "cost_usd_ac=8 price_usd_bu=6",
                    "injury_level=5.53 threshold=4.15",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "cost_usd_ac=12 price_usd_bu=10",
                    "injury_level=4.97 threshold=3.73",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "cost_usd_ac=15 price_usd_bu=12",
                    "injury_level=5.18 threshold=3.89",
                    "independent arithmetic",
                    COMPUTED)
            .model(BeanLeafBeetle::solve);

    private BeanLeafBeetle() {}

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double price = given.number("price_usd_bu");
        double level = working.line(
                "injury level",
                BEETLES_PER_COST_RATIO * cost / price,
                "beetles/plant",
                "{} × {} $/ac ÷ {} $/bu",
                BEETLES_PER_COST_RATIO,
                cost,
                price);
        double threshold =
                working.line("threshold", THRESHOLD_SHARE * level, "beetles/plant", "{} × {}", THRESHOLD_SHARE, level);
        return new Outputs().put("injury_level", level).put("threshold", threshold);
    }
}
