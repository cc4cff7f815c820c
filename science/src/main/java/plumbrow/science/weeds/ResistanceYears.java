package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.Arrays;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Years until resistance shows, as figures. The models are {@link HerbicideSelection}. */
public final class ResistanceYears {
    private static final int LONGEST = 2_000;
    private static final int USUAL = 50;
    private static final double VISIBLE = .20;
    private static final String ORDER = "A teaching model: order of magnitude and direction, not a date.";
    private static final Input INITIAL =
            number("initial_share", "Share of resistant seed today", "", Range.open(0, 1), "1e-6");
    private static final Input CONTROL =
            number("control_pct", "Control of susceptible plants", "%", Range.below(0, 100), "95");

    public static final Figure FIGURE = Figure.declare("resistance-years", Subject.WEEDS)
            .question("In how many years of the same herbicide do resistant weeds show?")
            .input(INITIAL)
            .input(CONTROL)
            .input(number("years", "Years to look ahead", "yr", Range.closed(1, LONGEST), "20")
                    .optional())
            .input(number(
                            "dormant_share",
                            "Part of next spring's seed that is older than last season",
                            "",
                            Range.below(0, 1),
                            "0.627")
                    .optional())
            .input(number(
                            "germination",
                            "Share that emerges in a year, where the dormant share is not known",
                            "",
                            Range.above(0, 1),
                            "0.3")
                    .optional())
            .output("first_year_above_20pct", "First year with more than 20 % resistant", "yr")
            .output("shares", "Resistant share of the seed after each year", "")
            .formula("r' = d × r + (1 − d) × r ÷ (r + (1 − r)(1 − E)); without d, d = 1 − germination; without both, 0")
            .source("Shares of a seedbank under selection; lineage of [gressel-segel-1990]", MEMORY)
            .validity(
                    "One herbicide every year, resistance without a cost, no pollen or seed from outside. Looks 50 years ahead unless"
                            + " told; where 20 % is not passed the words not within stand for the year.")
            .caution(ORDER)
            .caution("Look at the seedbank too: the count of plants grows as well as the share.")
            .example(
                    "initial_share=1e-6 control_pct=95 years=5",
                    "first_year_above_20pct=5.0 shares=.00002000,.0003998,.007937,.1379,.7619",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-6 control_pct=95 years=7 dormant_share=.627",
                    "first_year_above_20pct=7.0 shares=.000008087,.00006539,.0005282,.004232,.03188,.1681,.4044",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-6 control_pct=95 dormant_share=.8",
                    "first_year_above_20pct=9.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-6 control_pct=99 dormant_share=.627",
                    "first_year_above_20pct=4.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-8 control_pct=95 dormant_share=.627",
                    "first_year_above_20pct=9.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-6 control_pct=80 dormant_share=.627",
                    "first_year_above_20pct=14.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-6 control_pct=90",
                    "first_year_above_20pct=6.0",
                    "independent arithmetic",
                    COMPUTED)
            .model(ResistanceYears::solve);

    public static final Figure SELECTION = Figure.declare("resistance-selection", Subject.WEEDS)
            .question("How fast does one herbicide select, when seed lasts for years?")
            .input(INITIAL)
            .input(CONTROL)
            .input(number("seed_life_yr", "Mean years that seed lives in the soil", "yr", Range.closed(1, 100), "4"))
            .input(number("fitness", "Fitness of resistant plants where nothing is sprayed", "", Range.above(0, 1), "1")
                    .orElse("1"))
            .output("years", "Years until 20 % resist", "yr")
            .output("exact_years", "The same, before rounding up", "yr")
            .output("selection", "Survival of resistant over susceptible plants", "")
            .formula("share = start × (1 + fitness × α ÷ seed life)^years, α = 1 ÷ (1 − E)")
            .source("[gressel-segel-1990]", MEMORY)
            .validity(
                    "Holds while resistant plants are few: the last step to 20 % is an outer estimate. Resistance is seen only at 10 to 30 %.")
            .caution(ORDER)
            .example(
                    "initial_share=1e-6 control_pct=90 seed_life_yr=4",
                    "years=10.0 exact_years=9.74 selection=10.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-6 control_pct=99 seed_life_yr=1",
                    "years=3.0 exact_years=2.64",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "initial_share=1e-8 control_pct=90 seed_life_yr=4 fitness=.5",
                    "years=21.0 exact_years=20.73",
                    "independent arithmetic",
                    COMPUTED)
            .model(ResistanceYears::solveSelection);

    private ResistanceYears() {}

    private static Outputs solve(Given given, Working working) {
        double start = given.number("initial_share");
        double left = 1 - given.number("control_pct") / 100;
        int horizon = (int) given.numberOr("years", USUAL);
        if (given.numberOr("years", USUAL) != horizon) {
            throw given.refuse("years", "a whole number from 1 to 2,000");
        }
        double dormant = given.numberOr("dormant_share", 0);
        if (given.has("germination") && given.has("dormant_share")) {
            working.caution("The dormant share is given, so germination is not used.");
        } else if (given.has("germination")) {
            dormant = working.line(
                    "dormant share", 1 - given.number("germination"), "", "1 − {}", given.number("germination"));
        }
        double[] shares = new double[horizon];
        double share = start;
        int first = 0;
        for (int year = 1; year <= horizon; year++) {
            double before = share;
            share = HerbicideSelection.nextShare(before, left, dormant);
            shares[year - 1] = share;
            if (first == 0) {
                working.line(
                        "resistant share after year " + year,
                        share,
                        "",
                        "{} × {} + (1 − {}) × {} ÷ ({} + (1 − {}) × {})",
                        dormant,
                        before,
                        dormant,
                        before,
                        before,
                        before,
                        left);
                first = share > VISIBLE ? year : 0;
            }
        }
        Outputs outputs = new Outputs();
        if (first == 0) {
            outputs.put("first_year_above_20pct", "not within " + horizon);
        } else {
            outputs.put("first_year_above_20pct", first);
        }
        return outputs.put("shares", Arrays.copyOf(shares, given.has("years") || first == 0 ? horizon : first));
    }

    private static Outputs solveSelection(Given given, Working working) {
        double start = given.number("initial_share");
        double control = given.number("control_pct");
        double life = given.number("seed_life_yr");
        double fitness = given.number("fitness");
        if (start >= VISIBLE) {
            throw given.refuse("initial_share", "less than 0.2: resistance already shows");
        }
        double selection = working.line(
                "survival of resistant over susceptible plants",
                1 / (1 - control / 100),
                "",
                "1 ÷ (1 − {} ÷ 100)",
                control);
        double exact = working.line(
                "years until 20 %",
                HerbicideSelection.yearsTo(VISIBLE, start, selection, life, fitness),
                "",
                "ln(0.2 ÷ {}) ÷ ln(1 + {} × {} ÷ {})",
                start,
                fitness,
                selection,
                life);
        double years = working.line("whole years", Math.ceil(exact - 1e-9), "", "{}, rounded up", exact);
        return new Outputs().put("years", years).put("exact_years", exact).put("selection", selection);
    }
}
