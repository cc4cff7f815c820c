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
 * The soybean aphid count at which a spray is ordered, so that the injury level is not passed before it is on.
 *
 *   ET = EIL·2^(−lead/Td), never below 250 aphids a plant
 *
 *   EIL  injury level, 674 ± 95 aphids/plant;  lead days from order to spray;  Td doubling time [d]
 *
 * Below 250 no yield loss is measurable, so a lower threshold can't pay whatever the price; a lower number is shown but
 * not used.
 *
 * Source: Ragsdale et al. 2007, J. Econ. Entomol. 100:1258 (674 from memory); 250: nwroc.umn.edu Cropping Issues 2006/7;
 * no lower at any price: crops.extension.iastate.edu, "Economics of soybean aphid".
 */
public final class AphidThreshold {
    /** Aphids per plant, the published threshold [1/plant]. */
    private static final double PUBLISHED = 250;

    public static final Figure FIGURE = Figure.declare("aphid-threshold", Subject.INSECTS)
            .question("At how many soybean aphids a plant is the spray ordered?")
            .input(number("lead_days", "Days from the order to the spray", "d", Range.closed(0, 14), "7"))
            .input(number("doubling_days", "Days in which the aphids double", "d", Range.POSITIVE, "6.8"))
            .input(number("injury_level", "Economic injury level", "aphids/plant", Range.POSITIVE, "674")
                    .orElse("674"))
            .output("threshold", "Threshold to act on", "aphids/plant")
            .output("reckoned", "Threshold by the lead alone", "aphids/plant")
            .formula("threshold = injury level × 2^(−lead ÷ doubling time), not below 250")
            .source("[ragsdale-2007]; 250: [minnesota-aphid-2006]", VERIFIED)
            .validity(
                    "R1 to R5, rising, on more than 80 % of the plants. Never lowered below 250, at any price of soybeans.")
            .caution("The injury level 674 is a value from memory. The published field rule is 250 a plant.")
            .example("lead_days=7 doubling_days=6.8", "threshold=330 reckoned=330", "independent arithmetic", COMPUTED)
            .example("lead_days=7 doubling_days=4.87", "threshold=250.0 reckoned=249", "held at 250", COMPUTED)
            .example("lead_days=7 doubling_days=3", "threshold=250.0 reckoned=134", "held at 250", COMPUTED)
            .model(AphidThreshold::solve);

    private AphidThreshold() {}

    private static Outputs solve(Given given, Working working) {
        double lead = given.number("lead_days");
        double doubling = given.number("doubling_days");
        double injury = given.number("injury_level");
        double reckoned = working.line(
                "threshold by the lead",
                injury * Math.pow(2, -lead / doubling),
                "aphids/plant",
                "{} × 2^(−{} ÷ {})",
                injury,
                lead,
                doubling);
        if (reckoned < PUBLISHED) {
            working.caution(
                    "Held at 250: below it no yield loss is measurable, so a lower threshold can't pay. Scout oftener instead.");
        }
        double threshold = working.line(
                "threshold to act on",
                Math.max(reckoned, PUBLISHED),
                "aphids/plant",
                "the higher of {} and {}",
                reckoned,
                PUBLISHED);
        return new Outputs().put("threshold", threshold).put("reckoned", reckoned);
    }
}
