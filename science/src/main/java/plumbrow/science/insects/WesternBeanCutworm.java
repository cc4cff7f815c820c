package plumbrow.science.insects;

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
 * Western bean cutworm: its own degree days, and the injury level in egg masses that its biology implies.
 *
 *   DD = mean of the day held to 38–75 °F, less 38
 *   EIL = C/(V·K·w·L), w larvae per mass that live, L loss per larva [bu/ac]
 *
 *   w = eggs per mass × share that lives = 50 × 0.033 = 1.65
 *
 * The mean is held, not the minimum and maximum: this is neither the corn rule nor the sine. The injury level is 3 to 15
 * times the nominal 5 to 8 % of plants, which also guards against ear rot: both are shown, the nominal rule is the default.
 *
 * Source: cropwatch.unl.edu 2021; Appel, Wright & Campbell 1993, digitalcommons.unl.edu/entomologyfacpub/335; NebGuide G2013.
 */
public final class WesternBeanCutworm {
    private static final double BASE_F = 38;
    private static final double CUTOFF_F = 75;
    private static final double EGGS_PER_MASS = 50;
    private static final double SHARE_THAT_LIVES = 0.033;

    public static final Figure DEGREE_DAYS = Figure.declare("western-bean-cutworm-degree-days", Subject.INSECTS)
            .question("How many degree days of western bean cutworm did the day bring?")
            .input(number("tmin_f", "Lowest temperature of the day", "°F", Range.closed(-100, 150), "50"))
            .input(number("tmax_f", "Highest temperature of the day", "°F", Range.closed(-100, 150), "70"))
            .output("degree_days", "Degree days of the day", "DD °F")
            .formula("mean of the day, held to 38 to 75 °F, less 38")
            .source("[nebraska-bean-cutworm]", VERIFIED)
            .validity("From 1 March. Lowest not above highest. A missing day is never a day of zero.")
            .caution(
                    "Sum from 1 March: first warning at 2,577 (cropwatch.unl.edu 2021). Do not compare with sums of other rules.")
            .example("tmin_f=50 tmax_f=70", "degree_days=22.0", "[nebraska-bean-cutworm]", VERIFIED)
            .example("tmin_f=50 tmax_f=85", "degree_days=29.5", "[nebraska-bean-cutworm]", VERIFIED)
            .example("tmin_f=55 tmax_f=70", "degree_days=24.5", "[nebraska-bean-cutworm]", VERIFIED)
            .example("tmin_f=55 tmax_f=65", "degree_days=22.0", "[nebraska-bean-cutworm]", VERIFIED)
            .example("tmin_f=72 tmax_f=96", "degree_days=37.0", "capped", COMPUTED)
            .example("tmin_f=20 tmax_f=40", "degree_days=0.0", "independent arithmetic", COMPUTED)
            .model(WesternBeanCutworm::solveDegreeDays);

    public static final Figure INJURY_LEVEL = Figure.declare("western-bean-cutworm-injury-level", Subject.INSECTS)
            .question("At how many egg masses of western bean cutworm does control pay by its biology?")
            .input(number("cost_usd_ac", "Cost of control, product and pass", "$/ac", Range.NOT_NEGATIVE, "16.43"))
            .input(number("price_usd_bu", "Corn price", "$/bu", Range.POSITIVE, "4"))
            .input(number("control_share", "Share that control prevents", "", Range.above(0, 1), "0.8"))
            .input(number("loss_bu_larva", "Loss per larva per plant", "bu/ac", Range.POSITIVE, "3.7")
                    .orElse("3.7"))
            .output("masses_per_plant", "Injury level", "masses/plant")
            .output("loss_bu_mass", "Loss per mass on each plant", "bu/ac")
            .formula("masses = cost ÷ (price × control × larvae that live per mass × loss per larva)")
            .source("[appel-1993]", VERIFIED)
            .validity(
                    "50 eggs a mass (5 to 200), 3.3 % of eggs live; 3.7 bu/ac per larva, in a later study 15.06 (from memory).")
            .caution(
                    "Contested: far above the nominal rule of 5 to 8 % of plants with egg masses or larvae, which also guards against moulds. Follow the nominal rule unless your state says otherwise.")
            .example(
                    "cost_usd_ac=16.43 price_usd_bu=4 control_share=.8",
                    "masses_per_plant=0.84 loss_bu_mass=6.105",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "cost_usd_ac=16.43 price_usd_bu=4 control_share=.8 loss_bu_larva=15.06",
                    "masses_per_plant=0.21",
                    "independent arithmetic",
                    COMPUTED)
            .model(WesternBeanCutworm::solveInjuryLevel);

    private WesternBeanCutworm() {}

    /** Mean of the day held to 38–75 °F, less 38 [DD °F]. */
    public static double degreeDays(double minF, double maxF) {
        return Math.min(Math.max((minF + maxF) / 2, BASE_F), CUTOFF_F) - BASE_F;
    }

    private static Outputs solveDegreeDays(Given given, Working working) {
        double min = given.number("tmin_f");
        double max = given.number("tmax_f");
        if (min > max) {
            throw given.refuse("tmin_f", "a number not above tmax_f (" + Numbers.plain(max) + ")");
        }
        double mean = working.line("mean of the day", (min + max) / 2, "°F", "({} + {}) ÷ 2", min, max);
        return new Outputs()
                .put(
                        "degree_days",
                        working.line(
                                "degree days", degreeDays(min, max), "DD °F", "{} held to 38 to 75, less 38", mean));
    }

    private static Outputs solveInjuryLevel(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double price = given.number("price_usd_bu");
        double control = given.number("control_share");
        double perLarva = given.number("loss_bu_larva");
        double larvae = working.line(
                "larvae per mass that live",
                EGGS_PER_MASS * SHARE_THAT_LIVES,
                "larvae",
                "{} eggs × {}",
                EGGS_PER_MASS,
                SHARE_THAT_LIVES);
        double perMass = working.line("loss per mass", larvae * perLarva, "bu/ac", "{} × {} bu/ac", larvae, perLarva);
        double level = working.line(
                "injury level",
                cost / (price * control * perMass),
                "masses/plant",
                "{} $/ac ÷ ({} $/bu × {} × {} bu/ac)",
                cost,
                price,
                control,
                perMass);
        return new Outputs().put("masses_per_plant", level).put("loss_bu_mass", perMass);
    }
}
