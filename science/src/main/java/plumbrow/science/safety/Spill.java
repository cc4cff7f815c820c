package plumbrow.science.safety;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How a spill stands to the reportable quantity (RQ) of the listed substance.
 *
 *   lb = gallons × strength;  share = lb/RQ;  report where lb ≥ RQ;  containers to the RQ = RQ/(container × strength), up
 *
 * The strength is that of the substance as it is listed: a label gives acid where a list may name the salt. Equal counts.
 * The RQ runs over all that is released within 24 hours. Accidents are reported: the exemption of registered pesticides is
 * read as normal use only.
 *
 * Source: 42 USC 9603(a), (e); EPA on spills of registered pesticides (epa.gov/epcra).
 */
public final class Spill {
    private static final double ROUNDING = 1e-12;
    private static final String CALL =
            "Control, contain, clean up, then report: National Response Center 1-800-424-8802, and the state. Dial 911 on the"
                    + " road.";
    private static final String BELOW =
            "Below the federal quantity is not the same as no report: states have lower limits, often any release to water.";

    public static final Figure FIGURE = Figure.declare("spill", Subject.SAFETY)
            .question("Does this spill reach the reportable quantity?")
            .alsoAsked("How many jugs until I must report a spill?")
            .input(number("volume_gal", "Product spilled, over 24 hours", "gal", Range.NOT_NEGATIVE, "2.5"))
            .input(number("ai_lb_gal", "Strength, as the substance is listed", "lb/gal", Range.POSITIVE, "4"))
            .input(number("rq_lb", "Reportable quantity of the substance", "lb", Range.POSITIVE, "10"))
            .input(number("container_gal", "Size of a container", "gal", Range.POSITIVE, "2.5")
                    .orElse("2.5"))
            .output("ai_lb", "Substance spilled", "lb")
            .output("share_of_rq", "Share of the reportable quantity", "")
            .output("reaches_rq", "Whether it reaches the reportable quantity", "")
            .output("containers_to_rq", "Whole containers that reach it", "")
            .output("gal_to_rq", "Gallons that reach it", "gal")
            .formula(
                    "pounds = gallons × strength; share = pounds ÷ RQ; containers = RQ ÷ (container × strength), rounded up")
            .source("[42-usc-9603]", VERIFIED)
            .validity(
                    "Equal to the quantity counts as reaching it. Water in a tank is not counted. The RQ comes from the current 40 CFR 302.4.")
            .caution(CALL)
            .caution(BELOW)
            .caution(
                    "Is the strength that of the acid and the list that of the salt? Convert first; if unsure take the larger mass.")
            .example(
                    "volume_gal=2.5 ai_lb_gal=4 rq_lb=1",
                    "ai_lb=10 share_of_rq=10 reaches_rq=yes containers_to_rq=1 gal_to_rq=.25",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "volume_gal=2.5 ai_lb_gal=4 rq_lb=10",
                    "ai_lb=10.0 share_of_rq=1.00 reaches_rq=yes",
                    "equal counts",
                    COMPUTED)
            .example(
                    "volume_gal=2.5 ai_lb_gal=5.73 rq_lb=100",
                    "ai_lb=14.32 reaches_rq=no containers_to_rq=7",
                    "2,4-D ester",
                    COMPUTED)
            .example("volume_gal=2.5 ai_lb_gal=3.8 rq_lb=100", "containers_to_rq=11", "on acid basis", COMPUTED)
            .example(
                    "volume_gal=2.5 ai_lb_gal=4 rq_lb=1000",
                    "ai_lb=10 containers_to_rq=100",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "volume_gal=30 ai_lb_gal=5 rq_lb=100",
                    "ai_lb=150 reaches_rq=yes gal_to_rq=20",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "volume_gal=20 ai_lb_gal=4 rq_lb=100",
                    "ai_lb=80 share_of_rq=.8 reaches_rq=no",
                    "independent arithmetic",
                    COMPUTED)
            .example("volume_gal=2.5 ai_lb_gal=4.142 rq_lb=10", "gal_to_rq=2.41", "paraquat as dichloride", COMPUTED)
            .model(Spill::solve);

    public static final Figure MIXTURE = Figure.declare("spill-mixture", Subject.SAFETY)
            .question("Does any part of this mixture reach its reportable quantity?")
            .input(list("component_lb", "Pounds of each listed component", "lb", Range.NOT_NEGATIVE, "0.4,120"))
            .input(list("rq_lb", "Reportable quantity of each", "lb", Range.POSITIVE, "1,100"))
            .output("shares", "Share of its quantity, for each component", "")
            .output("reaches_rq", "Whether any reaches its quantity", "")
            .formula("report where any component ÷ its RQ is 1 or more")
            .source("[40-cfr-302.6], (b); the same arithmetic in [40-cfr-370.14], (c)", VERIFIED)
            .validity(
                    "Known composition only. Where it is not known the total is held against the lowest quantity of any component.")
            .caution(CALL)
            .caution(BELOW)
            .example(
                    "component_lb=.4,120 rq_lb=1,100",
                    "shares=.4,1.2 reaches_rq=yes",
                    "independent arithmetic",
                    COMPUTED)
            .model(Spill::solveMixture);

    public static final Figure DRY = Figure.declare("spill-dry", Subject.SAFETY)
            .question("Does this spill of a dry product reach the reportable quantity?")
            .input(number("product_lb", "Product spilled, over 24 hours", "lb", Range.NOT_NEGATIVE, "25"))
            .input(number("weight_pct", "Share of the substance, as it is listed", "%", Range.above(0, 100), "75"))
            .input(number("rq_lb", "Reportable quantity of the substance", "lb", Range.POSITIVE, "100"))
            .input(number("container_lb", "Product in a container", "lb", Range.POSITIVE, "25"))
            .output("ai_lb", "Substance spilled", "lb")
            .output("share_of_rq", "Share of the reportable quantity", "")
            .output("reaches_rq", "Whether it reaches the reportable quantity", "")
            .output("containers_to_rq", "Whole containers that reach it", "")
            .output("lb_to_rq", "Pounds of product that reach it", "lb")
            .formula(
                    "pounds = product × percent ÷ 100; share = pounds ÷ RQ; containers = RQ ÷ (container × percent ÷ 100)")
            .source("[42-usc-9603]", VERIFIED)
            .validity("Equal to the quantity counts as reaching it. The RQ comes from the current 40 CFR 302.4.")
            .caution(CALL)
            .caution(BELOW)
            .example(
                    "product_lb=25 weight_pct=80 rq_lb=100 container_lb=25",
                    "ai_lb=20 share_of_rq=.20 reaches_rq=no containers_to_rq=5 lb_to_rq=125",
                    "worked by hand",
                    COMPUTED)
            .example(
                    "product_lb=125 weight_pct=80 rq_lb=100 container_lb=25",
                    "ai_lb=100 share_of_rq=1.00 reaches_rq=yes",
                    "worked by hand: equal counts",
                    COMPUTED)
            .model(Spill::solveDry);

    public static final Figure TANK_LEAK = Figure.declare("tank-leak", Subject.SAFETY)
            .question("How much of the substance left a well-mixed tank?")
            .input(number("tank_gal", "Spray in the tank", "gal", Range.POSITIVE, "1000"))
            .input(number("substance_lb", "Substance in the tank", "lb", Range.NOT_NEGATIVE, "40"))
            .input(number("leaked_gal", "Spray that leaked", "gal", Range.NOT_NEGATIVE, "600"))
            .input(number("rq_lb", "Reportable quantity", "lb", Range.POSITIVE, "100"))
            .output("leaked_lb", "Substance that leaked", "lb")
            .output("share_of_rq", "Share of the reportable quantity", "")
            .output("reaches_rq", "Whether it reaches the reportable quantity", "")
            .formula("pounds = substance × leaked ÷ tank")
            .source("Arithmetic; water is not counted, [42-usc-9603]", VERIFIED)
            .validity("Well mixed, and no more leaked than was in the tank.")
            .caution(CALL)
            .caution(BELOW)
            .example(
                    "tank_gal=1000 substance_lb=40 leaked_gal=600 rq_lb=100",
                    "leaked_lb=24 share_of_rq=.24 reaches_rq=no",
                    "independent arithmetic",
                    COMPUTED)
            .model(Spill::solveTankLeak);

    private Spill() {}

    /** Whether an amount reaches a quantity; equal counts, and rounding does not hide equality. */
    public static boolean reaches(double pounds, double quantity) {
        return pounds >= quantity * (1 - ROUNDING);
    }

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    private static Outputs solve(Given given, Working working) {
        double gallons = given.number("volume_gal");
        double strength = given.number("ai_lb_gal");
        double rq = given.number("rq_lb");
        double container = given.number("container_gal");
        double pounds = working.line("substance spilled", gallons * strength, "lb", "{} × {}", gallons, strength);
        double share = working.line("share of the reportable quantity", pounds / rq, "", "{} ÷ {}", pounds, rq);
        double needed = working.line("gallons that reach it", rq / strength, "gal", "{} ÷ {}", rq, strength);
        double exact = working.line(
                "containers that reach it", rq / (container * strength), "", "{} ÷ ({} × {})", rq, container, strength);
        double whole = working.line("whole containers", Numbers.wholeUp(exact), "", "{}, rounded up", exact);
        return new Outputs()
                .put("ai_lb", pounds)
                .put("share_of_rq", share)
                .put("reaches_rq", yesNo(reaches(pounds, rq)))
                .put("containers_to_rq", whole)
                .put("gal_to_rq", needed);
    }

    private static Outputs solveDry(Given given, Working working) {
        double product = given.number("product_lb");
        double percent = given.number("weight_pct");
        double rq = given.number("rq_lb");
        double container = given.number("container_lb");
        double pounds =
                working.line("substance spilled", product * percent / 100, "lb", "{} × {} ÷ 100", product, percent);
        double share = working.line("share of the reportable quantity", pounds / rq, "", "{} ÷ {}", pounds, rq);
        double needed =
                working.line("pounds of product that reach it", rq * 100 / percent, "lb", "{} × 100 ÷ {}", rq, percent);
        double exact = working.line("containers that reach it", needed / container, "", "{} ÷ {}", needed, container);
        double whole = working.line("whole containers", Numbers.wholeUp(exact), "", "{}, rounded up", exact);
        return new Outputs()
                .put("ai_lb", pounds)
                .put("share_of_rq", share)
                .put("reaches_rq", yesNo(reaches(pounds, rq)))
                .put("containers_to_rq", whole)
                .put("lb_to_rq", needed);
    }

    private static Outputs solveMixture(Given given, Working working) {
        double[] pounds = given.list("component_lb");
        double[] quantities = given.list("rq_lb");
        if (pounds.length != quantities.length) {
            throw given.refuse("rq_lb", "as many numbers as component_lb has (" + pounds.length + ")");
        }
        double[] shares = new double[pounds.length];
        boolean report = false;
        for (int i = 0; i < pounds.length; i++) {
            shares[i] = working.line(
                    "share of component " + (i + 1),
                    pounds[i] / quantities[i],
                    "",
                    "{} ÷ {}",
                    pounds[i],
                    quantities[i]);
            report |= reaches(pounds[i], quantities[i]);
        }
        return new Outputs().put("shares", shares).put("reaches_rq", yesNo(report));
    }

    private static Outputs solveTankLeak(Given given, Working working) {
        double tank = given.number("tank_gal");
        double substance = given.number("substance_lb");
        double leaked = given.number("leaked_gal");
        double rq = given.number("rq_lb");
        if (leaked > tank) {
            throw given.refuse("leaked_gal", "no more than tank_gal (" + Numbers.plain(tank) + ")");
        }
        double pounds = working.line(
                "substance that leaked", substance * (leaked / tank), "lb", "{} × {} ÷ {}", substance, leaked, tank);
        double share = working.line("share of the reportable quantity", pounds / rq, "", "{} ÷ {}", pounds, rq);
        return new Outputs()
                .put("leaked_lb", pounds)
                .put("share_of_rq", share)
                .put("reaches_rq", yesNo(reaches(pounds, rq)));
    }
}
