package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The corn borer worksheets: what larvae or egg masses threaten, what control saves, and what is left after its cost.
 *
 *   first generation:  larvae·survival·d·Y = bu; ·V = $; ·K = preventable; − C = net
 *   second generation: larvae = egg masses·4.5 per mass; the same from there, survival within the 4.5
 *   injury level in counted larvae: C/(V·Y·d·K)/survival
 *
 * The printed worksheets round the loss share on the way (to three, in the second generation to two decimals). Full
 * precision is the default; the printed way is a switch, so that both numbers can be shown.
 *
 * Source: paipm.cas.psu.edu/fldcrop/table14; ipm.iastate.edu/ipm/icm/1996/8-5-1996/ecbcostben.
 */
public final class BorerWorksheet {
    /** Larvae that come from one egg mass [1/mass]. */
    private static final double LARVAE_PER_MASS = 4.5;

    private static final int FIRST_DECIMALS = 3;
    private static final int SECOND_DECIMALS = 2;

    private static final Input PER_LARVA = number(
            "loss_per_larva_pct", "Yield lost per larva that tunnels, by stage", "%", Range.above(0, 100), "5.9");
    private static final Input YIELD = number("yield_bu_ac", "Yield without borers", "bu/ac", Range.POSITIVE, "135");
    private static final Input PRICE = number("price_usd_bu", "Crop price", "$/bu", Range.POSITIVE, "3");
    private static final Input COST =
            number("cost_usd_ac", "Cost of control, product and pass", "$/ac", Range.NOT_NEGATIVE, "15");
    private static final Input ROUNDING = word(
                    "rounding",
                    "Full precision, or rounded on the way like the printed sheet",
                    List.of("none", "worksheet"),
                    "none")
            .orElse("none");

    public static final Figure FIRST = Figure.declare("borer-first-generation", Subject.INSECTS)
            .question("Does control of first-generation corn borers pay?")
            .input(number(
                    "larvae_per_plant",
                    "Larvae per plant, over all plants looked at",
                    "larvae/plant",
                    Range.closed(0, 100),
                    "3"))
            .input(number("survival_share", "Share that lives to tunnel", "", Range.above(0, 1), "0.2"))
            .input(PER_LARVA)
            .input(YIELD)
            .input(PRICE)
            .input(number("control_share", "Share that control prevents", "", Range.above(0, 1), "0.72"))
            .input(COST)
            .input(ROUNDING)
            .output("loss_bu_ac", "Yield threatened", "bu/ac")
            .output("preventable_usd_ac", "Loss that control prevents", "$/ac")
            .output("net_usd_ac", "Left after the cost", "$/ac")
            .output("injury_level", "Injury level in larvae that tunnel", "larvae/plant")
            .output("injury_level_counted", "Injury level in larvae counted", "larvae/plant")
            .formula("net = larvae × survival × d × yield × price × control − cost")
            .source("[pennsylvania-borer]", VERIFIED)
            .validity(
                    "Measured with 2 to 6 larvae a plant. First instars survive by about 0.2 (0.01 to 0.50), larger ones by 0.5.")
            .caution(
                    "Only before the larvae are in the stalk. The printed sheet rounds on the way and differs by some percent.")
            .example(
                    "larvae_per_plant=3 survival_share=.2 loss_per_larva_pct=5.9 yield_bu_ac=135 price_usd_bu=3 control_share=.72"
                            + " cost_usd_ac=15",
                    "loss_bu_ac=4.779 net_usd_ac=-4.68 injury_level=0.872",
                    "the page's inputs without rounding",
                    COMPUTED)
            .example(
                    "larvae_per_plant=3 survival_share=.2 loss_per_larva_pct=5.9 yield_bu_ac=135 price_usd_bu=3 control_share=.72"
                            + " cost_usd_ac=15 rounding=worksheet",
                    "loss_bu_ac=4.73 preventable_usd_ac=10.21 net_usd_ac=-4.79 injury_level=0.88",
                    "[pennsylvania-borer], as printed",
                    VERIFIED)
            .example(
                    "larvae_per_plant=1 survival_share=.4 loss_per_larva_pct=5.9 yield_bu_ac=150 price_usd_bu=6 control_share=.8"
                            + " cost_usd_ac=15",
                    "injury_level_counted=0.88",
                    "[iowa-borer-2008]; yield and control inferred",
                    VERIFIED)
            .example(
                    "larvae_per_plant=1 survival_share=.4 loss_per_larva_pct=5.9 yield_bu_ac=150 price_usd_bu=7 control_share=.8"
                            + " cost_usd_ac=18",
                    "injury_level_counted=0.908",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "larvae_per_plant=.9 survival_share=1 loss_per_larva_pct=4 yield_bu_ac=150 price_usd_bu=4 control_share=.70"
                            + " cost_usd_ac=14",
                    "loss_bu_ac=5.40 preventable_usd_ac=15.12 net_usd_ac=1.12",
                    "North Dakota form",
                    COMPUTED)
            .model(BorerWorksheet::solveFirst);

    public static final Figure SECOND = Figure.declare("borer-second-generation", Subject.INSECTS)
            .question("Does control of second-generation corn borers pay?")
            .input(number(
                    "masses_per_plant",
                    "Egg masses per plant, over both visits",
                    "masses/plant",
                    Range.closed(0, 50),
                    "0.3"))
            .input(PER_LARVA)
            .input(YIELD)
            .input(PRICE)
            .input(number("control_share", "Share that control prevents", "", Range.above(0, 1), "0.8")
                    .orElse("0.8"))
            .input(COST)
            .input(ROUNDING)
            .output("loss_bu_ac", "Yield threatened", "bu/ac")
            .output("preventable_usd_ac", "Loss that control prevents", "$/ac")
            .output("net_usd_ac", "Left after the cost", "$/ac")
            .formula("net = masses × 4.5 larvae × d × yield × price × control − cost")
            .source("[iowa-borer-1996]", VERIFIED)
            .validity("4 % per larva at pollen shed, 3 % once kernels form. Count again after 5 to 7 days and add.")
            .caution("The printed sheet rounds the loss to two decimals on the way and differs by up to 28 %.")
            .example(
                    "masses_per_plant=.3 loss_per_larva_pct=4 yield_bu_ac=150 price_usd_bu=3.50 cost_usd_ac=15",
                    "loss_bu_ac=8.10 preventable_usd_ac=22.68 net_usd_ac=7.68",
                    "the page's inputs without rounding",
                    COMPUTED)
            .example(
                    "masses_per_plant=.3 loss_per_larva_pct=4 yield_bu_ac=150 price_usd_bu=3.50 cost_usd_ac=15 rounding=worksheet",
                    "loss_bu_ac=7.50 preventable_usd_ac=21.00 net_usd_ac=6.00",
                    "[iowa-borer-1996], as printed",
                    VERIFIED)
            .model(BorerWorksheet::solveSecond);

    private BorerWorksheet() {}

    private static Outputs solveFirst(Given given, Working working) {
        double counted = given.number("larvae_per_plant");
        double survival = given.number("survival_share");
        double tunnelling =
                working.line("larvae that tunnel", counted * survival, "larvae/plant", "{} × {}", counted, survival);
        double share = lossShare(given, working, tunnelling, FIRST_DECIMALS);
        Outputs outputs = money(given, working, share);
        // The rounded sheet's injury level follows from its rounded loss; with no larvae there is nothing rounded.
        double perLarva = tunnelling > 0 && share > 0 && share < 1
                ? share / tunnelling
                : given.number("loss_per_larva_pct") / 100;
        double level = working.line(
                "injury level in larvae that tunnel",
                EconomicInjuryLevel.density(
                        given.number("cost_usd_ac"),
                        given.number("price_usd_bu"),
                        perLarva,
                        given.number("yield_bu_ac"),
                        given.number("control_share")),
                "larvae/plant",
                "{} $/ac ÷ ({} $/bu × {} bu/ac × {} × {})",
                given.number("cost_usd_ac"),
                given.number("price_usd_bu"),
                given.number("yield_bu_ac"),
                perLarva,
                given.number("control_share"));
        double levelCounted = working.line(
                "injury level in larvae counted", level / survival, "larvae/plant", "{} ÷ {}", level, survival);
        return outputs.put("injury_level", level).put("injury_level_counted", levelCounted);
    }

    private static Outputs solveSecond(Given given, Working working) {
        double masses = given.number("masses_per_plant");
        double larvae = working.line(
                "larvae that tunnel",
                masses * LARVAE_PER_MASS,
                "larvae/plant",
                "{} masses/plant × {} per mass",
                masses,
                LARVAE_PER_MASS);
        return money(given, working, lossShare(given, working, larvae, SECOND_DECIMALS));
    }

    private static double lossShare(Given given, Working working, double larvae, int decimals) {
        double perLarva = given.number("loss_per_larva_pct");
        double share = working.line(
                "share of yield lost",
                BorerLoss.share(larvae, perLarva / 100),
                "",
                "{} larvae × {} %, at most 1",
                larvae,
                perLarva);
        if (given.word("rounding").equals("none")) {
            return share;
        }
        double scale = Math.pow(10, decimals);
        return working.line(
                "rounded as on the sheet", Math.rint(share * scale) / scale, "", "{} to {} decimals", share, decimals);
    }

    private static Outputs money(Given given, Working working, double share) {
        double yield = given.number("yield_bu_ac");
        double price = given.number("price_usd_bu");
        double control = given.number("control_share");
        double cost = given.number("cost_usd_ac");
        double bushels = working.line("yield threatened", share * yield, "bu/ac", "{} × {} bu/ac", share, yield);
        double dollars =
                working.line("money threatened", bushels * price, "$/ac", "{} bu/ac × {} $/bu", bushels, price);
        double preventable = working.line("preventable", dollars * control, "$/ac", "{} $/ac × {}", dollars, control);
        double net = working.line("left after the cost", preventable - cost, "$/ac", "{} − {} $/ac", preventable, cost);
        return new Outputs()
                .put("loss_bu_ac", bushels)
                .put("preventable_usd_ac", preventable)
                .put("net_usd_ac", net);
    }
}
