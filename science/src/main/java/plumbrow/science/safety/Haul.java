package plumbrow.science.safety;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Limits of storing and hauling that are counted in pounds and gallons.
 *
 *   planning quantity: amount × 0.2 in solution, × 0.3 molten, reached where ≥ TPQ
 *   farmer exception: within 150 miles, liquids and gases 502 gal, solids 5,070 lb on one vehicle
 *   placards: 1,001 lb or more together;  RQ mark: a package that holds the RQ, above a concentration that falls with it
 *
 * State law is often stricter and must authorise the farmer exception.
 *
 * Source: 40 CFR 355.16; 49 CFR 173.5 and 172.504 (seen), 171.8 (from memory).
 */
public final class Haul {
    private static final List<String> YES_NO = List.of("yes", "no");
    private static final double HIGHEST_GAL = 502;
    private static final double HIGHEST_LB = 5070;
    private static final double HIGHEST_MILES = 150;
    private static final double PLACARD_LB = 1001;
    private static final String STATE = "State law may be stricter; ask before you rely on a federal limit.";

    public static final Figure STORED = Figure.declare("planning-quantity", Subject.SAFETY)
            .question("Does the store reach the planning quantity of an extremely hazardous substance?")
            .input(number("stored_lb", "Substance stored, as it is listed", "lb", Range.NOT_NEGATIVE, "124.3"))
            .input(number(
                    "tpq_lb",
                    "Threshold planning quantity: the lower of two for a solution",
                    "lb",
                    Range.POSITIVE,
                    "10"))
            .input(word("form", "Form in which it is stored", List.of("as-is", "solution", "molten"), "solution"))
            .output("counted_lb", "Pounds that count", "lb")
            .output("reaches", "Whether the quantity is reached", "")
            .output("lb_to_tpq", "Pounds stored that reach it", "lb")
            .formula("counted = stored × 0.2 in solution, × 0.3 molten; reached where counted ≥ TPQ")
            .source("[40-cfr-355.16]", VERIFIED)
            .validity(
                    "Solids in solution or molten; as-is for anything else. The quantity comes from the current 40 CFR 355 appendix A.")
            .caution("Farms are not excepted from this notice. " + STATE)
            .example(
                    "stored_lb=124.3 tpq_lb=10 form=solution",
                    "counted_lb=24.9 reaches=yes lb_to_tpq=50",
                    "paraquat dichloride, 30 gal at 4.142 lb/gal",
                    COMPUTED)
            .model(Haul::solveStored);

    public static final Figure FARM = Figure.declare("farm-haul", Subject.SAFETY)
            .question("Is this load within the farmer's exception for hauling?")
            .input(number(
                    "liquid_gal",
                    "Liquid or gas of all agricultural products on the vehicle",
                    "gal",
                    Range.NOT_NEGATIVE,
                    "480"))
            .input(number(
                            "solid_lb",
                            "Solid of all agricultural products on the vehicle",
                            "lb",
                            Range.NOT_NEGATIVE,
                            "0")
                    .orElse("0"))
            .input(number("miles", "Distance between farm and the other end", "mi", Range.NOT_NEGATIVE, "20"))
            .output("within", "Whether it is within the exception", "")
            .output("share_of_limit", "Highest share of a limit", "")
            .formula("within where liquid ≤ 502 gal, solid ≤ 5,070 lb and distance ≤ 150 miles")
            .source("[49-cfr-173.5], (b)", VERIFIED)
            .validity(
                    "One vehicle, private carrier, to or from the farm. Ammonium nitrate in bulk has a limit of its own and is not covered here.")
            .caution("State law must authorise the exception; shipping paper, marks and placards still apply. " + STATE)
            .example("liquid_gal=480 miles=20", "within=yes", "independent arithmetic", COMPUTED)
            .example("liquid_gal=502 miles=20", "within=yes share_of_limit=1.00", "independent arithmetic", COMPUTED)
            .example("liquid_gal=550 miles=20", "within=no", "herbicide and adjuvant count together", COMPUTED)
            .example("liquid_gal=0 solid_lb=5200 miles=20", "within=no", "independent arithmetic", COMPUTED)
            .example("liquid_gal=100 miles=160", "within=no", "independent arithmetic", COMPUTED)
            .model(Haul::solveFarm);

    public static final Figure PLACARD = Figure.declare("placard", Subject.SAFETY)
            .question("Does this load need placards?")
            .input(list(
                    "gross_lb",
                    "Gross weight of each lot of classes 3, 6.1, 8 and the like",
                    "lb",
                    Range.NOT_NEGATIVE,
                    "450,560"))
            .input(word("inhalation_hazard", "Whether any is class 2.3, or 6.1 with inhalation hazard", YES_NO, "no")
                    .orElse("no"))
            .output("total_lb", "Together", "lb")
            .output("placard", "Whether placards are needed", "")
            .formula("placards where the sum is 1,001 lb or more, or for any amount of an inhalation hazard")
            .source("[49-cfr-172.504]", VERIFIED)
            .validity("Packages, not bulk. Class 9 is left out: it needs none inside the US.")
            .caution(STATE)
            .example("gross_lb=450,560", "total_lb=1010 placard=yes", "independent arithmetic", COMPUTED)
            .example("gross_lb=1000", "total_lb=1000 placard=no", "independent arithmetic", COMPUTED)
            .model(Haul::solvePlacard);

    public static final Figure MARK = Figure.declare("rq-mark", Subject.SAFETY)
            .question("Must the shipping paper say RQ?")
            .input(number("rq_lb", "Reportable quantity: 1, 10, 100, 1000 or 5000", "lb", Range.closed(1, 5000), "100"))
            .input(number("in_package_lb", "Substance in one package", "lb", Range.NOT_NEGATIVE, "120"))
            .input(number("concentration_pct", "Concentration by weight", "%", Range.PERCENT, "40"))
            .output("mark", "Whether RQ goes on the paper", "")
            .output("least_pct", "Concentration from which on it counts", "%")
            .formula(
                    "mark where package ≥ RQ and concentration ≥ 10 % (RQ 5000), 2 % (1000), 0.2 % (100), 0.02 % (10), 0.002 % (1)")
            .source("[49-cfr-171.8]", MEMORY)
            .validity("The five quantities of the list; others are refused.")
            .caution(STATE)
            .example(
                    "rq_lb=100 in_package_lb=120 concentration_pct=40",
                    "mark=yes least_pct=.2",
                    "[49-cfr-171.8], table",
                    MEMORY)
            .example(
                    "rq_lb=5000 in_package_lb=6000 concentration_pct=9",
                    "mark=no least_pct=10",
                    "[49-cfr-171.8], table",
                    MEMORY)
            .model(Haul::solveMark);

    private Haul() {}

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    private static Outputs solveStored(Given given, Working working) {
        double stored = given.number("stored_lb");
        double limit = given.number("tpq_lb");
        double factor = switch (given.word("form")) {
            case "solution" -> .2;
            case "molten" -> .3;
            default -> 1;
        };
        double counted = working.line("pounds that count", stored * factor, "lb", "{} × {}", stored, factor);
        double needed = working.line("pounds that reach it", limit / factor, "lb", "{} ÷ {}", limit, factor);
        return new Outputs()
                .put("counted_lb", counted)
                .put("reaches", yesNo(Spill.reaches(counted, limit)))
                .put("lb_to_tpq", needed);
    }

    private static Outputs solveFarm(Given given, Working working) {
        double liquid = working.line(
                "share of the liquid limit",
                given.number("liquid_gal") / HIGHEST_GAL,
                "",
                "{} ÷ {}",
                given.number("liquid_gal"),
                HIGHEST_GAL);
        double solid = working.line(
                "share of the solid limit",
                given.number("solid_lb") / HIGHEST_LB,
                "",
                "{} ÷ {}",
                given.number("solid_lb"),
                HIGHEST_LB);
        double miles = working.line(
                "share of the distance",
                given.number("miles") / HIGHEST_MILES,
                "",
                "{} ÷ {}",
                given.number("miles"),
                HIGHEST_MILES);
        double most = Math.max(miles, Math.max(liquid, solid));
        return new Outputs().put("within", yesNo(most <= 1)).put("share_of_limit", most);
    }

    private static Outputs solvePlacard(Given given, Working working) {
        double[] lots = given.list("gross_lb");
        double sum = 0;
        for (double lot : lots) {
            sum += lot;
        }
        working.step("together", Numbers.terms(lots), sum, "lb");
        return new Outputs()
                .put("total_lb", sum)
                .put(
                        "placard",
                        yesNo(Spill.reaches(sum, PLACARD_LB)
                                || given.word("inhalation_hazard").equals("yes")));
    }

    private static Outputs solveMark(Given given, Working working) {
        double rq = given.number("rq_lb");
        double least;
        if (rq == 5000) {
            least = 10;
        } else if (rq == 1000) {
            least = 2;
        } else if (rq == 100) {
            least = .2;
        } else if (rq == 10) {
            least = .02;
        } else if (rq == 1) {
            least = .002;
        } else {
            throw given.refuse("rq_lb", "one of 1, 10, 100, 1000, 5000");
        }
        double inPackage = given.number("in_package_lb");
        double share = working.line("package over the quantity", inPackage / rq, "", "{} ÷ {}", inPackage, rq);
        working.line("concentration that counts", least, "%", "table at {}", rq);
        return new Outputs()
                .put("mark", yesNo(Spill.reaches(share, 1) && given.number("concentration_pct") >= least))
                .put("least_pct", least);
    }
}
