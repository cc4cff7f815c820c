package plumbrow.science.stand;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What replanting corn nets against keeping the stand that is there, and the stand at which both are equal.
 *
 *   net = Y·(r_new − r_keep)/100·V − C + I;   break-even stand: r(Pb, D_keep) = r_new − 100·(C − I)/(Y·V)
 *
 *   r by {@link CornResponse}'s table fit, r_keep at the first date with the plants that live, less what gaps cost
 *   Y bu/ac at the best stand and date;  V net price [$/bu];  C seed, passes, killing the old stand [$/ac];  I insurance [$/ac]
 *
 * Replant where net is above 0 and the cause of the loss is gone, seed and time are there, residual herbicide and insurance
 * allow it. A stand of Pb or more is kept.
 *
 * Source: arithmetic on the table of Nafziger 1994; the insurance term as in university replant worksheets.
 */
public final class ReplantNet {
    private static final double MOST_EVEN = 30;

    public static final Figure FIGURE = Figure.declare("replant-net", Subject.STAND)
            .question("Does it pay to replant corn, and at what stand do both come out even?")
            .alsoAsked("Do I tear up this stand?")
            .input(number("keep_plants_ac", "Plants that live now", "plants/ac", Range.closed(10_000, 36_000), "16000"))
            .input(text("keep_planted", "When they were planted", "2026-04-25"))
            .input(number(
                    "new_plants_ac", "Stand of the replanting", "plants/ac", Range.closed(10_000, 36_000), "30000"))
            .input(text("new_planted", "When it can be replanted", "2026-05-20"))
            .input(number("yield_bu_ac", "Yield at the best stand and date", "bu/ac", Range.POSITIVE, "200"))
            .input(number("price_usd_bu", "Net price received", "$/bu", Range.POSITIVE, "4.50"))
            .input(number("cost_usd_ac", "Seed, passes and killing the old stand", "$/ac", Range.NOT_NEGATIVE, "60"))
            .input(number("payment_usd_ac", "Insurance payment for replanting", "$/ac", Range.NOT_NEGATIVE, "20")
                    .orElse("0"))
            .input(number("gaps_pct", "Lost besides to gaps and uneven plants", "%", Range.closed(0, 50), "2")
                    .orElse("0"))
            .output("net_usd_ac", "Net of replanting", "$/ac")
            .output("gain_bu_ac", "More bushels", "bu/ac")
            .sometimes("break_even_plants_k_ac", "Stand at which both are even", "1000/ac")
            .formula("net = yield × (new % − kept %) ÷ 100 × price − cost + payment")
            .source("Arithmetic on the fit to [nafziger-1994]", PRACTICE)
            .validity(
                    "10,000 to 36,000 plants, 10 April to 9 June; outside refused. The even stand is given where it lies from 10,000 to 30,000 plants.")
            .caution("Iowa's table puts a thin stand up to 11 points lower, which can turn it: compare both.")
            .caution(
                    "Ask the insurance agent before tearing up a stand; read the residual's label for what may be replanted.")
            .example(
                    "keep_plants_ac=16000 keep_planted=2026-04-25 new_plants_ac=30000 new_planted=2026-05-20 yield_bu_ac=200 price_usd_bu=4.50 cost_usd_ac=60",
                    "gain_bu_ac=14.73 net_usd_ac=6.31 break_even_plants_k_ac=16.32",
                    "check 1d",
                    COMPUTED)
            .example(
                    "keep_plants_ac=20000 keep_planted=2026-04-25 new_plants_ac=30000 new_planted=2026-05-20 yield_bu_ac=200 price_usd_bu=4.50 cost_usd_ac=60",
                    "gain_bu_ac=-0.53 net_usd_ac=-62.37",
                    "check 1e",
                    COMPUTED)
            .example(
                    "keep_plants_ac=18000 keep_planted=2026-04-25 new_plants_ac=30000 new_planted=2026-05-15 yield_bu_ac=220 price_usd_bu=5 cost_usd_ac=75",
                    "gain_bu_ac=14.95 net_usd_ac=-0.25 break_even_plants_k_ac=17.99",
                    "check 1f",
                    COMPUTED)
            .model(ReplantNet::solve);

    private ReplantNet() {}

    private static Outputs solve(Given given, Working working) {
        double keepDays = days(given, "keep_planted");
        double newDays = days(given, "new_planted");
        double plants = given.number("keep_plants_ac") / 1000;
        double gaps = given.number("gaps_pct");
        double keep = working.step(
                "kept by the stand that is there",
                "corn-stand-response at its date, less the gaps",
                Math.max(0, CornResponse.tablePct(plants, keepDays) - gaps),
                "% of yield");
        double replanted = working.step(
                "brought by replanting",
                "corn-stand-response at the new date",
                CornResponse.tablePct(given.number("new_plants_ac") / 1000, newDays),
                "% of yield");
        double full = given.number("yield_bu_ac");
        double price = given.number("price_usd_bu");
        double cost = given.number("cost_usd_ac");
        double payment = given.number("payment_usd_ac");
        double bushels = working.line(
                "more bushels",
                full * (replanted - keep) / 100,
                "bu/ac",
                "{} × ({} − {}) ÷ 100",
                full,
                replanted,
                keep);
        double worth = working.line("worth of them", bushels * price, "$/ac", "{} × {}", bushels, price);
        double net =
                working.line("net of replanting", worth - cost + payment, "$/ac", "{} − {} + {}", worth, cost, payment);
        Outputs outputs = new Outputs().put("net_usd_ac", net).put("gain_bu_ac", bushels);
        double wanted = replanted - 100 * (cost - payment) / (full * price) + gaps;
        double even = plantsFor(wanted, keepDays);
        if (even >= CornResponse.FEWEST_THOUSAND && even <= MOST_EVEN) {
            outputs.put(
                    "break_even_plants_k_ac",
                    working.step(
                            "stand at which both are even",
                            "plants at which a stand of the first date keeps " + Numbers.plain(wanted) + " %",
                            even,
                            "1000/ac"));
        }
        return outputs;
    }

    private static double days(Given given, String key) {
        return PlantedOn.days(given, key, CornResponse.FIRST_DAY, CornResponse.LAST_DAY, CornResponse.DATES);
    }

    /** The smaller stand that gives this share on a date; not a number where none does. */
    private static double plantsFor(double pct, double days) {
        double missing = CornResponse.tablePct(0, days) - pct;
        double root = CornResponse.PER_PLANT * CornResponse.PER_PLANT + 4 * CornResponse.CURVATURE * missing;
        return root < 0 ? Double.NaN : (CornResponse.PER_PLANT - Math.sqrt(root)) / (2 * CornResponse.CURVATURE);
    }
}
